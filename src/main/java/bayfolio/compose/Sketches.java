package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Sketch;
import bayfolio.drawing.Drawing;
import bayfolio.drawing.Face;
import bayfolio.drawing.GaugeFace;
import bayfolio.drawing.Mark;
import bayfolio.drawing.PanelView;
import bayfolio.drawing.TankView;
import bayfolio.fact.Key;
import bayfolio.measure.Amount;
import bayfolio.measure.Liters;
import bayfolio.measure.Rounding;
import bayfolio.model.Board;
import bayfolio.model.Compartment;
import bayfolio.model.Gauge;
import bayfolio.model.Level;
import bayfolio.model.Pose;
import bayfolio.model.Slide;
import bayfolio.model.Switch;
import bayfolio.model.Tank;
import bayfolio.model.Thing;
import bayfolio.prose.Target;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Small drawings of things, for pages that send a reader there: where to stand and reach, and what ON and OFF look like
 * here. Only what the description says is drawn.
 */
final class Sketches {
    /** Of these one says that they are open or shut. */
    private static final Set<Switch.Make> VALVES = EnumSet.of(
            Switch.Make.BALL_VALVE, Switch.Make.SLIDE_VALVE, Switch.Make.TAP, Switch.Make.HANDWHEEL, Switch.Make.PEDAL);

    private static final Set<Tank.Contents> WASTE =
            EnumSet.of(Tank.Contents.GRAY, Tank.Contents.BLACK, Tank.Contents.CASSETTE);

    private final CoachView view;
    private final SideDrawings sides;
    private final Plans plans;

    Sketches(CoachView view) {
        this.view = view;
        this.sides = new SideDrawings(view);
        this.plans = new Plans(view);
    }

    Map<Target, List<Sketch>> all() {
        Map<Target, List<Sketch>> all = new LinkedHashMap<>();
        view.coach().things().forEach(thing -> {
            List<Sketch> sketches = new ArrayList<>();
            place(thing).ifPresent(sketches::add);
            if (thing instanceof Switch made) {
                boolean valve = VALVES.contains(made.make());
                face(made, valve ? "open" : "on", Switch.ON_POSE).ifPresent(sketches::add);
                face(made, valve ? "shut" : "off", Switch.OFF_POSE).ifPresent(sketches::add);
            }
            if (thing instanceof Gauge gauge) {
                face(gauge).map(drawing -> stated(gauge, "normal", drawing)).ifPresent(sketches::add);
            }
            if (thing instanceof Tank tank) {
                levels(tank).ifPresent(sketches::add);
            }
            if (thing instanceof Slide slide) {
                plans.slid(slide, true)
                        .map(drawing -> stated(slide, "open", drawing))
                        .ifPresent(sketches::add);
                plans.slid(slide, false)
                        .map(drawing -> stated(slide, "shut", drawing))
                        .ifPresent(sketches::add);
            }
            if (!sketches.isEmpty()) {
                all.put(CoachView.target(thing), sketches);
            }
        });
        return all;
    }

    private static String name(Thing thing) {
        return thing.kind() + "-" + thing.id();
    }

    /** On its panel; else where it is seen from outside; else from above. */
    private Optional<Sketch> place(Thing thing) {
        Optional<Drawing> panel =
                thing.board().map(board -> PanelView.of(cells(view, board.name(), Optional.of(thing))));
        if (panel.isPresent()) {
            return panel.map(drawing -> sketch("panel-" + name(thing), thing, drawing));
        }
        Optional<Compartment> around = view.coach().around(thing);
        Thing seen = around.<Thing>map(bay -> bay).orElse(thing);
        return sides.at(seen).or(() -> plans.at(seen)).map(drawing -> sketch("at-" + name(seen), seen, drawing));
    }

    private Sketch sketch(String name, Thing seen, Drawing drawing) {
        return new Sketch(name, "", view.word("sketch.place") + " " + seen.name(), drawing);
    }

    private Optional<Sketch> face(Switch made, String state, Key<List<Located<Pose>>> poses) {
        return face(made, poses).map(drawing -> stated(made, state, drawing));
    }

    private Sketch stated(Thing thing, String state, Drawing drawing) {
        return new Sketch(
                name(thing) + "-" + state, state, thing.name() + ": " + view.word("handling.look." + state), drawing);
    }

    private static Optional<Drawing> face(Gauge gauge) {
        return gauge.facts()
                .find(Gauge.DISPLAY)
                .flatMap(display -> GaugeFace.of(
                        display,
                        gauge.facts().all(Gauge.MARKS),
                        gauge.facts().find(Gauge.READS).orElse(""),
                        Set.copyOf(gauge.facts().all(Gauge.NORMAL_POSE))));
    }

    /** What is in it at each mark, on the side on which nobody runs dry or over. */
    private Optional<Sketch> levels(Tank tank) {
        boolean waste = WASTE.contains(tank.contents());
        if (tank.contents() == Tank.Contents.LP_GAS) {
            return Optional.empty(); // full is not the whole of it
        }
        return Level.of(tank, view.coach())
                .map(levels -> new Sketch(
                        name(tank) + "-levels",
                        "levels",
                        view.word("sketch.levels") + " " + tank.name(),
                        TankView.of(levels.stream()
                                .map(level -> new TankView.Level(
                                        level.mark(), level.share(), holds(tank, level.share(), waste)))
                                .toList())));
    }

    private String holds(Tank tank, double share, boolean waste) {
        return share == 0
                ? ""
                : tank.facts()
                        .find(Tank.CAPACITY)
                        .map(all -> (waste ? Rounding.UP : Rounding.DOWN)
                                .print(
                                        new Liters(all.value() * share),
                                        view.unit().region().first()))
                        .map(amount -> view.words().amount(new Amount(amount.pieces(), List.of())))
                        .orElse("");
    }

    private static Optional<Drawing> face(Switch made, Key<List<Located<Pose>>> poses) {
        return Face.of(form(made.make()), Set.copyOf(made.facts().all(poses)));
    }

    private static Face.Form form(Switch.Make make) {
        return switch (make) {
            case ROTARY_DISCONNECT, KEY, KNOB, HANDWHEEL, CRANK -> Face.Form.DIAL;
            case BREAKER_HANDLE, TOGGLE, LEVER, PEDAL -> Face.Form.HANDLE;
            case ROCKER -> Face.Form.ROCKER;
            case BALL_VALVE, TAP -> Face.Form.VALVE;
            case SLIDE_VALVE, PULL -> Face.Form.ROD;
            case MOMENTARY_BUTTON, LATCHING_BUTTON, OUTLET -> Face.Form.BUTTON;
            case TOUCH_PANEL, PANEL, KEYPAD, FUSES -> Face.Form.SCREEN;
        };
    }

    /** The panels of the coach, by their names, with what is on each. */
    static Map<String, List<Thing>> panels(CoachView view) {
        Map<String, List<Thing>> panels = new LinkedHashMap<>();
        for (String kind : List.of("switch", "gauge")) {
            for (Thing thing : view.things(kind)) {
                thing.board()
                        .filter(board -> CoachView.audience(thing) != Audience.STAFF)
                        .ifPresent(board -> panels.computeIfAbsent(board.name(), it -> new ArrayList<>())
                                .add(thing));
            }
        }
        return panels;
    }

    /** Each as it looks when it is ON. */
    static List<PanelView.Cell> cells(CoachView view, String panel, Optional<Thing> here) {
        List<PanelView.Cell> cells = new ArrayList<>();
        for (Thing thing : panels(view).getOrDefault(panel, List.of())) {
            Board board = thing.board().orElseThrow();
            Optional<Switch> made =
                    Optional.of(thing).filter(Switch.class::isInstance).map(Switch.class::cast);
            List<Mark> face = made.flatMap(it -> face(it, Switch.ON_POSE))
                    .or(() -> thing instanceof Gauge gauge ? face(gauge) : Optional.empty())
                    .map(Drawing::marks)
                    .orElse(List.of());
            cells.add(new PanelView.Cell(
                    CoachView.target(thing).written(),
                    board.row(),
                    board.column(),
                    made.flatMap(it -> it.facts().find(Switch.PLATE)).orElseGet(thing::name),
                    face,
                    here.filter(it -> it.id().equals(thing.id()) && it.kind().equals(thing.kind()))
                            .isPresent()));
        }
        return cells;
    }
}
