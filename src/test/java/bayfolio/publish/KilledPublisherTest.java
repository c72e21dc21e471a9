package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Jvm;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A program that publishes is killed, as by {@code kill -9}, at moments that nobody chose: readers see one whole site, and
 * the next run takes away what was left. {@code -Dkills=200} for more than a few moments.
 */
class KilledPublisherTest {
    private static final int KILLS = Integer.getInteger("kills", 8);

    @Test
    void readersSeeOneWholeSiteAndTheNextRunCleansUp(@TempDir Path folder) throws Exception {
        Map<String, Map<String, String>> whole = Map.of("old", site(folder, "old"), "new", site(folder, "new"));
        Path out = folder.resolve("out");
        Swapping.publish(out, "old");
        Random random = new Random(19);

        int left = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            Process publisher = Jvm.start(List.of(), Swapping.class, out.toString());
            assertThat(publisher.inputReader().readLine()).isEqualTo("begun");
            Thread.sleep(random.nextInt(250));
            publisher.destroyForcibly().waitFor(1, TimeUnit.MINUTES);

            assertThat(BothRoots.of(out)).as("after kill %d", kill).isIn(whole.values());
            left += editions(out) > 1 ? 1 : 0;
            String next = kill % 2 == 0 ? "new" : "old";
            Swapping.publish(out, next);
            assertThat(BothRoots.of(out)).isEqualTo(whole.get(next));
            assertThat(editions(out)).isEqualTo(1);
            assertThat(spare(out)).isEqualTo(listed(out));
        }
        System.out.println(
                "KilledPublisherTest: " + KILLS + " kills, " + left + " of them while an edition was written");
        assertThat(left).isPositive();
    }

    private static Map<String, String> site(Path folder, String said) throws Exception {
        Path out = folder.resolve(said);
        Swapping.publish(out, said);
        return BothRoots.of(out);
    }

    /** Files of the edition that the next one is made of. */
    private static Set<String> spare(Path out) throws Exception {
        Path spare = out.resolve(".editions/spare");
        Set<String> files = new TreeSet<>();
        for (String root : OutputFolder.ROOTS) {
            if (Files.isDirectory(spare.resolve(root))) {
                DemoFleet.files(spare.resolve(root)).keySet().forEach(path -> files.add(root + "/" + path));
            }
        }
        return files;
    }

    /** Those that its lists name. */
    private static Set<String> listed(Path out) throws Exception {
        Edition spare = new Edition(out.resolve(".editions/spare"));
        Set<String> files = new TreeSet<>();
        for (String name : spare.parts()) {
            files.addAll(spare.part(name).orElseThrow().files().keySet());
        }
        return files;
    }

    private static long editions(Path out) throws Exception {
        try (Stream<Path> entries = Files.list(out.resolve(".editions"))) {
            return entries.filter(entry -> entry.getFileName().toString().matches("[0-9]+"))
                    .count();
        }
    }
}
