package bayfolio.read;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.check.CarelessEdit;
import bayfolio.check.Refit;
import bayfolio.finding.Finding;
import bayfolio.source.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every refit of the trade as three careless writers enter it, on three coaches, and what a check must see on three: each
 * is told, where it was edited or at the thing concerned. What truly cannot be seen from the description is asked for by
 * the refit that the writer noted; at most a third of the refits are told so only. Two of the three are on a page here, one is
 * on that of the {@link Refit}.
 */
class CarelessRefitsTest {
    private static final Path PAGES = Path.of("src/test/resources/bayfolio/refits/careless");
    private static final Path REFITS = Path.of("src/test/resources/bayfolio/refits");
    private static final DemoCoaches COACHES = DemoCoaches.read();
    private static final String QUESTION = "not-looked-at-since-refit";

    private record Told(CarelessEdit edit, String changed, List<Finding> findings) {
        boolean there() {
            return findings.stream().anyMatch(it -> edit.concerns(it.at().line(), changed));
        }

        boolean onlyAsked() {
            return findings.stream().allMatch(it -> it.code().equals(QUESTION));
        }
    }

    @Test
    void everyCarelessEditIsToldWhereItWasMade() throws IOException {
        List<Told> all = edits().parallelStream().map(CarelessRefitsTest::told).toList();
        long told = all.stream().filter(it -> !it.findings().isEmpty()).count();
        long there = all.stream().filter(Told::there).count();
        long asked = all.stream()
                .filter(it -> !it.findings().isEmpty() && it.onlyAsked())
                .count();

        System.out.printf(
                "CarelessRefitsTest: %d edits, %d told, %d at the edited line or the thing concerned, %d by the question alone%n",
                all.size(), told, there, asked);
        assertThat(all)
                .filteredOn(it -> !it.there())
                .extracting(it -> it.edit().name() + "\n" + lines(it.findings()))
                .isEmpty();
        assertThat(asked).isLessThanOrEqualTo(all.size() / 3);
    }

    @Test
    void everyRefitIsMadeOnThreeCoaches() throws IOException {
        Map<String, Set<String>> coaches = new TreeMap<>();
        for (CarelessEdit edit : edits()) {
            coaches.computeIfAbsent(edit.name().replaceFirst(" .*", ""), it -> new HashSet<>())
                    .add(edit.coach());
        }
        for (Path page : pages(REFITS)) {
            Refit refit = Refit.read(page);
            coaches.computeIfAbsent(refit.name().substring(0, 2), it -> new HashSet<>())
                    .add(refit.coach());
        }

        assertThat(coaches)
                .hasSizeGreaterThanOrEqualTo(33)
                .allSatisfy((page, on) -> assertThat(on).as(page).hasSizeGreaterThanOrEqualTo(3));
    }

    private static Told told(CarelessEdit edit) {
        SourceFile before = COACHES.units().stream()
                .filter(unit -> unit.id().equals(edit.coach()))
                .findFirst()
                .orElseThrow()
                .facts()
                .at()
                .file();
        String changed = edit.done(before.text());
        return new Told(edit, changed, COACHES.told(new SourceFile(before.path(), changed)));
    }

    private static String lines(List<Finding> findings) {
        StringBuilder lines = new StringBuilder();
        findings.forEach(it -> lines.append("    ")
                .append(it.at())
                .append(" [")
                .append(it.code())
                .append("]\n"));
        return lines.toString();
    }

    private static List<CarelessEdit> edits() throws IOException {
        List<CarelessEdit> edits = new ArrayList<>();
        for (Path page : pages(PAGES)) {
            edits.addAll(CarelessEdit.read(page));
        }
        return edits;
    }

    private static List<Path> pages(Path folder) throws IOException {
        try (Stream<Path> pages = Files.list(folder)) {
            return pages.filter(it -> it.toString().endsWith(".md")).sorted().toList();
        }
    }
}
