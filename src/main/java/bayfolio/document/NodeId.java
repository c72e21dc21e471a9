package bayfolio.document;

import java.util.Comparator;
import java.util.regex.Pattern;

/**
 * The lasting name of a part of a handbook. It is made of ids of things, of anchors that a writer gave and of names of
 * kinds, never of a title nor of a number in an order: what is reworded or moved keeps it.
 *
 * @param page address of the page, without a file ending: {@code compartment/l4}
 * @param within the place on the page, its parts with dots between them: {@code facts.plate}; empty for the page itself
 */
public record NodeId(String page, String within) {
    /** By page, then by place. */
    static final Comparator<NodeId> ORDER = Comparator.comparing(NodeId::page).thenComparing(NodeId::within);

    private static final Pattern PAGE = Pattern.compile("[a-z0-9-]+(?:/[a-z0-9-]+)?");
    private static final Pattern WITHIN = Pattern.compile("(?:[a-z0-9-]+(?:\\.[a-z0-9-]+)*)?");

    public NodeId {
        if (!PAGE.matcher(page).matches() || !WITHIN.matcher(within).matches()) {
            throw new IllegalArgumentException("`" + page + "#" + within + "` is no name of a node");
        }
    }

    public static NodeId of(String page) {
        return new NodeId(page, "");
    }

    /** As {@link #toString} writes it. */
    public static NodeId parse(String written) {
        int within = written.indexOf('#');
        return within < 0 ? of(written) : new NodeId(written.substring(0, within), written.substring(within + 1));
    }

    public NodeId child(String key) {
        return new NodeId(page, within.isEmpty() ? key : within + "." + key);
    }

    /** As it is written: {@code compartment/l4#facts.plate}. */
    @Override
    public String toString() {
        return within.isEmpty() ? page : page + "#" + within;
    }
}
