package bayfolio.check;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.catalog.Catalogs;
import bayfolio.read.FleetReader;
import bayfolio.render.theme.Theme;
import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * How long a whole check takes, reading included: of one coach once the program is warm, and of a thousand. Run on
 * demand; see DEVELOPERS.md for the line to type and for figures.
 *
 * <p>The coaches are those of the demo fleet, copied under other ids. Each run reads and judges them anew; what the shared
 * library says is kept from the run before, as in any program that checks more than once, and told once more without
 * that, every file of it being another from run to run.
 */
final class CheckBenchmark {
    private static final List<String> DEMO = List.of("whimbrel", "dunlin", "turnstone", "phalarope", "redpoll");
    private static final int WARM_UP = 150;
    private static final int RUNS = 51;
    private static final int MANY = 1000;

    private static final OperatingSystemMXBean PROCESS =
            ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

    private CheckBenchmark() {}

    public static void main(String[] arguments) throws Exception {
        System.out.printf(
                "Java %s, %d cores, heap of at most %d MB%n",
                Runtime.version(),
                Runtime.getRuntime().availableProcessors(),
                Runtime.getRuntime().maxMemory() >> 20);
        Path folder = Files.createTempDirectory("bayfolio-benchmark");
        try {
            for (String coach : DEMO) {
                Path one = fleet(folder.resolve("one-" + coach), List.of(coach), 1);
                runs(List.of(one), WARM_UP);
                report("one coach (" + coach + ")", runs(List.of(one), RUNS));
                Path edited = fleet(folder.resolve("edited-" + coach), List.of(coach), 1);
                editLibrary(edited);
                report("  with another library", runs(List.of(edited, one), RUNS));
            }
            Path many = fleet(folder.resolve("many"), DEMO, MANY);
            runs(List.of(many), 1);
            report(MANY + " coaches", runs(List.of(many), 3));
        } finally {
            delete(folder);
        }
    }

    /**
     * @param elapsed on the clock, of each run, from the shortest
     * @param processor time of one run on the average, of all cores together: what it costs where other programs run, too
     */
    private record Runs(long[] elapsed, long processor) {}

    /**
     * @param fleets checked in turn
     */
    private static Runs runs(List<Path> fleets, int count) throws Exception {
        long[] elapsed = new long[count];
        long before = PROCESS.getProcessCpuTime();
        for (int i = 0; i < count; i++) {
            elapsed[i] = time(fleets.get(i % fleets.size()));
        }
        long processor = (PROCESS.getProcessCpuTime() - before) / count;
        Arrays.sort(elapsed);
        return new Runs(elapsed, processor);
    }

    private static long time(Path fleet) throws Exception {
        Catalogs screen = Theme.load(fleet, Theme.BUILT_IN).catalogs();
        long start = System.nanoTime();
        FleetReader.Reading reading = FleetReader.read(Folders.at(fleet));
        Check check = Check.of(reading.fleet(), reading.library(), screen, reading.findings());
        long time = System.nanoTime() - start;
        if (check.findings().hasErrors()) {
            throw new IllegalStateException(
                    "the demo fleet has errors: " + check.findings().all());
        }
        return time;
    }

    private static void report(String what, Runs runs) {
        long[] elapsed = runs.elapsed;
        System.out.printf(
                Locale.ROOT,
                "%-24s %,9.1f ms (median of %d; %,.1f to %,.1f); processor %,.1f ms%n",
                what,
                elapsed[elapsed.length / 2] / 1e6,
                elapsed.length,
                elapsed[0] / 1e6,
                elapsed[elapsed.length - 1] / 1e6,
                runs.processor / 1e6);
    }

    /** A fleet folder with copies of demo coaches, as many as are asked for; the first keep their ids. */
    private static Path fleet(Path folder, List<String> coaches, int count) throws IOException {
        Map<String, byte[]> files = DemoFleet.files(Path.of("units"));
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            String top = file.getKey().split("/")[0];
            if (!DEMO.contains(top)) {
                DemoFleet.write(folder.resolve("units").resolve(file.getKey()), file.getValue());
            }
        }
        for (int i = 0; i < count; i++) {
            String coach = coaches.get(i % coaches.size());
            String id = i < coaches.size() ? coach : coach + "-" + i;
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                if (file.getKey().startsWith(coach + "/")) {
                    Path copy =
                            folder.resolve("units").resolve(id + file.getKey().substring(coach.length()));
                    DemoFleet.write(copy, file.getValue());
                }
            }
            Path description = folder.resolve("units").resolve(id).resolve("unit.yaml");
            String text = Files.readString(description);
            Files.writeString(description, text.replaceFirst("(?m)^id: .*$", "id: " + id));
        }
        return folder;
    }

    /** Adds to every file of the shared library what says nothing. */
    private static void editLibrary(Path fleet) throws IOException {
        try (Stream<Path> files = Files.walk(fleet.resolve("units/shared"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                if (file.toString().endsWith(".md")) {
                    Files.writeString(file, "\n", StandardOpenOption.APPEND);
                } else if (file.toString().endsWith(".yaml")) {
                    Files.writeString(file, "# edited\n", StandardOpenOption.APPEND);
                }
            }
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
