package bayfolio.reckon;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The tables of published figures. */
final class FiguresTest {
    private static final Path FIGURES = Path.of("src/main/resources/bayfolio/figures");

    private static List<String> tables() throws Exception {
        try (Stream<Path> files = Files.list(FIGURES)) {
            return files.map(file -> file.getFileName().toString().replaceFirst("\\.csv$", ""))
                    .sorted()
                    .toList();
        }
    }

    private static Stream<Published<String>> all() throws Exception {
        return tables().stream()
                .map(Table::read)
                .flatMap(table -> table.figures().stream().map(table::text));
    }

    /** What nobody outside can be named for; whoever finds a source takes a line away here. */
    @Test
    void theseAreFromMemoryOrChosenByUs() throws Exception {
        assertThat(all().filter(Published::unverified).map(Published::id).filter(id -> !id.contains("generous.")))
                .containsExactlyInAnyOrder(
                        "batteries/charger.efficiency",
                        "batteries/inverter.idle",
                        "batteries/night",
                        "road/margin.europe",
                        "road/margin.north-america",
                        "site/slack");
        assertThat(all().filter(Published::unverified).map(Published::id).filter(id -> id.contains("generous.")))
                .hasSize(6);
    }

    /** A published figure has its source and the day on which it was looked up; readers are told of it in words. */
    @Test
    void eachSaysWhereItIsFrom() throws Exception {
        for (String name : tables()) {
            Table table = Table.read(name);
            for (String figure : table.figures()) {
                Published<String> row = table.text(figure);
                assertThat(TestCoach.WORDS.find("source." + row.told()))
                        .as(row.id())
                        .isPresent();
                if (Set.of(Published.Status.PUBLISHED, Published.Status.REPORTED)
                        .contains(row.status())) {
                    assertThat(table.column(figure, "source")).as(row.id()).isNotBlank();
                    assertThat(table.column(figure, "date")).as(row.id()).matches("20[0-9]{2}-[0-9]{2}(-[0-9]{2})?");
                }
            }
        }
    }

    /** What is told of a source belongs to a figure. */
    @Test
    void eachSourceInTheCatalogIsThatOfAFigure() throws Exception {
        Set<String> told = all().map(Published::told).collect(Collectors.toCollection(TreeSet::new));

        assertThat(TestCoach.WORDS.patterns().keySet().stream()
                        .filter(key -> key.startsWith("source."))
                        .map(key -> key.substring("source.".length())))
                .allMatch(told::contains);
    }
}
