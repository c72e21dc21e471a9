package bayfolio.issue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import bayfolio.check.Refit;
import bayfolio.edition.Changed;
import bayfolio.edition.Comparison;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
    private static final boolean WRITE = System.getProperty("golden", "").equals("write");

    @TempDir
    private Path folder;

    private final Map<String, Now> before = new HashMap<>();

    @Test
    void eachIsToldByItsMeaning() throws Exception {
        Path root = States.copy(folder);
        boolean wrote = false;
        for (Refit refit : refits()) {
            String told = told(root, refit);
            Path golden = GOLDEN.resolve(refit.name() + ".txt");
            if (WRITE && !(Files.exists(golden) && Files.readString(golden).equals(told))) {
                Files.createDirectories(GOLDEN);
                Files.writeString(golden, told);
                wrote = true;
            } else {
                assertThat(told).as(refit.name()).isEqualTo(Files.readString(golden));
            }
        }
        if (wrote) {
            fail("wrote " + GOLDEN);
        }
    }

    private String told(Path root, Refit refit) throws IOException {
        Path description = root.resolve("units/" + refit.coach() + "/unit.yaml");
        String text = Files.readString(description);
        Now was = before.computeIfAbsent(refit.coach(), coach -> States.now(root, coach));
        Files.writeString(description, refit.done(text));
        Now is = States.now(root, refit.coach());
        Files.writeString(description, text);
        List<Changed> changes = Comparison.of(was.snapshot(), is.snapshot());

        assertThat(changes).as(refit.name()).isNotEmpty();
        return ChangeReport.of(
                refit.coach(),
                is.handbook().isPresent() ? "before and after" : "before and after, by the facts alone",
                changes);
    }

    private static List<Refit> refits() throws IOException {
        try (Stream<Path> files = Files.list(PAGES)) {
            return files.filter(Files::isRegularFile)
                    .sorted()
                    .map(file -> {
                        try {
                            return Refit.read(file);
                        } catch (IOException e) {
                            throw new java.io.UncheckedIOException(e);
                        }
                    })
                    .toList();
        }
    }
}
