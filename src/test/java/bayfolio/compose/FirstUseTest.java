package bayfolio.compose;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.document.Audience;
import bayfolio.document.From;
import bayfolio.document.NodeId;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Stamp;
import bayfolio.model.Word;
import bayfolio.prose.Target;
import bayfolio.read.FleetReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** The first use of a word of the glossary on a page leads to what it means, and no second one does. */
final class FirstUseTest {
    private final List<Word> glossary =
            FleetReader.read(Folders.at(Path.of(""))).fleet().words();

    @Test
    void aFleetMayHaveNoWords() {
        Page page = new Page(
                new Stamp(NodeId.of("words"), Audience.EVERYBODY, From.PROGRAM, "en-US"),
                PageKind.WORDS,
                new Target.OfPage("words"),
                "Words",
                List.of(),
                List.of(),
                false);

        assertThat(new FirstUse(List.of()).linked(page)).isSameAs(page);
    }

    @Test
    void aPageExplainsAWordOnce() {
        int[] linked = {0};
        DemoFleet.files(DemoFleet.web()).forEach((path, bytes) -> {
            if (path.matches("[a-z]+/(?:do|trouble)/.*\\.html")) {
                Element page = Jsoup.parse(new String(bytes, StandardCharsets.UTF_8));
                Set<String> seen = new HashSet<>();
                for (Element link : page.select("main a.word")) {
                    String word = link.attr("href");
                    boolean again = !seen.add(word);
                    // A writer may link a word by hand as often as he likes; the program does so once.
                    if (again) {
                        assertThat(page.select("main a.word[href=" + word + "]"))
                                .as(path + " " + word)
                                .hasSizeLessThan(4);
                    }
                    linked[0]++;
                }
            }
        });
        assertThat(linked[0]).isGreaterThan(500);
    }

    @Test
    void noPlainUseStandsBeforeTheLinkedOne() {
        List<Word> plain = glossary.stream()
                .filter(word -> !word.facts().find(Word.MANY_MEANINGS).orElse(false))
                .filter(word -> word.word().matches("[a-z]+"))
                .toList();
        assertThat(plain).hasSizeGreaterThan(20);
        DemoFleet.files(DemoFleet.web()).forEach((path, bytes) -> {
            if (path.startsWith("whimbrel/do/")) {
                Element page = Jsoup.parse(new String(bytes, StandardCharsets.UTF_8));
                if (page.select("body.urgent").isEmpty()) {
                    for (Word word : plain) {
                        Element linked = page.selectFirst("main a.word[href$=#word-" + word.id() + "]");
                        boolean used = page.select("ol.steps > li > p").stream()
                                .anyMatch(text -> uses(text.ownText(), word.word()));
                        if (used) {
                            assertThat(linked).as(path + " " + word.word()).isNotNull();
                        }
                    }
                }
            }
        });
    }

    /** By itself, and not as part of a longer word of the glossary. */
    private boolean uses(String text, String word) {
        String rest = text.toLowerCase(Locale.ROOT);
        for (Word longer : glossary) {
            String other = longer.word().toLowerCase(Locale.ROOT);
            if (other.length() > word.length() && other.contains(word)) {
                rest = rest.replace(other, " ");
            }
        }
        return Pattern.compile("(?<![\\w-])" + word + "s?(?![\\w-])")
                .matcher(rest)
                .find();
    }
}
