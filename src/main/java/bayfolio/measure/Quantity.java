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
    Amount amount(MeasureSystem system);

    /** The same in a message to a writer. */
    default String in(MeasureSystem system) {
        return amount(system).toString();
    }

    /**
     * The figure in both systems, such as {@code 12 ft 11 in (3.94 m)}; once where both
     * read the same, as amps do.
     */
    default Amount both(MeasureSystem first) {
        return Amount.both(amount(first), amount(first.other()));
    }

    /**
     * The same as a writer put it, with its unit and its digits, and then in the other system: {@code 92 gal (348 L)}.
     *
     * @param written what this quantity was read from
     */
    default Amount asWritten(String written) {
        String spaced = WrittenUnit.spaced(written);
        MeasureSystem system = WrittenUnit.system(spaced);
        return new Amount(Amount.written(spaced).pieces(), both(system).other());
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
