package bayfolio.measure;

/** The family of units a reader thinks in. */
public enum MeasureSystem {
    /** Feet and inches, pounds, US gallons, psi, degrees Fahrenheit. */
    US,
    /** Meters, kilograms, liters, bar, degrees Celsius. */
    METRIC;

    public MeasureSystem other() {
        return this == US ? METRIC : US;
    }
}
