package bayfolio.measure;

import java.util.Optional;

/**
 * A measured or rated figure of a coach: a tank's volume, a breaker's current, a clearance height.
 *
 * <p>Each kind is a record named for the unit it is kept in; it is rounded only when printed. What
 * a writer may put in a description is told by its {@link Scale}.
 */
public sealed interface Quantity
        permits Meters,
                Kilograms,
                Liters,
                Watts,
                Volts,
                Amps,
                AmpHours,
                WattHours,
                Kilopascals,
                Celsius,
                Seconds,
                Share,
                LitersPerHour,
                KilometersPerHour,
                Degrees,
                SquareMillimeters,
                LitersPer100Kilometers {

    /** The figure in the unit the record is named for, always finite. */
    double value();

    /** What is measured, and the spellings it may be written in. */
    Scale<?> scale();

    /** The figure in a unit of the system, rounded half up to what a renter can use. */
    String in(MeasureSystem system);

    /**
     * The figure in both systems, such as {@code 12 ft 11 in (3.94 m)}; printed once where both
     * read the same, as amps do.
     */
    default String both(MeasureSystem first) {
        String here = in(first);
        String there = in(first.other());
        return here.equals(there) ? here : here + " (" + there + ")";
    }

    /**
     * The same as a writer put it, with its unit and its digits, and then in the other system: {@code 92 gal (348 L)}.
     *
     * @param written what this quantity was read from
     */
    default String asWritten(String written) {
        String spaced = WrittenUnit.spaced(written);
        MeasureSystem system = WrittenUnit.system(spaced);
        String here = in(system);
        String there = in(system.other());
        return here.equals(there) ? spaced : spaced + " (" + there + ")";
    }

    /**
     * The system in whose unit a writer put it; empty where both take the same, as for amps.
     *
     * @param written what this quantity was read from
     */
    default Optional<MeasureSystem> system(String written) {
        return in(MeasureSystem.US).equals(in(MeasureSystem.METRIC))
                ? Optional.empty()
                : Optional.of(WrittenUnit.system(WrittenUnit.spaced(written)));
    }
}
