package bayfolio.check.electric;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.measure.Amps;
import bayfolio.model.Circuit;
import bayfolio.model.Unit;
import bayfolio.reckon.power.Draw;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Flags a circuit that carries more than its breaker is rated for: by what always runs on it, or by
 * one load together with what always runs. What is fed through it counts, too, alone or always on.
 * What else is switched on together is up to the renter, who is told what never goes together.
 */
public final class CircuitOverBreaker implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        List<Draw> draws = Draw.all(unit).toList();
        return unit.circuits().stream()
                .flatMap(circuit -> check(
                        circuit,
                        draws.stream().filter(draw -> draw.passes(circuit)).toList()));
    }

    private static Stream<Finding> check(Circuit circuit, List<Draw> draws) {
        Amps breaker = circuit.facts().get(Circuit.BREAKER);
        List<Draw> always = fullerLeg(draws.stream().filter(Draw::alwaysOn).toList());
        boolean alone = draws.stream().anyMatch(draw -> Draw.over(draw.needs(), breaker));
        if (!alone && Draw.over(Draw.needs(always), breaker)) {
            return Stream.of(together(circuit, always, breaker));
        }
        return draws.stream().flatMap(draw -> check(draw, circuit, always, breaker).stream());
    }

    /** A breaker of both legs carries each of them by itself. */
    private static List<Draw> fullerLeg(List<Draw> draws) {
        return Stream.of(1, 2)
                .map(leg -> draws.stream()
                        .filter(draw -> draw.circuit()
                                .facts()
                                .find(Circuit.LEG)
                                .orElse(leg)
                                .equals(leg))
                        .toList())
                .max(Comparator.comparingDouble(on -> Draw.needs(on).value()))
                .orElseThrow();
    }

    private static Optional<Finding> check(Draw draw, Circuit circuit, List<Draw> always, Amps breaker) {
        if (Draw.over(draw.needs(), breaker)) {
            return Optional.of(Finding.error(
                            "circuit-over-breaker",
                            draw.at(),
                            "load `%s` draws %s%s, and the breaker of circuit `%s` is rated for %s"
                                    .formatted(
                                            draw.load().id(),
                                            print(draw.amps(), draw),
                                            draw.raised()
                                                    ? ", which counts as " + print(draw.needs(), draw)
                                                            + " since it is continuous"
                                                    : "",
                                            circuit.id(),
                                            print(breaker, draw)))
                    .mend("Read the plate of the load and the figure on the breaker handle again."));
        }
        List<Draw> both = Stream.concat(Stream.of(draw), always.stream()).toList();
        boolean direct = draw.circuit().id().equals(circuit.id());
        boolean over = direct && !draw.alwaysOn() && !always.isEmpty() && Draw.over(Draw.needs(both), breaker);
        return over && always.stream().noneMatch(it -> Draw.over(it.needs(), breaker))
                ? Optional.of(Finding.error(
                                "circuit-over-breaker",
                                draw.at(),
                                "load `%s` takes circuit `%s` to %s with what is always on (%s), and its breaker is rated for %s"
                                        .formatted(
                                                draw.load().id(),
                                                circuit.id(),
                                                print(Draw.needs(both), draw),
                                                names(always),
                                                print(breaker, draw)))
                        .mend("Read the plates and the figure on the breaker handle again."))
                : Optional.empty();
    }

    private static Finding together(Circuit circuit, List<Draw> always, Amps breaker) {
        Draw any = always.get(0);
        return Finding.error(
                        "circuit-over-breaker",
                        circuit.facts().at(Circuit.BREAKER),
                        "circuit `%s` always carries %s, which count as %s, and its breaker is rated for %s"
                                .formatted(
                                        circuit.id(),
                                        names(always),
                                        print(Draw.needs(always), any),
                                        print(breaker, any)))
                .mend("Read the figure on the breaker handle again, and which loads hang on it.");
    }

    private static String names(List<Draw> draws) {
        return draws.stream().map(draw -> "`" + draw.load().id() + "`").collect(Collectors.joining(" and "));
    }

    private static String print(Amps amps, Draw draw) {
        return amps.in(draw.region().first());
    }
}
