package bayfolio.check.electric;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Facts;
import bayfolio.finding.Finding;
import bayfolio.measure.Watts;
import bayfolio.model.Inverter;
import bayfolio.model.Load;
import bayfolio.model.Unit;
import bayfolio.reckon.power.Draw;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Flags a load that is said to run from the inverter and draws more than the inverter gives, or
 * that starts with more than it gives for a moment.
 */
public final class InverterTooSmall implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        Optional<Facts> inverter = unit.facts().find(Unit.INVERTER).map(Inverter::facts);
        return Draw.all(unit)
                .filter(Draw::onInverter)
                .flatMap(draw -> inverter.flatMap(it -> check(draw, it)).stream());
    }

    private static Optional<Finding> check(Draw draw, Facts inverter) {
        Optional<Watts> rating = inverter.find(Inverter.RATING).filter(limit -> Draw.over(draw.watts(), limit));
        return rating.map(limit -> Finding.error(
                                "inverter-too-small",
                                draw.load().facts().at(draw.load().facts().has(Load.WATTS) ? Load.WATTS : Load.AMPS),
                                "load `%s` draws %s, and the inverter that it is said to run from gives %s"
                                        .formatted(
                                                draw.load().id(),
                                                draw.watts().in(draw.region().first()),
                                                limit.in(draw.region().first())))
                        .mend("Read both plates again, or say `on-inverter: no`."))
                .or(() -> start(draw, inverter));
    }

    private static Optional<Finding> start(Draw draw, Facts inverter) {
        double volts = Draw.volts(draw.load(), draw.circuit()).value();
        Optional<Watts> start = draw.load().facts().find(Load.START_AMPS).map(amps -> new Watts(amps.value() * volts));
        return inverter.find(Inverter.SURGE)
                .filter(surge -> start.filter(it -> Draw.over(it, surge)).isPresent())
                .map(surge -> Finding.warning(
                                "inverter-too-small",
                                draw.load().facts().at(Load.START_AMPS),
                                "load `%s` starts with %s, and the inverter that it is said to run from gives %s for a moment"
                                        .formatted(
                                                draw.load().id(),
                                                start.orElseThrow()
                                                        .in(draw.region().first()),
                                                surge.in(draw.region().first())))
                        .mend("Try it on the batteries alone, or say `on-inverter: no`."));
    }
}
