package bayfolio.reckon.clearance;

import bayfolio.measure.Amount;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Meters;
import bayfolio.measure.Rounding;
import bayfolio.measure.Symbol;
import bayfolio.reckon.Published;
import bayfolio.reckon.Table;

/**
 * Whether a coach goes under a sign.
 *
 * @param height of its highest hard part
 * @param margin what must stay free above it; a choice of this handbook and nobody else's rule
 */
public record Clearance(Meters height, Meters margin) {
    static final Table TABLE = Table.read("road");

    /** What old signs may have lost to new pavement. */
    private static final Published<Meters> MARGIN_US = TABLE.quantity("margin.north-america", Meters.SCALE);

    private static final Published<Meters> MARGIN_METRIC = TABLE.quantity("margin.europe", Meters.SCALE);

    private static final double INCH = 0.0254;
    private static final double TENTH = 0.1;
    private static final double SLIP = 1e-9;

    public static Clearance of(Meters height, MeasureSystem signs) {
        return new Clearance(height, usualMargin(signs).value());
    }

    public static Published<Meters> usualMargin(MeasureSystem signs) {
        return switch (signs) {
            case US -> MARGIN_US;
            case METRIC -> MARGIN_METRIC;
        };
    }

    /** What is left under a sign; below zero where the coach would hit. Compared exactly, rounded only when shown. */
    public Meters under(Meters sign) {
        return sign.minus(height);
    }

    public boolean fits(Meters sign) {
        return under(sign).value() >= margin.value() - SLIP;
    }

    /** The lowest sign to drive under: height and margin, up to the inch or the tenth of a meter that signs show. */
    public Meters lowestSign(MeasureSystem signs) {
        double step = step(signs);
        return new Meters(Math.ceil((height.value() + margin.value() - SLIP) / step) * step);
    }

    /** A length in short, as signs tell it, never less than it is: {@code 12 ft 5 in}; {@code 3.8 m}. */
    public static Amount card(Meters length, MeasureSystem system) {
        return switch (system) {
            case US -> length.roundedUp(MeasureSystem.US);
            case METRIC -> Rounding.UP.print(length.value(), 1, Symbol.METER);
        };
    }

    /** A limit as a sign of the system shows it, never more than it is. */
    public static Meters asSigned(Meters limit, MeasureSystem signs) {
        double step = step(signs);
        return new Meters(Math.floor((limit.value() + SLIP) / step) * step);
    }

    private static double step(MeasureSystem signs) {
        return switch (signs) {
            case US -> INCH;
            case METRIC -> TENTH;
        };
    }
}
