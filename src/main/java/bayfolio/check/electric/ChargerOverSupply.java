package bayfolio.check.electric;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Facts;
import bayfolio.finding.Finding;
import bayfolio.measure.Amps;
import bayfolio.model.Charger;
import bayfolio.model.Circuit;
import bayfolio.model.Unit;
import bayfolio.reckon.power.Draw;
import bayfolio.reckon.power.Shore;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Flags a battery charger that alone draws more than the smallest outlet that the coach can be
 * plugged into, at the charging current set for a small supply where there is one.
 */
public final class ChargerOverSupply implements Rule {
    private static final String ROLE = "charger";

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        Optional<Amps> smallest = Shore.smallest(unit);
        double share = limited(unit);
        return Draw.all(unit)
                .filter(draw -> draw.load().roles().contains(ROLE)
                        && draw.circuit().facts().get(Circuit.CURRENT) == Circuit.Current.AC)
                .flatMap(draw -> smallest.flatMap(it -> check(draw, share, it)).stream());
    }

    /** The part of its full draw that is left when the charging current is set down. */
    private static double limited(Unit unit) {
        Optional<Facts> charger = unit.facts().find(Unit.CHARGER).map(Charger::facts);
        double rating =
                charger.flatMap(it -> it.find(Charger.RATING)).map(Amps::value).orElse(0.0);
        return charger.flatMap(it -> it.find(Charger.LIMIT))
                .filter(limit -> rating > 0)
                .map(limit -> Math.min(1, limit.value() / rating))
                .orElse(1.0);
    }

    private static Optional<Finding> check(Draw draw, double share, Amps smallest) {
        Amps needs = new Amps(share * draw.needs().value());
        return Draw.over(needs, smallest)
                ? Optional.of(Finding.warning(
                                "charger-over-supply",
                                draw.at(),
                                "load `%s` takes %s%s%s, and the smallest outlet of this coach gives %s"
                                        .formatted(
                                                draw.load().id(),
                                                needs.in(draw.region().first()),
                                                share < 1 ? " at its charging limit" : "",
                                                draw.raised() ? " as a continuous load" : "",
                                                smallest.in(draw.region().first())))
                        .mend("State the charging current to set there as `charger.limit`."))
                : Optional.empty();
    }
}
