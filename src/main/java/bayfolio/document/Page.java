package bayfolio.document;

import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A page of a handbook.
 *
 * @param home what links to it are addressed to
 * @param opening what stands before the first section
 * @param urgent whether it is read in danger: one screen, with nothing on it but what is to be done
 */
public record Page(
        Stamp stamp,
        PageKind kind,
        Target home,
        String title,
        List<Content> opening,
        List<Section> sections,
        boolean urgent)
        implements Node {
    public Page {
        opening = List.copyOf(opening);
        sections = List.copyOf(sections);
    }

    /** Where it is in the handbook, made of ids, without a file ending: {@code compartment/l4}. */
    public String address() {
        return id().page();
    }

    @Override
    public List<Node> parts() {
        List<Node> parts = new ArrayList<>(opening);
        parts.addAll(sections);
        return parts;
    }

    /** The same with something that stands before all else. */
    public Page opened(Content first) {
        return new Page(
                stamp,
                kind,
                home,
                title,
                Stream.concat(Stream.of(first), opening.stream()).toList(),
                sections,
                urgent);
    }

    Page seenBy(Audience reader) {
        List<Content> seenFirst = Node.seen(opening, reader, Content::seenBy);
        List<Section> seen = Node.seen(sections, reader, Section::seenBy);
        return Node.isSame(seenFirst, opening) && Node.isSame(seen, sections)
                ? this
                : new Page(stamp, kind, home, title, seenFirst, seen, urgent);
    }
}
