package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** Facts that are looked up at each coach: most are its own ({@link Shape#ofEachCoach}), and where a figure was measured, the day. */
public final class Own {
    /** Each with the records that it is asked of where it is left out. */
    private static final Map<Key<?>, Predicate<Facts>> ASKED = Map.ofEntries(
            Map.entry(Unit.NUMBER, record -> true),
            Map.entry(Size.MEASURED_ON, record -> true),
            Map.entry(Weights.AS_WEIGHED, record -> true),
            Map.entry(Weighing.ON, record -> true),
            Map.entry(Weighing.TOTAL, record -> true),
            Map.entry(Weighing.FRONT, record -> true),
            Map.entry(Weighing.REAR, record -> true),
            Map.entry(Weighing.PEOPLE, record -> true),
            Map.entry(Weighing.FRESH_WATER, record -> true),
            Map.entry(Weighing.HEATER_FULL, record -> false),
            Map.entry(Weighing.STATE, record -> true),
            Map.entry(Tires.AGE_CODE, record -> true),
            Map.entry(Gauge.REPLACE_BY, Own::isAlarm),
            Map.entry(Tank.MEASURED_ON, record -> false),
            Map.entry(Service.DUE, record -> false),
            Map.entry(Service.LAST, record -> record.ifRead(Service.EVERY_DAYS).isPresent()),
            Map.entry(
                    Service.LAST_ODOMETER,
                    record -> record.ifRead(Service.EVERY_DISTANCE).isPresent()),
            Map.entry(
                    Service.LAST_HOURS,
                    record -> record.ifRead(Service.EVERY_HOURS).isPresent()));

    public static final Set<Key<?>> KEYS = ASKED.keySet();

    private static final Place NOWHERE = Place.whole(new SourceFile("", ""));

    private Own() {}

    /** Whether a record that leaves it out ought to state it. */
    public static boolean asked(Facts record, Key<?> key) {
        return ASKED.getOrDefault(key, it -> false).test(record);
    }

    /** Whether a record of a shape that is not there yet ought to state it. */
    public static boolean asked(Shape<?> shape, Key<?> key) {
        return asked(Facts.unread(shape, NOWHERE), key);
    }

    private static boolean isAlarm(Facts gauge) {
        return gauge.shape()
                .key("roles")
                .flatMap(gauge::ifRead)
                .filter(roles -> roles.value().toString().contains("-alarm"))
                .isPresent();
    }
}
