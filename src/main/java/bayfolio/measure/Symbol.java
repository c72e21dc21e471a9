package bayfolio.measure;

import java.util.Set;

/** The unit behind a figure. What it is called is the business of a language; its sign here is that of messages to writers. */
public enum Symbol {
    FOOT("ft"),
    INCH("in"),
    MILE("mi"),
    METER("m"),
    CENTIMETER("cm"),
    MILLIMETER("mm"),
    KILOMETER("km"),
    POUND("lb"),
    KILOGRAM("kg"),
    GRAM("g"),
    GALLON("gal"),
    QUART("qt"),
    CUP("cups"),
    /** Less than one cup. */
    PART_OF_CUP("cup"),
    LITER("L"),
    MILLILITER("mL"),
    VOLT("V"),
    AMPERE("A"),
    AMPERE_HOUR("Ah"),
    WATT("W"),
    KILOWATT("kW"),
    WATT_HOUR("Wh"),
    KILOWATT_HOUR("kWh"),
    BTU("BTU"),
    BTU_PER_HOUR("BTU/h"),
    PSI("psi"),
    BAR("bar"),
    MILLIBAR("mbar"),
    FAHRENHEIT("°F"),
    CELSIUS("°C"),
    SECOND("s"),
    MINUTE("min"),
    HOUR("h"),
    DAY("days"),
    PERCENT("%"),
    GALLON_PER_HOUR("gal/h"),
    LITER_PER_HOUR("L/h"),
    MILE_PER_HOUR("mph"),
    KILOMETER_PER_HOUR("km/h"),
    MILE_PER_GALLON("mpg"),
    LITER_PER_100_KILOMETERS("L/100 km"),
    DEGREE("°"),
    SQUARE_MILLIMETER("mm²"),
    AWG("AWG"),
    OHM_PER_1000_FEET("ohm a 1,000 ft"),
    OHM_PER_KILOMETER("ohm a km"),
    /** No unit: a plain number. */
    NONE(""),
    /** Nothing: the figure has its unit with it, as somebody wrote it. */
    AS_WRITTEN("");

    private static final Set<Symbol> COUNTED = Set.of(CUP, DAY);

    private final String sign;

    Symbol(String sign) {
        this.sign = sign;
    }

    /** {@code 100 gal}, {@code 3°}, {@code 1 day}, {@code 0.5 cup}. */
    String after(String figure) {
        boolean one = COUNTED.contains(this) && (figure.equals("1") || figure.equals("1.0"));
        String shown = one ? sign.substring(0, sign.length() - 1) : sign;
        return shown.isEmpty() || this == DEGREE ? figure + shown : figure + " " + shown;
    }
}
