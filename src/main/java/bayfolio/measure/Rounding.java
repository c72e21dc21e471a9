package bayfolio.measure;

import java.math.BigDecimal;

/**
 * To which side a worked-out figure is rounded when it is shown: to the one on which nobody is hurt. What may still be
 * loaded is shown as less, what a hose must span as more.
 *
 * <p>The number of decimals is fixed, and thousands are parted by commas, so that the browser prints the same digits.
 */
public enum Rounding {
    DOWN,
    UP,
    NEAREST;

    /** A millionth of the last digit shown is a slip of the arithmetic, not a reason to go to the next one. */
    private static final double SLIP = 1e-6;

    /**
     * @param decimals from 0 to 3
     * @throws IllegalArgumentException if the value is no finite number
     */
    public String print(double value, int decimals) {
        Figure.requireFinite(value);
        double factor = Math.pow(10, decimals);
        double steps = steps(value * factor);
        // Adding nothing makes a negative zero a plain one.
        return Figure.withCommas(new BigDecimal(steps + 0.0)
                .movePointLeft(decimals)
                .setScale(decimals)
                .toPlainString());
    }

    private double steps(double exact) {
        return switch (this) {
            case DOWN -> Math.floor(exact + SLIP);
            case UP -> Math.ceil(exact - SLIP);
            case NEAREST -> Math.floor(exact + 0.5 + SLIP);
        };
    }

    /** {@code 26 gal (98 L)}: whole ones, tenths below ten. */
    public String print(Liters volume, MeasureSystem first) {
        return both(coarse(volume.gallons()) + " gal", coarse(volume.value()) + " L", first);
    }

    /** {@code 1,240 lb (562 kg)}: whole ones. */
    public String print(Kilograms weight, MeasureSystem first) {
        return both(print(weight.pounds(), 0) + " lb", print(weight.value(), 0) + " kg", first);
    }

    /** {@code 27 ft 6 in (8.38 m)}: to the inch and the centimeter. */
    public String print(Meters length, MeasureSystem first) {
        return both(length(length, MeasureSystem.US), length(length, MeasureSystem.METRIC), first);
    }

    private String length(Meters length, MeasureSystem system) {
        return switch (this) {
            case DOWN -> length.roundedDown(system);
            case UP -> length.roundedUp(system);
            case NEAREST -> length.in(system);
        };
    }

    /** {@code 25.4 A}. */
    public String print(Amps current) {
        return print(current.value(), 1) + " A";
    }

    /** {@code 114.3 V}. */
    public String print(Volts voltage) {
        return print(voltage.value(), 1) + " V";
    }

    /** {@code 1,740 W}. */
    public String print(Watts power) {
        return print(power.value(), 0) + " W";
    }

    /** {@code 112 Ah}: whole ones, tenths below ten. */
    public String print(AmpHours charge) {
        return coarse(charge.value()) + " Ah";
    }

    /** {@code 63 %}. */
    public String print(Share share) {
        return print(100 * share.value(), 0) + " %";
    }

    /** {@code 3.2 h}. */
    public String hours(Seconds time) {
        return print(time.value() / 3600, 1) + " h";
    }

    /** {@code 3.2 days}, {@code 11 days}: tenths below ten. */
    public String days(Seconds time) {
        String days = coarse(time.value() / 86_400);
        return days + (days.equals("1.0") ? " day" : " days");
    }

    private String coarse(double value) {
        return print(value, Math.abs(value) < 10 ? 1 : 0);
    }

    private static String both(String us, String metric, MeasureSystem first) {
        return first == MeasureSystem.US ? us + " (" + metric + ")" : metric + " (" + us + ")";
    }
}
