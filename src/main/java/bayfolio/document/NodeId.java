package bayfolio.document;

import java.util.Comparator;

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

    public NodeId {
        if (!isPage(page) || !within.isEmpty() && !isPlace(within)) {
            throw new IllegalArgumentException("`" + page + "#" + within + "` is no name of a node");
        }
    }

    /** Whether {@link #parse} reads it. */
    public static boolean isWritten(String written) {
        int within = written.indexOf('#');
        return within < 0
                ? isPage(written)
                : isPage(written.substring(0, within)) && isPlace(written.substring(within + 1));
    }

    private static boolean isPage(String name) {
        return isName(name, '/', 2);
    }

    private static boolean isPlace(String name) {
        return isName(name, '.', Integer.MAX_VALUE);
    }

    /**
     * Whether it is made of small letters, digits and dashes, with marks between parts. A coach has fifty thousand names, and
     * two expressions took a fiftieth of the time of publishing.
     */
    private static boolean isName(String name, char mark, int most) {
        int parts = 1;
        boolean begun = false;
        for (int i = 0; i < name.length(); i++) {
            char letter = name.charAt(i);
            if (letter == mark && begun) {
                parts++;
                begun = false;
            } else if (letter >= 'a' && letter <= 'z' || letter >= '0' && letter <= '9' || letter == '-') {
                begun = true;
            } else {
                return false;
            }
        }
        return begun && parts <= most;
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
