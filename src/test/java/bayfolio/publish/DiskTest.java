package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Jvm;
import bayfolio.Main;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A disk that takes no more: a file may not grow beyond a limit. */
class DiskTest {
    /** In half kilobytes: pages of a coach are smaller than the first, what a phone keeps of it is not. */
    @ParameterizedTest
    @ValueSource(strings = {"ulimit -f 100", "ulimit -f 20"})
    void whatTheSystemRefusesIsOneSentenceAndTheOldSiteStays(String limit, @TempDir Path folder) throws Exception {
        Path fleet = SmallFleet.write(folder.resolve("fleet"), List.of("knot", "plover"));
        Path out = folder.resolve("out");
        DemoFleet.of(fleet).publish(out);
        Map<String, String> before = BothRoots.of(out);
        Path unit = fleet.resolve("units/knot/unit.yaml");
        Files.writeString(unit, Files.readString(unit).replace("name: Knot", "name: Red Knot"));

        Process publisher = Jvm.limited(limit, Main.class, "publish", "--only=web", "--fleet=" + fleet, "--out=" + out);
        List<String> said = publisher.inputReader().lines().toList();

        assertThat(publisher.waitFor()).as(said.toString()).isEqualTo(1);
        assertThat(said).hasSize(1);
        assertThat(BothRoots.of(out)).isEqualTo(before);
        DemoFleet.of(fleet).publish(out);
        assertThat(BothRoots.of(out).get("web/index.html")).contains("Red Knot");
        try (Stream<Path> editions = Files.list(out.resolve(".editions"))) {
            assertThat(editions.filter(it -> it.getFileName().toString().matches("[0-9]+")))
                    .hasSize(1);
        }
    }
}
