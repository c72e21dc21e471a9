package bayfolio.document;

import java.util.List;
import java.util.Optional;

/**
 * What the coaches of a fleet need of staff on one day. It is of the fleet and no part of any handbook, and no renter gets it.
 *
 * @param title names the day
 * @param language that its words are in
 * @param remarks what it cannot tell, and why
 */
public record Today(String title, String language, List<String> remarks, List<Part> parts) {
    public Today {
        remarks = List.copyOf(remarks);
        parts = List.copyOf(parts);
    }

    /**
     * @param id its lasting name on the page
     * @param none what is said where it has no lines
     */
    public record Part(String id, String title, String none, List<Line> lines) {
        public Part {
            lines = List.copyOf(lines);
        }
    }

    /** @param ways to what is read or filled in for it, the first one first */
    public record Line(String words, List<Way> ways) {
        public Line {
            ways = List.copyOf(ways);
        }
    }

    /** @param page of the handbook of a coach; empty where there is no such page */
    public record Way(String unit, Optional<NodeId> page, String words) {}
}
