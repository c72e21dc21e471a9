package bayfolio.check.space;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Compartment;
import bayfolio.model.Slide;
import bayfolio.model.Spot;
import java.util.stream.Stream;

/** Flags a compartment below a slide-out that does not tell whether it can be opened then. */
public final class SlideOverDoor implements Rule {
    private static final double TOLERANCE_METERS = 0.02;

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().compartments().stream()
                .filter(compartment -> !compartment.facts().has(Compartment.CLEARANCE))
                .flatMap(compartment -> coach.unit().slides().stream()
                        .filter(slide -> over(slide, compartment))
                        .filter(slide ->
                                !compartment.facts().all(Compartment.BLOCKED_BY).contains(slide.id()))
                        .filter(slide -> known(compartment, coach))
                        .map(slide -> finding(slide, compartment)));
    }

    /** A name that does not exist is told elsewhere, and may be a misspelling of the slide. */
    private static boolean known(Compartment compartment, CheckedCoach coach) {
        return compartment.facts().all(Compartment.BLOCKED_BY).stream()
                .allMatch(
                        id -> coach.unit().things().anyMatch(thing -> thing.id().equals(id)));
    }

    private static boolean over(Slide slide, Compartment compartment) {
        Spot out = slide.spot().orElseThrow();
        Spot door = compartment.spot().orElseThrow();
        boolean side = out.side().equals(door.side())
                || out.side().equals(compartment.facts().find(Compartment.SECOND_DOOR));
        return side && Math.min(end(out), end(door)) - Math.max(start(out), start(door)) > TOLERANCE_METERS;
    }

    private static double start(Spot spot) {
        return spot.fromFront().orElseThrow().value();
    }

    private static double end(Spot spot) {
        return start(spot) + spot.width().orElseThrow().value();
    }

    private static Finding finding(Slide slide, Compartment compartment) {
        return Finding.warning(
                        "slide-over-door",
                        compartment.facts().has(Compartment.BLOCKED_BY)
                                ? compartment.facts().at(Compartment.BLOCKED_BY)
                                : compartment.at(),
                        "slide `" + slide.id() + "` comes out over compartment `" + compartment.id()
                                + "`, which has neither `blocked-by` for it nor `clearance`")
                .mend("Name the slide in `blocked-by`, or tell in `clearance` that the door opens below it.");
    }
}
