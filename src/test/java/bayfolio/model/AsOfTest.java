package bayfolio.model;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Folders;
import bayfolio.read.FleetReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AsOfTest {
    @TempDir
    Path root;

    @Test
    void theNewestDayOfAFleetIsThatAsOfWhichItIsLookedAt() throws Exception {
        assertThat(fleet(List.of("2025-03-01", "2026-04-02", "2024-01-01")).asOf())
                .contains(LocalDate.of(2026, 4, 2));
    }

    @Test
    void aSingleYearTypedWrongMakesNothingElseLookOld() throws Exception {
        assertThat(fleet(List.of("2062-03-01", "2026-04-02", "2026-04-01", "2026-03-01", "2025-04-02", "2025-01-01"))
                        .asOf())
                .contains(LocalDate.of(2026, 4, 2));
    }

    @Test
    void aDayThatIsToComeIsNone() throws Exception {
        assertThat(fleet(List.of()).asOf()).isEmpty();
    }

    @Test
    void anotherDayMayBeGiven() throws Exception {
        assertThat(fleet(List.of("2025-03-01")).asOf(LocalDate.of(2027, 1, 1)).asOf())
                .contains(LocalDate.of(2027, 1, 1));
    }

    private Fleet fleet(List<String> days) throws Exception {
        Path unit = root.resolve("units/tern/unit.yaml");
        Files.createDirectories(unit.getParent());
        String bays = IntStream.range(0, days.size())
                .mapToObj(i ->
                        "  - {id: l%d, name: L%d, side: left, from-front: %d m, width: 50 cm, access: free, checked-on: %s}\n"
                                .formatted(i, i, i, days.get(i)))
                .collect(Collectors.joining());
        Files.writeString(unit, """
                id: tern
                name: Tern
                body: van
                region: europe
                drive-side: left
                size: {length: 7 m, width: 2 m, height: 3 m}
                gauges:
                  - {id: alarm, name: Alarm, shows: smoke, replace-by: 2033-01-01}
                """ + (days.isEmpty() ? "" : "compartments:\n" + bays));
        return FleetReader.read(Folders.at(root)).fleet();
    }
}
