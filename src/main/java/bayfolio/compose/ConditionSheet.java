package bayfolio.compose;

import bayfolio.document.Content;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.fact.Key;
import bayfolio.fact.Type;
import bayfolio.model.HireMark;
import bayfolio.model.Item;
import bayfolio.model.Notice;
import bayfolio.model.Side;
import bayfolio.model.Tank;
import bayfolio.model.Tires;
import bayfolio.model.Unit;
import bayfolio.model.Wording;
import bayfolio.procedure.Form;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.Stage;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How a coach goes out and how it comes back, as both sides sign it. */
final class ConditionSheet {
    /** Read from the dash, which has a line of its own. */
    private static final Set<Tank.Contents> FUELS = Set.of(Tank.Contents.GASOLINE, Tank.Contents.DIESEL);

    /** Of the pages that help meanwhile, those that are named. */
    private static final int NAMED = 3;

    private final CoachView view;
    private final Sheet sheet;
    private final List<HireMark> marks;

    ConditionSheet(CoachView view) {
        this.view = view;
        this.sheet = new Sheet(view);
        this.marks = view.coach().fleet().marks(view.unit());
    }

    Page page() {
        return sheet.page(
                PageKind.CONDITION,
                page -> Stream.of(
                                Stream.of(booking(page.child("booking")), readings(page.child("readings"))),
                                tires(page.child("tires")).stream(),
                                Stream.of(
                                        words(
                                                page.child("lamps"),
                                                "head",
                                                "turn",
                                                "brake",
                                                "marker",
                                                "reverse",
                                                "inside"),
                                        outside(page.child("outside")),
                                        inside(page.child("inside")),
                                        safety(page.child("safety"))),
                                keys(page.child("keys")).stream(),
                                Stream.of(
                                        words(page.child("papers"), "registration", "insurance", "accident", "print")),
                                defects(page.child("defects")).stream(),
                                Stream.of(legend(page.child("legend"))),
                                earlier(page.child("marks")).stream(),
                                Stream.of(
                                        drawn(page.child("drawn")),
                                        handover(page.child("handover")),
                                        sheet.signedByBoth(page.child("signed"))))
                        .flatMap(each -> each)
                        .toList());
    }

    /** What is known is there; the rest is written in. */
    private Section booking(Stamp section) {
        String coach = Stream.of(
                        Optional.of(view.unit().name()), view.unit().facts().find(Unit.NUMBER))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
        return sheet.section(
                section,
                view.word("sheet.booking"),
                List.of("sheet.what", "sheet.entered"),
                Stream.concat(
                                Stream.of(List.of(Sheet.cell(view.word("sheet.coach")), Sheet.cell(coach))),
                                Stream.of("plate", "booking-number", "drivers", "licenses", "from", "until")
                                        .map(word -> Sheet.empty(Sheet.cell(view.word("sheet." + word)), 2)))
                        .toList());
    }

    private Section readings(Stamp section) {
        return sheet.outAndBack(
                section,
                Stream.of(
                                Stream.of("odometer", "fuel-level").map(word -> Sheet.cell(view.word("sheet." + word))),
                                view.unit().generator().stream()
                                        .map(it -> Sheet.cell(view.word("sheet.generator-hours"))),
                                view.things("tank").stream()
                                        .filter(tank -> !FUELS.contains(((Tank) tank).contents()))
                                        .map(Sheet::cell),
                                view.things("bank").stream().map(Sheet::cell))
                        .flatMap(each -> each));
    }

    /** Each tire, with what it must have. */
    private Optional<Section> tires(Stamp section) {
        return view.unit().facts().find(Unit.TIRES).map(tires -> {
            boolean twins = tires.facts().find(Tires.DUAL_REAR).orElse(false);
            List<List<List<Inline>>> rows = new ArrayList<>();
            Stream.of("front-left", "front-right").forEach(at -> rows.add(tire(tires, Tires.FRONT_PRESSURE, at)));
            (twins
                            ? Stream.of("rear-left-outer", "rear-left-inner", "rear-right-inner", "rear-right-outer")
                            : Stream.of("rear-left", "rear-right"))
                    .forEach(at -> rows.add(tire(tires, Tires.REAR_PRESSURE, at)));
            if (tires.facts().find(Tires.SPARE).orElse(false)) {
                rows.add(Sheet.empty(Sheet.cell(view.word("tires.spare")), 4));
            }
            return sheet.section(
                    section,
                    view.word("sheet.tires"),
                    List.of("sheet.what", "sheet.must", "sheet.out", "sheet.back"),
                    rows);
        });
    }

    private List<List<Inline>> tire(Tires tires, Key<?> pressure, String at) {
        return List.of(
                Sheet.cell(view.word("tires." + at)),
                Sheet.cell(new FactRows(view).plain(tires, pressure)),
                Sheet.cell(""),
                Sheet.cell(""));
    }

    /** What every coach has, and no description lists. */
    private Section words(Stamp section, String... words) {
        String of = section.id().within();
        return sheet.outAndBack(
                section, Stream.of(words).map(word -> Sheet.cell(view.word("sheet." + of + "." + word))));
    }

    private Section outside(Stamp section) {
        return sheet.outAndBack(
                section,
                Stream.of(
                                Stream.of(Side.LEFT, Side.RIGHT, Side.FRONT, Side.REAR, Side.ROOF)
                                        .map(side -> Sheet.cell(view.word("sheet.side." + Type.word(side)))),
                                Stream.of("compartment", "door", "step", "slide", "awning")
                                        .flatMap(kind -> view.things(kind).stream())
                                        .map(Sheet::cell),
                                view.unit().facts().find(Unit.JACKS).stream()
                                        .map(it -> Sheet.cell(new FactRows(view).label(Unit.SHAPE, Unit.JACKS))))
                        .flatMap(each -> each));
    }

    private Section inside(Stamp section) {
        return sheet.outAndBack(
                section,
                Stream.concat(
                        Stream.of("windshield", "floor", "upholstery", "kitchen", "bathroom")
                                .map(word -> Sheet.cell(view.word("sheet." + word))),
                        view.things("appliance").stream().map(Sheet::cell)));
    }

    private Section safety(Stamp section) {
        return sheet.outAndBack(
                section,
                Stream.concat(
                        view.things("gauge").stream()
                                .filter(gauge -> gauge.roles().stream().anyMatch(role -> role.endsWith("-alarm")))
                                .map(Sheet::cell),
                        items("fire-extinguisher", "first-aid-kit", "warning-triangle")));
    }

    private Stream<List<Inline>> items(String... roles) {
        return Stream.of(roles)
                .flatMap(role ->
                        view.things("item").stream().filter(item -> item.roles().contains(role)))
                .distinct()
                .map(Sheet::cell);
    }

    private Optional<Section> keys(Stamp section) {
        List<List<List<Inline>>> rows = view.things("item").stream()
                .filter(item -> item.roles().contains("key-set"))
                .map(keys -> List.of(
                        Sheet.cell(keys),
                        Sheet.cell(keys.facts()
                                .find(Item.COUNT)
                                .map(String::valueOf)
                                .orElse("1")),
                        Sheet.cell(""),
                        Sheet.cell("")))
                .toList();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(sheet.section(
                        section,
                        view.word("sheet.keys"),
                        List.of("sheet.what", "sheet.count", "sheet.out", "sheet.back"),
                        rows));
    }

    /** What a renter is told of before, so that nobody is charged for it; and what helps until it is mended. */
    private Optional<Section> defects(Stamp section) {
        List<List<List<Inline>>> rows = view.coach().fleet().notices(view.unit()).stream()
                .filter(notice -> !notice.forStaff())
                .map(notice -> List.of(
                        Sheet.cell(notice.facts().get(Notice.TEXT)),
                        Sheet.cell(view.wording().day(notice.facts().get(Notice.SINCE))),
                        helps(notice),
                        Sheet.cell("")))
                .toList();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(sheet.section(
                        section,
                        view.word("sheet.defects"),
                        List.of("sheet.what", "sheet.since", "sheet.meanwhile", "sheet.shown"),
                        rows));
    }

    /** The pages that a notice names; else those that help when something is wrong with what it is about. */
    private List<Inline> helps(Notice notice) {
        List<String> named = notice.facts().all(Notice.PROCEDURES);
        List<Procedure> pages = (named.isEmpty()
                        ? notice.things(view.coach()).stream()
                                .flatMap(thing -> view.uses(CoachView.target(thing)).stream())
                                .filter(ConditionSheet::helps)
                                .distinct()
                        : view.procedures().stream().filter(it -> named.contains(it.id())))
                .filter(procedure -> procedure.head().who().forRenters())
                .limit(NAMED)
                .toList();
        List<Inline> cell = new ArrayList<>();
        pages.forEach(page -> {
            if (!cell.isEmpty()) {
                cell.add(new Inline.Text("; "));
            }
            cell.add(CoachView.link(page));
        });
        return cell.isEmpty() ? Sheet.cell("") : cell;
    }

    private static boolean helps(Procedure procedure) {
        return procedure.form() == Form.TROUBLE || procedure.head().stage() == Stage.SOMETHING_WRONG;
    }

    /** How a mark is called and how large it is: the same words for both sides. */
    private Section legend(Stamp section) {
        Function<String, List<List<Inline>>> line =
                key -> List.of(Sheet.cell(view.word("sheet." + key)), Sheet.cell(view.word("sheet.legend." + key)));
        return sheet.section(
                section,
                view.word("sheet.legend"),
                List.of("sheet.what", "sheet.legend.how"),
                List.of(
                        List.of(
                                Sheet.cell(view.word("sheet.kind")),
                                Sheet.cell(view.words()
                                        .row(Stream.of(HireMark.Kind.values())
                                                .map(Wording::key)
                                                .map(view::word)
                                                .toList()))),
                        line.apply("size"),
                        line.apply("number")));
    }

    private Optional<Section> earlier(Stamp section) {
        return marks.isEmpty()
                ? Optional.empty()
                : Optional.of(Section.of(
                        section, view.word("sheet.marks"), List.of(new MarkTable(view).of(section, marks, 0))));
    }

    private Section drawn(Stamp section) {
        return Section.of(
                section,
                view.word("sheet.drawn"),
                Stream.of(
                                Stream.of(view.paragraph(section.child("note"), "sheet.drawn.note")),
                                new SideDrawings(view).outlines(section, marks).stream(),
                                Stream.<Content>of(new Plans(view).outline(section.child("roof"))))
                        .flatMap(each -> each)
                        .toList());
    }

    /** What a renter has done once with us: whatever is used in the walk round. */
    private Section handover(Stamp section) {
        Set<Target> shown = view.procedures().stream()
                .filter(procedure -> procedure.head().stage() == Stage.PICKUP_STAFFED)
                .flatMap(Procedure::links)
                .map(Inline.Link::target)
                .collect(Collectors.toSet());
        return sheet.section(
                section,
                view.word("sheet.handover"),
                List.of("sheet.what", "sheet.done"),
                view.procedures(Form.PROCEDURE)
                        .filter(procedure -> procedure.head().who().forRenters())
                        .filter(procedure -> shown.contains(new Target.OfProcedure(procedure.id())))
                        .map(procedure -> List.of(List.<Inline>of(CoachView.link(procedure)), Sheet.cell("")))
                        .toList());
    }
}
