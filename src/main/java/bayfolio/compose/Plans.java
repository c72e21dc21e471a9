package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.From;
import bayfolio.document.Stamp;
import bayfolio.drawing.Drawing;
import bayfolio.drawing.Mark;
import bayfolio.drawing.PlanView;
import bayfolio.measure.Meters;
import bayfolio.model.Compartment;
import bayfolio.model.Door;
import bayfolio.model.Side;
import bayfolio.model.Size;
import bayfolio.model.Slide;
import bayfolio.model.Spot;
import bayfolio.model.Thing;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The coach from above: doors and what slides out, by their codes; what counts in danger; or where one thing is. */
final class Plans {
    /** What a renter looks for in danger, by its role. */
    private static final Map<String, String> IN_DANGER = Map.of(
            "fire-extinguisher", "extinguisher",
            "first-aid-kit", "aid",
            "lp-main-valve", "gas",
            "gas-cylinder-valve", "gas",
            "house-battery-switch", "battery",
            "coach-main-breaker", "main");

    private final CoachView view;
    private final SideDrawings sides;

    Plans(CoachView view) {
        this.view = view;
        this.sides = new SideDrawings(view);
    }

    /** All doors, by their codes. */
    Optional<Content> of(Stamp stamp) {
        List<Thing> things = walls();
        if (things.isEmpty()) {
            return Optional.empty();
        }
        List<PlanView.Part> parts = new ArrayList<>();
        for (Thing thing : things) {
            Side side = thing.spot().flatMap(Spot::side).orElseThrow();
            parts.add(part(thing, sides.label(thing, side), sides.fill(thing)));
        }
        return Optional.of(new Content.Drawn(
                stamp.from(From.fact(view.unit().size(), Size.LENGTH)),
                view.word("drawing.plan"),
                drawing(parts, List.of(), walk(things, parts)),
                things.stream().map(CoachView::link).toList()));
    }

    /** Ways out, extinguishers and what is shut off in danger, as far as their places are measured. */
    Optional<Content> inDanger(Stamp stamp) {
        List<PlanView.Part> parts = new ArrayList<>();
        List<PlanView.Dot> dots = new ArrayList<>();
        List<Thing> shown = new ArrayList<>();
        Set<String> marked = new HashSet<>();
        view.coach()
                .walked()
                .filter(thing -> CoachView.audience(thing) != Audience.STAFF)
                .forEach(thing -> marking(thing).ifPresent(label -> {
                    Thing seen =
                            view.coach().around(thing).<Thing>map(bay -> bay).orElse(thing);
                    Optional<Spot> spot =
                            seen.spot().filter(it -> it.fromFront().isPresent());
                    // Two of a kind in one locker are one mark.
                    if (spot.isPresent() && marked.add(label + " " + (seen == thing ? thing.id() : seen.id()))) {
                        shown.add(thing);
                        if (inAWall(spot.get())) {
                            parts.add(part(seen, label, Mark.Fill.STRIPES)
                                    .of(CoachView.target(thing).written()));
                        } else {
                            dots.add(new PlanView.Dot(
                                    CoachView.target(thing).written(),
                                    label,
                                    meters(spot.get().middle()),
                                    aisle(),
                                    Mark.Fill.HERE));
                        }
                    }
                }));
        return shown.isEmpty()
                ? Optional.empty()
                : Optional.of(new Content.Drawn(
                        stamp.from(From.fact(view.unit().size(), Size.LENGTH)),
                        view.word("drawing.danger"),
                        drawing(parts, dots),
                        shown.stream().map(CoachView::link).toList()));
    }

    private Optional<String> marking(Thing thing) {
        if (thing instanceof Door) {
            return entry(thing)
                    ? Optional.of(view.word("drawing.door"))
                    : thing.facts().find(Door.EMERGENCY).filter(it -> it).map(it -> view.word("drawing.exit"));
        }
        return thing.roles().stream()
                .flatMap(role -> Optional.ofNullable(IN_DANGER.get(role)).stream())
                .findFirst()
                .map(word -> view.word("drawing." + word));
    }

    /** Nobody has measured what stands inside across the coach. */
    private double aisle() {
        return view.unit().size().facts().get(Size.WIDTH).value() / 2;
    }

    /** The roof in outline, to be marked by hand. */
    Content outline(Stamp stamp) {
        return new Content.Drawn(
                stamp.from(From.fact(view.unit().size(), Size.LENGTH)),
                view.word("drawing.plan"),
                drawing(List.of(), List.of()),
                List.of());
    }

    /** What is in a wall and measured along it. */
    private List<Thing> walls() {
        return Stream.of(Slide.SHAPE, Door.SHAPE, Compartment.SHAPE)
                .flatMap(shape -> view.things(shape.name()).stream())
                .filter(thing -> CoachView.audience(thing) != Audience.STAFF)
                .filter(thing -> thing.spot().filter(Plans::inAWall).isPresent())
                .toList();
    }

    private static boolean inAWall(Spot spot) {
        return wall(spot).isPresent()
                && spot.fromFront().isPresent()
                && spot.width().isPresent();
    }

    private static Optional<PlanView.Wall> wall(Spot spot) {
        return spot.side().flatMap(side -> switch (side) {
            case LEFT -> Optional.of(PlanView.Wall.LEFT);
            case RIGHT -> Optional.of(PlanView.Wall.RIGHT);
            case FRONT -> Optional.of(PlanView.Wall.FRONT);
            case REAR -> Optional.of(PlanView.Wall.REAR);
            case ROOF, UNDERFLOOR, INSIDE -> Optional.empty();
        });
    }

    /** One thing among the walls; nothing where it is not measured. */
    Optional<Drawing> at(Thing thing) {
        Optional<Spot> spot = thing.spot().filter(it -> it.fromFront().isPresent());
        if (spot.isEmpty()) {
            return Optional.empty();
        }
        List<PlanView.Part> parts = doorsBut(thing);
        if (inAWall(spot.get())) {
            parts.add(part(thing, "", Mark.Fill.HERE));
            return Optional.of(drawing(parts, List.of()));
        }
        return Optional.of(drawing(
                parts,
                List.of(new PlanView.Dot(
                        CoachView.target(thing).written(), "", meters(spot.get().middle()), aisle(), Mark.Fill.HERE))));
    }

    /** What slides out, alone in its wall, out or in; nothing where it is not measured. */
    Optional<Drawing> slid(Slide slide, boolean out) {
        return slide.spot().filter(Plans::inAWall).map(spot -> {
            List<PlanView.Part> parts = doorsBut(slide);
            PlanView.Part part = part(slide, "", Mark.Fill.HERE);
            parts.add(out ? part : part.in());
            return drawing(parts, List.of());
        });
    }

    /** By which one knows where one is. */
    private List<PlanView.Part> doorsBut(Thing thing) {
        List<PlanView.Part> parts = new ArrayList<>();
        for (Thing door : walls()) {
            if (door instanceof Door && !door.id().equals(thing.id())) {
                parts.add(part(door, entry(door) ? view.word("drawing.door") : "", Mark.Fill.NONE));
            }
        }
        return parts;
    }

    private static boolean entry(Thing door) {
        return door.facts().all(door.identity().roles()).contains("entry-door");
    }

    private Drawing drawing(List<PlanView.Part> parts, List<PlanView.Dot> dots) {
        return drawing(parts, dots, Optional.empty());
    }

    /** @param walk the door from which a way round the coach is shown */
    private Drawing drawing(List<PlanView.Part> parts, List<PlanView.Dot> dots, Optional<PlanView.Part> walk) {
        Size size = view.unit().size();
        return PlanView.of(
                size.facts().get(Size.LENGTH).value(),
                size.facts().get(Size.WIDTH).value(),
                parts,
                dots,
                walk);
    }

    /** In one of the long walls, along which one walks. */
    private static Optional<PlanView.Part> walk(List<Thing> walls, List<PlanView.Part> parts) {
        return IntStream.range(0, walls.size())
                .filter(it -> walls.get(it) instanceof Door && entry(walls.get(it)))
                .mapToObj(parts::get)
                .filter(part -> part.wall() == PlanView.Wall.LEFT || part.wall() == PlanView.Wall.RIGHT)
                .findFirst();
    }

    private PlanView.Part part(Thing thing, String label, Mark.Fill fill) {
        Spot spot = thing.spot().orElseThrow();
        return new PlanView.Part(
                CoachView.target(thing).written(),
                label,
                wall(spot).orElseThrow(),
                meters(spot.fromFront()),
                meters(spot.width()),
                thing instanceof Slide slide ? slide.facts().get(Slide.DEPTH).value() : 0,
                fill);
    }

    private static double meters(Optional<Meters> length) {
        return length.orElseThrow().value();
    }
}
