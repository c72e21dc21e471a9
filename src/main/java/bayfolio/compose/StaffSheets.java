package bayfolio.compose;

import bayfolio.document.Content;
import bayfolio.document.From;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.fact.Type;
import bayfolio.model.HireMark;
import bayfolio.model.Kinds;
import bayfolio.model.Photo;
import bayfolio.model.Service;
import bayfolio.model.Spot;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.reckon.NextDue;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What staff print and fill in by hand: how the coach is handed over and comes back, what is on board, how each switch
 * stands for the next renter, which work is due.
 */
final class StaffSheets {
    /** Lines for what is found at a return. */
    private static final int ROOM = 6;

    private final CoachView view;
    private final Sheet sheet;

    StaffSheets(CoachView view) {
        this.view = view;
        this.sheet = new Sheet(view);
    }

    Stream<Page> pages() {
        return Stream.of(
                new ConditionSheet(view).page(),
                damage(),
                new InventorySheet(view).page(),
                new ReadySheet(view).page(),
                service(),
                toPhotograph());
    }

    /** What earlier hires left, each where it is, so that nobody is asked for it twice. */
    private Page damage() {
        List<HireMark> marks = view.coach().fleet().marks(view.unit());
        return sheet.page(PageKind.DAMAGE, page -> {
            Stamp drawn = page.child("drawn");
            Stamp list = page.child("marks");
            return List.of(
                    Section.of(
                            drawn,
                            view.word("sheet.drawn"),
                            new SideDrawings(view).outlines(drawn.child("list"), marks)),
                    Section.of(list, view.word("sheet.marks"), List.of(new MarkTable(view).of(list, marks, ROOM))),
                    sheet.signedByBoth(page.child("signed")));
        });
    }

    private Page service() {
        List<Service> services = view.unit().facts().all(Unit.SERVICES);
        return sheet.page(
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
        return sheet.page(PageKind.TO_PHOTOGRAPH, this::toPhotograph);
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
            sections.add(sheet.section(
                    section,
                    view.word("photograph." + stand),
                    List.of("sheet.what", "where", "sheet.done"),
                    things.stream()
                            .map(thing -> List.of(
                                    Sheet.cell(thing), Sheet.cell(view.wording().place(thing)), Sheet.cell("")))
                            .toList()));
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
}
