package bayfolio.compose;

import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.model.Awning;
import bayfolio.model.Compartment;
import bayfolio.model.Door;
import bayfolio.model.Equipment;
import bayfolio.model.Gauge;
import bayfolio.model.Item;
import bayfolio.model.Jacks;
import bayfolio.model.Slide;
import bayfolio.model.Spot;
import bayfolio.model.Standpoint;
import bayfolio.model.Step;
import bayfolio.model.Switch;
import bayfolio.model.Tank;
import bayfolio.model.Thing;
import bayfolio.model.Tires;
import bayfolio.model.Unit;
import bayfolio.model.Water;
import bayfolio.procedure.Form;
import bayfolio.procedure.Head;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.Who;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A coach as the next renter must find it, by where one stands; whoever did a part of it signs for that part. */
final class ReadySheet {
    private static final List<String> HEAD = List.of("sheet.what", "sheet.where", "sheet.must", "sheet.done");

    private final CoachView view;
    private final Sheet sheet;
    private final FactRows facts;

    /** What stands at a site is nobody's to make ready. */
    private final Set<Thing> onBoard;

    /**
     * A line of the sheet, with its box.
     *
     * @param at where one stands for it
     * @param turn when one comes by it there; 0 of what no description lists
     * @param place where it is from there; may be empty
     * @param must how it must be
     */
    record Line(Stand at, int turn, List<Inline> what, String place, String must) {
        /** Of a thing, where that is. */
        static Line of(Thing thing, String must, CoachView view) {
            return at(Stand.of(thing, view), thing, must, view);
        }

        /** Of a thing that one looks at from elsewhere. */
        static Line at(Stand stand, Thing thing, String must, CoachView view) {
            return new Line(
                    stand,
                    1 + view.coach().walked().toList().indexOf(thing),
                    Sheet.cell(thing),
                    stand.door().isEmpty()
                            ? view.wording().place(thing)
                            : thing.spot().flatMap(Spot::where).orElse(""),
                    must);
        }
    }

    ReadySheet(CoachView view) {
        this.view = view;
        this.sheet = new Sheet(view);
        this.facts = new FactRows(view);
        this.onBoard = view.unit().things().collect(Collectors.toSet());
    }

    Page page() {
        List<Line> lines = Stream.concat(lines(), equipment())
                .sorted(Comparator.comparingInt(Line::turn))
                .toList();
        List<Stand> stands = Stand.inOrder(lines.stream().map(Line::at), view);
        return sheet.page(PageKind.READY, page -> {
            List<Section> sections = new ArrayList<>();
            Stamp link = page.child("link");
            sections.add(Section.of(
                    link, view.word("sheet.link"), List.of(view.paragraph(link.child("when"), "sheet.link.note"))));
            stands.forEach(stand -> sections.add(at(
                    page.child(stand.id()),
                    stand,
                    lines.stream().filter(line -> line.at.equals(stand)).toList())));
            sections.add(signed(page.child("signed")));
            return sections;
        });
    }

    private Section at(Stamp section, Stand stand, List<Line> lines) {
        return sheet.section(
                section,
                stand.title(view),
                HEAD,
                lines.stream()
                        .map(line -> List.of(line.what, Sheet.cell(line.place), Sheet.cell(line.must), Sheet.cell("")))
                        .toList());
    }

    /** Whoever comes at night finds the coach as one of us has left it. */
    private Section signed(Stamp section) {
        List<String> head = List.of("sheet.part", "sheet.who", "sheet.when");
        return sheet.section(
                section,
                view.word("sheet.signed"),
                head,
                Stream.of(
                                "stand.seat",
                                "stand.inside",
                                "stand.around",
                                "stand.door",
                                "sheet.all-of-it",
                                "sheet.edition")
                        .map(part -> Sheet.empty(Sheet.cell(view.word(part)), head.size()))
                        .toList());
    }

    /** What the files of its equipment want done, besides what hangs on one fact. */
    private Stream<Line> equipment() {
        return view.procedures(Form.PROCEDURE)
                .filter(procedure -> procedure.head().facts().find(Head.LEAVES).equals(Optional.of(Head.Left.AT_PICKUP))
                        && procedure.head().who() == Who.STAFF)
                .flatMap(Procedure::steps)
                .flatMap(step -> kind(step).stream()
                        .flatMap(kind -> step.text().stream()
                                .limit(1)
                                .filter(Block.Paragraph.class::isInstance)
                                .map(block -> new Line(
                                        stand(kind),
                                        0,
                                        ((Block.Paragraph) block).text(),
                                        "",
                                        view.word("ready.done")))));
    }

    /** That of the file a step was written in. */
    private Optional<Equipment> kind(bayfolio.procedure.Step step) {
        String path = step.at().file().path();
        return Optional.of(path)
                .filter(it -> it.contains("/" + Form.EQUIPMENT.folder() + "/"))
                .flatMap(it -> view.unit()
                        .equipment()
                        .named(it.substring(it.lastIndexOf('/') + 1).replace(".md", "")));
    }

    private static Stand stand(Equipment kind) {
        return switch (kind.facts().find(Equipment.STANDS).orElse(Standpoint.INSIDE)) {
            case INSIDE -> Stand.INSIDE;
            case OUTSIDE -> Stand.AROUND;
            case DRIVER_SEAT -> Stand.SEAT;
        };
    }

    private Stream<Line> lines() {
        return Stream.of(
                        words(Stand.SEAT, "warning-lamps", "lamps", "wipers", "mirrors", "papers"),
                        words(Stand.INSIDE, "clean"),
                        words(Stand.AROUND, "marks", "labels"),
                        tires(),
                        things("switch", this::state),
                        things("gauge", this::gauge),
                        tanks(),
                        things("item", this::item),
                        exits(),
                        things("step", step -> told(step, Step.OUT_LOOK, "ready.step")),
                        things("slide", slide -> told(slide, Slide.IN_SIGN, "ready.in")),
                        things("awning", awning -> told(awning, Awning.IN_SIGN, "ready.in")),
                        jacks(),
                        things("compartment", this::engine),
                        things("compartment", door -> told(door, Compartment.SHUT_LOOK, "ready.shut")))
                .flatMap(each -> each);
    }

    /** What every coach has, and no description lists. */
    private Stream<Line> words(Stand at, String... keys) {
        return Stream.of(keys)
                .map(key -> new Line(
                        at, 0, Sheet.cell(view.word("ready." + key)), "", view.word("ready." + key + ".must")));
    }

    private interface Must {
        /** Empty where the sheet has no line for it. */
        Optional<String> of(Thing thing);
    }

    private Stream<Line> things(String kind, Must must) {
        return view.things(kind).stream()
                .filter(thing -> onBoard.contains(thing))
                .flatMap(thing -> must.of(thing).map(words -> Line.of(thing, words, view)).stream());
    }

    /** As its writer says, or in our words. */
    private Optional<String> told(Described record, Key<?> look, String otherwise) {
        String plain = facts.plain(record, look);
        return Optional.of(plain.isEmpty() ? view.word(otherwise) : plain);
    }

    private Optional<String> state(Thing thing) {
        String pickup = facts.plain(thing, Switch.AT_PICKUP);
        String stored = facts.plain(thing, Switch.STORED);
        return stored.isEmpty() || stored.equals(pickup)
                ? Optional.of(pickup).filter(it -> !it.isEmpty())
                : Optional.of(
                        pickup.isEmpty()
                                ? view.words().say("ready.stored", "stored", stored)
                                : view.words().say("ready.state", "state", pickup, "stored", stored));
    }

    private Optional<String> gauge(Thing gauge) {
        if (gauge.roles().stream().anyMatch(role -> role.endsWith("-alarm"))) {
            return Optional.of(gauge.facts()
                    .find(Gauge.REPLACE_BY)
                    .map(day -> view.words()
                            .say("ready.alarm-until", "day", view.wording().day(day)))
                    .orElseGet(() -> view.word("ready.alarm")));
        }
        if (gauge.roles().contains("fuel-gauge")) {
            boolean fluid = view.unit().tanks().stream().anyMatch(it -> it.contents() == Tank.Contents.EXHAUST_FLUID);
            return Optional.of(view.word(fluid ? "ready.fuel-and-fluid" : "ready.fuel"));
        }
        if (gauge.roles().contains("lp-gauge")) {
            return Optional.of(view.word("ready.gas"));
        }
        return gauge.roles().contains("battery-monitor")
                ? told(gauge, Gauge.NORMAL, "ready.charged")
                : Optional.empty();
    }

    /** A tank is looked at where its gauge is. */
    private Stream<Line> tanks() {
        Optional<Thing> gauge =
                view.coach().inRole("gauge", "tank-gauge").stream().findFirst();
        return view.things("tank").stream()
                .flatMap(tank -> level((Tank) tank)
                        .map(must -> new Line(
                                Stand.of(gauge.orElse(tank), view),
                                Line.of(gauge.orElse(tank), must, view).turn(),
                                Sheet.cell(tank),
                                gauge.map(Thing::name).orElse(view.wording().place(tank)),
                                must))
                        .stream());
    }

    private Optional<String> level(Tank tank) {
        return switch (tank.contents()) {
            case FRESH ->
                Optional.of(view.unit()
                        .facts()
                        .find(Unit.WATER)
                        .map(water -> facts.plain(water, Water.START_LEVEL))
                        .filter(level -> !level.isEmpty())
                        .orElseGet(() -> view.word("ready.fresh")));
            case GRAY, BLACK, CASSETTE -> Optional.of(view.word("ready.waste"));
            default -> Optional.empty();
        };
    }

    private Optional<String> item(Thing item) {
        return Stream.of("key-set", "fire-extinguisher", "first-aid-kit", "cassette", "override-crank")
                .filter(item.roles()::contains)
                .findFirst()
                .map(role -> view.words()
                        .say(
                                "ready." + role,
                                "count",
                                item.facts().find(Item.COUNT).orElse(1)));
    }

    /** They are opened from inside, as in an emergency. */
    private Stream<Line> exits() {
        return view.things("door").stream()
                .filter(door -> door.facts().find(Door.EMERGENCY).orElse(false))
                .map(door -> Line.at(Stand.INSIDE, door, view.word("ready.exit"), view));
    }

    private Optional<String> engine(Thing door) {
        return door.roles().contains("engine-hatch")
                ? Optional.of(view.word("ready.engine"))
                : door.roles().contains("generator-compartment")
                                && view.unit().generator().isPresent()
                        ? Optional.of(view.word("ready.generator"))
                        : Optional.empty();
    }

    private Stream<Line> jacks() {
        return view.unit().facts().find(Unit.JACKS).stream()
                .map(jacks -> new Line(
                        Stand.AROUND,
                        0,
                        Sheet.cell(facts.label(Unit.SHAPE, Unit.JACKS)),
                        "",
                        told(jacks, Jacks.UP_SIGN, "ready.up").orElseThrow()));
    }

    private Stream<Line> tires() {
        return view.unit().facts().find(Unit.TIRES).stream().flatMap(tires -> {
            boolean twins = tires.facts().find(Tires.DUAL_REAR).orElse(false);
            return Stream.of(
                            pressure(tires, Tires.FRONT_PRESSURE, "tires.front"),
                            pressure(tires, Tires.REAR_PRESSURE, twins ? "tires.rear-twins" : "tires.rear"),
                            tires.facts().find(Tires.SPARE).orElse(false)
                                    ? words(Stand.AROUND, "spare")
                                    : Stream.<Line>of(),
                            words(Stand.AROUND, "tread", "wheel-nuts"))
                    .flatMap(each -> each);
        });
    }

    private Stream<Line> pressure(Tires tires, Key<?> key, String which) {
        return Stream.of(facts.plain(tires, key))
                .filter(pressure -> !pressure.isEmpty())
                .map(pressure -> new Line(
                        Stand.AROUND,
                        0,
                        Sheet.cell(view.word(which)),
                        "",
                        view.words().say("ready.pressure", "pressure", pressure)));
    }
}
