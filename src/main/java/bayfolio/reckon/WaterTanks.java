package bayfolio.reckon;

import bayfolio.measure.Liters;
import bayfolio.measure.Share;
import bayfolio.model.Tank;
import bayfolio.model.Unit;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * All tanks of a coach that serve one purpose; what they hold adds up.
 *
 * @param tanks empty where the coach has none
 */
public record WaterTanks(List<Tank> tanks) {
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

    boolean none() {
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

    /** What a tank holds, as its writer put it: {@code 92 gal (348 L)}, {@code 2 × 20 L (5.3 gal)}. */
    static String stated(Tank tank) {
        int count = tank.facts().find(Tank.COUNT).orElse(1);
        return (count > 1 ? count + " × " : "")
                + tank.facts().written(Tank.CAPACITY).orElseThrow();
    }

    static double capacity(Tank tank) {
        return tank.facts().find(Tank.COUNT).orElse(1)
                * tank.facts().get(Tank.CAPACITY).value();
    }

    private static double usable(Tank tank) {
        return capacity(tank) * tank.facts().find(Tank.USABLE).map(Share::value).orElse(1.0);
    }

    /** After their names. */
    String verb() {
        return tanks.size() > 1 ? "are" : "is";
    }

    String names() {
        return tanks.stream().map(Tank::name).collect(Collectors.joining(" and "));
    }
}
