package bayfolio.compose;

import bayfolio.fact.Type;
import bayfolio.handbook.Content;
import bayfolio.handbook.Page;
import bayfolio.handbook.Section;
import bayfolio.measure.Meters;
import bayfolio.model.Item;
import bayfolio.model.Service;
import bayfolio.model.Side;
import bayfolio.model.Switch;
import bayfolio.model.Tank;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import bayfolio.reckon.NextDue;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What staff print and fill in by hand: how the coach is handed over and comes back, what is on board, how each switch
 * stands for the next renter, which work is due.
 */
final class StaffSheets {
    /** Read from the dash, which has a line of its own. */
    private static final Set<Tank.Contents> FUELS = Set.of(Tank.Contents.GASOLINE, Tank.Contents.DIESEL);

    private final Draft draft;

    StaffSheets(Draft draft) {
        this.draft = draft;
    }

    Stream<Page> pages() {
        return Stream.of(condition(), inventory(), ready(), service());
    }

    private Page page(String id, List<Section> sections) {
        return new Page(
                new Target.OfPage(id),
                id + ".html",
                draft.word("page." + id),
                List.of(draft.paragraph("page." + id + ".note")),
                sections);
    }

    /** Readings and looks, with a column for each end of the hire. */
    private Page condition() {
        List<Section> sections = new ArrayList<>();
        sections.add(form(
                "readings",
                Stream.of(
                                Stream.of("odometer", "fuel-level"),
                                draft.unit().generator().stream().map(it -> "generator-hours"))
                        .flatMap(words -> words)
                        .map(word -> cell(draft.word("sheet." + word))),
                readings()));
        sections.add(form(
                "outside",
                Stream.of(Side.LEFT, Side.RIGHT, Side.FRONT, Side.REAR, Side.ROOF)
                        .map(side -> cell(draft.word("sheet.side." + Type.word(side)))),
                Stream.of("compartment", "door", "step", "slide", "awning")
                        .flatMap(kind -> draft.things(kind).stream())
                        .map(StaffSheets::cell)));
        sections.add(form(
                "inside",
                Stream.of("windshield", "floor", "upholstery", "kitchen", "bathroom")
                        .map(word -> cell(draft.word("sheet." + word))),
                draft.things("appliance").stream().map(StaffSheets::cell)));
        sections.add(form(
                "safety",
                Stream.of(),
                draft.things("gauge").stream()
                        .filter(gauge -> gauge.roles().stream().anyMatch(role -> role.endsWith("-alarm")))
                        .map(StaffSheets::cell)));
        sections.add(Section.of(
                "signed",
                draft.word("sheet.signed"),
                List.of(table(
                        List.of("sheet.what", "sheet.out", "sheet.back"),
                        Stream.of("edition", "date", "staff-name", "renter-name")
                                .map(word -> List.of(cell(draft.word("sheet." + word)), cell(""), cell("")))
                                .toList()))));
        return page("condition", sections);
    }

    /** Every tank's level and every bank. */
    private Stream<List<Inline>> readings() {
        return Stream.concat(
                draft.things("tank").stream()
                        .filter(tank -> !FUELS.contains(((Tank) tank).contents()))
                        .map(StaffSheets::cell),
                draft.things("bank").stream().map(StaffSheets::cell));
    }

    private Section form(String id, Stream<List<Inline>> first, Stream<List<Inline>> then) {
        return Section.of(
                id,
                draft.word("sheet." + id),
                List.of(table(
                        List.of("sheet.what", "sheet.out", "sheet.back"),
                        Stream.concat(first, then)
                                .map(what -> List.of(what, cell(""), cell("")))
                                .toList())));
    }

    /** By place in walking order, so that nobody runs round twice. */
    private Page inventory() {
        Map<String, List<Thing>> byPlace = new LinkedHashMap<>();
        for (Thing item : draft.things("item")) {
            String place = draft.coach().around(item).map(Thing::name).orElse(draft.word("section.coach"));
            byPlace.computeIfAbsent(place, it -> new ArrayList<>()).add(item);
        }
        List<Section> sections = new ArrayList<>();
        byPlace.forEach((place, items) -> sections.add(Section.of(
                "place-" + (sections.size() + 1),
                place,
                List.of(table(
                        List.of("sheet.item", "sheet.count", "sheet.bag", "sheet.out", "sheet.back"),
                        items.stream().map(this::line).toList())))));
        return page("inventory", sections);
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
        return page(
                "ready",
                List.of(Section.of(
                        "switches",
                        draft.word("kind.switch"),
                        List.of(table(
                                List.of("sheet.what", "fact.at-pickup", "fact.stored", "sheet.done"),
                                draft.things("switch").stream()
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
                                        .toList())))));
    }

    private Page service() {
        List<Service> services = draft.unit().facts().all(Unit.SERVICES);
        FactRows rows = new FactRows(draft);
        return page(
                "service",
                services.stream()
                        .map(service -> Section.of(
                                "work-" + (services.indexOf(service) + 1),
                                service.facts().get(Service.WHAT),
                                List.of(new Content.FactTable(Stream.concat(
                                                Stream.of(Content.FactTable.Row.of(
                                                        draft.word("sheet.next-due"), due(NextDue.of(service)))),
                                                rows.of(service.facts(), Set.of(Service.WHAT.name())).stream())
                                        .toList()))))
                        .toList());
    }

    private String due(NextDue due) {
        List<String> when = Stream.of(
                        due.day().map(day -> draft.wording().of(Type.DAY, day)),
                        due.odometer().map(at -> draft.wording().of(Type.measured(Meters.SCALE), at)),
                        due.hours().map(at -> Math.round(at.value() / 3600) + " h"))
                .flatMap(Optional::stream)
                .toList();
        return when.isEmpty() ? draft.word("sheet.not-known") : String.join(" " + draft.word("or") + " ", when);
    }

    private Content table(List<String> head, List<List<List<Inline>>> rows) {
        return new Content.Text(
                new Block.Table(head.stream().map(key -> cell(draft.word(key))).toList(), rows));
    }

    private static List<Inline> cell(Thing thing) {
        return List.of(Draft.link(thing));
    }

    private static List<Inline> cell(String words) {
        return List.of(new Inline.Text(words));
    }
}
