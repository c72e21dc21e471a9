package bayfolio.compose;

import bayfolio.handbook.Content;
import bayfolio.handbook.Copy;
import bayfolio.handbook.Page;
import bayfolio.handbook.Section;
import bayfolio.model.Size;
import bayfolio.model.Unit;
import bayfolio.model.Weights;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.References;
import bayfolio.procedure.Stage;
import bayfolio.prose.Target;
import bayfolio.reckon.UnderAndThrough;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where a renter begins: whom to call, what to do in an emergency, the trip stage by stage, the
 * coach thing by thing.
 */
final class HomePage {
    private final Draft draft;

    HomePage(Draft draft) {
        this.draft = draft;
    }

    Page page() {
        List<Section> sections = new ArrayList<>();
        emergency().ifPresent(sections::add);
        sections.add(Section.of("trouble", draft.word("page.trouble"), List.of(trouble())));
        sections.add(Section.of("trip", draft.word("home.trip"), List.of(stages())));
        sections.add(Section.of("coach", draft.word("home.coach"), List.of(pages())));
        if (draft.copy() == Copy.STAFF) {
            sections.add(Section.of("staff", draft.word("home.staff"), List.of(staff())));
        }
        sections.add(Section.of("call", draft.word("home.call"), List.of(new Phones(draft).content())));
        return new Page(new Target.OfPage("home"), "index.html", draft.unit().name(), List.of(measures()), sections);
    }

    /** What a driver must know before the first bridge: three measures, the lowest sign to drive under, the weight. */
    private Content measures() {
        Unit unit = draft.unit();
        FactRows rows = new FactRows(draft);
        List<Content.FactTable.Row> all = new ArrayList<>();
        unit.facts()
                .find(Unit.NUMBER)
                .ifPresent(number -> all.add(Content.FactTable.Row.of(rows.label(Unit.SHAPE, Unit.NUMBER), number)));
        rows.of(unit.size().facts(), java.util.Set.of()).stream()
                .filter(row -> Stream.of(Size.LENGTH, Size.HEIGHT, Size.WIDTH_MIRRORS)
                        .anyMatch(key -> rows.label(Size.SHAPE, key).equals(row.label())))
                .forEach(all::add);
        UnderAndThrough.lowestSign(draft.coach())
                .ifPresent(sign -> all.add(Content.FactTable.Row.of(draft.word("home.lowest-sign"), sign)));
        unit.facts()
                .find(Unit.WEIGHTS)
                .ifPresent(weights -> rows.of(weights.facts(), java.util.Set.of()).stream()
                        .filter(row -> row.label().equals(rows.label(Weights.SHAPE, Weights.GROSS)))
                        .forEach(all::add));
        return new Content.FactTable(all);
    }

    private Optional<Section> emergency() {
        List<Content.LinkList.Entry> entries = StagePage.inOrder(draft, Stage.EMERGENCY)
                .map((Procedure procedure) -> new Content.LinkList.Entry(Draft.link(procedure), ""))
                .toList();
        return entries.isEmpty()
                ? Optional.empty()
                : Optional.of(Section.of(
                        "emergency",
                        draft.word("stage.emergency"),
                        List.of(new Content.LinkList(Optional.empty(), entries))));
    }

    private Content trouble() {
        return new Content.LinkList(
                Optional.empty(),
                List.of(new Content.LinkList.Entry(
                        draft.link(new Target.OfPage("trouble"), draft.word("home.trouble")),
                        draft.word("page.trouble.note"))));
    }

    private Content stages() {
        return new Content.LinkList(
                Optional.empty(),
                StagePage.used(draft).stream()
                        .filter(stage -> stage != Stage.EMERGENCY)
                        .map(stage -> new Content.LinkList.Entry(
                                draft.link(new Target.OfStage(stage.word()), draft.word("stage." + stage.word())), ""))
                        .toList());
    }

    /** The sheets, and what staff alone do. */
    private Content staff() {
        return new Content.LinkList(
                Optional.empty(),
                Stream.concat(
                                References.STAFF_PAGES.stream()
                                        .map(id -> draft.link(new Target.OfPage(id), draft.word("page." + id))),
                                draft.procedures().stream()
                                        .filter(procedure ->
                                                !procedure.head().who().forRenters())
                                        .map((Procedure procedure) -> Draft.link(procedure)))
                        .map(link -> new Content.LinkList.Entry(link, ""))
                        .toList());
    }

    private Content pages() {
        return new Content.LinkList(
                Optional.empty(),
                References.PAGES.stream()
                        .filter(id -> !id.equals("home") && !id.equals("trouble"))
                        .map(id -> new Content.LinkList.Entry(
                                draft.link(new Target.OfPage(id), draft.word("page." + id)),
                                draft.word("page." + id + ".note")))
                        .toList());
    }
}
