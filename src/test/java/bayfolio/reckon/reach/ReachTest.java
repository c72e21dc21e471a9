package bayfolio.reckon.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bayfolio.explain.Explained;
import bayfolio.measure.Meters;
import bayfolio.reckon.Origin;
import bayfolio.reckon.Published;
import bayfolio.reckon.Question;
import bayfolio.reckon.TestCoach;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ReachTest {
    private static final double FOOT = 0.3048;

    private static final Footprint COACH = new Footprint(feet(30), feet(8));

    /** T59, own rule: 12 ft across, 16 ft along, inlet 2.5 ft, faucet 3 ft: 28.05 ft, so 29: 25 ft fail, 30 ft do. */
    @Test
    void straight() {
        Footprint.Place inlet = place(20, -4);
        Footprint.Place post = place(4, -16);
        RequiredLength need = new RequiredLength(COACH.route(inlet, post), feet(2.5), feet(3));

        assertThat(COACH.free(inlet, post)).isTrue();
        assertThat(need.length().feet()).isCloseTo(28.05, within(1e-9));
        assertThat(need.metBy(feet(25))).isFalse();
        assertThat(need.metBy(feet(30))).isTrue();
    }

    /** T60, own rule: the same in legs of 12 ft and 16 ft: 36.85 ft, so 37. */
    @Test
    void inLegs() {
        RequiredLength need = new RequiredLength(new Meters(place(20, -4).legsTo(place(4, -16))), feet(2.5), feet(3));

        assertThat(need.length().feet()).isCloseTo(36.85, within(1e-9));
    }

    /** By hand: past the nearer end; 24 ft back from the front are 6 ft from the rear of 30 ft. */
    @Test
    void roundTheCoach() {
        // from the left wall to a post on the right: 6 along, 8 + 4 across, 6 back
        assertThat(COACH.route(place(24, -4), place(24, 8)).feet()).isCloseTo(24, within(1e-9));
        // the same near the front: 3 along, 12 across, 3 back
        assertThat(COACH.route(place(3, -4), place(3, 8)).feet()).isCloseTo(18, within(1e-9));
        // behind the rear, out of sight of the left wall: 6 along, 2 more behind, 4 across
        assertThat(COACH.route(place(24, -4), place(32, 0)).feet()).isCloseTo(12, within(1e-9));
        // from the rear wall to a post beside the left wall: 2 + 4 across, 10 along
        assertThat(COACH.route(place(30, -2), place(20, -8)).feet()).isCloseTo(16, within(1e-9));
        // from the rear wall straight back
        assertThat(COACH.route(place(30, 0), place(36, 0)).feet()).isCloseTo(6, within(1e-9));
        // underneath, as a sewer opening may be
        assertThat(COACH.route(place(20, -4), place(20, 0)).feet()).isCloseTo(4, within(1e-9));
    }

    /**
     * Common practice, no source: a cord of about 30 ft from the side of a coach serves a post at the usual rear quarter,
     * if the coach is backed in.
     */
    @Test
    void thirtyFeetServeTheUsualSite() {
        for (int length : List.of(24, 30, 36, 40, 45)) {
            List<List<String>> rows =
                    reckoning("""
                    size: {length: %d ft, width: 8 ft 5 in, height: 12 ft}
                    cord: {kind: reel-powered, length: 30 ft}
                    compartments:
                      - id: l9
                        name: L9 Power cord
                        roles: [cord-compartment]
                        side: left
                        from-front: %d ft
                        width: 2 ft
                        height: 1 ft 7 in
                        access: free
                    connections: []
                    """.formatted(length, length - 6)).grids().get(0).rows();

            assertThat(rows.get(0)).startsWith("Power cord", "backed in").endsWith("30 ft (9.1 m)", "reaches");
        }
    }

    /** Nose first the post is on the other side, a quarter of the length from the front. */
    @Test
    void noseFirst() {
        Explained.Explanation reckoning = reckoning("""
                size: {length: 24 ft, width: 8 ft, height: 12 ft}
                cord: {kind: fixed, length: 20 ft}
                compartments:
                  - {id: l9, name: L9, roles: [cord-compartment], side: left, from-front: 19 ft, width: 2 ft, height: 2 ft, access: free}
                connections: []
                items:
                  - {id: more, name: Extension, length: 30 ft, conductor: 10 AWG}
                """);

        // past the rear: 4 along, 8 + 4 across, 24 - 6 = 18 back: 34 ft; + 2 + 3 = 39; × 1.10 = 42.9 ft
        // straight, backed in: 20 - 18 = 2 along, 4 across: 4.472; + 5 = 9.472; × 1.10 = 10.42 ft
        assertThat(reckoning.grids().get(0).rows())
                .containsExactly(
                        List.of("Power cord", "backed in", "11 ft (3.2 m)", "20 ft (6.0 m)", "reaches"),
                        List.of(
                                "Power cord",
                                "nose first",
                                "43 ft (13.1 m)",
                                "20 ft (6.0 m)",
                                "short by 23 ft (7.0 m)"),
                        List.of(
                                "Power cord and Extension",
                                "nose first",
                                "43 ft (13.1 m)",
                                "50 ft (15.2 m)",
                                "reaches"));
        assertThat(reckoning.answer())
                .isEqualTo(
                        "On a usual site, backed in: Power cord reaches; nose first: Power cord short by 23 ft (7.0 m).");
        assertThat(reckoning.assumed()).contains("Use no extension cord but ours, never with an adapter: Extension.");
        assertThat(reckoning.inputs())
                .anyMatch(it -> it.origin() instanceof Origin.Usual usual
                        && usual.figure().status() == Published.Status.PRACTICE);
    }

    /** A hose of unknown length: what is needed is told. */
    @Test
    void unknownLength() {
        Explained.Explanation reckoning = reckoning("model-year: 2020\n");

        // 11.5 ft from the front; post 15 ft, 4 ft off: hypot(3.5, 4) = 5.315; no height: 0.6 m; faucet 2 ft;
        // (5.315 + 1.969 + 2) × 1.10 = 10.21 ft
        assertThat(reckoning.grids().get(0).rows().get(0))
                .containsExactly("Drinking-water hose", "backed in", "11 ft (3.2 m)", "not stated", "measure it first");
    }

    /** What stays in the yard is nothing that a renter could lay. */
    @Test
    void aHoseForStaffIsNotTheRenters() {
        Explained.Explanation reckoning = reckoning("""
                items:
                  - {id: yard-hose, name: Yard hose, roles: [drinking-hose], length: 50 ft, for: staff}
                """);

        assertThat(reckoning.grids().get(0).rows().get(0)).contains("not stated");
    }

    @Test
    void whatIsMissingIsSaid() {
        assertThat(((Explained.Lacking) TestCoach.told(Question.REACH, TestCoach.of("connections: []\n"))).facts())
                .isEmpty();
        assertThat(((Explained.Lacking) TestCoach.told(Question.REACH, TestCoach.of("""
                        connections:
                          - {id: city, name: City water inlet, roles: [city-water-inlet], what: water, access: free}
                        """))).facts())
                .containsExactly("side and place of City water inlet");
    }

    /** Site 12 stands on the driver's side of a coach that is backed in; by hand for Whimbrel's cord and sewer hose. */
    @Test
    void theDemoCoaches() {
        Explained.Explanation whimbrel =
                (Explained.Explanation) TestCoach.told(Question.REACH, TestCoach.demo("whimbrel"));

        // cord: 34.083 - 30 = 4.083 along, 9 - 4.208 = 4.792 across: 6.296; + 1.583 + 3 = 10.879; × 1.10 = 11.97 ft
        assertThat(whimbrel.grids().get(0).rows().get(0))
                .containsExactly("Power cord", "backed in", "12 ft (3.7 m)", "30 ft (9.1 m)", "reaches");
        // sewer: 24 - 21.5 = 2.5, 8 - 4.208 = 3.792: 4.542; + 1.333 = 5.875; × 1.10 = 6.46 ft
        assertThat(whimbrel.grids().get(0).rows().get(4))
                .containsExactly("Sewer hose", "backed in", "7 ft (2.0 m)", "20 ft (6.0 m)", "reaches");
        for (String unit : List.of("dunlin", "phalarope")) {
            assertThat(((Explained.Explanation) TestCoach.told(Question.REACH, TestCoach.demo(unit))).answer())
                    .startsWith("On site 12 at Marsh End, backed in: all reach");
        }
        // The site is one for American coaches; the fleet describes none for the others.
        for (String unit : List.of("turnstone", "redpoll")) {
            assertThat(((Explained.Explanation) TestCoach.told(Question.REACH, TestCoach.demo(unit))).answer())
                    .startsWith("On a usual site, backed in: ");
        }
    }

    /** Seeded: never shorter than the straight line, never longer than all the way round, turned twice is the same. */
    @Test
    void invariants() {
        Random random = new Random(23);
        for (int number = 0; number < 500; number++) {
            boolean side = random.nextBoolean();
            Footprint.Place inlet = side
                    ? place(random.nextDouble() * 30, random.nextBoolean() ? -4 : 4)
                    : place(random.nextBoolean() ? 0 : 30, random.nextDouble() * 8 - 4);
            Footprint.Place post = place(random.nextDouble() * 60 - 15, random.nextDouble() * 40 - 20);
            double route = COACH.route(inlet, post).value();

            assertThat(route).isGreaterThanOrEqualTo(inlet.straightTo(post) - 1e-9);
            assertThat(route)
                    .isLessThanOrEqualTo(
                            inlet.legsTo(post) + feet(2 * 30 + 2 * 8).value());
            Footprint.Place back = post.turned(COACH.length()).turned(COACH.length());
            assertThat(back.straightTo(post)).isLessThan(1e-9);
            assertThat(COACH.route(inlet.turned(COACH.length()), post.turned(COACH.length()))
                            .value())
                    .isCloseTo(route, within(1e-9));
        }
    }

    private static Meters feet(double feet) {
        return new Meters(feet * FOOT);
    }

    private static Footprint.Place place(double back, double right) {
        return new Footprint.Place(back * FOOT, right * FOOT);
    }

    private static Explained.Explanation reckoning(String yaml) {
        return (Explained.Explanation) TestCoach.told(Question.REACH, TestCoach.of(yaml));
    }
}
