package bayfolio.handbook;

import bayfolio.prose.Target;
import java.util.List;
import java.util.Optional;

/**
 * A part of a page under a heading, with an anchor that stays.
 *
 * @param home what links to this target lead to here
 * @param level of its heading: 2, or 3 within the section before it
 */
public record Section(String anchor, Optional<Target> home, String title, int level, List<Content> contents) {
    public Section {
        contents = List.copyOf(contents);
    }

    public static Section of(String anchor, String title, List<Content> contents) {
        return new Section(anchor, Optional.empty(), title, 2, contents);
    }
}
