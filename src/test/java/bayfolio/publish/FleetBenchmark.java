package bayfolio.publish;

import bayfolio.Jvm;
import bayfolio.cli.Bayfolio;
import bayfolio.preview.Preview;
import bayfolio.preview.Visitor;
import bayfolio.read.Folder;
import bayfolio.render.web.FloorBenchmark;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;

/**
 * Fleets of many small coaches, most of them of models, published by a program of its own each time: coaches and pages a second,
 * cold and warm, the highest heap, runs after one line has changed and when nothing has, an edit in a preview, how the time grows; beside it what
 * the libraries alone need for one of them, and {@code cmark} over its texts. Run on demand; see DEVELOPERS.md.
 */
final class FleetBenchmark {
    private static final int[] SIZES = sizes();
    private static final String HEAP = System.getProperty("heap", "512m");

    /** Of this size the libraries are measured, too. */
    private static final int FLOOR = 10;

    /** Tests do without the second one. */
    private static final String BOTH_COMPILERS = "-XX:TieredStopAtLevel=4";

    private FleetBenchmark() {}

    /** Publishes as often as {@code rounds} says, anew each time, and tells how long it took and how much of its heap was ever used. */
    static final class Measured {
        private Measured() {}

        public static void main(String[] words) {
            double begun = ManagementFactory.getRuntimeMXBean().getStartTime() / 1e3;
            for (int round = 0; round < Integer.getInteger("rounds"); round++) {
                List<String> all = new ArrayList<>(List.of(words));
                if (round > 0) {
                    all.add("--fresh");
                    begun = System.currentTimeMillis() / 1e3;
                }
                int exit = Bayfolio.run(
                        new PrintWriter(System.out, true),
                        new PrintWriter(System.err, true),
                        all.toArray(String[]::new));
                if (exit != 0) {
                    System.exit(exit);
                }
                System.out.println("took " + (System.currentTimeMillis() / 1e3 - begun));
            }
            long peak = 0;
            for (MemoryPoolMXBean pool : ManagementFactory.getMemoryPoolMXBeans()) {
                if (pool.getType() == MemoryType.HEAP) {
                    peak += pool.getPeakUsage().getUsed();
                }
            }
            System.out.println("peak " + peak / 1_000_000);
        }
    }

    /** Writes a line of a coach again and again while somebody looks at a page of it, and tells after how long it was read, checked and made. */
    static final class Previewed {
        private static final int EDITS = 30;

        private Previewed() {}

        public static void main(String[] words) throws Exception {
            Path root = Path.of(words[0]);
            Path unit = root.resolve("units/coach-0/unit.yaml");
            BlockingQueue<String> told = new LinkedBlockingQueue<>();
            List<Integer> took = new ArrayList<>();
            try (Preview preview = Preview.start(root, 0, Visitor.reading(new Folder(root)), told::add)) {
                new Visitor(preview).get("web/coach-0/index.html");
                for (int edit = 0; edit < EDITS; edit++) {
                    Files.writeString(
                            unit, Files.readString(unit).replaceFirst("(?m)^name: .*$", "name: Coach " + edit));
                    // Whatever comes of one edit, an editor may write in two steps.
                    String line = told.take();
                    for (String more = line; more != null; more = told.poll(500, TimeUnit.MILLISECONDS)) {
                        line = more;
                    }
                    if (!line.startsWith("Read again in ")) {
                        throw new IllegalStateException(line);
                    }
                    took.add(Integer.parseInt(line.replaceAll("[^0-9]", "")));
                }
            }
            List<Integer> warm =
                    took.subList(EDITS / 2, EDITS).stream().sorted().toList();
            System.out.println("  an edit in a preview, once warm: " + warm.get(warm.size() / 2) + " ms (" + warm.get(0)
                    + " to " + warm.get(warm.size() - 1) + ")");
            System.exit(0);
        }
    }

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory("bayfolio-fleet");
        List<double[]> times = new ArrayList<>();
        for (int size : SIZES) {
            Path fleet = SmallFleet.withModels(folder.resolve("fleet-" + size), SmallFleet.ids(size));
            Path out = folder.resolve("out-" + size);
            // A large fleet is warm before it is half done.
            List<Double> full = run(size + " coaches", size, size > 100 ? 1 : 3, fleet, out);
            times.add(new double[] {size, full.get(full.size() - 1)});
            Path unit = fleet.resolve("units/coach-0/unit.yaml");
            Files.writeString(unit, Files.readString(unit).replace("name: Pump switch", "name: Switch of the pump"));
            run("  one line changed", size, 1, fleet, out);
            run("  nothing changed", size, 1, fleet, out);
            Process preview = Jvm.start(
                    List.of("-Xmx2g", BOTH_COMPILERS, "-XX:+UseParallelGC"), Previewed.class, fleet.toString());
            preview.inputReader().lines().forEach(System.out::println);
            if (preview.waitFor() != 0) {
                throw new IllegalStateException("the preview was not measured");
            }
            if (size == FLOOR) {
                Process floor =
                        Jvm.start(List.of(BOTH_COMPILERS, "-Dfleet=" + fleet, "-Drounds=4"), FloorBenchmark.class);
                floor.inputReader().lines().forEach(line -> System.out.println("  " + line));
                if (floor.waitFor() != 0) {
                    throw new IllegalStateException("the libraries alone were not measured");
                }
            }
        }
        for (int i = 1; i < times.size(); i++) {
            double[] few = times.get(i - 1);
            double[] many = times.get(i);
            System.out.printf(
                    Locale.ROOT,
                    "from %.0f to %.0f coaches the time grows by the number of coaches to the power of %.2f%n",
                    few[0],
                    many[0],
                    Math.log(many[1] / few[1]) / Math.log(many[0] / few[0]));
        }
    }

    /** @return how long each round took, in seconds */
    private static List<Double> run(String what, int size, int rounds, Path fleet, Path out) throws Exception {
        Process publisher = Jvm.start(
                List.of("-Xmx" + HEAP, BOTH_COMPILERS, "-XX:+UseParallelGC", "-Drounds=" + rounds),
                Measured.class,
                "publish",
                "--only=web",
                "--fleet=" + fleet,
                "--out=" + out);
        String said = String.join("\n", publisher.inputReader().lines().toList());
        if (publisher.waitFor() != 0) {
            throw new IllegalStateException(said);
        }
        List<Double> took = all("took ([0-9.]+)", said);
        double pages = all("Published ([0-9]+) pages", said).get(0);
        for (int round = 0; round < rounds; round++) {
            System.out.printf(
                    Locale.ROOT,
                    "%-20s %5s %8.2f s, %6.1f coaches and %7.1f pages a second, peak heap %.0f MB%n",
                    round == 0 ? what : "",
                    round == 0 ? "cold" : "warm",
                    took.get(round),
                    size / took.get(round),
                    pages / took.get(round),
                    all("peak ([0-9]+)", said).get(0));
        }
        return took;
    }

    private static List<Double> all(String pattern, String said) {
        return Pattern.compile(pattern)
                .matcher(said)
                .results()
                .map(it -> Double.valueOf(it.group(1)))
                .toList();
    }

    private static int[] sizes() {
        return Pattern.compile(",")
                .splitAsStream(System.getProperty("sizes", "1,10,100,1000"))
                .mapToInt(Integer::parseInt)
                .toArray();
    }
}
