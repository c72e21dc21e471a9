package bayfolio.render;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The page that a reader opens at the coach: it asks where he is and what does not work, and leads there. */
final class FirstPageTest {
    private static Document page(Path file) throws IOException {
        return Jsoup.parse(Files.readString(file));
    }

    private static List<Path> linked(Path file, String select) throws IOException {
        return page(file).select(select).eachAttr("href").stream()
                .map(href -> file.resolveSibling(href.replaceFirst("#.*", "")).normalize())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("bayfolio.DemoFleet#coaches")
    void everyGuideIsTwoTapsAway(String coach) throws Exception {
        Path home = DemoFleet.web().resolve(coach + "/index.html");
        Set<Path> reached = new HashSet<>();
        for (Path first : linked(home, "#trouble .tile")) {
            assertThat(first).exists();
            reached.add(first);
            reached.addAll(linked(first, "main .links a"));
        }

        try (Stream<Path> guides = Files.list(home.resolveSibling("trouble"))) {
            assertThat(guides.filter(it -> !it.toString().contains("--")))
                    .isNotEmpty()
                    .allMatch(reached::contains);
        }
    }

    @ParameterizedTest
    @MethodSource("bayfolio.DemoFleet#coaches")
    void whereOneStandsLeadsToWhatComesFirstThere(String coach) throws Exception {
        Path home = DemoFleet.web().resolve(coach + "/index.html");

        assertThat(page(home).select("#now .tile b").eachText())
                .containsExactly(
                        "At the coach, in the dark", "At a campsite", "On the road", "At home", "Giving it back");
        Path dark = home.resolveSibling("now/dark.html");
        List<String> first = linked(dark, "main .links a").stream()
                .map(it -> it.getFileName().toString().replace(".html", ""))
                .toList();
        assertThat(first)
                .containsSubsequence("record-condition", "wake-up-coach", "find-safety-equipment", "make-up-beds")
                .contains("use-water-pump")
                .doesNotHaveDuplicates();
    }

    /** On a page of what to do in danger nothing else takes room. */
    @Test
    void helpIsAtTheThumbOnEveryPage() {
        DemoFleet.files(DemoFleet.web()).forEach((path, bytes) -> {
            if (path.endsWith(".html") && path.contains("/")) {
                Document page = Jsoup.parse(new String(bytes, StandardCharsets.UTF_8));
                // What leads on at once from a label or an old address is no page to stay on.
                boolean leadsOn = !page.select("meta[http-equiv=refresh]").isEmpty();
                if (!leadsOn && !page.body().hasClass("urgent")) {
                    assertThat(page.select("nav.bar a").eachText())
                            .as(path)
                            .containsExactly("Emergency", "Call us", "Find");
                }
            }
        });
    }
}
