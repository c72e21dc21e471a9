package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.From;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.fact.Key;
import bayfolio.model.Engine;
import bayfolio.model.Size;
import bayfolio.model.Unit;
import bayfolio.model.Weights;
import bayfolio.procedure.Stage;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import bayfolio.reckon.clearance.Clearances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where a renter begins: whom to call, what to do in an emergency, the trip stage by stage, the
 * coach thing by thing.
 */
final class HomePage {
    /** Whom to call: a place of this page that is looked for by itself. */
    static final Target CALL = new Target.OfPage("call");

    private final CoachView view;
    private final Stamp stamp;

    HomePage(CoachView view) {
        this.view = view;
        this.stamp = view.stamp(PageKind.HOME);
    }

    Page page() {
        SituationPages situations = new SituationPages(view);
        List<Section> sections = new ArrayList<>();
        sections.add(section("now", "home.now", list -> new Content.Tiles(list, situations.situations(list))));
        Stamp trouble = stamp.child("trouble");
        Stamp signs = trouble.child("signs");
        sections.add(Section.of(
                trouble,
                view.word("home.broken"),
                List.of(new Content.Tiles(signs, situations.symptoms(signs)), trouble(trouble.child("list")))));
        sections.add(section("read-out", "home.read-out", this::measures));
        Stamp doors = stamp.child("doors");
        List<Content> sides = new SideDrawings(view).of(doors);
        if (!sides.isEmpty()) {
            sections.add(Section.of(
                    doors,
                    view.word("home.doors"),
                    Stream.concat(sides.stream(), Stream.of(view.paragraph(doors.child("key"), "drawing.key")))
                            .toList()));
        }
        emergency().ifPresent(sections::add);
        sections.add(section("trip", "home.trip", this::stages));
        sections.add(section("coach", "home.coach", this::pages));
        Stamp staff = stamp.child("staff").seenBy(Audience.STAFF);
        sections.add(Section.of(staff, view.word("home.staff"), List.of(staff(staff.child("list")))));
        Stamp call = stamp.child("call");
        sections.add(new Section(
                call,
                Optional.of(CALL),
                view.word("home.call"),
                2,
                List.of(new Phones(view).content(call.child("list")))));
        return new Page(
                stamp, PageKind.HOME, PageKind.HOME.target(), view.unit().name(), List.of(), sections, false);
    }

    private interface Made {
        Content at(Stamp stamp);
    }

    private Section section(String key, String title, Made made) {
        Stamp section = stamp.child(key);
        return Section.of(section, view.word(title), List.of(made.at(section.child("list"))));
    }

    /** What a driver must know before the first bridge: three measures, the lowest sign to drive under, the weight. */
    private Content measures(Stamp table) {
        Unit unit = view.unit();
        FactRows rows = new FactRows(view);
        List<Content.FactTable.Row> all = new ArrayList<>();
        unit.facts()
                .find(Unit.NUMBER)
                .ifPresent(number -> all.add(Content.FactTable.Row.of(
                        table.child("number").from(From.fact(unit, Unit.NUMBER)),
                        rows.label(Unit.SHAPE, Unit.NUMBER),
                        number)));
        for (Key<?> key : Size.SHAPE.keys()) {
            if (key == Size.LENGTH || key == Size.HEIGHT || key == Size.WIDTH_MIRRORS) {
                rows.row(table, unit.size(), key).ifPresent(all::add);
            }
        }
        Clearances.lowestSign(view.coach())
                .ifPresent(sign -> all.add(Content.FactTable.Row.of(
                        table.child("lowest-sign").from(From.fact(unit.size(), Size.HEIGHT)),
                        view.word("home.lowest-sign"),
                        view.words().amount(sign))));
        unit.facts()
                .find(Unit.WEIGHTS)
                .flatMap(weights -> rows.row(table, weights, Weights.GROSS))
                .ifPresent(all::add);
        unit.facts()
                .find(Unit.ENGINE)
                .flatMap(engine -> rows.row(table, engine, Engine.FUEL))
                .ifPresent(all::add);
        thing(table, "connection", "fuel-filler").ifPresent(all::add);
        thing(table, "supply", "shore").ifPresent(all::add);
        return new Content.FactTable(table, all);
    }

    /** What is asked for at a pump or a post: where it is, or what it is called. */
    private Optional<Content.FactTable.Row> thing(Stamp table, String kind, String role) {
        return view.coach().inRole(kind, role).stream()
                .filter(thing -> CoachView.audience(thing) != Audience.STAFF)
                .findFirst()
                .map(thing -> {
                    String place = view.wording().place(thing);
                    return Content.FactTable.Row.of(
                            table.child(role).from(From.thing(thing)).in(view.language(thing)),
                            view.word("home." + role),
                            place.isEmpty() ? thing.name() : place);
                });
    }

    private Optional<Section> emergency() {
        return view.links(
                stamp.child("emergency"),
                "stage.emergency",
                list -> StagePages.inOrder(view, Stage.EMERGENCY).map(procedure -> view.entry(list, procedure, "")));
    }

    private Content trouble(Stamp list) {
        return new Content.LinkList(list, Optional.empty(), List.of(troubleEntry(view, list)));
    }

    static Content.LinkList.Entry troubleEntry(CoachView view, Stamp list) {
        return new Content.LinkList.Entry(
                list.child("trouble"),
                view.link(PageKind.TROUBLE_LIST.target(), view.word("home.trouble")),
                view.word("page.trouble.note"));
    }

    private Content stages(Stamp list) {
        return new Content.LinkList(
                list,
                Optional.empty(),
                StagePages.used(view).stream()
                        .filter(stage -> stage != Stage.EMERGENCY)
                        .map(stage -> new Content.LinkList.Entry(
                                list.child(stage.word()).seenBy(StagePages.audience(view, stage)),
                                view.link(new Target.OfStage(stage.word()), view.word("stage." + stage.word())),
                                ""))
                        .toList());
    }

    /** The sheets, and what staff alone do. */
    private Content staff(Stamp list) {
        return new Content.LinkList(
                list,
                Optional.empty(),
                Stream.concat(
                                PageKind.FOR_STAFF.stream().map(id -> page(list, id, "")),
                                view.procedures().stream()
                                        .filter(procedure -> CoachView.audience(procedure) == Audience.STAFF)
                                        .map(procedure -> view.entry(list, procedure, "")))
                        .toList());
    }

    private Content pages(Stamp list) {
        return new Content.LinkList(
                list,
                Optional.empty(),
                PageKind.FOR_EVERYBODY.stream()
                        .filter(id -> !id.equals(PageKind.HOME.id()) && !id.equals(PageKind.TROUBLE_LIST.id()))
                        .map(id -> page(list, id, view.word("page." + id + ".note")))
                        .toList());
    }

    private Content.LinkList.Entry page(Stamp list, String id, String note) {
        Inline.Link link = view.link(new Target.OfPage(id), view.word("page." + id));
        return new Content.LinkList.Entry(list.child(id), link, note);
    }
}
