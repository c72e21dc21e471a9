package bayfolio.check.sense;

import bayfolio.model.Appliance;
import bayfolio.model.Awning;
import bayfolio.model.Compartment;
import bayfolio.model.Connection;
import bayfolio.model.Device;
import bayfolio.model.Door;
import bayfolio.model.Gauge;
import bayfolio.model.Item;
import bayfolio.model.Side;
import bayfolio.model.Spot;
import bayfolio.model.Thing;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/** Sides of the coach on which things of a kind never are; common practice, no source. */
final class Sides {
    private static final Set<Side> OUTSIDE = EnumSet.of(Side.LEFT, Side.RIGHT, Side.FRONT, Side.REAR, Side.UNDERFLOOR);

    /** What ends outside, so that nothing runs into the room. */
    private static final Set<String> ENDS_OUTSIDE = Subjects.words("drain overflow spout sewer filler hitch");

    private static final Set<String> ON_THE_ROOF = Subjects.words("solar antenna roof cable satellite");

    /** Carried on the outside, and in no bay. */
    private static final Set<String> CARRIED_OUTSIDE =
            Subjects.words("rack carrier ladder wheel box pod bike board cover key");

    private static final Set<String> BOXES = Subjects.words("box pod");

    private static final Set<String> ALARMS = Set.of("smoke-alarm", "co-alarm", "gas-alarm");

    private Sides() {}

    static boolean never(Thing thing) {
        Side side = thing.spot().flatMap(Spot::side).orElseThrow();
        boolean inABay = thing.spot().flatMap(Spot::in).isPresent();
        Set<String> words = Subjects.naming(thing);
        if (thing instanceof Compartment) {
            return side == Side.ROOF && Collections.disjoint(words, BOXES)
                    || side != Side.FRONT && words.contains("hood");
        }
        if (thing instanceof Connection) {
            return side == Side.ROOF && Collections.disjoint(words, ON_THE_ROOF)
                    || side == Side.INSIDE && !Collections.disjoint(words, ENDS_OUTSIDE);
        }
        if (thing instanceof Awning) {
            return side == Side.FRONT || side == Side.UNDERFLOOR || side == Side.INSIDE;
        }
        if (thing instanceof Door) {
            return side == Side.ROOF && words.contains("window") && !words.contains("roof");
        }
        if (thing instanceof Gauge) {
            return thing.holdsOneOf(ALARMS) && OUTSIDE.contains(side) && !inABay;
        }
        if (thing instanceof Item) {
            return OUTSIDE.contains(side)
                    && side != Side.UNDERFLOOR
                    && !inABay
                    && Collections.disjoint(words, CARRIED_OUTSIDE);
        }
        return thing instanceof Appliance appliance
                && appliance
                        .facts()
                        .find(Appliance.WHAT)
                        .filter(Device::inTheRoom)
                        .isPresent()
                && OUTSIDE.contains(side)
                && !inABay;
    }
}
