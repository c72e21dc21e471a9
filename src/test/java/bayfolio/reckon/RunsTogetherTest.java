package bayfolio.reckon;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.model.Coach;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Test cases T-S and T-E of the reference for power: figures of makers' plates and of the electrical codes. Status V is
 * verified, VI verified inputs with a computed result, M from memory, C plain arithmetic.
 */
final class RunsTogetherTest {
    private static final String OUTLETS = """
            supplies:
              - {id: shore, name: Shore power, source: shore, volts: 120 V, amps: 50 A, legs: 2}
            adapters:
              - {id: to-30, name: Adapter, from: 30 A, to: 50 A, volts: 120 V, joins-legs: yes}
            """;

    private static final String CIRCUITS = """
            circuits:
              - {id: one, name: Leg 1 circuit, current: ac, volts: 120 V, breaker: 200 A, leg: 1}
              - {id: two, name: Leg 2 circuit, current: ac, volts: 120 V, breaker: 200 A, leg: 2}
              - {id: both, name: Big circuit, current: ac, volts: 240 V, breaker: 200 A, leg: 1}
            """;

    /**
     * @param loads each as {@code id circuit amps}, with {@code hours} or {@code always} behind it
     */
    private static String loads(String... loads) {
        StringBuilder yaml = new StringBuilder("loads:\n");
        for (String load : loads) {
            String[] words = load.split(" ");
            yaml.append("  - {id: %s, name: %s, circuit: %s, amps: %s A, continuous: %s, always-on: %s, usual: %s%s}%n"
                    .formatted(
                            words[0],
                            words[0],
                            words[1],
                            words[2],
                            load.contains("hours") ? "yes" : "no",
                            load.contains("always") ? "yes" : "no",
                            load.contains("usual") ? "yes" : "no",
                            words[0].startsWith("air") ? ", roles: [air-conditioner]" : ""));
        }
        return yaml.toString();
    }

    private static Sharing on(Coach coach, int amps) {
        return Feed.all(coach).stream()
                .filter(feed -> feed.perLeg().value() == amps)
                .map(feed -> Sharing.of(feed, coach))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> never(Sharing way) {
        return way.never().stream()
                .map(set ->
                        set.stream().map(draw -> draw.load().name()).sorted().collect(Collectors.joining("+")))
                .toList();
    }

    /** An outlet of so many amps and one leg, and loads on it: the sum, and whether it fits. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // id | amps | loads | counted | fits
                "T-S5 VI NEC 210.19(A)  | 20 | a-10-hours,b-8           | 20.5   | false",
                "T-S17 VI, 1440 W M     | 30 | air-16,b-12              | 28.0   | true",
                "T-S17 VI for hours     | 30 | air-16-hours,b-12-hours  | 35.0   | false",
                "T-S18 VI               | 30 | air-16,b-12,c-8.333333   | 36.333 | false",
                "T-S19 VI on 20 A       | 20 | air-12.4-hours           | 15.5   | true",
                "T-S19 VI on 20 A plate | 20 | air-15.5                 | 15.5   | true",
                "T-S19 VI on 15 A       | 15 | air-15.5                 | 15.5   | false",
                "T-S20 V inputs         | 50 | a-12.5,b-12.5,c-9,d-10,e-2 | 46.0 | true",
                "T-S4 V 80 % of 15 A    | 15 | a-12-hours               | 15.0   | true",
                "T-S4 V 80 % of 20 A    | 20 | a-16-hours               | 20.0   | true",
                "T-S4 C 80 % of 30 A    | 30 | a-24-hours               | 30.0   | true",
                "T-S4 C 80 % of 50 A    | 50 | a-40-hours               | 50.0   | true",
                "T-S4 C over 80 %       | 50 | a-40.1-hours             | 50.125 | false"
            })
    void publishedSumsOnOneLeg(String id, int amps, String loads, double counted, boolean fits) {
        Coach coach = TestCoach.of("""
                supplies:
                  - {id: shore, name: Shore power, source: shore, volts: 120 V, amps: %d A, legs: 1}
                """.formatted(amps)
                + CIRCUITS
                + loads(java.util.Arrays.stream(loads.split(","))
                        .map(load -> load.replaceFirst("-", " one ").replace("-hours", " hours"))
                        .toArray(String[]::new)));
        Sharing way = on(coach, amps);

        assertThat(way.carried(way.conductors().get(0), way.switched()).value())
                .as(id)
                .isCloseTo(counted, org.assertj.core.api.Assertions.within(0.001));
        assertThat(way.fits(way.switched())).as(id).isEqualTo(fits);
    }

    /** T-S10, VI: 16.0 A on one leg and 15.5 A on the other fit 50 A, and are too much for 30 A through an adapter. */
    @Test
    void anAdapterMakesOneSumOfBothLegs() {
        Coach coach = TestCoach.of(OUTLETS + CIRCUITS + loads("air-1 one 16", "air-2 two 15.5"));

        assertThat(never(on(coach, 50))).isEmpty();
        assertThat(never(on(coach, 30))).containsExactly("air-1+air-2");
    }

    /** T-S11, VI: between the legs of an adapter there is no voltage. */
    @Test
    void whatNeedsBothLegsIsDeadOnAnAdapter() {
        Coach coach = TestCoach.of(OUTLETS + CIRCUITS + loads("dryer both 20", "tv one 1"));

        assertThat(on(coach, 50).dead()).isEmpty();
        assertThat(on(coach, 50)
                        .carried(
                                on(coach, 50).conductors().get(1), on(coach, 50).switched())
                        .value())
                .isEqualTo(20);
        assertThat(on(coach, 30).dead()).extracting(draw -> draw.load().id()).containsExactly("dryer");
    }

    /** T-E3 and T-E4, C: 2,000, 300 and 150 W are too much for 10 A; 1,000, 300 and 150 W fit 10 A and not 6 A. */
    @Test
    void europeanPostsCountPlainAmps() {
        String europe = """
                region: europe
                supplies:
                  - {id: hookup, name: Hook-up, source: shore, volts: 230 V, amps: 16 A, legs: 1}
                circuits:
                  - {id: one, name: Outlets, current: ac, volts: 230 V, breaker: 16 A, leg: 1}
                loads:
                  - {id: heater, name: heater, circuit: one, watts: %s W, continuous: yes}
                  - {id: fridge, name: fridge, circuit: one, watts: 300 W, continuous: yes}
                  - {id: charger, name: charger, circuit: one, watts: 150 W, always-on: yes}
                """;
        Sharing heavy = on(TestCoach.of(europe.formatted("2000")), 10);
        Sharing light10 = on(TestCoach.of(europe.formatted("1000")), 10);
        Sharing light6 = on(TestCoach.of(europe.formatted("1000")), 6);

        assertThat(heavy.carried(heavy.conductors().get(0), heavy.switched()).value())
                .isCloseTo(10.65, org.assertj.core.api.Assertions.within(0.01));
        assertThat(heavy.fits(heavy.switched())).isFalse();
        assertThat(light10.carried(light10.conductors().get(0), light10.switched())
                        .value())
                .isCloseTo(6.304, org.assertj.core.api.Assertions.within(0.001));
        assertThat(light10.fits(light10.switched())).isTrue();
        assertThat(light6.fits(light6.switched())).isFalse();
    }

    /**
     * Common practice, no source: a coach with three roof air conditioners runs one of them on a 30 A outlet and is made
     * for a 50 A outlet; lights, fridge, television and charger then still fit beside that one. The plates are those of
     * published unit data: 12.7 A for a compressor of 13,500 BTU/h, and usual figures for the rest.
     */
    @Test
    void aSmallOutletLeavesOneAirConditionerOfThree() {
        Coach coach = TestCoach.of(OUTLETS
                + CIRCUITS
                + loads(
                        "air-1 one 12.7 hours",
                        "air-2 two 12.7 hours",
                        "air-3 two 12.7 hours",
                        "fridge one 2.7 hours always",
                        "charger two 5 hours always",
                        "tv one 1.2 hours usual",
                        "lights one 0.8 hours usual"));
        Reckoned.Reckoning reckoning = (Reckoned.Reckoning) RunsTogether.of(coach);

        assertThat(reckoning.answer())
                .startsWith("Air conditioners at once: three on Shore power, one on a 30 A outlet");
        assertThat(reckoning.grids())
                .filteredOn(grid -> grid.title().equals("Never together on a 30 A outlet"))
                .singleElement()
                .satisfies(grid -> assertThat(grid.rows())
                        .anySatisfy(row -> assertThat(row.get(0)).isEqualTo("air-1 + either air-2 or air-3"))
                        .anySatisfy(row -> assertThat(row.get(0)).isEqualTo("air-2 + air-3")));
    }

    /** Equal ones on one leg are told as one. */
    @Test
    void equalOnesAreGrouped() {
        Coach coach =
                TestCoach.of("""
                supplies:
                  - {id: shore, name: Shore power, source: shore, volts: 120 V, amps: 30 A, legs: 1}
                """ + CIRCUITS + loads("air-1 one 12", "air-2 one 12", "air-3 one 12", "kettle one 19"));
        Reckoned.Reckoning reckoning = (Reckoned.Reckoning) RunsTogether.of(coach);

        assertThat(reckoning.grids())
                .filteredOn(grid -> grid.title().startsWith("Never together"))
                .singleElement()
                .satisfies(grid -> assertThat(grid.rows())
                        .extracting(row -> row.get(0))
                        .containsExactly("kettle + one of the three air conditioners", "all three air conditioners"));
    }

    @Test
    void aBreakerWithSeveralLoadsIsALimitToo() {
        Coach coach = TestCoach.of(OUTLETS + """
                circuits:
                  - {id: one, name: Galley circuit, current: ac, volts: 120 V, breaker: 15 A, leg: 1}
                """ + loads("kettle one 9", "toaster one 8"));

        assertThat(never(on(coach, 50))).containsExactly("kettle+toaster");
    }

    @Test
    void onTheInverterOnlyItsOwnCircuitsRun() {
        Coach coach = TestCoach.of("""
                supplies:
                  - {id: inverter, name: Inverter, source: inverter, volts: 120 V, amps: 16 A, legs: 1}
                inverter: {rating: 1920 W, surge: 3600 W}
                circuits:
                  - {id: one, name: Galley circuit, current: ac, volts: 120 V, breaker: 20 A, leg: 1, by-inverter: yes}
                  - {id: two, name: Bath circuit, current: ac, volts: 120 V, breaker: 20 A, leg: 1}
                loads:
                  - {id: pump, name: Pump, circuit: one, amps: 10 A, start-amps: 40 A}
                  - {id: saw, name: Saw, circuit: one, amps: 10 A, start-amps: 20 A}
                  - {id: dryer, name: Dryer, circuit: two, amps: 10 A}
                """);
        Reckoned.Reckoning reckoning = (Reckoned.Reckoning) RunsTogether.of(coach);

        assertThat(on(coach, 16).dead()).extracting(draw -> draw.load().id()).containsExactly("dryer");
        assertThat(reckoning.grids())
                .filteredOn(grid -> grid.title().equals("Starting a motor"))
                .singleElement()
                .satisfies(grid -> assertThat(grid.rows())
                        .containsExactly(
                                List.of("Inverter", "Pump", "40.0 A", "does not start: it gives 30.0 A for a moment"),
                                List.of("Inverter", "Saw", "20.0 A", "starts: it gives 30.0 A for a moment")));
    }

    @Test
    void whatIsMissingIsSaid() {
        assertThat(((Reckoned.Lacking) RunsTogether.of(TestCoach.of("name: Tiny\n"))).facts())
                .isEmpty();
        assertThat(((Reckoned.Lacking) RunsTogether.of(TestCoach.of(OUTLETS))).facts())
                .containsExactly("the loads, with the amps or watts from their plates");
        assertThat(((Reckoned.Lacking) RunsTogether.of(TestCoach.of(CIRCUITS + loads("tv one 1")))).facts())
                .containsExactly("the supplies of the coach");
    }

    /**
     * Seeded coaches: larger outlets forbid nothing that smaller ones allow, unless something is always on that only they
     * can feed; and no text holds what is no number.
     */
    @Test
    void generatedCoaches() {
        Random random = new Random(41);
        for (int number = 0; number < 60; number++) {
            String[] loads = new String[1 + random.nextInt(12)];
            for (int load = 0; load < loads.length; load++) {
                loads[load] = "%s%d %s %d.%d%s%s"
                        .formatted(
                                random.nextInt(4) == 0 ? "air-" : "thing-",
                                load,
                                List.of("one", "two", "both").get(random.nextInt(3)),
                                random.nextInt(22),
                                1 + random.nextInt(9),
                                random.nextBoolean() ? " hours" : "",
                                random.nextInt(5) == 0 ? " always" : random.nextInt(4) == 0 ? " usual" : "");
            }
            Coach coach = TestCoach.of(OUTLETS + CIRCUITS + loads(loads));
            Sharing large = on(coach, 50);
            Sharing small = on(coach, 30);
            if (small.always().containsAll(large.always())) {
                large.never().stream()
                        .filter(set -> small.switched().containsAll(set))
                        .forEach(set -> assertThat(small.fits(set))
                                .as(String.join(", ", loads))
                                .isFalse());
            }
            assertThat(RunsTogether.of(coach).toString()).doesNotContain("NaN", "Infinity", "∞");
        }
    }
}
