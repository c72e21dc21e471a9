package bayfolio.issue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import bayfolio.DemoFleet;
import bayfolio.check.Refit;
import bayfolio.edition.Comparison;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The refits of the trade, as a hurried writer enters them: what has changed by each, and on which pages. Where the check
 * finds an error afterward there are no pages, and the facts alone are compared. With {@code -Dgolden=write} the files are
 * written anew, and the test fails once.
 */
final class ChangesOfRefitsTest {
    private static final Path PAGES = Path.of("src/test/resources/bayfolio/refits");
    private static final Path GOLDEN = PAGES.resolve("changes");
    private static final Path DRAWN = Path.of("src/test/resources/bayfolio/mistakes/drawn");

    /** Of those that are drawn, one each of what can be touched. */
    private static final Set<String> LOOKED = Set.of(
            "06-moved-battery-switch",
            "12-smaller-generator",
            "17-filler-on-the-other-side",
            "30-bay-for-other-things",
            "35-other-lamp-and-plate");

    /** Of several ways to draw the same the first. */
    private static final Pattern WAYS = Pattern.compile("\\{([^{}|]*)\\|[^{}]*}");

    /** The day of the edition before; the pictures of the demo fleet were taken before it. */
    private static final LocalDate ISSUED = LocalDate.of(2026, 11, 1);

    private static final boolean WRITE = System.getProperty("golden", "").equals("write");

    @TempDir
    private Path folder;

    private final Map<String, Now> before = new HashMap<>();

    @Test
    void eachIsToldByItsMeaning() throws Exception {
        golden(refits(PAGES, name -> true), GOLDEN);
    }

    /** The same drawn whole, with nothing wrong afterward: what they touch is told with the pages. */
    @Test
    void whatADrawnOneTouchesIsTold() throws Exception {
        golden(refits(DRAWN, LOOKED::contains), GOLDEN.resolve("drawn"));
    }

    private void golden(List<Refit> refits, Path at) throws IOException {
        Path root = DemoFleet.copy(Path.of(""), folder);
        boolean wrote = false;
        for (Refit refit : refits) {
            String told = told(root, refit);
            Path golden = at.resolve(refit.name() + ".txt");
            if (WRITE && !(Files.exists(golden) && Files.readString(golden).equals(told))) {
                Files.createDirectories(at);
                Files.writeString(golden, told);
                wrote = true;
            } else {
                assertThat(told).as(refit.name()).isEqualTo(Files.readString(golden));
            }
        }
        if (wrote) {
            fail("wrote " + at);
        }
    }

    private String told(Path root, Refit refit) throws IOException {
        Path description = root.resolve("units/" + refit.coach() + "/unit.yaml");
        String text = Files.readString(description);
        Now was = before.computeIfAbsent(refit.coach(), coach -> States.now(root, coach));
        Files.writeString(description, WAYS.matcher(refit.done(text)).replaceAll("$1"));
        Now is = States.now(root, refit.coach());
        Files.writeString(description, text);
        List<Consequences> changes = Consequences.of(
                Comparison.between(was.snapshot(), is.snapshot()), ISSUED, Optional.empty(), Optional.of(is.coach()));

        assertThat(changes).as(refit.name()).isNotEmpty();
        return ChangeReport.of(
                refit.coach(),
                is.handbook().isPresent() ? "before and after" : "before and after, by the facts alone",
                changes);
    }

    private static List<Refit> refits(Path pages, Predicate<String> wanted) throws IOException {
        try (Stream<Path> files = Files.list(pages)) {
            return files.filter(Files::isRegularFile)
                    .sorted()
                    .map(file -> {
                        try {
                            return Refit.read(file);
                        } catch (IOException e) {
                            throw new java.io.UncheckedIOException(e);
                        }
                    })
                    .filter(refit -> wanted.test(refit.name()))
                    .toList();
        }
    }
}
