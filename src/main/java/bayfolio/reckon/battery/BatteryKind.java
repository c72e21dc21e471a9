package bayfolio.reckon.battery;

import bayfolio.fact.Type;
import bayfolio.measure.Celsius;
import bayfolio.measure.Share;
import bayfolio.model.Bank;
import bayfolio.reckon.Published;
import bayfolio.reckon.Table;
import java.util.List;

/** What one kind of battery is like, where no label says so; each figure is published or usual. */
public enum BatteryKind {
    FLOODED,
    AGM,
    GEL,
    LITHIUM;

    static final Table TABLE = Figures.TABLE;

    /** Read before the kinds are made of it. */
    private static final class Figures {
        private static final Table TABLE = Table.read("batteries");
    }

    private final Published<Double> exponent = number("exponent");
    private final Published<Share> usable = share("usable");
    private final Published<Share> fades = share("fades");
    private final Published<Share> givesBack = share("gives-back");
    private final Published<Double> accepts = number("accepts");

    /** A point of a curve: at this temperature so much of the rated capacity is there. */
    private record Cold(double celsius, double holds) {}

    private static final Share KNEE =
            TABLE.quantity("lead-acid.knee", Share.SCALE).value();
    private static final Share CHARGED =
            TABLE.quantity("lead-acid.charged", Share.SCALE).value();

    private static final Cold RATED = new Cold(25, 1);

    private static final List<Cold> LEAD_ACID =
            List.of(new Cold(-10, 1 / TABLE.number("lead-acid.more-at-minus-10").value()), RATED);

    private static final List<Cold> IRON_PHOSPHATE = List.of(
            new Cold(
                    -20,
                    TABLE.quantity("lithium.holds-at-minus-20", Share.SCALE)
                            .value()
                            .value()),
            new Cold(
                    0, TABLE.quantity("lithium.holds-at-0", Share.SCALE).value().value()),
            RATED);

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

    private Published<Share> share(String figure) {
        return Figures.TABLE.quantity(Type.word(this) + "." + figure, Share.SCALE);
    }

    private Published<Double> number(String figure) {
        return Figures.TABLE.number(Type.word(this) + "." + figure);
    }

    /** Peukert's exponent: 1 where a strong current takes no more than a weak one. */
    public Published<Double> exponent() {
        return exponent;
    }

    /** The share of a full bank that may be drawn without harm. */
    public Published<Share> usable() {
        return usable;
    }

    /** What a month takes of it with nothing connected. */
    public Published<Share> fades() {
        return fades;
    }

    /** Of the ampere-hours put in, the share that can be drawn again. */
    public Published<Share> givesBack() {
        return givesBack;
    }

    /** The strongest current it takes while it is far from full, in parts of its rated capacity an hour. */
    public Published<Double> accepts() {
        return accepts;
    }

    /** From here on a lead-acid battery takes less and less; lithium does not. */
    public Share knee() {
        return leadAcid() ? KNEE : new Share(1);
    }

    /** What counts as charged: the rest takes a lead-acid battery half a day. */
    public Share charged() {
        return leadAcid() ? CHARGED : new Share(1);
    }

    /** Where it is told how much it holds in the cold. */
    public Published<?> cold() {
        return leadAcid()
                ? TABLE.number("lead-acid.more-at-minus-10")
                : TABLE.quantity("lithium.holds-at-minus-20", Share.SCALE);
    }

    /** The share of its rated capacity that it holds when it is that cold; no more than all of it, and no guess below the coldest figure. */
    public Share holds(Celsius temperature) {
        List<Cold> curve = leadAcid() ? LEAD_ACID : IRON_PHOSPHATE;
        double at = temperature.value();
        Cold below = curve.get(0);
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
}
