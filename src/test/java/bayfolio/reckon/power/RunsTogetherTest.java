package bayfolio.reckon.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bayfolio.explain.Explained;
import bayfolio.measure.MeasureSystem;
import bayfolio.model.Coach;
import bayfolio.model.Region;
import bayfolio.model.Supply;
import bayfolio.reckon.Question;
import bayfolio.reckon.TestCoach;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

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

    private static LoadSharing on(Coach coach, int amps) {
        return SupplyOption.all(coach).stream()
                .filter(feed -> feed.perLeg().value() == amps)
                .map(feed -> LoadSharing.of(feed, coach))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> never(LoadSharing way) {
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
        LoadSharing way = on(coach, amps);

        assertThat(way.carried(way.conductors().get(0), way.switched()).value())
                .as(id)
                .isCloseTo(counted, within(0.001));
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
        LoadSharing heavy = on(TestCoach.of(europe.formatted("2000")), 10);
        LoadSharing light10 = on(TestCoach.of(europe.formatted("1000")), 10);
        LoadSharing light6 = on(TestCoach.of(europe.formatted("1000")), 6);

        assertThat(heavy.carried(heavy.conductors().get(0), heavy.switched()).value())
                .isCloseTo(10.65, within(0.01));
        assertThat(heavy.fits(heavy.switched())).isFalse();
        assertThat(light10.carried(light10.conductors().get(0), light10.switched())
                        .value())
                .isCloseTo(6.304, within(0.001));
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
        Explained.Explanation reckoning = (Explained.Explanation) TestCoach.told(Question.RUNS_TOGETHER, coach);

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
        Explained.Explanation reckoning = (Explained.Explanation) TestCoach.told(Question.RUNS_TOGETHER, coach);

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
        Explained.Explanation reckoning = (Explained.Explanation) TestCoach.told(Question.RUNS_TOGETHER, coach);

        assertThat(on(coach, 16).dead()).extracting(draw -> draw.load().id()).containsExactly("dryer");
        assertThat(reckoning.grids())
                .filteredOn(grid -> grid.title().equals("Starting a motor"))
                .singleElement()
                .satisfies(grid -> assertThat(grid.rows())
                        .containsExactly(
                                List.of("Inverter", "Pump", "40.0 A", "does not start: it gives 30.0 A for a moment"),
                                List.of("Inverter", "Saw", "20.0 A", "starts: it gives 30.0 A for a moment")));
    }

    private static final String GENERATOR = """
            supplies:
              - {id: gen, name: Generator, source: generator, volts: 120 V, amps: %s A, legs: 2%s}
            circuits:
              - {id: one, name: Leg 1 circuit, current: ac, volts: 120 V, breaker: 200 A, leg: 1}
              - {id: two, name: Leg 2 circuit, current: ac, volts: 120 V, breaker: 200 A, leg: 2}
            loads:
              - {id: charger, name: Charger, circuit: one, amps: 6.7 A, continuous: yes, always-on: yes}
              - {id: clock, name: Clock, circuit: two, amps: 1.5 A, continuous: yes, always-on: yes}
            """;

    private static String motor(String name, String circuit, double runs, double starts) {
        return "  - {id: %s, name: %s, circuit: %s, amps: %s A, continuous: yes, start-amps: %s A}%n"
                .formatted(name.toLowerCase(Locale.ROOT), name, circuit, runs, starts);
    }

    private static List<List<String>> rows(Coach coach, String title) {
        return ((Explained.Explanation) TestCoach.told(Question.RUNS_TOGETHER, coach))
                .grids().stream()
                        .filter(grid -> grid.title().equals(title))
                        .flatMap(grid -> grid.rows().stream())
                        .toList();
    }

    /** Reckoned by hand: 63 + 6.7 A on leg 1 and 63 + 1.5 A on leg 2; a sum over both legs would be 71.2 A for each. */
    @Test
    void aMotorStartsAgainstTheSurgeOfItsOwnLeg() {
        Coach coach = TestCoach.of(GENERATOR.formatted("24", ", surge: 66 A")
                + motor("Front", "one", 12, 63)
                + motor("Rear", "two", 12, 63));

        assertThat(rows(coach, "Starting a motor"))
                .containsExactly(
                        List.of("Generator", "Front, leg 1", "69.7 A", "does not start: it gives 66.0 A for a moment"),
                        List.of("Generator", "Rear, leg 2", "64.5 A", "starts: it gives 66.0 A for a moment"));
    }

    /** 66 + 8.2 A beside the charger on leg 1, 68 + 2.7 A beside the fridge on leg 2, from the plates of that coach. */
    @Test
    void theLegsOfADemoCoachStartByThemselves() {
        assertThat(rows(TestCoach.demo("whimbrel"), "Starting a motor"))
                .extracting(row -> row.get(1) + ": " + row.get(2))
                .containsExactly("Rear air conditioner, leg 2: 70.7 A", "Front air conditioner, leg 1: 74.2 A");
    }

    /** 40 + 1.5 + 10 A on leg 2, whatever runs on leg 1. */
    @Test
    void aSecondMotorStartsBesideTheRunningOneOfItsLeg() {
        Coach coach = TestCoach.of(GENERATOR.formatted("40", ", surge: 50 A")
                + motor("Front", "one", 12, 30)
                + motor("Middle", "two", 12, 38)
                + motor("Rear", "two", 10, 36));

        assertThat(rows(coach, "Starting a motor"))
                .extracting(
                        row -> row.get(1) + ": " + row.get(2) + " " + row.get(3).split(":")[0])
                .containsExactly(
                        "Middle, leg 2: 39.5 A starts",
                        "Middle beside Rear, leg 2: 49.5 A starts",
                        "Rear, leg 2: 37.5 A starts",
                        "Rear beside Middle, leg 2: 49.5 A starts",
                        "Front, leg 1: 36.7 A starts");
    }

    /** The first counts 28 x 1.25 = 35 A and never fits 33 A; the other two count 20 A each and not both of them fit. */
    @Test
    void nothingIsToldToStartThatNeverFits() {
        Coach coach = TestCoach.of(GENERATOR.formatted("33", "")
                + motor("Front", "one", 28, 70)
                + motor("Middle", "two", 16, 50)
                + motor("Rear", "two", 16, 60));

        assertThat(rows(coach, "Starting a motor"))
                .containsExactly(
                        List.of(
                                "Generator",
                                "Rear, leg 2",
                                "61.5 A",
                                "start it first, before anything else; Generator carries 33.0 A on and on"),
                        List.of(
                                "Generator",
                                "Middle, leg 2",
                                "51.5 A",
                                "start it alone; it does not run beside those above"),
                        List.of("Generator", "Front", "", "never start it on Generator: it carries too little for it"));
    }

    /** A set of four on one leg: 10 + 9 + 8 + 7 A fit 33 A only with any one of them off. */
    @Test
    void aForbiddenSetIsNamedOfWhateverSize() {
        Coach coach =
                TestCoach.of("""
                supplies:
                  - {id: shore, name: Shore power, source: shore, volts: 120 V, amps: 33 A, legs: 1}
                """ + CIRCUITS + loads("heater one 10", "kettle one 9", "toaster one 8", "iron one 7"));

        assertThat(rows(coach, "Never together on Shore power"))
                .containsExactly(List.of(
                        "heater + kettle + toaster + iron",
                        "counts as 34.0 A with what is always on; the supply carries 33 A"));
    }

    /** All subsets of what each supply of the demo fleet feeds, tried one by one. */
    @ParameterizedTest
    @MethodSource("bayfolio.DemoFleet#coaches")
    void everyForbiddenSetOfADemoCoachIsNamed(String id) {
        Coach coach = TestCoach.demo(id);
        for (LoadSharing way : LoadSharing.all(coach)) {
            String title = "Never together on " + way.feed().name().orElse("a " + called(way.feed(), coach));
            assertThat(rows(coach, title).stream().flatMap(row -> unfolded(row.get(0))))
                    .as(title)
                    .containsExactlyInAnyOrderElementsOf(minimal(way));
        }
    }

    private static List<Set<String>> minimal(LoadSharing way) {
        List<Draw> things = way.switched();
        return LongStream.range(1, 1L << things.size())
                .filter(set -> !way.fits(way.draws(set)))
                .filter(set -> LongStream.range(0, things.size())
                        .filter(thing -> (set >> thing & 1) == 1)
                        .allMatch(thing -> way.fits(way.draws(set & ~(1L << thing)))))
                .mapToObj(set ->
                        way.draws(set).stream().map(draw -> draw.load().name()).collect(Collectors.toSet()))
                .toList();
    }

    /** {@code A + either B or C} is A with B, and A with C. */
    private static Stream<Set<String>> unfolded(String phrase) {
        List<Set<String>> sets = new ArrayList<>(List.of(Set.of()));
        for (String part : phrase.split(" \\+ ")) {
            List<Set<String>> more = new ArrayList<>();
            for (String name : part.replaceFirst("^either ", "").split(" or ")) {
                sets.forEach(set ->
                        more.add(Stream.concat(set.stream(), Stream.of(name)).collect(Collectors.toSet())));
            }
            sets = more;
        }
        return sets.stream();
    }

    private static String called(SupplyOption feed, Coach coach) {
        return feed.perLeg().in(MeasureSystem.METRIC)
                + (coach.unit().region() == Region.EUROPE ? " hook-up" : " outlet");
    }

    private static double through(LoadSharing way, String... loads) {
        LoadSharing.Limit feed = way.conductors().stream()
                .filter(it -> it.circuit()
                        .filter(circuit -> circuit.name().equals("Inverter and charger circuit"))
                        .isPresent())
                .findFirst()
                .orElseThrow();
        return way.carried(
                        feed,
                        way.switched().stream()
                                .filter(draw ->
                                        List.of(loads).contains(draw.load().name()))
                                .toList())
                .value();
    }

    /** The sums of a review by hand: 1.25 x 8.2 + 12.5 + 9 + 1.25 x 1.2 A; 1.25 x (15.5 + 1.8) + 13 A; and with all of it. */
    @Test
    void whatTheInverterPassesOnCountsAtTheBreakerInFrontOfIt() {
        LoadSharing whimbrel = on(TestCoach.demo("whimbrel"), 50);
        LoadSharing phalarope = on(TestCoach.demo("phalarope"), 50);

        assertThat(through(whimbrel, "Microwave", "Coffee maker", "Televisions"))
                .isCloseTo(33.25, within(0.005));
        assertThat(through(phalarope, "Microwave")).isCloseTo(34.625, within(0.005));
        assertThat(through(phalarope, "Microwave", "Coffee maker", "Televisions"))
                .isCloseTo(44.125, within(0.005));
        assertThat(never(whimbrel)).contains("Coffee maker+Microwave");
        assertThat(never(phalarope)).contains("Microwave", "Coffee maker");
        assertThat(rows(TestCoach.demo("phalarope"), "Never together on Shore power 50 A"))
                .contains(List.of(
                        "Microwave",
                        "counts as 34.7 A with what is always on; Inverter and charger circuit carries 30 A."
                                + " It fits with the charger set to 40 A"));
    }

    /** On the battery nothing passes the breaker in front of the inverter; only what the inverter gives counts. */
    @Test
    void whatTheInverterMakesDoesNotPassItsFeedBreaker() {
        LoadSharing inverter = on(TestCoach.demo("phalarope"), 25);

        assertThat(inverter.feed().source()).isEqualTo(Supply.Source.INVERTER);
        assertThat(inverter.conductors())
                .noneMatch(it -> it.circuit()
                        .filter(circuit -> circuit.name().equals("Inverter and charger circuit"))
                        .isPresent());
    }

    /** A sub-panel of both legs: each pole of its breaker carries its own leg. */
    @Test
    void aBreakerOfBothLegsCarriesEachByItself() {
        Coach coach = TestCoach.of(OUTLETS + """
                circuits:
                  - {id: sub, name: Sub-panel, current: ac, volts: 240 V, breaker: 20 A}
                  - {id: one, name: Bath, current: ac, volts: 120 V, breaker: 20 A, leg: 1, fed-through: sub}
                  - {id: more, name: Bed, current: ac, volts: 120 V, breaker: 20 A, leg: 1, fed-through: sub}
                  - {id: two, name: Galley, current: ac, volts: 120 V, breaker: 20 A, leg: 2, fed-through: sub}
                """ + loads("dryer one 12", "iron more 11", "kettle two 13"));

        assertThat(never(on(coach, 50))).containsExactly("dryer+iron");
        assertThat(never(on(coach, 30))).contains("dryer+kettle", "iron+kettle");
    }

    @Test
    void whatIsMissingIsSaid() {
        assertThat(((Explained.Lacking) TestCoach.told(Question.RUNS_TOGETHER, TestCoach.of("name: Tiny\n"))).facts())
                .isEmpty();
        assertThat(((Explained.Lacking) TestCoach.told(Question.RUNS_TOGETHER, TestCoach.of(OUTLETS))).facts())
                .containsExactly("the loads, with the amps or watts from their plates");
        assertThat(((Explained.Lacking)
                                TestCoach.told(Question.RUNS_TOGETHER, TestCoach.of(CIRCUITS + loads("tv one 1"))))
                        .facts())
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
            LoadSharing large = on(coach, 50);
            LoadSharing small = on(coach, 30);
            if (small.always().containsAll(large.always())) {
                large.never().stream()
                        .filter(set -> small.switched().containsAll(set))
                        .forEach(set -> assertThat(small.fits(set))
                                .as(String.join(", ", loads))
                                .isFalse());
            }
            assertThat(TestCoach.told(Question.RUNS_TOGETHER, coach).toString()).doesNotContain("NaN", "Infinity", "∞");
        }
    }
}
