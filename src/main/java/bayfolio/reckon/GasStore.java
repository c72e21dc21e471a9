package bayfolio.reckon;

import bayfolio.measure.Kilograms;
import bayfolio.measure.Liters;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Share;
import bayfolio.measure.WattHours;
import bayfolio.model.Coach;
import bayfolio.model.Gas;
import bayfolio.model.Tank;
import bayfolio.model.Unit;
import java.util.List;
import java.util.Optional;

/** A fixed gas tank, filled by volume, or cylinders alike, filled by weight. */
record GasStore(Tank tank) {
    /** The fixed level gauge of NFPA 58, by way of an owner's manual and a training page for dispensers. */
    static final Share FILL_LIMIT = new Share(0.8);

    /** Kilograms a liter at 15 °C; published from 0.504 to 0.51. */
    private static final double DENSITY = 0.506;

    /** Those that can be reckoned with. */
    static List<GasStore> all(Coach coach) {
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

    static List<Tank> declared(Coach coach) {
        return coach.unit().tanks().stream()
                .filter(tank -> tank.contents() == Tank.Contents.LP_GAS)
                .toList();
    }

    /** The gas in one full cylinder; absent for a tank. */
    Optional<Kilograms> each() {
        return tank.facts().find(Tank.EACH);
    }

    int count() {
        return tank.facts().find(Tank.COUNT).orElse(1);
    }

    boolean usableStated() {
        return tank.facts().has(Tank.USABLE);
    }

    /** Of a tank, the share of its capacity in water that may be filled; of a cylinder, of its gas. */
    Share usable() {
        return tank.facts().find(Tank.USABLE).orElse(each().isPresent() ? new Share(1) : FILL_LIMIT);
    }

    /** What can be used of cylinders. */
    private Optional<Kilograms> weight() {
        return each().map(each -> new Kilograms(each.value() * count() * usable().value()));
    }

    /** The liquid that can be used. */
    Liters liquid() {
        return weight().map(weight -> new Liters(weight.value() / DENSITY))
                .orElseGet(() -> new Liters(tank.facts().get(Tank.CAPACITY).value() * count() * usable().value()));
    }

    WattHours energy(LpGas gas) {
        return weight().map(gas::in).orElseGet(() -> gas.in(liquid()));
    }

    /** {@code 24 gal (90.8 L)}, {@code 2 × 11 kg (24 lb)}. */
    String holds(MeasureSystem first) {
        String one = each().map(each -> each.both(first))
                .orElseGet(() -> tank.facts().get(Tank.CAPACITY).both(first));
        return count() > 1 ? count() + " × " + one : one;
    }
}
