package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.procedure.Stage;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
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
        sections.add(section(
                "read-out", "home.read-out", list -> new Content.FactTable(list, new ReadOut(view).measures(list))));
        Stamp doors = stamp.child("doors");
        List<Content> sides = new SideDrawings(view).of(doors);
        if (!sides.isEmpty()) {
            sections.add(Section.of(
                    doors,
                    view.word("home.doors"),
                    Stream.concat(
                                    sides.stream(),
                                    Stream.of(
                                            view.paragraph(doors.child("key"), "drawing.key"),
                                            view.paragraph(doors.child("tap"), "drawing.tap")))
                            .toList()));
        }
        emergency().ifPresent(sections::add);
        sections.add(section("trip", "home.trip", this::stages));
        Stamp abroad = stamp.child("abroad");
        new CountryPages(view)
                .ways(abroad.child("list"))
                .ifPresent(ways -> sections.add(Section.of(abroad, view.word("home.abroad"), List.of(ways))));
        sections.add(section("coach", "home.coach", this::pages));
        Stamp paper = stamp.child("paper");
        sections.add(Section.of(
                paper,
                view.word("home.paper"),
                List.of(cards(paper.child("list")), new Content.Prints(paper.child("prints")))));
        Stamp staff = stamp.child("staff").seenBy(Audience.STAFF);
        sections.add(Section.of(
                staff,
                view.word("home.staff"),
                List.of(staff(staff.child("list")), new Content.Prints(staff.child("prints")))));
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

    /** What fits on a card; an output that prints lists its files below. */
    private Content cards(Stamp list) {
        return new Content.LinkList(
                list,
                Optional.empty(),
                Stream.of(PageKind.NIGHT_CARD, PageKind.PHONE_CARD, PageKind.QUICK_CARD)
                        .map(kind -> page(list, kind.id(), view.word("page." + kind.id() + ".note")))
                        .toList());
    }

    private Content pages(Stamp list) {
        return new Content.LinkList(
                list,
                Optional.empty(),
                PageKind.IN_MENUS.stream()
                        .filter(id -> !id.equals(PageKind.HOME.id()) && !id.equals(PageKind.TROUBLE_LIST.id()))
                        .map(id -> page(list, id, view.word("page." + id + ".note")))
                        .toList());
    }

    private Content.LinkList.Entry page(Stamp list, String id, String note) {
        Inline.Link link = view.link(new Target.OfPage(id), view.word("page." + id));
        return new Content.LinkList.Entry(list.child(id), link, note);
    }
}
