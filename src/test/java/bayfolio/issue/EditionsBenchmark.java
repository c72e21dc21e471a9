package bayfolio.issue;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.edition.Comparison;
import bayfolio.edition.Edition;
import bayfolio.edition.EditionFile;
import bayfolio.edition.Editions;
import bayfolio.finding.Finding;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * Editions of one coach, each other than the one before by the length of the cord, read from their files and compared
 * with the first.
 *
 * <pre>mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=bayfolio.issue.EditionsBenchmark</pre>
 */
final class EditionsBenchmark {
    private static final String COACH = "whimbrel";

    private EditionsBenchmark() {}

    public static void main(String[] arguments) throws Exception {
        int count = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 200;
        Path root = DemoFleet.copy(Path.of(""), Files.createTempDirectory("editions"));
        Path unit = root.resolve("units/" + COACH + "/unit.yaml");
        String text = Files.readString(unit);
        Now[] states = {States.now(root, COACH), null};
        Files.writeString(unit, text.replace("tail-swing: 3 ft 2 in", "tail-swing: 3 ft 3 in"));
        states[1] = States.now(root, COACH);
        Files.createDirectories(root.resolve("units/" + COACH + "/editions"));
        for (int number = 1; number <= count; number++) {
            Files.writeString(
                    root.resolve(Editions.path(COACH, number)),
                    EditionFile.write(new Edition(
                            number,
                            LocalDate.parse("2026-05-01"),
                            "Edition " + number,
                            states[number % 2].snapshot())));
        }
        Editions editions = Editions.of(Folders.at(root), states[0].coach().unit(), told -> {});
        List<Long> times = new ArrayList<>();
        List<Long> judged = new ArrayList<>();
        Edition first = editions.read(1, told -> {}).orElseThrow();
        for (int number = 2; number <= count; number++) {
            long begun = System.nanoTime();
            Edition other = editions.read(number, told -> {}).orElseThrow();
            int changes = Comparison.of(first.snapshot(), other.snapshot()).size();
            times.add((System.nanoTime() - begun) / 1_000_000);
            if (changes == 0 != (number % 2 == 1)) {
                throw new IllegalStateException(changes + " changes in edition " + number);
            }
        }
        for (int round = 0; round < count; round++) {
            long begun = System.nanoTime();
            List<Finding> faults =
                    Editions.faults(Folders.at(root), states[0].coach().unit());
            judged.add((System.nanoTime() - begun) / 1_000_000);
            if (!faults.isEmpty()) {
                throw new IllegalStateException(faults.toString());
            }
        }
        List<Long> warm = laterHalf(times);
        List<Long> warmJudged = laterHalf(judged);
        System.out.printf(
                Locale.ROOT,
                "%d editions of %s, %d KB each: read and compared in %d ms, the slowest of the later half in %d ms; the last one judged in %d ms, %d ms the first time%n",
                count,
                COACH,
                Files.size(root.resolve(Editions.path(COACH, 1))) / 1000,
                warm.get(warm.size() / 2),
                warm.get(warm.size() - 1),
                warmJudged.get(warmJudged.size() / 2),
                judged.get(0));
    }

    private static List<Long> laterHalf(List<Long> times) {
        List<Long> warm = new ArrayList<>(times.subList(times.size() / 2, times.size()));
        Collections.sort(warm);
        return warm;
    }
}
