package bayfolio.reckon.fuel;

import bayfolio.measure.Liters;
import bayfolio.measure.Share;
import bayfolio.model.Coach;
import bayfolio.model.Tank;
import bayfolio.reckon.Given;
import bayfolio.reckon.Published;
import bayfolio.reckon.Table;
import java.util.List;

/** A tank of what the engine burns. */
public record FuelTank(Tank tank) {
    static final Table TABLE = Table.read("fuel");

    private static final Published<Share> ALL = TABLE.quantity("tank.usable", Share.SCALE);

    public static List<FuelTank> all(Coach coach, Tank.Contents fuel) {
        return coach.unit().tanks().stream()
                .filter(tank -> tank.contents() == fuel)
                .map(FuelTank::new)
                .toList();
    }

    public String name() {
        return tank.name();
    }

    public Given<Liters> capacity() {
        return Given.stated(tank.facts(), Tank.CAPACITY);
    }

    /** What is not usable stays at the bottom. */
    public Given<Share> usable() {
        return Given.of(tank.facts(), Tank.USABLE, ALL);
    }

    /** What it can give. */
    public Liters gives() {
        return new Liters(capacity().value().value() * usable().value().value());
    }
}
