package bayfolio.reckon.water;

import bayfolio.measure.Liters;
import bayfolio.measure.Share;
import bayfolio.model.Tank;
import bayfolio.model.Unit;
import bayfolio.reckon.Given;
import bayfolio.reckon.Published;
import java.util.List;
import java.util.Set;

/**
 * All tanks of a coach that serve one purpose; what they hold adds up.
 *
 * @param tanks empty where the coach has none
 */
public record WaterTanks(List<Tank> tanks) {
    private static final Published<Share> ALL = WaterUseProfile.TABLE.quantity("tank.usable", Share.SCALE);

    public WaterTanks {
        tanks = List.copyOf(tanks);
    }

    public static WaterTanks fresh(Unit unit) {
        return of(unit, Set.of(Tank.Contents.FRESH));
    }

    public static WaterTanks gray(Unit unit) {
        return of(unit, Set.of(Tank.Contents.GRAY));
    }

    /** Black tanks and cassettes. */
    public static WaterTanks toilet(Unit unit) {
        return of(unit, Set.of(Tank.Contents.BLACK, Tank.Contents.CASSETTE));
    }

    private static WaterTanks of(Unit unit, Set<Tank.Contents> contents) {
        return new WaterTanks(unit.tanks().stream()
                .filter(tank -> contents.contains(tank.contents()))
                .toList());
    }

    public boolean none() {
        return tanks.isEmpty();
    }

    /** To the brim. */
    public Liters capacity() {
        return new Liters(tanks.stream().mapToDouble(WaterTanks::capacity).sum());
    }

    /** What can be used of it; all, where nothing is said. */
    public Liters usable() {
        return new Liters(tanks.stream().mapToDouble(WaterTanks::usable).sum());
    }

    public static int count(Tank tank) {
        return tank.facts().find(Tank.COUNT).orElse(1);
    }

    public static double capacity(Tank tank) {
        return count(tank) * tank.facts().get(Tank.CAPACITY).value();
    }

    /** What can be used of what a tank holds. */
    public static Given<Share> share(Tank tank) {
        return Given.of(tank.facts(), Tank.USABLE, ALL);
    }

    private static double usable(Tank tank) {
        return capacity(tank) * share(tank).value().value();
    }

    public List<String> names() {
        return tanks.stream().map(Tank::name).toList();
    }
}
