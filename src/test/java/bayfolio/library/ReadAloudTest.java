package bayfolio.library;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Steps as they are read, with the words of the coach filled in: nothing in them sounds like a machine. */
final class ReadAloudTest {
    private static final String SIDE = "(?:left side|right side|front|rear|roof|inside|under the floor)";

    /** What is looked for in a sentence or a place. */
    private static final Map<String, Predicate<String>> FAULTS = new LinkedHashMap<>(Map.of(
            "a place said twice", finds("\\b(" + SIDE + "), \\1\\b"),
            "two full stops", finds("(?<!\\.)\\.\\.(?!\\.)"),
            "no full stop",
                    text -> !Pattern.compile("[.!?:…][)\"”’]?$").matcher(text).find(),
            "a raw backtick", finds("`"),
            "a state before its look", finds("(?:this|see|sign): (?:open|shut|on|off): "),
            "a colon before a capital", finds(": [A-Z]"),
            "this, and a colon", finds("\\bthis:"),
            "more than 20 words", ReadAloudTest::tooLong));

    private static final Pattern THING = Pattern.compile(
            "/(?:compartment|switch|gauge|connection|tray)/|#[a-z]+-|(?:numbers|on-board|doors-and-slides)\\.");

    private static final Pattern AMID = Pattern.compile("(?:^|\\s)(?!(?:the|an?|this|each|your|its) )[a-z]+ $");

    /** Of the very thing that is named behind it. */
    private static final Pattern EACH = Pattern.compile("\\b[Ee]ach (?:of them|one)?[^,;]*:?\\.$");

    private static final Pattern NUMBERED = Pattern.compile("^(?:[A-Z][0-9]|[AD]C$)");

    @Test
    void stepsSoundAsPeopleSpeak(@TempDir Path folder) throws IOException {
        Map<String, Integer> found = new TreeMap<>();
        Map<String, String> examples = new TreeMap<>();
        int read = read(DemoFleet.files(DemoFleet.web()), found, examples);
        for (String fleet : List.of("small-clean", "after-a-refit")) {
            Path out = folder.resolve(fleet);
            StringWriter said = new StringWriter();
            Folders.run(
                    new PrintWriter(said),
                    new PrintWriter(said),
                    "publish",
                    "--only=web",
                    "--fleet",
                    // Its addresses are written down in the fleet.
                    DemoFleet.copy(
                                    Path.of("src/test/resources/golden", fleet, "fleet"),
                                    folder.resolve(fleet + "-fleet"))
                            .toString(),
                    "--out",
                    out.toString());
            if (Files.exists(out.resolve("web"))) {
                read += read(DemoFleet.files(out.resolve("web")), found, examples);
            }
        }

        System.out.println("ReadAloudTest " + read + " paragraphs: " + found);
        assertThat(found).as(examples.toString()).isEmpty();
        assertThat(read).isGreaterThan(6000);
    }

    /** How many sentences there are in the steps of a site. */
    private static int read(Map<String, byte[]> site, Map<String, Integer> found, Map<String, String> examples) {
        int[] read = {0};
        site.forEach((path, bytes) -> {
            if (path.matches("[a-z]+/(?:do|trouble)/.*")) {
                Document page = Jsoup.parse(new String(bytes, StandardCharsets.UTF_8));
                for (Element sentence : page.select(".steps > li > p:not(.any-of), .answers > li > p")) {
                    read[0]++;
                    judge(path, sentence.text(), found, examples);
                    if (sentence.select("a").stream().anyMatch(ReadAloudTest::bare)) {
                        told("a name without its article", path + ": " + sentence.text(), found, examples);
                    }
                }
                page.select(".steps .place").forEach(place -> judge(path, place.text() + ".", found, examples));
                page.select(".steps > li").forEach(step -> several(path, step, found, examples));
            }
        });
        return read[0];
    }

    /** One of several is joined by "or", and only several are "each". */
    private static void several(String path, Element step, Map<String, Integer> found, Map<String, String> examples) {
        String act = step.select("> p:not(.any-of)").text();
        List<String> things = step.select("> .where > li > a").eachText();
        if (!step.select("> .any-of").isEmpty()
                && step.select("> p:not(.any-of) > a + a").stream()
                        .anyMatch(link -> link.previousSibling() instanceof TextNode between
                                && between.getWholeText().contains(" and "))) {
            told("and where one of several is meant", path + ": " + act, found, examples);
        }
        if (things.size() == 1
                && act.toLowerCase(Locale.ROOT).contains("each " + things.get(0).toLowerCase(Locale.ROOT))) {
            told("each for one", path + ": " + act + " " + things, found, examples);
        }
    }

    private static void told(String fault, String example, Map<String, Integer> found, Map<String, String> examples) {
        found.merge(fault, 1, Integer::sum);
        examples.putIfAbsent(fault, example);
    }

    private static void judge(String path, String text, Map<String, Integer> found, Map<String, String> examples) {
        FAULTS.forEach((name, fault) -> {
            if (fault.test(text)) {
                told(name, path + ": " + text, found, examples);
            }
        });
    }

    /** A name of a thing amid a sentence; a door that goes by its number needs no article. */
    private static boolean bare(Element link) {
        return THING.matcher(link.attr("href")).find()
                && link.previousSibling() instanceof TextNode before
                && AMID.matcher(before.getWholeText()).find()
                && Character.isUpperCase(link.text().charAt(0))
                && !NUMBERED.matcher(link.text()).find();
    }

    private static Predicate<String> finds(String pattern) {
        return Pattern.compile(pattern).asPredicate();
    }

    private static boolean tooLong(String text) {
        return Stream.of(text.split("(?<=[.!?;]) ")).anyMatch(sentence -> sentence.split(" ").length > 20);
    }
}
