package bayfolio.reckon.fuel;

import bayfolio.measure.Liters;
import bayfolio.measure.Share;
import bayfolio.reckon.Published;

/**
 * Where a generator draws from the engine's tank: above the level that the engine needs to get to a pump.
 *
 * @param level the share of the tank that the generator cannot reach
 */
public record PickUp(Liters capacity, Share level) {
    public static final Published<Share> USUAL = FuelTank.TABLE.quantity("generator.pick-up", Share.SCALE);

    /** What the generator can burn of what is in the tank. */
    public Liters above(Liters left) {
        return new Liters(Math.max(0, Math.min(left.value(), capacity.value()) - below().value()));
    }

    /** What the generator leaves for the road. */
    public Liters below() {
        return new Liters(capacity.value() * level.value());
    }
}
