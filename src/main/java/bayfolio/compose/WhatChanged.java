package bayfolio.compose;

import bayfolio.check.CheckedCoach;
import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.From;
import bayfolio.document.Handbook;
import bayfolio.document.Node;
import bayfolio.document.NodeId;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Revision;
import bayfolio.document.Stamp;
import bayfolio.edition.Change;
import bayfolio.edition.Changed;
import bayfolio.edition.Comparison;
import bayfolio.edition.Edition;
import bayfolio.edition.Issued;
import bayfolio.edition.Snapshot;
import bayfolio.prose.Inline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a reader of the edition before is told: which pages say something else, what counts most first. Of what renters see
 * two states of their own copy are compared, so that nothing else can be in it.
 */
public final class WhatChanged {
    /** So many lines are read by somebody who has been on the coach before. */
    private static final int LINES = 3;

    private final CoachView view;
    private final Handbook handbook;

    private WhatChanged(CoachView view, Handbook handbook) {
        this.view = view;
        this.handbook = handbook;
    }

    /** A handbook with the edition that it is; the same where none was issued, or one that is needed could not be read. */
    public static Handbook in(Handbook handbook, CheckedCoach coach, Issued issued) {
        Optional<Issued.One> last = issued.last();
        if (last.isEmpty()) {
            return handbook;
        }
        Edition edition = last.get().edition();
        Snapshot whole = Snapshot.told(coach, handbook);
        Snapshot now = whole.forRenters();
        Issued.One base = last.get();
        List<Changed> changes = Comparison.of(base.forRenters(), now);
        boolean asIssued = changes.isEmpty();
        if (asIssued && edition.number() > 1) {
            Optional<Issued.One> before = issued.before();
            if (before.isEmpty()) {
                return handbook;
            }
            base = before.get();
            changes = Comparison.of(base.forRenters(), now);
        }
        Set<NodeId> changed = new HashSet<>(technical(changes));
        Set<NodeId> forStaff = handbook.walk()
                .filter(node -> !isForRenters(node))
                .map(Node::id)
                .collect(Collectors.toSet());
        if (!forStaff.isEmpty()) {
            technical(Comparison.of(base.edition().snapshot(), whole)).stream()
                    .filter(forStaff::contains)
                    .forEach(changed::add);
        }
        Revision revision = new Revision(edition.number(), edition.date(), asIssued, changed);
        return handbook.revised(
                revision, new WhatChanged(new CoachView(coach), handbook).page(edition, revision, changes));
    }

    private static boolean isForRenters(Node node) {
        return node.stamp().audience().includes(Audience.RENTERS);
    }

    private static List<NodeId> technical(List<Changed> changes) {
        return changes.stream()
                .filter(Changed::technical)
                .flatMap(it -> it.said().stream())
                .map(NodeId::parse)
                .toList();
    }

    private Page page(Edition edition, Revision revision, List<Changed> changes) {
        Stamp page = view.stamp(PageKind.WHAT_CHANGED.node(), Audience.EVERYBODY, From.PROGRAM);
        List<Content> opening = new ArrayList<>();
        opening.add(Content.Text.of(
                page.child("edition"),
                new Inline.Text(view.words()
                        .say(
                                "edition",
                                "edition",
                                edition.number(),
                                "day",
                                view.words().day(edition.date())))));
        opening.add(Content.Text.of(page.child("note"), new Inline.Text(edition.note())));
        List<Content.LinkList.Entry> entries = entries(page.child("list"), changes);
        if (revision.before() > 0) {
            Optional<String> heading =
                    Optional.of(view.words().say("what-changed.since", "edition", revision.before()));
            if (entries.isEmpty()) {
                opening.add(Content.Text.of(
                        page.child("nothing"),
                        new Inline.Text(view.words().say("what-changed.nothing", "edition", revision.before()))));
            } else {
                opening.add(new Content.LinkList(
                        page.child("list"), heading, entries.subList(0, Math.min(LINES, entries.size()))));
            }
        }
        if (entries.size() > LINES) {
            Stamp rest = page.child("rest");
            opening.add(new Content.Fold(
                    rest,
                    view.word("what-changed.rest"),
                    List.of(new Content.LinkList(
                            rest.child("list"), Optional.empty(), entries.subList(LINES, entries.size())))));
        }
        return new Page(
                page,
                PageKind.WHAT_CHANGED,
                PageKind.WHAT_CHANGED.target(),
                view.word("page.what-changed"),
                opening,
                List.of(),
                false);
    }

    /** One for each page that says something else, what counts most first. */
    private List<Content.LinkList.Entry> entries(Stamp list, List<Changed> changes) {
        Map<NodeId, Page> pages = new LinkedHashMap<>();
        Map<String, NodeId> on = new LinkedHashMap<>();
        handbook.pages().stream().filter(WhatChanged::isForRenters).forEach(page -> {
            pages.put(page.id(), page);
            page.walk().map(Node::id).forEach(id -> on.put(id.toString(), page.id()));
        });
        Map<NodeId, String> notes = new LinkedHashMap<>();
        changes.stream()
                .filter(Changed::technical)
                .sorted(Comparator.comparing(it -> sort(it.change())))
                .forEach(changed ->
                        page(changed, pages, on).ifPresent(page -> notes.putIfAbsent(page, note(changed.change()))));
        List<Content.LinkList.Entry> entries = new ArrayList<>();
        notes.forEach((id, note) -> {
            Page page = pages.get(id);
            if (page != null) {
                entries.add(new Content.LinkList.Entry(
                        list.child("page-" + id.page().replace('/', '-')), view.link(page.home(), page.title()), note));
            }
        });
        return entries;
    }

    /** Of what it is about its own page, else the first in the order of the book that says something else. */
    private static Optional<NodeId> page(Changed changed, Map<NodeId, Page> pages, Map<String, NodeId> on) {
        Optional<NodeId> own = thing(changed.change())
                .filter(thing -> !thing.id().isEmpty())
                .map(thing -> NodeId.of(thing.kind() + "/" + thing.id()))
                .filter(pages::containsKey);
        if (own.isPresent()) {
            return own;
        }
        Set<NodeId> said = new HashSet<>();
        changed.said().forEach(part -> Optional.ofNullable(on.get(part)).ifPresent(said::add));
        return pages.keySet().stream().filter(said::contains).findFirst();
    }

    private static Optional<Change.Thing> thing(Change change) {
        return change instanceof Change.Added it
                ? Optional.of(it.thing())
                : change instanceof Change.Moved it
                        ? Optional.of(it.thing())
                        : change instanceof Change.Relabelled it
                                ? Optional.of(it.thing())
                                : change instanceof Change.AtPickup it ? Optional.of(it.thing()) : Optional.empty();
    }

    private String note(Change change) {
        String key = "what-changed." + sort(change).key;
        return change instanceof Change.Removed it
                ? view.words().say(key, "name", it.thing().name())
                : view.word(key);
    }

    /** In the order of what harms most if one does not know it. */
    private enum Sort {
        HAZARD("hazard"),
        HAZARD_GONE("hazard-gone"),
        AT_PICKUP("at-pickup"),
        MOVED("moved"),
        REMOVED("removed"),
        STEPS("steps"),
        ADDED("added"),
        NUMBER("number"),
        RELABELLED("relabelled"),
        FACT("fact"),
        TEXT("text");

        private final String key;

        Sort(String key) {
            this.key = key;
        }
    }

    private static Sort sort(Change change) {
        return change.accept(new Change.Visitor<Sort>() {
            @Override
            public Sort added(Change.Added it) {
                return Sort.ADDED;
            }

            @Override
            public Sort removed(Change.Removed it) {
                return Sort.REMOVED;
            }

            @Override
            public Sort renamed(Change.Renamed it) {
                return Sort.TEXT;
            }

            @Override
            public Sort moved(Change.Moved it) {
                return Sort.MOVED;
            }

            @Override
            public Sort relabelled(Change.Relabelled it) {
                return Sort.RELABELLED;
            }

            @Override
            public Sort atPickup(Change.AtPickup it) {
                return Sort.AT_PICKUP;
            }

            @Override
            public Sort fact(Change.ValueChanged it) {
                return Sort.FACT;
            }

            @Override
            public Sort page(Change.PageAdded it) {
                return Sort.ADDED;
            }

            @Override
            public Sort page(Change.PageRemoved it) {
                return Sort.TEXT;
            }

            @Override
            public Sort step(Change.StepAdded it) {
                return Sort.STEPS;
            }

            @Override
            public Sort step(Change.StepRemoved it) {
                return Sort.STEPS;
            }

            @Override
            public Sort steps(Change.StepsReordered it) {
                return Sort.STEPS;
            }

            @Override
            public Sort parts(Change.PartsReordered it) {
                return Sort.TEXT;
            }

            @Override
            public Sort hazard(Change.HazardAdded it) {
                return Sort.HAZARD;
            }

            @Override
            public Sort hazard(Change.HazardRemoved it) {
                return Sort.HAZARD_GONE;
            }

            @Override
            public Sort number(Change.NumberChanged it) {
                return Sort.NUMBER;
            }

            @Override
            public Sort text(Change.TextChanged it) {
                return Sort.TEXT;
            }
        });
    }
}
