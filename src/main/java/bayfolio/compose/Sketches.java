package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Sketch;
import bayfolio.drawing.Drawing;
import bayfolio.drawing.Face;
import bayfolio.drawing.Mark;
import bayfolio.drawing.PanelView;
import bayfolio.fact.Key;
import bayfolio.model.Board;
import bayfolio.model.Compartment;
import bayfolio.model.Pose;
import bayfolio.model.Switch;
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
        return face(made, poses)
                .map(drawing -> new Sketch(
                        name(made) + "-" + state,
                        state,
                        made.name() + ": " + view.word("handling.look." + state),
                        drawing));
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
