package bayfolio.reckon.gas;

import bayfolio.measure.Amount;
import bayfolio.measure.Kilograms;
import bayfolio.measure.Liters;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Share;
import bayfolio.measure.WattHours;
import bayfolio.model.Coach;
import bayfolio.model.Gas;
import bayfolio.model.Tank;
import bayfolio.model.Unit;
import bayfolio.reckon.Given;
import bayfolio.reckon.Published;
import java.util.List;
import java.util.Optional;

/** A fixed gas tank, filled by volume, or cylinders alike, filled by weight. */
public record GasStore(Tank tank) {
    /** The fixed level gauge of NFPA 58, by way of an owner's manual and a training page for dispensers. */
    public static final Published<Share> FILL_LIMIT = LpGas.TABLE.quantity("tank.fill-limit", Share.SCALE);

    private static final Published<Share> WHOLE = LpGas.TABLE.quantity("cylinder.usable", Share.SCALE);

    /** Those that can be reckoned with. */
    public static List<GasStore> all(Coach coach) {
        boolean cylinders = coach.unit()
                .facts()
                .find(Unit.GAS)
                .flatMap(gas -> gas.facts().find(Gas.KIND))
                .filter(kind -> kind == Gas.Kind.CYLINDERS)
                .isPresent();
        return declared(coach).stream()
                .map(GasStore::new)
                .filter(store -> store.each().isPresent() || !cylinders)
                .toList();
    }

    public static List<Tank> declared(Coach coach) {
        return coach.unit().tanks().stream()
                .filter(tank -> tank.contents() == Tank.Contents.LP_GAS)
                .toList();
    }

    /** The gas in one full cylinder; absent for a tank. */
    public Optional<Kilograms> each() {
        return tank.facts().find(Tank.EACH);
    }

    public int count() {
        return tank.facts().find(Tank.COUNT).orElse(1);
    }

    /** Of a tank, the share of its capacity in water that may be filled; of a cylinder, of its gas. */
    public Given<Share> usable() {
        return Given.of(tank.facts(), Tank.USABLE, each().isPresent() ? WHOLE : FILL_LIMIT);
    }

    /** What can be used of cylinders. */
    private Optional<Kilograms> weight() {
        return each().map(each ->
                new Kilograms(each.value() * count() * usable().value().value()));
    }

    /** The liquid that can be used. */
    public Liters liquid() {
        return weight().map(weight -> new Liters(weight.value() / LpGas.DENSITY))
                .orElseGet(() -> new Liters(tank.facts().get(Tank.CAPACITY).value()
                        * count()
                        * usable().value().value()));
    }

    public WattHours energy(LpGas gas) {
        return weight().map(gas::in).orElseGet(() -> gas.in(liquid()));
    }

    /** What one of it holds when full. */
    public Given<Amount> holds(MeasureSystem first) {
        return each().isPresent()
                ? Given.stated(tank.facts(), Tank.EACH).map(it -> it.both(first))
                : Given.stated(tank.facts(), Tank.CAPACITY).map(it -> it.both(first));
    }
}
