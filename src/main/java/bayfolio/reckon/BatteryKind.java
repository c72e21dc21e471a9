package bayfolio.reckon;

import bayfolio.measure.Celsius;
import bayfolio.measure.Share;
import bayfolio.model.Bank;

/** What one kind of battery is like, where no label says so; each figure is published or usual, as told. */
public enum BatteryKind {
    FLOODED(1.25, 0.50, 0.05, 0.80, 0.20),
    AGM(1.15, 0.50, 0.03, 0.95, 0.30),
    GEL(1.25, 0.50, 0.03, 0.85, 0.20),
    LITHIUM(1.05, 0.80, 0.03, 0.99, 0.50);

    /** A point of a curve: at this temperature so much of the rated capacity is there. */
    private record Cold(double celsius, double holds) {}

    // A battery maker's sizing note: 1.65 times the batteries at -10 C.
    private static final Cold[] LEAD_ACID = {new Cold(-10, 1 / 1.65), new Cold(25, 1)};

    // A battery maker's page on storage in the cold.
    private static final Cold[] IRON_PHOSPHATE = {new Cold(-20, 0.70), new Cold(0, 0.80), new Cold(25, 1)};

    private final double exponent;
    private final Share usable;
    private final Share fades;
    private final Share givesBack;
    private final double accepts;

    BatteryKind(double exponent, double usable, double fades, double givesBack, double accepts) {
        this.exponent = exponent;
        this.usable = new Share(usable);
        this.fades = new Share(fades);
        this.givesBack = new Share(givesBack);
        this.accepts = accepts;
    }

    public static BatteryKind of(Bank bank) {
        return switch (bank.facts().get(Bank.CHEMISTRY)) {
            case FLOODED_LEAD_ACID -> FLOODED;
            case AGM -> AGM;
            case GEL -> GEL;
            case LITHIUM -> LITHIUM;
        };
    }

    public boolean leadAcid() {
        return this != LITHIUM;
    }

    /** Peukert's exponent: 1 where a strong current takes no more than a weak one. */
    public double exponent() {
        return exponent;
    }

    public String exponentSource() {
        return switch (this) {
            case FLOODED -> "preset of a battery meter, product manual; published range 1.2 to 1.6";
            case AGM -> "upper end of the published range 1.05 to 1.15";
            case GEL -> "upper end of the published range 1.1 to 1.25";
            case LITHIUM -> "a battery meter's product manual";
        };
    }

    /** The share of a full bank that may be drawn without harm. */
    public Share usable() {
        return usable;
    }

    public String usableSource() {
        return leadAcid()
                ? "a battery maker's sizing note; no more than half"
                : "published comparison of kinds; makers allow more";
    }

    /** What a month takes of it with nothing connected. */
    public Share fades() {
        return fades;
    }

    public String fadesSource() {
        return switch (this) {
            case FLOODED -> "a published page on storage, for mild weather; more in heat";
            case AGM -> "a battery maker's page says 2 %, trade pages 2 to 3 %";
            case GEL -> "taken as for AGM";
            case LITHIUM -> "published figures from under 1 to 5 %";
        };
    }

    /** Of the ampere-hours put in, the share that can be drawn again. */
    public Share givesBack() {
        return givesBack;
    }

    public String givesBackSource() {
        return switch (this) {
            case FLOODED, GEL -> "published tables for lead-acid, 70 to 85 %";
            case AGM -> "battery meters' product manuals";
            case LITHIUM -> "an electrician's guide to battery meters";
        };
    }

    /** The strongest current it takes while it is far from full, in parts of its rated capacity an hour. */
    public double accepts() {
        return accepts;
    }

    /** From here on a lead-acid battery takes less and less; lithium does not. */
    public Share knee() {
        return new Share(leadAcid() ? 0.80 : 1);
    }

    /** What counts as charged: the rest takes a lead-acid battery half a day. */
    public Share charged() {
        return new Share(leadAcid() ? 0.95 : 1);
    }

    /** The share of its rated capacity that it holds when it is that cold; no more than all of it, and no guess below the coldest figure. */
    public Share holds(Celsius temperature) {
        Cold[] curve = leadAcid() ? LEAD_ACID : IRON_PHOSPHATE;
        double at = temperature.value();
        Cold below = curve[0];
        for (Cold point : curve) {
            if (at <= point.celsius()) {
                return new Share(between(below, point, at));
            }
            below = point;
        }
        return new Share(1);
    }

    private static double between(Cold low, Cold high, double at) {
        return high.celsius() <= low.celsius()
                ? low.holds()
                : low.holds() + (high.holds() - low.holds()) * (at - low.celsius()) / (high.celsius() - low.celsius());
    }

    public String coldSource() {
        return leadAcid()
                ? "a battery maker's sizing note, 1 / 1.65 at -10 \u00b0C, and a straight line from there to 25 \u00b0C"
                : "a battery maker's page, 80 % at 0 \u00b0C and 70 % at -20 \u00b0C";
    }
}
