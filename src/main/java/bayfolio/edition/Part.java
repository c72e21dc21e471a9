package bayfolio.edition;

import java.util.List;

/**
 * A part of a handbook as an edition keeps it: its own words, those of its parts not among them.
 *
 * @param id its lasting name: {@code compartment/l4#facts.plate}
 * @param page the page that it stands on, whose name its own need not begin with: entries of an index keep theirs
 * @param around the id of the part that it is in; empty for a page
 * @param kind of the content that it is, as its normal form has it: {@code label}, {@code link-list}; empty for what has none
 * @param lines all that is read, each paragraph, point and row on a line of its own; of a page its title
 * @param links what its words lead to, as in {@code switch:pump-switch}, and how it is marked, as in {@code urgent}
 * @param from what it came from: {@code fact:switch/pump-switch/plate}
 * @param forStaff whether renters never see it
 */
public record Part(
        String id,
        String page,
        String around,
        Sort sort,
        String kind,
        String lines,
        List<String> links,
        List<String> from,
        boolean forStaff) {
    /** What readers would call it. */
    public enum Sort {
        PAGE,
        SECTION,
        STEP,
        HAZARD,
        /** A list or a field that only leads somewhere. */
        POINTER,
        TEXT
    }

    public Part {
        links = List.copyOf(links);
        from = List.copyOf(from);
    }

    /** All that is read, with a space between. */
    public String text() {
        return lines.replace('\n', ' ');
    }

    boolean reads(Part other) {
        return lines.equals(other.lines) && links.equals(other.links);
    }
}
