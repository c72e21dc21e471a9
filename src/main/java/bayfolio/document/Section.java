package bayfolio.document;

import bayfolio.prose.Target;
import java.util.List;
import java.util.Optional;

/**
 * A part of a page under a heading, with an anchor that stays.
 *
 * @param home what links to this target lead to here
 * @param level of its heading: 2, or 3 within the section before it
 */
public record Section(Stamp stamp, Optional<Target> home, String title, int level, List<Content> contents)
        implements Node {
    public Section {
        contents = List.copyOf(contents);
    }

    public static Section of(Stamp stamp, String title, List<Content> contents) {
        return new Section(stamp, Optional.empty(), title, 2, contents);
    }

    public String anchor() {
        return id().within();
    }

    @Override
    public List<Content> parts() {
        return contents;
    }

    /** Nothing where all that stood under its heading is gone. */
    Optional<Section> seenBy(Audience reader) {
        List<Content> seen = Node.seen(contents, reader, Content::seenBy);
        if (Node.isSame(seen, contents)) {
            return Optional.of(this);
        }
        return seen.isEmpty() ? Optional.empty() : Optional.of(new Section(stamp, home, title, level, seen));
    }
}
