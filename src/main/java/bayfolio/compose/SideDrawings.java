package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.From;
import bayfolio.document.Stamp;
import bayfolio.drawing.Drawing;
import bayfolio.drawing.Mark;
import bayfolio.drawing.SideView;
import bayfolio.fact.Type;
import bayfolio.measure.Meters;
import bayfolio.model.Access;
import bayfolio.model.CoachSystem;
import bayfolio.model.Compartment;
import bayfolio.model.Connection;
import bayfolio.model.Door;
import bayfolio.model.HireMark;
import bayfolio.model.Side;
import bayfolio.model.Size;
import bayfolio.model.Slide;
import bayfolio.model.Spot;
import bayfolio.model.Thing;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The coach from all four sides, with its doors, to scale: only what the description has measured is drawn. */
final class SideDrawings {
    private static final List<Side> SIDES = List.of(Side.LEFT, Side.RIGHT, Side.FRONT, Side.REAR);

    /** What flows, and what a hose, a cord or a hand is brought to it for; of all else the code says enough. */
    private static final Set<CoachSystem> FLOWING =
            EnumSet.of(CoachSystem.POWER, CoachSystem.WATER, CoachSystem.WASTE, CoachSystem.GAS, CoachSystem.HEAT);

    private final CoachView view;

    SideDrawings(CoachView view) {
        this.view = view;
    }

    /** Those of sides on which there is something. */
    List<Content> of(Stamp stamp) {
        return SIDES.stream()
                .flatMap(side -> of(stamp.child(Type.word(side)), side).stream())
                .toList();
    }

    private Optional<Content> of(Stamp stamp, Side side) {
        List<Thing> things = on(side);
        if (things.isEmpty()) {
            return Optional.empty();
        }
        List<Thing> joined = joined(side);
        Drawing drawing = drawing(
                side,
                things.stream().map(thing -> opening(thing, side)).toList(),
                joined.stream().map(this::joint).toList());
        return Optional.of(new Content.Drawn(
                stamp.from(From.fact(view.unit().size(), Size.LENGTH)),
                view.word("drawing." + Type.word(side)),
                drawing,
                Stream.concat(things.stream(), joined.stream())
                        .map(CoachView::link)
                        .toList()));
    }

    /** All sides in outline, to be marked by hand, with what earlier hires left by their numbers in a list. */
    List<Content> outlines(Stamp stamp, List<HireMark> marks) {
        List<Content> outlines = new ArrayList<>();
        for (Side side : SIDES) {
            List<SideView.Spot> spots = spots(side, marks);
            List<SideView.Opening> openings = on(side).stream()
                    // Where marks have numbers, doors have none that could be taken for them.
                    .map(thing -> opening(thing, spots.isEmpty() ? label(thing, side) : "", Mark.Fill.NONE, ""))
                    .toList();
            outlines.add(new Content.Drawn(
                    stamp.child(Type.word(side)).from(From.fact(view.unit().size(), Size.LENGTH)),
                    view.word("drawing." + Type.word(side)),
                    SideView.outline(body(side), openings, spots),
                    List.of()));
        }
        return outlines;
    }

    private static List<SideView.Spot> spots(Side side, List<HireMark> marks) {
        List<SideView.Spot> spots = new ArrayList<>();
        int number = 0;
        for (HireMark mark : marks) {
            number++;
            Optional<Meters> from = mark.facts().find(HireMark.FROM_FRONT);
            Optional<Meters> height = mark.facts().find(HireMark.HEIGHT);
            if (mark.facts().get(HireMark.SIDE) == side && from.isPresent() && height.isPresent()) {
                spots.add(new SideView.Spot(
                        Integer.toString(number),
                        from.get().value(),
                        height.get().value()));
            }
        }
        return spots;
    }

    /** Connections that stand in the open on that side, and belong to a system whose sign is known. */
    private List<Thing> joined(Side side) {
        return view.things(Connection.SHAPE.name()).stream()
                .filter(thing -> CoachView.audience(thing) != Audience.STAFF)
                .filter(thing -> view.coach().around(thing).isEmpty())
                .filter(thing -> !symbol(thing).isEmpty())
                .filter(thing -> thing.spot()
                        .filter(spot -> spot.side().equals(Optional.of(side))
                                && spot.fromFront().isPresent()
                                && spot.height().isPresent())
                        .isPresent())
                .toList();
    }

    private SideView.Joint joint(Thing thing) {
        Spot spot = thing.spot().orElseThrow();
        return new SideView.Joint(
                CoachView.target(thing).written(), symbol(thing), meters(spot.middle()), meters(spot.middleHeight()));
    }

    private String symbol(Thing thing) {
        return view.coach()
                .system(thing)
                .filter(FLOWING::contains)
                .map(system -> "system-" + Type.word(system))
                .orElse("");
    }

    private List<Thing> on(Side side) {
        return Stream.of(Slide.SHAPE, Door.SHAPE, Compartment.SHAPE)
                .flatMap(shape -> view.things(shape.name()).stream())
                .filter(thing -> CoachView.audience(thing) != Audience.STAFF)
                .filter(thing -> thing.spot().filter(spot -> drawn(spot, side)).isPresent())
                .toList();
    }

    private Drawing drawing(Side side, List<SideView.Opening> openings, List<SideView.Joint> joints) {
        return SideView.of(body(side), openings, joints);
    }

    private SideView.Body body(Side side) {
        Size size = view.unit().size();
        boolean along = side == Side.LEFT || side == Side.RIGHT;
        return new SideView.Body(
                size.facts().get(along ? Size.LENGTH : Size.WIDTH).value(),
                size.facts().get(Size.HEIGHT).value(),
                side == Side.RIGHT || side == Side.FRONT,
                size.facts().get(Size.LENGTH).value(),
                along ? axles(size) : List.of());
    }

    /** One thing on its side, with the doors beside it; nothing where it is not wholly measured. */
    Optional<Drawing> at(Thing thing) {
        Optional<Side> side =
                thing.spot().flatMap(Spot::side).filter(it -> drawn(thing.spot().orElseThrow(), it));
        return side.filter(SIDES::contains).map(it -> {
            List<SideView.Opening> openings = new ArrayList<>();
            for (Thing each : on(it)) {
                if (each instanceof Door && !each.id().equals(thing.id())) {
                    openings.add(opening(each, "", Mark.Fill.NONE, ""));
                }
            }
            openings.add(opening(thing, "", Mark.Fill.HERE, ""));
            return drawing(it, openings, List.of());
        });
    }

    /** What stands in the open on that side, wholly measured. */
    private static boolean drawn(Spot spot, Side side) {
        return spot.side().equals(Optional.of(side))
                && spot.fromFront().isPresent()
                && spot.width().isPresent()
                && spot.height().isPresent()
                && spot.tall().isPresent();
    }

    private static List<Double> axles(Size size) {
        List<Double> axles = new ArrayList<>();
        size.facts().find(Size.FRONT_OVERHANG).ifPresent(front -> {
            axles.add(front.value());
            size.facts().find(Size.WHEELBASE).ifPresent(base -> axles.add(front.value() + base.value()));
        });
        return axles;
    }

    private SideView.Opening opening(Thing thing, Side side) {
        return opening(thing, label(thing, side), fill(thing), symbol(thing));
    }

    private static SideView.Opening opening(Thing thing, String label, Mark.Fill fill, String symbol) {
        Spot spot = thing.spot().orElseThrow();
        return new SideView.Opening(
                CoachView.target(thing).written(),
                label,
                meters(spot.fromFront()),
                meters(spot.width()),
                meters(spot.height()),
                meters(spot.tall()),
                fill,
                thing instanceof Slide,
                symbol);
    }

    private static double meters(Optional<Meters> length) {
        return length.orElseThrow().value();
    }

    String label(Thing thing, Side side) {
        if (thing instanceof Door) {
            boolean in = thing.facts().all(thing.identity().roles()).contains("entry-door");
            boolean out = thing.facts().find(Door.EMERGENCY).orElse(false);
            return in ? view.word("drawing.door") : out ? view.word("drawing.exit") : "";
        }
        List<String> codes = DoorCode.all(thing.name());
        return codes.stream()
                .filter(code -> code.charAt(0) == letter(side))
                .findFirst()
                .orElseGet(() -> codes.stream().findFirst().orElse(""));
    }

    private static char letter(Side side) {
        return side == Side.REAR ? 'B' : side.name().charAt(0);
    }

    Mark.Fill fill(Thing thing) {
        return thing.facts()
                .find("access", Access.class)
                .map(access -> switch (access) {
                    case FREE -> Mark.Fill.PLAIN;
                    case TASK -> Mark.Fill.STRIPES;
                    case ON_CALL -> Mark.Fill.DOTS;
                    case STAFF -> Mark.Fill.CROSSES;
                })
                .orElse(Mark.Fill.NONE);
    }
}
