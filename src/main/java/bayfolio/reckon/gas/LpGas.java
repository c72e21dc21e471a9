package bayfolio.reckon.gas;

import bayfolio.measure.Kilograms;
import bayfolio.measure.Liters;
import bayfolio.measure.WattHours;
import bayfolio.measure.Watts;
import bayfolio.model.Region;
import bayfolio.reckon.Published;
import bayfolio.reckon.Table;

/**
 * What liquid propane holds. Gross figures count the heat of the steam in the exhaust, net ones do not, and they are 8 %
 * apart. Devices of North America are rated gross. European plates give the one or the other (EN 624 gross, EN 17082 net),
 * so the smaller one is taken there: gas then lasts longer than told, and never shorter.
 *
 * @param perLiter at 60 °F, or 15 °C
 */
public record LpGas(WattHours perLiter, WattHours perKilogram) {
    static final Table TABLE = Table.read("gas");

    /** Kilograms a liter at 15 °C; published from 0.504 to 0.51. */
    public static final double DENSITY =
            TABLE.number("density.kilograms-per-liter").value();

    /** British thermal units, from one supplier's property table; within 0.2 % of others. */
    public static final Published<Double> BTU_PER_GALLON = TABLE.number("gross.btu-per-gallon");

    /** The table's own density of 4.20 lb a gallon does not fit the two, so nothing is converted with it. */
    public static final Published<Double> BTU_PER_POUND = TABLE.number("gross.btu-per-pound");

    /** Kilowatt-hours. */
    public static final Published<Double> KWH_PER_KILOGRAM = TABLE.number("net.kilowatt-hours-per-kilogram");

    public static final LpGas GROSS = ofBtu(BTU_PER_GALLON.value(), BTU_PER_POUND.value());

    public static final LpGas NET = new LpGas(
            new WattHours(1000 * KWH_PER_KILOGRAM.value() * DENSITY), new WattHours(1000 * KWH_PER_KILOGRAM.value()));

    /** British thermal units (International Table) in a US gallon and in a pound. */
    static LpGas ofBtu(double perGallon, double perPound) {
        return new LpGas(
                WattHours.ofBtu(perGallon * new Liters(1).gallons()),
                WattHours.ofBtu(perPound * new Kilograms(1).pounds()));
    }

    /** What is reckoned with in a region. */
    public static LpGas of(Region region) {
        return switch (region) {
            case NORTH_AMERICA -> GROSS;
            case EUROPE, OCEANIA -> NET;
        };
    }

    public WattHours in(Liters liquid) {
        return new WattHours(liquid.value() * perLiter.value());
    }

    public WattHours in(Kilograms gas) {
        return new WattHours(gas.value() * perKilogram.value());
    }

    /** What a flame takes in an hour, in kilograms. */
    public Kilograms burnedHourly(Watts input) {
        return new Kilograms(input.value() / perKilogram.value());
    }
}
