package bayfolio.reckon;

import bayfolio.measure.Meters;
import bayfolio.measure.Seconds;
import bayfolio.model.Service;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * When work that comes round again is due: at whichever of these comes first.
 *
 * @param day empty where neither a day nor an interval of days is given
 * @param odometer likewise of distance
 * @param hours likewise of hours on its counter
 */
public record NextDue(Optional<LocalDate> day, Optional<Meters> odometer, Optional<Seconds> hours) {
    public static NextDue of(Service service) {
        return new NextDue(
                Stream.of(
                                service.facts().find(Service.DUE),
                                service.facts()
                                        .find(Service.EVERY_DAYS)
                                        .flatMap(days -> service.facts()
                                                .find(Service.LAST)
                                                .map(last -> last.plusDays(days))))
                        .flatMap(Optional::stream)
                        .min(Comparator.naturalOrder()),
                service.facts()
                        .find(Service.EVERY_DISTANCE)
                        .flatMap(every -> service.facts()
                                .find(Service.LAST_ODOMETER)
                                .map(last -> new Meters(last.value() + every.value()))),
                service.facts()
                        .find(Service.EVERY_HOURS)
                        .flatMap(every -> service.facts()
                                .find(Service.LAST_HOURS)
                                .map(last -> new Seconds(last.value() + every.value()))));
    }

    /** Without a start, or without an interval, nothing is due. */
    public boolean known() {
        return day.isPresent() || odometer.isPresent() || hours.isPresent();
    }
}
