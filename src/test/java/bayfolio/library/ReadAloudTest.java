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
import org.junit.jupiter.api.Test;

/**
 * Steps as they are read, with the words of the coach filled in: what sounds like a machine. Some are not mended yet; there
 * may be no more of them than there are.
 */
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

    /** None, where no figure stands here; to be lowered to none. */
    private static final Map<String, Integer> NOT_MENDED_YET =
            Map.of("a colon before a capital", 57, "this, and a colon", 3, "more than 20 words", 96);

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
                }
                page.select(".steps .place").forEach(place -> judge(path, place.text() + ".", found, examples));
            }
        });

        System.out.println("ReadAloudTest " + read[0] + " paragraphs: " + found);
        found.entrySet().removeIf(each -> each.getValue() <= NOT_MENDED_YET.getOrDefault(each.getKey(), 0));
        assertThat(found).as(examples.toString()).isEmpty();
        assertThat(read[0]).isGreaterThan(4000);
    }

    private static void judge(String path, String text, Map<String, Integer> found, Map<String, String> examples) {
        FAULTS.forEach((name, fault) -> {
            if (fault.test(text)) {
                found.merge(name, 1, Integer::sum);
                examples.putIfAbsent(name, path + ": " + text);
            }
        });
    }

    private static Predicate<String> finds(String pattern) {
        return Pattern.compile(pattern).asPredicate();
    }

    private static boolean tooLong(String text) {
        return Stream.of(text.split("(?<=[.!?]) ")).anyMatch(sentence -> sentence.split(" ").length > 20);
    }
}
