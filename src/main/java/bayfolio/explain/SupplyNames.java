package bayfolio.explain;

import bayfolio.measure.MeasureSystem;
import bayfolio.reckon.power.LoadSharing;
import bayfolio.reckon.power.SupplyOption;

/** What supplies and their conductors are called. */
record SupplyNames(Voice voice) {
    /** By its own name, or by what it gives: {@code 20 A outlet}. */
    String of(SupplyOption feed) {
        return feed.name()
                .orElseGet(() -> voice.regional("outlet", "amps", feed.perLeg().amount(MeasureSystem.METRIC)));
    }

    /** In the middle of a sentence: {@code Shore power}, {@code a 20 A outlet}. */
    String inside(SupplyOption feed) {
        String name = of(feed);
        return Character.isUpperCase(name.charAt(0))
                ? name
                : voice.say("a-supply", "size", name.replaceFirst("[^0-9].*", ""), "name", name);
    }

    /** {@code Leg 1}, {@code Kitchen, leg 2}, or the supply. */
    String of(LoadSharing.Limit conductor, SupplyOption feed) {
        int leg = conductor.leg();
        return conductor
                .circuit()
                .map(circuit ->
                        leg == 0 ? circuit.name() : voice.say("circuit-leg", "name", circuit.name(), "leg", leg))
                .orElseGet(() -> leg == 0 ? of(feed) : voice.say("leg", "leg", leg));
    }
}
