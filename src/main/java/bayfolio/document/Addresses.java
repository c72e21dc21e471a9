package bayfolio.document;

import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * What of a handbook links, labels and mails may name: its pages, sections, steps and chapters of films, the places where once
 * stood what has a page of its own by now, and the short addresses of labels and of pages that staff send. Rows of tables are not among them.
 *
 * @param nodes names of pages and of places on them: {@code do/fill-fresh-water#done-when}
 * @param labels what short addresses end with, in capitals: {@code L4}, {@code DUMP}
 */
public record Addresses(SortedSet<String> nodes, SortedSet<String> labels) {
    /** @param handbook as a reader sees it */
    public static Addresses of(Handbook handbook) {
        SortedSet<String> nodes = new TreeSet<>();
        SortedSet<String> labels = new TreeSet<>();
        for (Page page : handbook.pages()) {
            nodes.add(page.id().toString());
            page.walk().forEach(node -> {
                anchors(node).forEach(anchor -> nodes.add(page.address() + "#" + anchor));
                if (node instanceof Content.Label label) {
                    labels.add(code(label));
                }
            });
        }
        if (!handbook.reader().equals(Optional.of(Audience.STAFF))) {
            handbook.sendable().forEach(it -> labels.add(it.code()));
        }
        return new Addresses(nodes, labels);
    }

    /** The last part of the short address of a label. */
    static String code(Content.Label label) {
        return label.address().substring(label.address().lastIndexOf('/') + 1);
    }

    private static Stream<String> anchors(Node node) {
        if (node instanceof Section || node instanceof Content.Steps.Step || node instanceof Content.Film.Chapter) {
            return Stream.of(node.id().within());
        }
        if (node instanceof Content.LinkList.Entry entry) {
            return entry.formerly().stream();
        }
        return node instanceof Content.Tiles.Tile tile ? tile.formerly().stream() : Stream.of();
    }
}
