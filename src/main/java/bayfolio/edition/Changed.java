package bayfolio.edition;

import java.util.Collections;
import java.util.SortedSet;

/**
 * A change and what it does to the handbook.
 *
 * @param technical whether it says something else; a mended spelling does not
 * @param parts ids of all parts of either handbook that are otherwise by it
 * @param pages that those stand on
 * @param forStaff whether nothing of it is in what renters read
 */
public record Changed(
        Change change, boolean technical, SortedSet<String> parts, SortedSet<String> pages, boolean forStaff) {
    public Changed {
        parts = Collections.unmodifiableSortedSet(parts);
        pages = Collections.unmodifiableSortedSet(pages);
    }
}
