package bayfolio.edition;

import java.util.Collections;
import java.util.SortedSet;

/**
 * A change and what it does to the handbook.
 *
 * @param technical whether it says something else; a mended spelling does not
 * @param parts ids of all parts of either handbook that are otherwise by it
 * @param said those of them that say something themselves, and do not only lead somewhere
 * @param pages that the parts stand on
 * @param forStaff whether nothing of it is in what renters read
 */
public record Changed(
        Change change,
        boolean technical,
        SortedSet<String> parts,
        SortedSet<String> said,
        SortedSet<String> pages,
        boolean forStaff) {
    public Changed {
        parts = Collections.unmodifiableSortedSet(parts);
        said = Collections.unmodifiableSortedSet(said);
        pages = Collections.unmodifiableSortedSet(pages);
    }
}
