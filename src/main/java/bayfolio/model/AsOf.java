package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.FactVisitor;
import bayfolio.fact.Type;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The day as of which a fleet is looked at, where none is given: the newest day in its own files, so that what comes of
 * them is the same whenever it is made.
 */
final class AsOf {
    /** A day so far after all others is a slip, if there are enough others to tell by. */
    private static final long ALONE = 3L * 365;

    private static final int ENOUGH = 5;

    private AsOf() {}

    /**
     * @return empty where the files state no day that was
     */
    static Optional<LocalDate> of(FleetFacts fleet, List<Unit> units, Collection<HireMarks> marks) {
        List<LocalDate> days = new ArrayList<>();
        collect(fleet, days);
        units.forEach(unit -> collect(unit, days));
        marks.forEach(left -> collect(left, days));
        days.sort(Comparator.reverseOrder());
        // A single year typed wrong must not make all else look old.
        while (days.size() > ENOUGH && ChronoUnit.DAYS.between(days.get(1), days.get(0)) > ALONE) {
            days.remove(0);
        }
        return days.stream().findFirst();
    }

    private static void collect(Described file, List<LocalDate> days) {
        FactVisitor.of(file, (record, key, type, value) -> {
            if (type instanceof Type.Day && key.past()) {
                days.add((LocalDate) value.value());
            }
        });
    }
}
