package bayfolio.document;

import java.util.Collections;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What was given out of a handbook and is not in it any more, with what it leads to now. A place whose page stands leads to the
 * head of what is nearest around it; a page that the program makes of others, to the one that lists what is left of them; a
 * page of a thing or a text, to what the writer says.
 *
 * @param pages old pages by their addresses, with the page or place that each leads on to
 * @param anchors of old places on pages that stand, by the page or section at whose head they are
 * @param labels what old short addresses end with, with the page or place that each leads on to
 * @param lost pages that lead nowhere
 */
public record OldAddresses(
        SortedMap<String, NodeId> pages,
        Map<NodeId, SortedSet<String>> anchors,
        SortedMap<String, NodeId> labels,
        SortedSet<String> lost) {
    /** Nothing was given out that is not there. */
    public static final OldAddresses NONE =
            new OldAddresses(new TreeMap<>(), Map.of(), new TreeMap<>(), new TreeSet<>());

    public OldAddresses {
        pages = Collections.unmodifiableSortedMap(pages);
        anchors = Map.copyOf(anchors);
        labels = Collections.unmodifiableSortedMap(labels);
        lost = Collections.unmodifiableSortedSet(lost);
    }

    /**
     * @param handbook as a reader sees it
     * @param given all that this reader was ever given of it
     * @param others what staff see, if it is not theirs: a page that they alone have by now leads renters to the first one
     */
    public static OldAddresses of(Handbook handbook, Addresses given, Optional<Handbook> others) {
        Addresses now = Addresses.of(handbook);
        SortedMap<String, NodeId> pages = new TreeMap<>();
        // Who was told a former id, by whomever, finds the way.
        handbook.formerly().forEach((old, home) -> {
            if (old.within().isEmpty()) {
                pages.put(old.page(), home);
            }
        });
        Map<NodeId, SortedSet<String>> anchors = new HashMap<>();
        SortedSet<String> lost = new TreeSet<>();
        for (String node : given.nodes()) {
            int hash = node.indexOf('#');
            String page = hash < 0 ? node : node.substring(0, hash);
            if (!now.nodes().contains(page)) {
                if (!pages.containsKey(page)) {
                    around(handbook, page)
                            .or(() -> others.flatMap(it -> it.find(NodeId.of(page)))
                                    .map(it -> PageKind.HOME.node()))
                            .ifPresentOrElse(home -> pages.put(page, home), () -> lost.add(page));
                }
            } else if (!now.nodes().contains(node)) {
                anchors.computeIfAbsent(head(handbook, page, node.substring(hash + 1)), it -> new TreeSet<>())
                        .add(node.substring(hash + 1));
            }
        }
        SortedMap<String, NodeId> labels = new TreeMap<>();
        given.labels().stream()
                .filter(code -> !now.labels().contains(code))
                .forEach(code -> labels.put(code, labeled(handbook, pages, code)));
        return new OldAddresses(pages, anchors, labels, lost);
    }

    /** Old places at the head of a page or section. */
    public SortedSet<String> at(NodeId head) {
        return anchors.getOrDefault(head, Collections.emptySortedSet());
    }

    /** What stands around a page that is gone: its first page, or the list of all of its kind. */
    private static Optional<NodeId> around(Handbook handbook, String page) {
        int on = page.indexOf(PageKind.GOES_ON);
        if (on > 0) {
            NodeId first = NodeId.of(page.substring(0, on));
            return handbook.find(first)
                    .map(Node::id)
                    .or(() -> Optional.ofNullable(handbook.formerly().get(first)));
        }
        Optional<PageKind> kind = PageKind.of(page);
        // What has moved into a bay stands on the page of that, and back.
        return kind.flatMap(it -> it.thing(page.substring(page.indexOf('/') + 1)))
                .flatMap(handbook.addresses()::of)
                .or(() -> kind.flatMap(PageKind::instead)
                        .map(PageKind::node)
                        .map(list -> handbook.find(list).map(Node::id).orElseGet(PageKind.HOME::node)));
    }

    /** The section in which a place that is gone was, or its page. */
    private static NodeId head(Handbook handbook, String page, String within) {
        Optional<NodeId> renamed = Optional.ofNullable(handbook.formerly().get(new NodeId(page, within)))
                .filter(home -> home.page().equals(page) && isSection(handbook, home));
        if (renamed.isPresent()) {
            return renamed.get();
        }
        for (int end = within.lastIndexOf('.'); end > 0; end = within.lastIndexOf('.', end - 1)) {
            NodeId above = new NodeId(page, within.substring(0, end));
            if (isSection(handbook, above)) {
                return above;
            }
        }
        // Steps are named after their page, whatever section they stand in.
        NodeId steps = new NodeId(page, "steps");
        return within.startsWith("step-") && isSection(handbook, steps) ? steps : NodeId.of(page);
    }

    private static boolean isSection(Handbook handbook, NodeId id) {
        return handbook.find(id).filter(Section.class::isInstance).isPresent();
    }

    /** A label that is still on a door: what has the id that it was named by, or else the walk round the coach. */
    private static NodeId labeled(Handbook handbook, SortedMap<String, NodeId> pages, String code) {
        String id = code.toLowerCase(Locale.ROOT);
        for (PageKind kind : new PageKind[] {PageKind.SWITCH, PageKind.COMPARTMENT}) {
            NodeId page = kind.node(id);
            Optional<NodeId> home =
                    handbook.find(page).map(Node::id).or(() -> Optional.ofNullable(pages.get(page.page())));
            if (home.isPresent()) {
                return home.get();
            }
        }
        return handbook.find(PageKind.WALK_ROUND.node()).map(Node::id).orElseGet(PageKind.HOME::node);
    }
}
