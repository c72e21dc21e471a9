package bayfolio.document;

import java.time.LocalDate;
import java.util.Set;

/**
 * The edition that a handbook is, or the last one that was issued of it.
 *
 * @param edition its number
 * @param day of its issue
 * @param asIssued whether nothing has changed since
 * @param changed names of the parts that say something else than in the edition before: the one that this takes the place of,
 *     or, where something has changed since, this one
 */
public record Revision(int edition, LocalDate day, boolean asIssued, Set<NodeId> changed) {
    public Revision {
        changed = Set.copyOf(changed);
    }

    /** The edition that a reader of an older copy is told the difference to; 0 where there is none before. */
    public int before() {
        return asIssued ? edition - 1 : edition;
    }
}
