package bayfolio.compose;

import bayfolio.document.Content;
import bayfolio.document.From;
import bayfolio.document.NodeId;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Stamp;
import bayfolio.fact.Key;
import bayfolio.model.TakenOut;
import bayfolio.model.Thing;
import bayfolio.procedure.Head;
import bayfolio.procedure.Procedure;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What became of things and procedures that were renamed, or that the coach has no more: their old addresses lead on. */
final class TakenOutPages {
    private final CoachView view;

    TakenOutPages(CoachView view) {
        this.view = view;
    }

    /** Those that say what became of something, at its old address. */
    Stream<Page> pages() {
        return all().filter(it -> it.text().isPresent()).flatMap(it -> kind(it).map(kind -> page(it, kind)).stream());
    }

    /** A coach may have a text of its own in the place of one that all others had. */
    private Stream<TakenOut> all() {
        return view.coach().fleet().takenOut(view.unit()).stream()
                .filter(it -> link(it.facts().get(TakenOut.WAS)).isEmpty());
    }

    private static Optional<PageKind> kind(TakenOut it) {
        return PageKind.pagesOf(it.kind());
    }

    private Page page(TakenOut it, PageKind was) {
        Stamp page = view.stamp(was.node(it.id()), CoachView.audience(it), From.fact(it, TakenOut.NAME))
                .in(language(it, TakenOut.NAME));
        List<Content> opening = new ArrayList<>();
        opening.add(new Content.Mark(
                page.child("taken-out").in(view.words().language()), "taken-out", view.word("taken-out")));
        opening.add(Content.Text.of(
                page.child("text").from(From.fact(it, TakenOut.TEXT)).in(language(it, TakenOut.TEXT)),
                new Inline.Text(it.text().orElseThrow())));
        it.instead().flatMap(this::link).ifPresent(link -> {
            Stamp list = page.child("instead").in(view.words().language());
            opening.add(new Content.LinkList(
                    list,
                    Optional.of(view.word("taken-out.instead")),
                    List.of(new Content.LinkList.Entry(list.child("entry"), link, ""))));
        });
        return new Page(
                page,
                PageKind.TAKEN_OUT,
                target(it.kind(), it.id()),
                it.facts().get(TakenOut.NAME),
                opening,
                List.of(),
                false);
    }

    private String language(TakenOut it, Key<String> key) {
        return it.facts()
                .located(key)
                .map(text -> view.language((Located<?>) text))
                .orElseThrow();
    }

    private static Target target(String kind, String id) {
        return kind.equals("procedure") || kind.equals("trouble")
                ? new Target.OfProcedure(id)
                : new Target.OfThing(kind, id);
    }

    private Optional<Inline.Link> link(String reference) {
        String kind = TakenOut.kind(reference);
        String id = TakenOut.id(reference);
        return view.coach()
                .thing(kind, id)
                .map(CoachView::link)
                .or(() -> view.procedures().stream()
                        .filter(it -> it.form().scheme().equals(kind) && it.id().equals(id))
                        .findFirst()
                        .map(CoachView::link));
    }

    /**
     * Names that pages and sections had before.
     *
     * @param pages all of the handbook
     */
    Map<NodeId, NodeId> formerly(List<Page> pages) {
        Map<Target, NodeId> homes = new HashMap<>();
        for (Page page : pages) {
            homes.put(page.home(), page.id());
            page.sections().forEach(section -> section.home().ifPresent(home -> homes.put(home, section.id())));
        }
        Map<NodeId, NodeId> old = new HashMap<>();
        view.coach().things().forEach(thing -> formerly(thing, homes, old));
        view.procedures().forEach(procedure -> formerly(procedure, pages, old));
        all().filter(it -> it.text().isEmpty())
                .forEach(it -> kind(it).ifPresent(kind -> it.instead()
                        .flatMap(this::link)
                        .flatMap(link -> Optional.ofNullable(homes.get(link.target())))
                        .ifPresent(home -> old.put(kind.node(it.id()), home))));
        return old;
    }

    private static void formerly(Thing thing, Map<Target, NodeId> homes, Map<NodeId, NodeId> old) {
        NodeId home = homes.get(CoachView.target(thing));
        if (home == null) {
            return;
        }
        for (String id : thing.formerly()) {
            // On a page of others it stands under its kind and its id.
            old.put(
                    home.within().isEmpty()
                            ? NodeId.of(home.page().replaceFirst("[^/]+$", id))
                            : new NodeId(home.page(), thing.kind() + "-" + id),
                    home);
        }
    }

    /** With its later pages, which are named after it. */
    private static void formerly(Procedure procedure, List<Page> pages, Map<NodeId, NodeId> old) {
        for (String id : procedure.head().facts().all(Head.FORMERLY)) {
            for (Page page : pages) {
                boolean its = page.home().equals(new Target.OfProcedure(procedure.id()))
                        || page.home() instanceof Target.OfPart part
                                && part.procedure().equals(procedure.id());
                if (its) {
                    old.put(
                            NodeId.of(page.address().replaceFirst("/" + procedure.id() + "(?=--|$)", "/" + id)),
                            page.id());
                }
            }
        }
    }
}
