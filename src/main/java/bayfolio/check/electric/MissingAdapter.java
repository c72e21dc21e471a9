package bayfolio.check.electric;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.measure.Amps;
import bayfolio.model.Adapter;
import bayfolio.model.Supply;
import bayfolio.model.Unit;
import bayfolio.procedure.Procedure;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import bayfolio.reckon.power.Shore;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Flags a smaller outlet that the handbook offers and that the coach cannot plug into: a shore
 * supply smaller than its cord without an adapter, or a procedure for a smaller outlet while every
 * adapter for it leads to one that is no smaller.
 */
public final class MissingAdapter implements Rule {
    private static final String ROLE = "small-supply-adapter";

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        return Shore.size(unit).stream()
                .flatMap(size -> Stream.concat(
                        Shore.of(unit).stream().flatMap(supply -> check(supply, size, unit).stream()),
                        coach.procedures().stream().flatMap(it -> check(it, size, coach).stream())));
    }

    private static Optional<Finding> check(Supply supply, Amps size, Unit unit) {
        Amps amps = supply.facts().get(Supply.AMPS);
        boolean adapter = Shore.adapters(unit).stream()
                .anyMatch(it -> it.facts().get(Adapter.FROM).equals(amps));
        return adapter || !size.exceeds(amps)
                ? Optional.empty()
                : Optional.of(Finding.error(
                                "missing-adapter",
                                supply.facts().at(Supply.AMPS),
                                "supply `%s` is an outlet of %s, the cord of this coach has a plug for %s, and no adapter fits between"
                                        .formatted(
                                                supply.id(),
                                                amps.in(unit.region().first()),
                                                size.in(unit.region().first())))
                        .mend("Describe the adapter under `adapters`, or leave the supply out."));
    }

    private static Optional<Finding> check(Procedure procedure, Amps size, CheckedCoach coach) {
        List<Adapter> offered = offered(procedure, coach);
        boolean smaller =
                offered.stream().anyMatch(it -> size.exceeds(it.facts().get(Adapter.FROM)));
        return offered.isEmpty() || smaller
                ? Optional.empty()
                : Optional.of(Finding.error(
                                "missing-adapter",
                                offered.get(0).facts().at(Adapter.FROM),
                                "procedure `%s` offers an outlet smaller than %s, and adapter `%s` leads to one of %s"
                                        .formatted(
                                                procedure.id(),
                                                print(size, coach),
                                                offered.get(0).id(),
                                                print(offered.get(0).facts().get(Adapter.FROM), coach)))
                        .mend("Take the role `small-supply-adapter` from it, or correct `from`."));
    }

    /** The adapters for a smaller outlet that a procedure speaks of, in reading order. */
    private static List<Adapter> offered(Procedure procedure, CheckedCoach coach) {
        return procedure
                .links()
                .map(Inline.Link::target)
                .filter(Target.OfThing.class::isInstance)
                .map(Target.OfThing.class::cast)
                .filter(target -> target.kind().equals(Adapter.SHAPE.name()))
                .flatMap(target -> coach.coach().thing(target.kind(), target.id()).stream())
                .filter(adapter -> adapter.roles().contains(ROLE))
                .map(Adapter.class::cast)
                .toList();
    }

    private static String print(Amps amps, CheckedCoach coach) {
        return amps.in(coach.unit().region().first());
    }
}
