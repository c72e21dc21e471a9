package bayfolio.issue;

import bayfolio.check.Check;
import bayfolio.edition.Changed;
import bayfolio.edition.Comparison;
import bayfolio.edition.Edition;
import bayfolio.edition.EditionFile;
import bayfolio.edition.Editions;
import bayfolio.finding.Finding;
import bayfolio.model.Unit;
import bayfolio.read.Folder;
import bayfolio.read.NewFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Editions of several coaches that are issued together: all of them or none.
 *
 * @param editions those that have changed since their last one
 * @param changes what has, by the id of the coach; nothing for a first edition
 * @param unchanged ids of the others
 */
public record Issue(List<Edition> editions, Map<String, List<Changed>> changes, List<String> unchanged) {
    public Issue {
        editions = List.copyOf(editions);
        unchanged = List.copyOf(unchanged);
    }

    /**
     * @param units in which the check found no error
     * @param findings of editions that are not as they were issued; nothing may be issued then
     */
    public static Issue of(
            Check check, Folder folder, List<Unit> units, LocalDate date, String note, Consumer<Finding> findings)
            throws IssueException {
        List<Edition> editions = new ArrayList<>();
        Map<String, List<Changed>> changes = new LinkedHashMap<>();
        List<String> unchanged = new ArrayList<>();
        for (Unit unit : units) {
            Editions issued = Editions.of(folder, unit, findings);
            Now now = Now.of(check, unit);
            Optional<Edition> last = issued.read(issued.last(), findings);
            List<Changed> since =
                    last.map(it -> Comparison.of(it.snapshot(), now.snapshot())).orElse(List.of());
            if (last.isPresent() && last.get().date().isAfter(date)) {
                throw new IssueException("Edition " + last.get().number() + " of `" + unit.id() + "` is of "
                        + last.get().date() + ", and " + date
                        + " is before that; give the day of this one with --date, or set the clock.");
            }
            if (last.isPresent() && since.isEmpty()) {
                unchanged.add(unit.id());
            } else {
                changes.put(unit.id(), since);
                editions.add(new Edition(issued.last() + 1, date, note, now.snapshot()));
            }
        }
        return new Issue(editions, changes, unchanged);
    }

    /** Writes a file each; where one cannot be written, those written before are taken back. */
    public void write(Path root) throws IOException, IssueException {
        List<Path> written = new ArrayList<>();
        try {
            for (Edition edition : editions) {
                Path file = root.resolve(Editions.path(edition.snapshot().unit(), edition.number()));
                Files.createDirectories(file.getParent());
                new NewFile(file, EditionFile.write(edition).getBytes(StandardCharsets.UTF_8)).make();
                written.add(file);
            }
        } catch (FileAlreadyExistsException e) {
            takeBack(written);
            throw new IssueException(
                    "`" + e.getFile() + "` is there already: somebody else has just issued it; nothing was written.");
        } catch (IOException e) {
            takeBack(written);
            throw e;
        }
    }

    private static void takeBack(List<Path> written) throws IOException {
        for (Path file : written) {
            Files.deleteIfExists(file);
        }
    }
}
