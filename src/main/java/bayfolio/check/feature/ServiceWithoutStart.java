package bayfolio.check.feature;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.model.Service;
import bayfolio.model.Unit;
import java.util.Map;
import java.util.stream.Stream;

/** Flags an interval of service work of which nobody can tell when it ends, as it is not said when it began. */
public final class ServiceWithoutStart implements Rule {
    private static final Map<Key<?>, Key<?>> STARTS = Map.of(
            Service.EVERY_DAYS, Service.LAST,
            Service.EVERY_DISTANCE, Service.LAST_ODOMETER,
            Service.EVERY_HOURS, Service.LAST_HOURS);

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().facts().all(Unit.SERVICES).stream()
                .filter(service -> service.facts().whole())
                .flatMap(ServiceWithoutStart::check);
    }

    private static Stream<Finding> check(Service service) {
        return Service.SHAPE.keys().stream()
                .filter(every -> STARTS.containsKey(every) && service.facts().has(every))
                .flatMap(every -> Stream.ofNullable(STARTS.get(every))
                        .filter(last -> !service.facts().has(last))
                        .map(last -> Finding.warning(
                                        "service-without-start",
                                        service.facts().at(every),
                                        "`%s` of service `%s` has no beginning: there is no `%s`"
                                                .formatted(
                                                        every.name(),
                                                        service.facts().get(Service.WHAT),
                                                        last.name()))
                                .mend("State `" + last.name() + "` from the service book, or take the interval out.")));
    }
}
