package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Jvm;
import bayfolio.Main;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two programs that publish two fleets into one folder at once. {@code -Drounds=50} for more than a few rounds.
 */
class TwoPublishersTest {
    private static final int ROUNDS = Integer.getInteger("rounds", 3);

    @TempDir
    private Path folder;

    @Test
    void eachRoundEndsWithOneWholeSite() throws Exception {
        List<Path> fleets = List.of(fleet("Plover"), fleet("Knot"));
        List<Map<String, String>> sites = new ArrayList<>();
        for (Path fleet : fleets) {
            Path alone = fleet.resolve("alone");
            DemoFleet.of(fleet).publish(alone);
            sites.add(BothRoots.of(alone));
        }
        assertThat(sites).doesNotHaveDuplicates();
        Path out = folder.resolve("out");
        Random random = new Random(40);

        for (int round = 1; round <= ROUNDS; round++) {
            List<Process> publishers = new ArrayList<>();
            for (Path fleet : fleets) {
                publishers.add(Jvm.start(
                        List.of(),
                        Main.class,
                        "publish",
                        "--only",
                        "web",
                        "--fleet",
                        fleet.toString(),
                        "--out",
                        out.toString()));
                Thread.sleep(random.nextInt(500));
            }
            for (Process publisher : publishers) {
                String said;
                try (BufferedReader reader = publisher.inputReader()) {
                    said = reader.lines().collect(Collectors.joining("\n"));
                }
                int exit = publisher.waitFor();
                assertThat(said)
                        .as("round %d", round)
                        .containsPattern(
                                exit == 0 ? "^Published [0-9]+ pages into " : " is being published into by process ");
            }
            assertThat(sites).as("round %d", round).contains(BothRoots.of(out));
        }
    }

    private Path fleet(String name) throws IOException {
        Path fleet = DemoFleet.copy(DemoFleet.SMALL, folder.resolve(name));
        Path unit = fleet.resolve("units/plover/unit.yaml");
        Files.writeString(unit, Files.readString(unit).replace("name: Plover\n", "name: " + name + "\n"));
        return fleet;
    }
}
