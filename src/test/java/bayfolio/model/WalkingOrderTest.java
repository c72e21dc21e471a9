package bayfolio.model;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Folders;
import bayfolio.LeastUnit;
import bayfolio.read.FleetReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WalkingOrderTest {
    @TempDir
    private Path folder;

    @Test
    void theWayGoesRearwardFromTheDoorOnceRoundThenUnderThenInsideThenUp() throws Exception {
        Unit unit = unit("""
                        doors:
                          - {id: entry-door, name: E, roles: [entry-door], side: right, from-front: 3 m, width: 0.6 m, access: free}
                        switches:
                          - {id: nowhere, name: N, make: tap, access: free}
                          - {id: up-rear, name: N, make: tap, access: free, side: roof, from-front: 5 m}
                          - {id: up-front, name: N, make: tap, access: free, side: roof, from-front: 1 m}
                          - {id: in-rear, name: N, make: tap, access: free, side: inside, from-front: 6.9 m}
                          - {id: in-front, name: N, make: tap, access: free, side: inside}
                          - {id: under-rear, name: N, make: tap, access: free, side: underfloor, from-front: 6.9 m}
                          - {id: under-front, name: N, make: tap, access: free, side: underfloor, from-front: 0 m}
                          - {id: right-before-door, name: N, make: tap, access: free, side: right, from-front: 2.9 m}
                          - {id: right-front-corner, name: N, make: tap, access: free, side: right, from-front: 0.1 m}
                          - {id: front-right, name: N, make: tap, access: free, side: front, from-front: 1.9 m}
                          - {id: front-left, name: N, make: tap, access: free, side: front, from-front: 0.1 m}
                          - {id: left-front, name: N, make: tap, access: free, side: left, from-front: 0.1 m}
                          - {id: left-rear, name: N, make: tap, access: free, side: left, from-front: 6.9 m}
                          - {id: rear-left, name: N, make: tap, access: free, side: rear, from-front: 0.1 m}
                          - {id: rear-right, name: N, make: tap, access: free, side: rear, from-front: 1.9 m}
                          - {id: right-rear, name: N, make: tap, access: free, side: right, from-front: 6.9 m}
                          - {id: at-door, name: N, make: tap, access: free, side: right, from-front: 3 m}
                        """);

        assertThat(order(unit, unit.switches()))
                .containsExactly(
                        "at-door",
                        "right-rear",
                        "rear-right",
                        "rear-left",
                        "left-rear",
                        "left-front",
                        "front-left",
                        "front-right",
                        "right-front-corner",
                        "right-before-door",
                        "under-front",
                        "under-rear",
                        "in-front",
                        "in-rear",
                        "up-front",
                        "up-rear",
                        "nowhere");
    }

    @Test
    void withTheDoorOnTheLeftTheWayIsMirrored() throws Exception {
        Unit unit = unit("""
                        doors:
                          - {id: entry-door, name: E, roles: [entry-door], side: left, from-front: 3 m, width: 0.6 m, access: free}
                        switches:
                          - {id: left-before-door, name: N, make: tap, access: free, side: left, from-front: 1 m}
                          - {id: front-left, name: N, make: tap, access: free, side: front, from-front: 0.1 m}
                          - {id: front-right, name: N, make: tap, access: free, side: front, from-front: 1.9 m}
                          - {id: right-front, name: N, make: tap, access: free, side: right, from-front: 0.1 m}
                          - {id: right-rear, name: N, make: tap, access: free, side: right, from-front: 6.9 m}
                          - {id: rear-right, name: N, make: tap, access: free, side: rear, from-front: 1.9 m}
                          - {id: rear-left, name: N, make: tap, access: free, side: rear, from-front: 0.1 m}
                          - {id: left-rear, name: N, make: tap, access: free, side: left, from-front: 6.9 m}
                        """);

        assertThat(order(unit, unit.switches()))
                .containsExactly(
                        "left-rear",
                        "rear-left",
                        "rear-right",
                        "right-rear",
                        "right-front",
                        "front-right",
                        "front-left",
                        "left-before-door");
    }

    @Test
    void withoutAnEntryDoorTheWayBeginsAtTheRightFrontCorner() throws Exception {
        Unit unit = unit("""
                        switches:
                          - {id: left, name: N, make: tap, access: free, side: left, from-front: 1 m}
                          - {id: right, name: N, make: tap, access: free, side: right, from-front: 0 m}
                        """);

        assertThat(order(unit, unit.switches())).containsExactly("right", "left");
    }

    @Test
    void aThingInACompartmentIsMetAtItsCompartment() throws Exception {
        Unit unit = unit("""
                        doors:
                          - {id: entry-door, name: E, roles: [entry-door], side: right, from-front: 3 m, width: 0.6 m, access: free}
                        compartments:
                          - {id: l1, name: L1, side: left, from-front: 1 m, width: 1 m, access: free}
                          - {id: r1, name: R1, side: right, from-front: 5 m, width: 1 m, access: free}
                        switches:
                          - {id: in-l1, name: N, make: tap, access: free, in: l1}
                          - {id: rear, name: N, make: tap, access: free, side: rear, from-front: 1 m}
                          - {id: in-r1, name: N, make: tap, access: free, in: r1, where: on the back wall}
                          - {id: lost, name: N, make: tap, access: free, in: r9}
                        """);

        assertThat(order(unit, unit.switches())).containsExactly("in-r1", "rear", "in-l1", "lost");
    }

    @Test
    void thingsAtOnePlaceKeepTheOrderOfTheDescription() throws Exception {
        StringBuilder facts = new StringBuilder("switches:\n");
        Random random = new Random(5);
        for (int i = 0; i < 60; i++) {
            String side = List.of("left", "roof", "inside").get(random.nextInt(3));
            facts.append("  - {id: s%d, name: N, make: tap, access: free, side: %s}\n".formatted(i, side));
        }
        Unit unit = unit(facts.toString());

        List<Switch> ordered = new WalkingOrder(unit).order(unit.switches());

        assertThat(ordered).hasSize(60);
        for (Side side : List.of(Side.LEFT, Side.INSIDE, Side.ROOF)) {
            assertThat(ordered.stream()
                            .filter(it -> it.spot().orElseThrow().side().orElseThrow() == side))
                    .containsExactlyElementsOf(unit.switches().stream()
                            .filter(it -> it.spot().orElseThrow().side().orElseThrow() == side)
                            .toList());
        }
        assertThat(new WalkingOrder(unit).order(ordered)).isEqualTo(ordered);
    }

    @Test
    void theWayIsTheSameHoweverTheThingsWereGiven() {
        for (Unit unit : FleetReader.read(Folders.at(Path.of("."))).fleet().units()) {
            WalkingOrder walk = new WalkingOrder(unit);
            List<Compartment> shuffled = new ArrayList<>(unit.compartments());
            Collections.shuffle(shuffled, new Random(3));

            assertThat(walk.order(shuffled)).as(unit.id()).isEqualTo(walk.order(unit.compartments()));
        }
    }

    /** The door is on the right, 12 ft from the front: behind R2 and ahead of R3. */
    @Test
    void dunlinIsWalkedFromItsWaterHeaterRoundToItsBatteryBox() {
        Unit dunlin = FleetReader.read(Folders.at(Path.of("."))).fleet().units().stream()
                .filter(it -> it.id().equals("dunlin"))
                .findFirst()
                .orElseThrow();

        assertThat(order(dunlin, dunlin.compartments()))
                .containsExactly(
                        "r3-water-heater",
                        "r4-furnace",
                        "r5-fridge-vent",
                        "r6-outside-shower",
                        "b2-spare-wheel",
                        "b1-hose-tube",
                        "l6-rear-trunk",
                        "l5-cord",
                        "l4-service-bay",
                        "l3-generator",
                        "l2-left-storage",
                        "l1-fuel-door",
                        "f1-hood",
                        "r1-gas-locker",
                        "r2-battery-box",
                        "i2-pump-locker",
                        "i1-electrical-panel",
                        "i3-bed-locker");
    }

    private static List<String> order(Unit unit, List<? extends Thing> things) {
        return new WalkingOrder(unit)
                .order(things).stream().<String>map(Thing::id).toList();
    }

    private Unit unit(String facts) throws Exception {
        FleetReader.Reading reading = LeastUnit.read(folder, facts);
        assertThat(reading.findings())
                .filteredOn(it -> it.at().file().path().contains("test"))
                .isEmpty();
        return reading.fleet().units().get(0);
    }
}
