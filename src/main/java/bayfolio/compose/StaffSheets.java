package bayfolio.compose;

import bayfolio.document.Content;
import bayfolio.document.From;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.fact.Type;
import bayfolio.model.Compartment;
import bayfolio.model.HireMark;
import bayfolio.model.Item;
import bayfolio.model.Kinds;
import bayfolio.model.Photo;
import bayfolio.model.Service;
import bayfolio.model.Side;
import bayfolio.model.Spot;
import bayfolio.model.Switch;
import bayfolio.model.Tank;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.reckon.NextDue;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What staff print and fill in by hand: how the coach is handed over and comes back, what is on board, how each switch
 * stands for the next renter, which work is due.
 */
final class StaffSheets {
    /** Read from the dash, which has a line of its own. */
    private static final Set<Tank.Contents> FUELS = Set.of(Tank.Contents.GASOLINE, Tank.Contents.DIESEL);

    /** Lines for what is found at a return. */
    private static final int ROOM = 6;

    private final CoachView view;

    StaffSheets(CoachView view) {
        this.view = view;
    }

    Stream<Page> pages() {
        return Stream.of(condition(), damage(), inventory(), ready(), service(), toPhotograph());
    }

    private Page page(PageKind kind, Function<Stamp, List<Section>> sections) {
        Stamp page = view.stamp(kind);
        return new Page(
                page,
                kind,
                kind.target(),
                view.word("page." + kind.id()),
                List.of(view.paragraph(page.child("note"), "page." + kind.id() + ".note")),
                sections.apply(page),
                false);
    }

    /** Readings and looks, with a column for each end of the hire. */
    private Page condition() {
        return page(PageKind.CONDITION, this::condition);
    }

    private List<Section> condition(Stamp page) {
        List<Section> sections = new ArrayList<>();
        sections.add(form(
                page.child("readings"),
                Stream.of(
                                Stream.of("odometer", "fuel-level", "tires"),
                                view.unit().generator().stream().map(it -> "generator-hours"))
                        .flatMap(words -> words)
                        .map(word -> cell(view.word("sheet." + word))),
                readings()));
        sections.add(form(
                page.child("outside"),
                Stream.of(Side.LEFT, Side.RIGHT, Side.FRONT, Side.REAR, Side.ROOF)
                        .map(side -> cell(view.word("sheet.side." + Type.word(side)))),
                Stream.of("compartment", "door", "step", "slide", "awning")
                        .flatMap(kind -> view.things(kind).stream())
                        .map(StaffSheets::cell)));
        sections.add(form(
                page.child("inside"),
                Stream.of("windshield", "floor", "upholstery", "kitchen", "bathroom")
                        .map(word -> cell(view.word("sheet." + word))),
                view.things("appliance").stream().map(StaffSheets::cell)));
        sections.add(form(
                page.child("safety"),
                Stream.of(),
                view.things("gauge").stream()
                        .filter(gauge -> gauge.roles().stream().anyMatch(role -> role.endsWith("-alarm")))
                        .map(StaffSheets::cell)));
        Stamp drawn = page.child("drawn");
        sections.add(Section.of(
                drawn,
                view.word("sheet.drawn"),
                Stream.of(
                                Stream.of(view.paragraph(drawn.child("note"), "sheet.drawn.note")),
                                new SideDrawings(view).outlines(drawn, List.of()).stream(),
                                Stream.of(new Plans(view).outline(drawn.child("roof"))))
                        .flatMap(each -> each)
                        .toList()));
        sections.add(signed(page.child("signed")));
        return sections;
    }

    /** Out and back, by both sides. */
    private Section signed(Stamp signed) {
        return signed(
                signed,
                List.of("sheet.what", "sheet.out", "sheet.back"),
                "edition",
                "date",
                "staff-name",
                "renter-name");
    }

    /** @param head the first column says what is to be filled in, the others have room for it */
    private Section signed(Stamp signed, List<String> head, String... words) {
        return Section.of(
                signed,
                view.word("sheet.signed"),
                List.of(table(
                        signed,
                        head,
                        Stream.of(words)
                                .map(word -> Stream.concat(
                                                Stream.of(cell(view.word("sheet." + word))),
                                                head.stream().skip(1).map(it -> cell("")))
                                        .toList())
                                .toList())));
    }

    /** What earlier hires left, each where it is, so that nobody is asked for it twice. */
    private Page damage() {
        List<HireMark> marks = view.coach().fleet().marks(view.unit());
        return page(PageKind.DAMAGE, page -> {
            Stamp drawn = page.child("drawn");
            Stamp list = page.child("marks");
            List<List<List<Inline>>> rows = new ArrayList<>();
            for (HireMark mark : marks) {
                rows.add(row(rows.size() + 1, mark));
            }
            // Room for what is found this time.
            for (int empty = 0; empty < ROOM; empty++) {
                rows.add(Stream.of(Integer.toString(rows.size() + 1), "", "", "", "", "")
                        .map(StaffSheets::cell)
                        .toList());
            }
            return List.of(
                    Section.of(
                            drawn,
                            view.word("sheet.drawn"),
                            new SideDrawings(view).outlines(drawn.child("list"), marks)),
                    Section.of(
                            list,
                            view.word("sheet.marks"),
                            List.of(table(
                                    list,
                                    List.of(
                                            "sheet.number",
                                            "sheet.place",
                                            "sheet.kind",
                                            "sheet.size",
                                            "sheet.since",
                                            "sheet.note"),
                                    rows))),
                    signed(page.child("signed")));
        });
    }

    private List<List<Inline>> row(int number, HireMark mark) {
        FactRows facts = new FactRows(view);
        return Stream.of(
                        Integer.toString(number),
                        view.words()
                                .row(Stream.concat(
                                                Stream.of(facts.plain(mark, HireMark.SIDE)),
                                                Stream.of(HireMark.WHERE, HireMark.FROM_FRONT, HireMark.HEIGHT)
                                                        .map(key -> facts.plain(mark, key)))
                                        .filter(it -> !it.isEmpty())
                                        .toList()),
                        facts.plain(mark, HireMark.KIND),
                        facts.plain(mark, HireMark.SIZE),
                        facts.plain(mark, HireMark.SINCE),
                        facts.plain(mark, HireMark.NOTE))
                .map(StaffSheets::cell)
                .toList();
    }

    /** Every tank's level and every bank. */
    private Stream<List<Inline>> readings() {
        return Stream.concat(
                view.things("tank").stream()
                        .filter(tank -> !FUELS.contains(((Tank) tank).contents()))
                        .map(StaffSheets::cell),
                view.things("bank").stream().map(StaffSheets::cell));
    }

    private Section form(Stamp section, Stream<List<Inline>> first, Stream<List<Inline>> then) {
        return Section.of(
                section,
                view.word("sheet." + section.id().within()),
                List.of(table(
                        section,
                        List.of("sheet.what", "sheet.out", "sheet.back"),
                        Stream.concat(first, then)
                                .map(what -> List.of(what, cell(""), cell("")))
                                .toList())));
    }

    /** By place in walking order, so that nobody runs round twice. */
    private Page inventory() {
        return page(PageKind.INVENTORY, this::inventory);
    }

    private List<Section> inventory(Stamp page) {
        Map<Optional<Compartment>, List<Thing>> byPlace = new LinkedHashMap<>();
        for (Thing item : view.things("item")) {
            byPlace.computeIfAbsent(view.coach().around(item), it -> new ArrayList<>())
                    .add(item);
        }
        List<Section> sections = new ArrayList<>();
        byPlace.forEach((place, items) -> {
            Stamp section = page.child("place-" + place.map(Thing::id).orElse("coach"));
            sections.add(Section.of(
                    section,
                    place.map(Thing::name).orElse(view.word("section.coach")),
                    List.of(table(
                            section,
                            List.of("sheet.item", "sheet.count", "sheet.bag", "sheet.out", "sheet.back"),
                            items.stream().map(this::line).toList()))));
        });
        return sections;
    }

    private List<List<Inline>> line(Thing item) {
        return List.of(
                cell(item),
                cell(item.facts().find(Item.COUNT).map(String::valueOf).orElse("1")),
                cell(item.facts().find(Item.BAG).map(Type::word).orElse("")),
                cell(""),
                cell(""));
    }

    /** Each switch as the next renter must find it. */
    private Page ready() {
        return page(PageKind.READY, page -> {
            Stamp link = page.child("link");
            Stamp section = page.child("switches");
            return List.of(
                    Section.of(
                            link,
                            view.word("sheet.link"),
                            List.of(view.paragraph(link.child("when"), "sheet.link.note"))),
                    Section.of(
                            section,
                            view.word("kind.switch"),
                            List.of(table(
                                    section,
                                    List.of("sheet.what", "fact.at-pickup", "fact.stored", "sheet.done"),
                                    view.things("switch").stream()
                                            .filter(it -> it.facts().has(Switch.AT_PICKUP)
                                                    || it.facts().has(Switch.STORED))
                                            .map(it -> List.of(
                                                    cell(it),
                                                    cell(it.facts()
                                                            .find(Switch.AT_PICKUP)
                                                            .orElse("")),
                                                    cell(it.facts()
                                                            .find(Switch.STORED)
                                                            .orElse("")),
                                                    cell("")))
                                            .toList()))),
                    // Whoever comes at night finds the coach as one of us has left it.
                    signed(page.child("signed"), List.of("sheet.what", "sheet.done"), "edition", "date", "staff-name"));
        });
    }

    private Page service() {
        List<Service> services = view.unit().facts().all(Unit.SERVICES);
        return page(
                PageKind.SERVICE,
                page -> services.stream()
                        .map(service -> work(page.child("work-" + (services.indexOf(service) + 1)), service))
                        .toList());
    }

    private Section work(Stamp stamp, Service service) {
        Stamp section = stamp.from(From.fact(service, Service.WHAT));
        Stamp table = section.child("facts");
        return Section.of(
                section,
                service.facts().get(Service.WHAT),
                List.of(new Content.FactTable(
                        table,
                        Stream.concat(
                                        Stream.of(Content.FactTable.Row.of(
                                                table.child("next-due"),
                                                view.word("sheet.next-due"),
                                                due(NextDue.of(service)))),
                                        new FactRows(view).of(table, service, Set.of(Service.WHAT.name())).stream())
                                .toList())));
    }

    /** What could have a picture and has none, by where the photographer stands, in walking order. */
    private Page toPhotograph() {
        return page(PageKind.TO_PHOTOGRAPH, this::toPhotograph);
    }

    private List<Section> toPhotograph(Stamp page) {
        Set<Thing> pointedAt = view.unit().photos().stream()
                .flatMap(photo -> photo.facts().all(Photo.POINTERS).stream())
                .flatMap(pointer -> pointer.on(view.coach()).stream())
                .collect(Collectors.toSet());
        Map<String, List<Thing>> byStand = new LinkedHashMap<>();
        view.coach()
                .walked()
                .filter(thing -> unpictured(thing) && !pointedAt.contains(thing))
                .forEach(thing -> byStand.computeIfAbsent(stand(thing), it -> new ArrayList<>())
                        .add(thing));
        List<Section> sections = new ArrayList<>();
        byStand.forEach((stand, things) -> {
            Stamp section = page.child("from-" + stand);
            sections.add(Section.of(
                    section,
                    view.word("photograph." + stand),
                    List.of(table(
                            section,
                            List.of("sheet.what", "where", "sheet.done"),
                            things.stream()
                                    .map(thing -> List.of(
                                            cell(thing), cell(view.wording().place(thing)), cell("")))
                                    .toList()))));
        });
        return sections;
    }

    /** Whether it could name pictures and names none. */
    private static boolean unpictured(Thing thing) {
        return Kinds.named(thing.kind()).orElseThrow().keys().stream()
                .anyMatch(key -> key.name().equals("photos") && !thing.facts().has(key));
    }

    /** From where it is seen: what is in a compartment, with its door open. */
    private String stand(Thing thing) {
        return view.coach().around(thing).isPresent()
                ? "open-door"
                : thing.spot().flatMap(Spot::side).map(Type::word).orElse("inside");
    }

    private String due(NextDue due) {
        return DueWords.of(due, view.wording()).orElse(view.word("sheet.not-known"));
    }

    private Content table(Stamp section, List<String> head, List<List<List<Inline>>> rows) {
        return new Content.Text(
                section.child("table"),
                List.of(new Block.Table(
                        head.stream().map(key -> cell(view.word(key))).toList(), rows)));
    }

    private static List<Inline> cell(Thing thing) {
        return List.of(CoachView.link(thing));
    }

    private static List<Inline> cell(String words) {
        return List.of(new Inline.Text(words));
    }
}
