package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A fleet that several machines publish, a part each. */
class ShardsTest {
    private static final List<String> COACHES = List.of("avocet", "curlew", "dotterel", "knot", "plover", "ruff");

    @TempDir
    private Path folder;

    @Test
    void fourShardsLaidOverEachOtherAreTheWholeSite() throws Exception {
        Path fleet = SmallFleet.write(folder.resolve("fleet"), COACHES);
        assertThat(SmallFleet.publish(fleet, folder.resolve("whole"))).isZero();

        Path merged = folder.resolve("merged");
        for (int shard = 1; shard <= 4; shard++) {
            Path out = folder.resolve("shard-" + shard);
            assertThat(SmallFleet.publish(fleet, out, "--shard", shard + "/4")).isZero();
            for (String root : OutputFolder.ROOTS) {
                Map<String, byte[]> files = DemoFleet.files(out.resolve(root).toRealPath());
                assertThat(files.keySet().stream().filter(path -> path.matches("[a-z]+/index.html")))
                        .hasSizeBetween(1, 2);
                for (Map.Entry<String, byte[]> file : files.entrySet()) {
                    DemoFleet.write(merged.resolve(root).resolve(file.getKey()), file.getValue());
                }
            }
        }

        for (String root : OutputFolder.ROOTS) {
            assertThat(DemoFleet.bytes(merged.resolve(root)))
                    .isEqualTo(DemoFleet.bytes(
                            folder.resolve("whole").resolve(root).toRealPath()));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"0/4", "5/4", "1", "1/0", "a/b", "2/4 knot"})
    void aShardThatIsNoneIsRefused(String shard) throws Exception {
        Path fleet = SmallFleet.write(folder.resolve("fleet"), COACHES);
        String[] words = ("--shard " + shard).split(" ");

        assertThat(SmallFleet.publish(fleet, folder.resolve("out"), words)).isEqualTo(2);
        assertThat(folder.resolve("out")).doesNotExist();
    }
}
