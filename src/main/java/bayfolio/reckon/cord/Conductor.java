package bayfolio.reckon.cord;

import bayfolio.measure.Amount;
import bayfolio.measure.SquareMillimeters;
import bayfolio.measure.Symbol;
import bayfolio.reckon.Published;
import bayfolio.reckon.Table;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One conductor of a flexible cord, as a published table has it. A fine-stranded cord has about 15 % more resistance
 * than its copper by itself, so nothing is worked out from the cross-section.
 *
 * @param row of the table: its size, {@code 10 AWG}, and ohms for a length
 * @param area of the copper
 * @param ohmsPerMeter as the table has it
 * @param celsius the temperature that the table is for
 */
public record Conductor(Published<Double> row, SquareMillimeters area, double ohmsPerMeter, double celsius) {
    private static final Table TABLE = Table.read("conductors");

    /** Of copper at 20 degrees Celsius, a kelvin: handbook, p. 970. */
    private static final double COEFFICIENT = 0.00393;

    /** As warm as a metric cord may get at full load; the American table is for warm copper already. */
    public static final double WARM = 70;

    /** A size written with fewer digits is still the size of the table. */
    private static final double SAME = 0.005;

    private static final double THOUSAND_FEET = 304.8;

    /** From thin to thick; the resistance falls all the way. */
    public static final List<Conductor> TABLES =
            TABLE.figures().stream().map(Conductor::read).toList();

    /** The one of a size as the tables write it. */
    static Conductor read(String size) {
        Published<Double> row = TABLE.number(size);
        double length = TABLE.column(size, "per").endsWith("ft") ? THOUSAND_FEET : 1000;
        return new Conductor(
                row,
                new SquareMillimeters(Double.parseDouble(TABLE.column(size, "area"))),
                row.value() / length,
                Double.parseDouble(TABLE.column(size, "celsius")));
    }

    /** The size of the tables, or the next smaller one; none for what is thinner than all of them. */
    public static Optional<Conductor> of(SquareMillimeters stated) {
        return TABLES.stream()
                .filter(listed -> listed.area.value() <= stated.value() * (1 + SAME))
                .max(Comparator.comparingDouble(listed -> listed.area.value()));
    }

    public Amount size() {
        String written = row.id().substring(row.id().indexOf('/') + 1);
        int space = written.indexOf(' ');
        return Amount.of(written.substring(0, space), written.endsWith("AWG") ? Symbol.AWG : Symbol.SQUARE_MILLIMETER);
    }

    public boolean is(SquareMillimeters stated) {
        return Math.abs(stated.value() / area.value() - 1) <= SAME;
    }

    /** R2 = R1 (1 + a (t2 - 20)) / (1 + a (t1 - 20)). */
    public double ohmsPerMeterAt(double other) {
        return ohmsPerMeter * (1 + COEFFICIENT * (other - 20)) / (1 + COEFFICIENT * (celsius - 20));
    }

    /** At full load: never colder than the table, so that the drop is not told too small. */
    public double warm() {
        return ohmsPerMeterAt(Math.max(WARM, celsius));
    }
}
