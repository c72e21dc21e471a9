package bayfolio.library;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
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

    private static final Pattern NUMBERED = Pattern.compile("^(?:[A-Z][0-9]|[AD]C$)");

    @Test
    void stepsSoundAsPeopleSpeak() {
        Map<String, Integer> found = new TreeMap<>();
        Map<String, String> examples = new TreeMap<>();
        int[] read = {0};
        DemoFleet.files(DemoFleet.web()).forEach((path, bytes) -> {
            if (path.matches("[a-z]+/(?:do|trouble)/.*")) {
                Document page = Jsoup.parse(new String(bytes, StandardCharsets.UTF_8));
                for (Element sentence : page.select(".steps > li > p:not(.any-of)")) {
                    read[0]++;
                    judge(path, sentence.text(), found, examples);
                    if (sentence.select("a").stream().anyMatch(ReadAloudTest::bare)) {
                        told("a name without its article", path + ": " + sentence.text(), found, examples);
                    }
                }
                page.select(".steps .place").forEach(place -> judge(path, place.text() + ".", found, examples));
            }
        });

        System.out.println("ReadAloudTest " + read[0] + " paragraphs: " + found);
        assertThat(found).as(examples.toString()).isEmpty();
        assertThat(read[0]).isGreaterThan(4000);
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
