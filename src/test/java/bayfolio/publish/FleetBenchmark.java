package bayfolio.publish;

import bayfolio.Jvm;
import java.io.BufferedReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Fleets of many small coaches, published by a program of its own each time: coaches and pages a second, the highest heap,
 * an incremental run after one line has changed, and how the time grows. Run on demand; see DEVELOPERS.md.
 */
final class FleetBenchmark {
    private static final int[] SIZES = sizes();
    private static final String HEAP = System.getProperty("heap", "512m");
    private static final Pattern PEAK = Pattern.compile("peak ([0-9]+)");

    private FleetBenchmark() {}

    /** Publishes, and says how much of its heap was ever used. */
    static final class Measured {
        private Measured() {}

        public static void main(String[] words) throws Exception {
            int exit = bayfolio.cli.Bayfolio.run(
                    new java.io.PrintWriter(System.out, true), new java.io.PrintWriter(System.err, true), words);
            long peak = java.lang.management.ManagementFactory.getMemoryPoolMXBeans().stream()
                    .filter(pool -> pool.getType() == java.lang.management.MemoryType.HEAP)
                    .mapToLong(pool -> pool.getPeakUsage().getUsed())
                    .sum();
            System.out.println("peak " + peak / 1_000_000);
            System.exit(exit);
        }
    }

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory("bayfolio-fleet");
        List<double[]> times = new ArrayList<>();
        for (int size : SIZES) {
            Path fleet = SmallFleet.write(
                    folder.resolve("fleet-" + size),
                    IntStream.range(0, size).mapToObj(i -> "coach-" + i).toList());
            Path out = folder.resolve("out-" + size);
            double full = run(size + " coaches", size, fleet, out);
            times.add(new double[] {size, full});
            Path unit = fleet.resolve("units/coach-0/unit.yaml");
            Files.writeString(unit, Files.readString(unit).replace("name: Pump switch", "name: Switch of the pump"));
            run("  one line changed", size, fleet, out);
            run("  nothing changed", size, fleet, out);
        }
        if (times.size() > 1) {
            double[] first = times.get(0);
            double[] last = times.get(times.size() - 1);
            System.out.printf(
                    Locale.ROOT,
                    "grows by size to the power of %.2f%n",
                    Math.log(last[1] / first[1]) / Math.log(last[0] / first[0]));
        }
    }

    private static double run(String what, int size, Path fleet, Path out) throws Exception {
        long begun = System.nanoTime();
        Process publisher = Jvm.start(
                List.of("-Xmx" + HEAP, "-XX:TieredStopAtLevel=4"),
                Measured.class,
                "publish",
                "--only=web",
                "--fleet=" + fleet,
                "--out=" + out);
        String said;
        try (BufferedReader reader = publisher.inputReader()) {
            said = String.join("\n", reader.lines().toList());
        }
        double seconds = (System.nanoTime() - begun) / 1e9;
        if (publisher.waitFor() != 0) {
            throw new IllegalStateException(said);
        }
        Matcher peak = PEAK.matcher(said);
        Matcher pages = Pattern.compile("Published ([0-9]+) pages").matcher(said);
        System.out.printf(
                Locale.ROOT,
                "%-24s %7.2f s, %6.1f coaches and %7.1f pages a second, peak heap %s MB%n",
                what,
                seconds,
                size / seconds,
                (pages.find() ? Integer.parseInt(pages.group(1)) : 0) / seconds,
                peak.find() ? peak.group(1) : "?");
        return seconds;
    }

    private static int[] sizes() {
        return Pattern.compile(",")
                .splitAsStream(System.getProperty("sizes", "1,10,100,1000"))
                .mapToInt(Integer::parseInt)
                .toArray();
    }
}
