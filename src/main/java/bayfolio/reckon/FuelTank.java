package bayfolio.reckon;

import bayfolio.measure.Liters;
import bayfolio.measure.Share;
import bayfolio.model.Coach;
import bayfolio.model.Tank;
import java.util.List;

/** A tank of what the engine burns. */
record FuelTank(Tank tank) {
    static List<FuelTank> all(Coach coach, Tank.Contents fuel) {
        return coach.unit().tanks().stream()
                .filter(tank -> tank.contents() == fuel)
                .map(FuelTank::new)
                .toList();
    }

    String name() {
        return tank.name();
    }

    Liters capacity() {
        return tank.facts().get(Tank.CAPACITY);
    }

    boolean usableStated() {
        return tank.facts().has(Tank.USABLE);
    }

    /** What is not usable stays at the bottom. */
    Share usable() {
        return tank.facts().find(Tank.USABLE).orElse(new Share(1));
    }
}
