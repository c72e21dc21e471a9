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
    public Amount print(Liters volume, MeasureSystem first) {
        return Amount.both(
                Amount.of(coarse(volume.gallons()), Symbol.GALLON),
                Amount.of(coarse(volume.value()), Symbol.LITER),
                first);
    }

    /** {@code 1,240 lb (562 kg)}: whole ones. */
    public Amount print(Kilograms weight, MeasureSystem first) {
        return Amount.both(
                Amount.of(print(weight.pounds(), 0), Symbol.POUND),
                Amount.of(print(weight.value(), 0), Symbol.KILOGRAM),
                first);
    }

    /** {@code 27 ft 6 in (8.38 m)}: to the inch and the centimeter. */
    public Amount print(Meters length, MeasureSystem first) {
        return Amount.both(length(length, MeasureSystem.US), length(length, MeasureSystem.METRIC), first);
    }

    private Amount length(Meters length, MeasureSystem system) {
        return switch (this) {
            case DOWN -> length.roundedDown(system);
            case UP -> length.roundedUp(system);
            case NEAREST -> length.amount(system);
        };
    }

    /** {@code 0.53 gal/h (2.1 L/h)}: hundredths of gallons, as plates have them. */
    public Amount print(LitersPerHour flow, MeasureSystem first) {
        return Amount.both(
                print(flow.gallons(), 2, Symbol.GALLON_PER_HOUR), print(flow.value(), 1, Symbol.LITER_PER_HOUR), first);
    }

    /** A figure of one unit, with so many decimals. */
    public Amount print(double value, int decimals, Symbol unit) {
        return Amount.of(print(value, decimals), unit);
    }

    /** {@code 25.4 A}. */
    public Amount print(Amps current) {
        return print(current.value(), 1, Symbol.AMPERE);
    }

    /** {@code 114.3 V}. */
    public Amount print(Volts voltage) {
        return print(voltage.value(), 1, Symbol.VOLT);
    }

    /** {@code 1,740 W}. */
    public Amount print(Watts power) {
        return print(power.value(), 0, Symbol.WATT);
    }

    /** {@code 112 Ah}: whole ones, tenths below ten. */
    public Amount print(AmpHours charge) {
        return Amount.of(coarse(charge.value()), Symbol.AMPERE_HOUR);
    }

    /** {@code 63 %}. */
    public Amount print(Share share) {
        return print(100 * share.value(), 0, Symbol.PERCENT);
    }

    /** {@code 3.2 h}. */
    public Amount hours(Seconds time) {
        return print(time.value() / 3600, 1, Symbol.HOUR);
    }

    /** {@code 3.2 days}, {@code 11 days}: tenths below ten. */
    public Amount days(Seconds time) {
        return Amount.of(coarse(time.value() / 86_400), Symbol.DAY);
    }

    /** In minutes, hours or days, whichever suits: {@code 15 min}, {@code 5.0 h}, {@code 3.1 days}. */
    public Amount time(Seconds time) {
        if (time.value() < 3600) {
            return print(time.value() / 60, 0, Symbol.MINUTE);
        }
        return time.value() < 48 * 3600 ? hours(time) : days(time);
    }

    /** To the hundredth below one ampere, for that runs all night. */
    public Amount small(Amps current) {
        return current.value() < 1 ? print(current.value(), 2, Symbol.AMPERE) : print(current);
    }

    private String coarse(double value) {
        return print(value, Math.abs(value) < 10 ? 1 : 0);
    }
}
