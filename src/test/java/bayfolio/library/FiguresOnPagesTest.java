package bayfolio.library;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.measure.Kilograms;
import bayfolio.measure.Liters;
import bayfolio.measure.Quantity;
import bayfolio.model.Fleet;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import bayfolio.source.Located;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the renters' pages of the demo fleet do with figures. */
final class FiguresOnPagesTest {
    private static final Fleet FLEET = FleetReader.read(Folders.at(Path.of(""))).fleet();

    /** The readable text of each page, by its path. */
    private static final Map<String, String> PAGES = pages();

    private static Map<String, String> pages() {
        Map<String, String> pages = new TreeMap<>();
        DemoFleet.files(DemoFleet.web()).forEach((path, bytes) -> {
            if (path.endsWith(".html")) {
                pages.put(
                        path,
                        Jsoup.parse(new String(bytes, StandardCharsets.UTF_8))
                                .text()
                                .replace('\u00a0', ' '));
            }
        });
        return pages;
    }

    static Stream<Unit> units() {
        return FLEET.units().stream();
    }

    private static Stream<Map.Entry<String, String>> of(Unit unit) {
        return PAGES.entrySet().stream().filter(page -> page.getKey().startsWith(unit.id() + "/"));
    }

    @Test
    void rentersReadNoDoubtsOfOurs() {
        assertThat(PAGES)
                .hasSizeGreaterThan(500)
                .allSatisfy((path, text) -> assertThat(text)
                        .as(path)
                        .doesNotContain("from memory", "to be checked", "our own choice", "clause from"));
    }

    /** A weight or a volume of some size that the description states stands beside one figure of the other system, wherever it is. */
    @ParameterizedTest
    @MethodSource("units")
    void aStatedFactHasOneConversion(Unit unit) {
        Set<String> stated = new HashSet<>();
        collect(unit.facts(), stated);
        Map<String, Set<String>> conversions = new TreeMap<>();
        Pattern pair = Pattern.compile(
                "(?<![\\d.,])((?:[2-9]\\d|[1-9]\\d\\d|[\\d,]{5,}) (?:gal|L|lb|kg)) \\(([\\d.,]+ (?:gal|L|lb|kg|qt))\\)");
        of(unit).forEach(page -> {
            Matcher matcher = pair.matcher(page.getValue());
            while (matcher.find()) {
                if (stated.contains(matcher.group(1))) {
                    conversions
                            .computeIfAbsent(matcher.group(1), it -> new TreeSet<>())
                            .add(matcher.group(2));
                }
            }
        });

        assertThat(conversions)
                .isNotEmpty()
                .allSatisfy((figure, others) -> assertThat(others).as(figure).hasSize(1));
    }

    private static void collect(Facts facts, Set<String> stated) {
        facts.each((key, fact) -> collect(fact, stated));
    }

    private static void collect(Located<?> fact, Set<String> stated) {
        if (fact.value() instanceof Described record) {
            collect(record.facts(), stated);
        } else if (fact.value() instanceof List<?> list) {
            list.forEach(each -> collect((Located<?>) each, stated));
        } else if (fact.value() instanceof Quantity quantity
                && (quantity instanceof Liters || quantity instanceof Kilograms)) {
            stated.add(fact.written());
        }
    }

    /** Whole days from ten on, and ranges in tens: nobody knows them better. */
    @Test
    void noFalsePrecision() {
        Pattern days = Pattern.compile("\\d\\d\\.\\d days");
        Pattern range = Pattern.compile("full: \\d*[1-9] (?:mi|km)");

        assertThat(PAGES).allSatisfy((path, text) -> {
            assertThat(days.matcher(text).find()).as(path).isFalse();
            assertThat(range.matcher(text).find()).as(path).isFalse();
        });
    }

    @Test
    void aWeighingCountsPeopleAndNotSeats() {
        assertThat(PAGES.entrySet())
                .filteredOn(page -> page.getKey().endsWith("/numbers.html"))
                .hasSameSizeAs(DemoFleet.coaches())
                .allSatisfy(page -> assertThat(page.getValue())
                        .contains("People on board: 0")
                        .doesNotContain("Seats and beds: 0"));
    }

    /** No demo coach has one on board, so each page that speaks of one says the same. */
    @ParameterizedTest
    @MethodSource("units")
    void oneAnswerAboutExtensionCords(Unit unit) {
        Pattern sentence = Pattern.compile("(?:^|\\. )(U[^.]*extension cord[^.]*\\.)");
        Map<String, Set<String>> said = new TreeMap<>();
        of(unit).filter(page -> !page.getKey().endsWith("/words.html")).forEach(page -> {
            Matcher matcher = sentence.matcher(page.getValue());
            while (matcher.find()) {
                said.computeIfAbsent(matcher.group(1), it -> new TreeSet<>()).add(page.getKey());
            }
        });

        assertThat(said.keySet())
                .filteredOn(it -> !it.startsWith("Use it alone"))
                .containsExactly("Use no extension cord.");
        assertThat(said.get("Use no extension cord."))
                .contains(unit.id() + "/worked-out/cord-volts.html")
                .anyMatch(page -> page.contains("/do/connect-"));
    }
}
