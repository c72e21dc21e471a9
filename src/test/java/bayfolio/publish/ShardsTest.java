package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
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
        Path bookings = folder.resolve("bookings.csv");
        Files.writeString(
                bookings,
                "booking,coach,pickup,return\n"
                        + "B-1,avocet,2026-05-04 16:00,2026-05-11 10:00\nB-2,ruff,2026-05-01 16:00,2026-05-04 10:00\n");
        String[] day = {"--as-of", "2026-05-04", "--bookings", bookings.toString()};
        assertThat(SmallFleet.publish(fleet, folder.resolve("whole"), day)).isZero();

        Path merged = folder.resolve("merged");
        for (int shard = 1; shard <= 4; shard++) {
            Path out = folder.resolve("shard-" + shard);
            String[] words = Stream.concat(Stream.of(day), Stream.of("--shard", shard + "/4"))
                    .toArray(String[]::new);
            assertThat(SmallFleet.publish(fleet, out, words)).isZero();
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
