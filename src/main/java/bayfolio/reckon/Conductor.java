package bayfolio.reckon;

import bayfolio.measure.SquareMillimeters;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One conductor of a flexible cord, as a published table has it. A fine-stranded cord has about 15 % more resistance
 * than its copper by itself, so nothing is worked out from the cross-section.
 *
 * @param size as the table has it: {@code 10 AWG}
 * @param area of the copper
 * @param ohmsPerMeter as the table has it
 * @param celsius the temperature that the table is for
 * @param source the table
 */
record Conductor(String size, SquareMillimeters area, double ohmsPerMeter, double celsius, String source) {
    /** Of copper at 20 degrees Celsius, a kelvin: handbook, p. 970. */
    private static final double COEFFICIENT = 0.00393;

    /** As warm as a metric cord may get at full load; the American table is for warm copper already. */
    static final double WARM = 70;

    /** A size written with fewer digits is still the size of the table. */
    private static final double SAME = 0.005;

    private static final String METRIC_TABLE = "IEC 60228, class 5, plain copper at 20 °C";
    private static final String AMERICAN_TABLE = "NEC chapter 9 table 8, stranded, uncoated, at 75 °C (167 °F)";

    /** From thin to thick; the resistance falls all the way. */
    static final List<Conductor> TABLES = List.of(
            american("16 AWG", 1.3090, 4.99),
            metric("1.5 mm²", 1.5, 13.3),
            american("14 AWG", 2.0809, 3.14),
            metric("2.5 mm²", 2.5, 7.98),
            american("12 AWG", 3.3088, 1.98),
            metric("4 mm²", 4, 4.95),
            american("10 AWG", 5.2612, 1.24),
            metric("6 mm²", 6, 3.30),
            american("8 AWG", 8.3656, 0.778),
            american("6 AWG", 13.3018, 0.491),
            american("4 AWG", 21.1506, 0.308));

    /** The size of the tables, or the next smaller one; none for what is thinner than all of them. */
    static Optional<Conductor> of(SquareMillimeters stated) {
        return TABLES.stream()
                .filter(listed -> listed.area.value() <= stated.value() * (1 + SAME))
                .max(Comparator.comparingDouble(listed -> listed.area.value()));
    }

    boolean is(SquareMillimeters stated) {
        return Math.abs(stated.value() / area.value() - 1) <= SAME;
    }

    /** R2 = R1 (1 + a (t2 - 20)) / (1 + a (t1 - 20)). */
    double ohmsPerMeterAt(double other) {
        return ohmsPerMeter * (1 + COEFFICIENT * (other - 20)) / (1 + COEFFICIENT * (celsius - 20));
    }

    /** At full load: never colder than the table, so that the drop is not told too small. */
    double warm() {
        return ohmsPerMeterAt(Math.max(WARM, celsius));
    }

    private static Conductor american(String size, double area, double ohmsPerThousandFeet) {
        return new Conductor(size, new SquareMillimeters(area), ohmsPerThousandFeet / 304.8, 75, AMERICAN_TABLE);
    }

    private static Conductor metric(String size, double area, double ohmsPerKilometer) {
        return new Conductor(size, new SquareMillimeters(area), ohmsPerKilometer / 1000, 20, METRIC_TABLE);
    }
}
