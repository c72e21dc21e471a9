package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Jvm;
import bayfolio.Main;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A fleet is published in less memory than its site has bytes: {@code -Dfleet=1000 -Dheap=256} for a large one. */
class StreamedTest {
    private static final int COACHES = Integer.getInteger("fleet", 28);
    private static final int HEAP = Integer.getInteger("heap", 96);

    @Test
    void noMoreThanAFewCoachesAreInMindAtOnce(@TempDir Path folder) throws Exception {
        Path fleet = SmallFleet.write(folder.resolve("fleet"), SmallFleet.ids(COACHES));
        Path out = folder.resolve("out");

        Process publisher = Jvm.start(
                List.of("-Xmx" + HEAP + "m"), Main.class, "publish", "--only=web", "--fleet=" + fleet, "--out=" + out);
        List<String> said = publisher.inputReader().lines().toList();

        assertThat(publisher.waitFor()).as(said.toString()).isZero();
        long bytes = 0;
        for (String root : OutputFolder.ROOTS) {
            try (Stream<Path> files = Files.walk(out.resolve(root).toRealPath())) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    bytes += Files.size(file);
                }
            }
        }
        System.out.println(
                "StreamedTest: " + COACHES + " coaches, " + bytes / 1_000_000 + " MB of site, heap " + HEAP + " MB");
        assertThat(bytes).isGreaterThan(HEAP * 1_000_000L);
    }
}
