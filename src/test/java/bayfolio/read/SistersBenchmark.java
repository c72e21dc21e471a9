package bayfolio.read;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.check.Check;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * A fleet of 60 coaches of 4 models, as models and differences and with every coach in full: lines, time of a check and of publishing
 * its pages by turns, memory that the read fleet keeps. Run on demand; see DEVELOPERS.md.
 */
final class SistersBenchmark {
    private static final int RUNS = Integer.getInteger("runs", 5);

    private SistersBenchmark() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory("bayfolio-sisters");
        Path layered = folder.resolve("layered");
        Path full = folder.resolve("full");
        SisterFleet fleet = new SisterFleet(List.of("dunlin", "phalarope", "redpoll", "whimbrel"), 15);
        fleet.write(layered, full);
        lines("as models and differences", layered);
        lines("in full", full);
        memory("as models and differences", layered);
        memory("in full", full);
        long[][] times = new long[2][RUNS];
        for (int i = -1; i < RUNS; i++) {
            for (int which = 0; which < 2; which++) {
                long begun = System.nanoTime();
                checked(which == 0 ? layered : full);
                if (i >= 0) {
                    times[which][i] = System.nanoTime() - begun;
                }
            }
        }
        report("check, as models and differences", times[0]);
        report("check, in full", times[1]);
        if (!Boolean.getBoolean("publish")) {
            return;
        }
        for (int which = 0; which < 2; which++) {
            Path out = folder.resolve("out-" + which);
            long begun = System.nanoTime();
            DemoFleet.of(which == 0 ? layered : full).publish(out);
            report(which == 0 ? "publish, as models and differences" : "publish, in full", System.nanoTime() - begun);
        }
        same(folder.resolve("out-0/web"), folder.resolve("out-1/web"));
    }

    private static void lines(String what, Path root) throws Exception {
        long sisters = 0;
        long all = 0;
        long files = 0;
        try (Stream<Path> units = Files.walk(root.resolve("units"))) {
            for (Path file : units.filter(it ->
                            it.toString().endsWith("unit.yaml") || it.toString().endsWith("model.yaml"))
                    .toList()) {
                long count = Files.readAllLines(file).size();
                all += count;
                if (file.toString().endsWith("unit.yaml")) {
                    sisters += count;
                    files++;
                }
            }
        }
        System.out.printf(Locale.ROOT, "%-36s %,d lines; %,.0f a coach%n", what, all, sisters / (double) files);
    }

    private static void memory(String what, Path root) throws Exception {
        System.gc();
        long before = used();
        FleetReader.Reading reading = FleetReader.read(Folders.at(root));
        System.gc();
        System.out.printf(
                Locale.ROOT,
                "%-36s %,.1f MB for %d coaches%n",
                what,
                (used() - before) / 1e6,
                reading.fleet().units().size());
    }

    private static long used() {
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    private static void checked(Path root) throws Exception {
        Check check = DemoFleet.of(root).check();
        if (check.findings().hasErrors()) {
            throw new IllegalStateException(check.findings().all().toString());
        }
    }

    private static void report(String what, long... times) {
        Arrays.sort(times);
        System.out.printf(
                Locale.ROOT,
                "%-36s %,.1f s (median of %d; %,.1f to %,.1f)%n",
                what,
                times[times.length / 2] / 1e9,
                times.length,
                times[0] / 1e9,
                times[times.length - 1] / 1e9);
    }

    private static void same(Path one, Path other) throws Exception {
        var first = DemoFleet.files(one.toRealPath());
        var second = DemoFleet.files(other.toRealPath());
        long differing = first.keySet().stream()
                .filter(file -> !Arrays.equals(first.get(file), second.get(file)))
                .count();
        System.out.println(first.size() + " files, " + second.size() + " in full; " + differing + " differ");
    }
}
