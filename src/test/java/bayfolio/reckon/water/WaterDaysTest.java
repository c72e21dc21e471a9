package bayfolio.reckon.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bayfolio.Folders;
import bayfolio.explain.Calculator;
import bayfolio.explain.Explained;
import bayfolio.explain.Grid;
import bayfolio.explain.Input;
import bayfolio.measure.Liters;
import bayfolio.measure.Seconds;
import bayfolio.model.Coach;
import bayfolio.read.FleetReader;
import bayfolio.reckon.Published;
import bayfolio.reckon.Question;
import bayfolio.reckon.TestCoach;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Test cases T26 to T33 of the reference for water, with its model of section 2.4. */
final class WaterDaysTest {
    private static final double GALLON = 3.785411784;

    private static final String TANKS = """
            people: {belted-seats: 4, sleeping-places: 4}
            tanks:
              - {id: fresh, name: Fresh tank, contents: fresh, capacity: 60 gal}
              - {id: gray, name: Gray tank, contents: gray, capacity: 40 gal}
              - {id: black, name: Black tank, contents: black, capacity: 30 gal}
            """;

    private static Liters gallons(double gallons) {
        return new Liters(gallons * GALLON);
    }

    /** A way in gallons a day, as the reference counts it. */
    private static WaterUseProfile living(double drink, double dishes, double wash, double minutes, int flushes) {
        return new WaterUseProfile(
                "test",
                published(gallons(drink)),
                gallons(dishes),
                gallons(wash),
                new Seconds(60 * minutes),
                1,
                flushes);
    }

    private static Published<Liters> published(Liters liters) {
        return new Published<>("test", liters, Published.Status.PUBLISHED, "practice");
    }

    private static WaterUse use(String yaml) {
        return WaterUse.of(TestCoach.of(yaml)).orElseThrow();
    }

    static Stream<Coach> demos() {
        FleetReader.Reading reading = FleetReader.read(Folders.at(Path.of("")));
        return reading.fleet().units().stream().map(unit -> new Coach(reading.fleet(), unit));
    }

    /** Status: a project rule, its results computed by plain arithmetic; the flush of T31 is S21, verified. */
    @ParameterizedTest
    @CsvSource({
        // id, minutes, dishes, wash, flushes, gal a flush, gal a person: fresh, gray, black, days: fresh, gray, black
        "T29 computed, 2, 1.0, 0.75, 5, 0.125, 6.725, 5.35, 1.034, 2.23, 1.87, 7.25, Gray tank",
        "T30 computed, 0, 0.5, 0.5, 2, 0.125, 2.00, 1.00, 0.659, 7.50, 10.0, 11.4, Fresh tank",
        "T31 S21 computed, 2, 1.0, 0.75, 5, 1.6, 14.1, 5.35, 8.41, 1.06, 1.87, 0.89, Black tank"
    })
    void publishedDays(
            String id,
            double minutes,
            double dishes,
            double wash,
            int flushes,
            double flush,
            double fresh,
            double gray,
            double black,
            double freshDays,
            double grayDays,
            double blackDays,
            String first) {
        WaterUseProfile living = living(0.75, dishes, wash, minutes, flushes);
        WaterUse use = use(TANKS + "water: {shower-per-minute: 1.8 gal, toilet-per-flush: %s gal}\n".formatted(flush));

        List<WaterUse.Lasting> lasting = use.lasting(living, 4);

        assertThat(lasting.get(0).each().gallons()).as(id).isCloseTo(fresh, within(0.03));
        assertThat(lasting.get(1).each().gallons()).as(id).isCloseTo(gray, within(0.005));
        assertThat(lasting.get(2).each().gallons()).as(id).isCloseTo(black, within(0.005));
        assertThat(lasting.get(0).days()).as(id).isCloseTo(freshDays, within(0.01));
        assertThat(lasting.get(1).days()).as(id).isCloseTo(grayDays, within(0.01));
        assertThat(lasting.get(2).days()).as(id).isCloseTo(blackDays, within(0.05));
        assertThat(use.first(living, 4).tanks().names()).as(id).containsExactly(first);
    }

    /** T29: prints "1 day, gray tank first"; the usual way here is that of the table. */
    @Test
    void promisesWholeDays() {
        WaterUse use = use(TANKS + "water: {shower-per-minute: 1.8 gal, toilet-per-flush: 0.125 gal}\n");

        assertThat(use.first(WaterUseProfile.USUAL, 4).whole()).isEqualTo(1);
        assertThat(use.first(WaterUseProfile.USUAL, 4).tanks().names()).containsExactly("Gray tank");
        assertThat(use.first(WaterUseProfile.USUAL, 4).end()).isEqualTo(WaterUse.End.FULL);
        assertThat(use.day(WaterUseProfile.USUAL).fresh().value()).isCloseTo(25.5, within(0.1));
        assertThat(use.day(WaterUseProfile.SPARING).fresh().value()).isCloseTo(7.6, within(0.1));
    }

    /** T32, S26 verified: 15 and 7.5 L; T33, S29 verified: 5 and 15 gal; all of it out of the fresh tank. */
    @ParameterizedTest
    @CsvSource({
        "T32 Sphere, 15, 3.79",
        "T32 Sphere least, 7.5, 7.57",
        "T33 army, 18.92705892, 3.0",
        "T33 army with showers, 56.78117676, 1.0"
    })
    void publishedAmounts(String id, double liters, double days) {
        WaterUseProfile living = new WaterUseProfile(
                "test", published(new Liters(liters)), new Liters(0), new Liters(0), new Seconds(0), 0, 0);

        assertThat(use(TANKS).lasting(living, 4).get(0).days()).as(id).isCloseTo(days, within(0.01));
    }

    /** T27, S20 and S21 verified: 2.5 and 2.2 gal are 9.46 and 8.33 L. T28, S22: 3 min at 2.0 gal are 6.0 gal, 22.7 L. */
    @Test
    void publishedFlows() {
        assertThat(gallons(2.5).value()).isCloseTo(9.46, within(0.01));
        assertThat(gallons(2.2).value()).isCloseTo(8.33, within(0.01));
        Liters shower = living(0, 0, 0, 3, 0).day(gallons(2), new Liters(0)).gray();
        assertThat(shower.gallons()).isCloseTo(6.0, within(0.1));
        assertThat(shower.value()).isCloseTo(22.7, within(0.1));
    }

    @Test
    void tanksOfOneKindAddUpAndOnlyWhatIsUsableCounts() {
        WaterUse use = use("""
                people: {belted-seats: 4, sleeping-places: 2}
                tanks:
                  - {id: one, name: One, contents: fresh, capacity: 100 L, usable: 50 %}
                  - {id: two, name: Two, contents: fresh, capacity: 30 L}
                  - {id: cassette, name: Cassettes, contents: cassette, capacity: 20 L, count: 2, usable: 90 %}
                """);

        assertThat(use.fresh().usable().value()).isCloseTo(80, within(1e-9));
        assertThat(use.toilet().usable().value()).isCloseTo(36, within(1e-9));
        assertThat(use.fresh().names()).containsExactly("One", "Two");
    }

    @Test
    void leavesOutWhatTheCoachHasNot() {
        Coach coach = TestCoach.of("""
                people: {belted-seats: 2, sleeping-places: 2}
                tanks:
                  - {id: fresh, name: Fresh tank, contents: fresh, capacity: 60 gal}
                """);
        Explained.Explanation reckoning = (Explained.Explanation) TestCoach.told(Question.WATER_DAYS, coach);

        assertThat(reckoning.grids().get(1).head()).containsExactly("People", "Fresh tank empty");
        assertThat(reckoning.inputs()).extracting(Input::name).doesNotContain("one flush", "shower, each minute");
        assertThat(reckoning.assumed()).contains("No shower is counted, as none is described.");
        assertThat(TestCoach.calculator(Question.WATER_DAYS, coach)
                        .orElseThrow()
                        .fields())
                .hasSize(2);
    }

    @Test
    void saysWhatIsLacking() {
        assertThat(((Explained.Lacking) TestCoach.told(Question.WATER_DAYS, TestCoach.of("tanks: []"))).facts())
                .isEmpty();
        assertThat(((Explained.Lacking) TestCoach.told(Question.WATER_DAYS, TestCoach.without("people"))).facts())
                .containsExactly("how many people sleep in the coach");
        assertThat(TestCoach.calculator(Question.WATER_DAYS, TestCoach.of("tanks: []")))
                .isEmpty();
    }

    /** More people or more showers never last longer; a larger tank never shorter. */
    @Test
    void moreUseNeverLastsLonger() {
        Random random = new Random(29);
        for (int each = 0; each < 40; each++) {
            int size = 5 + random.nextInt(100);
            String tanks = """
                    people: {belted-seats: 4, sleeping-places: 4}
                    water: {shower-per-minute: %d L, toilet-per-flush: %d mL}
                    tanks:
                      - {id: gray, name: Gray tank, contents: gray, capacity: %d L}
                      - {id: black, name: Black tank, contents: black, capacity: %d L}
                      - {id: fresh, name: Fresh tank, contents: fresh, capacity: %%d L}
                    """.formatted(
                            1 + random.nextInt(12),
                            100 + random.nextInt(4000),
                            5 + random.nextInt(200),
                            5 + random.nextInt(200));
            WaterUse small = use(tanks.formatted(size));
            WaterUse large = use(tanks.formatted(size + random.nextInt(100)));
            for (WaterUseProfile way : WaterUseProfile.ALL) {
                int people = 1 + random.nextInt(8);
                double showers = 3 * random.nextDouble();
                double days = small.first(way, people).days();
                assertThat(days).isPositive().isFinite();
                assertThat(large.first(way, people).days()).isGreaterThanOrEqualTo(days);
                assertThat(small.first(way, people + 1).days()).isLessThan(days);
                assertThat(small.first(way.with(showers + 1), people).days())
                        .isLessThanOrEqualTo(
                                small.first(way.with(showers), people).days());
                assertThat(days)
                        .isEqualTo(small.lasting(way, people).stream()
                                .mapToDouble(WaterUse.Lasting::days)
                                .min()
                                .orElseThrow());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void answersForEachDemoCoach(Coach coach) {
        Explained.Explanation reckoning = (Explained.Explanation) TestCoach.told(Question.WATER_DAYS, coach);

        assertThat(reckoning.answer()).contains("With 2 people: ").endsWith(".");
        assertThat(reckoning.grids())
                .hasSize(4)
                .allSatisfy(grid -> assertThat(grid.rows()).isNotEmpty());
        assertThat(reckoning.inputs()).extracting(Input::name).contains("shower, each minute", "one flush");
    }

    /** The calculator begins with what the table says. */
    @ParameterizedTest
    @MethodSource("demos")
    void theCalculatorAgreesWithTheTable(Coach coach) {
        Grid table = ((Explained.Explanation) TestCoach.told(Question.WATER_DAYS, coach))
                .grids()
                .get(2);
        Calculator.Result result = TestCoach.calculator(Question.WATER_DAYS, coach)
                .orElseThrow()
                .result(new Calculator.Chosen(Map.of("people", 2.0, "living", 1, "showers", 1.0)));

        List<String> row = table.rows().get(1);
        assertThat(result.rows().stream().map(each -> each.get(1)).toList()).isEqualTo(row.subList(1, row.size()));
    }
}
