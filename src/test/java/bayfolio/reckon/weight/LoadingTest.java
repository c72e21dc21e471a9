package bayfolio.reckon.weight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bayfolio.Folders;
import bayfolio.explain.Calculator;
import bayfolio.explain.Explained;
import bayfolio.measure.Kilograms;
import bayfolio.measure.Liters;
import bayfolio.measure.Meters;
import bayfolio.model.Coach;
import bayfolio.model.Region;
import bayfolio.read.FleetReader;
import bayfolio.reckon.Question;
import bayfolio.reckon.TestCoach;
import bayfolio.reckon.water.WaterTanks;
import bayfolio.reckon.water.WaterWeight;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Test cases T01 to T24 of the reference for water and weight, as far as they are about loading. */
final class LoadingTest {
    private static final double GALLON = 3.785411784;
    private static final double POUND = 0.45359237;
    private static final double INCH = 0.0254;

    /** Sample coach A of the reference, its wheelbase 220 in; distances are behind the front axle. */
    private static final Axles COACH_A = new Axles(new Meters(220 * INCH), new Meters(0));

    private static final String COACH = """
            size: {length: 30 ft, width: 8 ft, height: 11 ft, wheelbase: 220 in, front-overhang: 36 in}
            people: {belted-seats: 6, sleeping-places: 4}
            compartments:
              - {id: bay, name: Bay, roles: [storage-bay], side: left, from-front: 206 in, width: 20 in, access: free}
            tanks:
              - {id: fresh, name: Fresh tank, contents: fresh, capacity: 60 gal, side: inside, from-front: 276 in, width: 20 in}
              - {id: gray, name: Gray tank, contents: gray, capacity: 40 gal, side: inside, from-front: 176 in}
              - {id: black, name: Black tank, contents: black, capacity: 30 gal, side: inside, from-front: 296 in}
            """;

    private static final String WEIGHTS = """
            weights:
              gross: 20,500 lb
              front-axle: 8,000 lb
              rear-axle: 14,000 lb
              as-weighed: {total: 17400 lb, front: 6300 lb, rear: 11100 lb, people: 0, fresh-water: 0 %, state: empty}
            """;

    private static Kilograms pounds(double pounds) {
        return new Kilograms(pounds * POUND);
    }

    static Stream<Coach> demos() {
        FleetReader.Reading reading = FleetReader.read(Folders.at(Path.of("")));
        return reading.fleet().units().stream().map(unit -> new Coach(reading.fleet(), unit));
    }

    /** T01 and T02 (exact figure), S3 and S4; T07. Computed. */
    @ParameterizedTest
    @CsvSource({
        "T01 computed, 3.785411784, 3.785411784, 8.3454, 0.0001",
        "T02 verified, 227.12470704, 227.1, 500.7, 0.1",
        "T07 computed, 100, 100, 220.5, 0.1"
    })
    void publishedWeightsOfWater(String id, double liters, double kilograms, double pounds, double within) {
        Kilograms weight = WaterWeight.of(new Liters(liters));

        assertThat(weight.value()).as(id).isCloseTo(kilograms, within(0.1));
        assertThat(weight.pounds()).as(id).isCloseTo(pounds, within(within));
    }

    private static Axles.Carried loaded(double[][] loads) {
        Axles.Carried sum = new Axles.Carried(pounds(6_300), pounds(11_100));
        for (double[] load : loads) {
            sum = sum.plus(COACH_A.carried(pounds(load[0]), new Meters(load[1] * INCH)));
        }
        return sum;
    }

    private static final double[] CAB = {300, 20};
    private static final double[] DINETTE = {300, 110};
    private static final double[] CARGO = {600, 180};

    private static double[] water(double gallons, double inches) {
        return new double[] {gallons * 8.34, inches};
    }

    private static void check(Axles.Carried carried, double front, double rear, double sum) {
        assertThat(carried.front().pounds()).isCloseTo(front, within(0.1));
        assertThat(carried.rear().pounds()).isCloseTo(rear, within(0.1));
        assertThat(carried.front().plus(carried.rear()).pounds()).isCloseTo(sum, within(0.1));
    }

    /** T15, statics, computed. */
    @Test
    void publishedAxlesWithFreshWater() {
        check(loaded(new double[][] {CAB, DINETTE, water(60, 250), CARGO}), 6_763.6, 12_336.8, 19_100.4);
    }

    /** T16, statics, computed. */
    @Test
    void publishedAxlesWithTheWaterMoved() {
        check(
                loaded(new double[][] {CAB, DINETTE, water(15, 250), water(40, 140), water(5, 260), CARGO}),
                6_928.5,
                12_171.9,
                19_100.4);
    }

    /** T17, statics, computed. */
    @Test
    void publishedAxlesWithAllTanksFull() {
        check(
                loaded(new double[][] {CAB, DINETTE, water(60, 250), water(40, 140), water(30, 260), CARGO}),
                6_839.4,
                12_844.8,
                19_684.2);
    }

    /** T18 and T19, statics, computed. */
    @Test
    void publishedMomentsBehindTheRearAxle() {
        check(COACH_A.carried(pounds(300), new Meters(330 * INCH)), -150, 450, 300);
        Axles.Carried metric = new Axles(new Meters(4.035), new Meters(0)).carried(new Kilograms(120), new Meters(4.8));
        assertThat(metric.rear().value()).isCloseTo(142.8, within(0.1));
        assertThat(metric.front().value()).isCloseTo(-22.8, within(0.1));
    }

    /** T08, verified: 20,500 less 17,400 lb are 3,100 lb, 1,406 kg. */
    @Test
    void publishedCapacity() {
        Kilograms capacity =
                PayloadLimits.of(TestCoach.of(COACH + WEIGHTS)).orElseThrow().capacity();

        assertThat(capacity.pounds()).isCloseTo(3_100, within(0.001));
        assertThat(capacity.value()).isCloseTo(1_406, within(1.0));
    }

    /** T09 and T10, S6 verified: the belted seats at 150 lb against the stated capacity. */
    @ParameterizedTest
    @CsvSource({"T09 S6 verified, 6, 3100, 900, true", "T10 S6 verified, 8, 1100, 1200, false"})
    void publishedBeltsAgainstTheLabel(String id, int belts, int label, double weight, boolean within) {
        Coach coach = TestCoach.of(
                COACH.replace("belted-seats: 6", "belted-seats: " + belts) + WEIGHTS + "  payload: " + label + " lb\n");

        assertThat(Person.weight(belts, Region.NORTH_AMERICA).pounds()).as(id).isCloseTo(weight, within(0.001));
        assertThat(((Explained.Explanation) TestCoach.told(Question.LOADING, coach)).steps())
                .as(id)
                .anySatisfy(step ->
                        assertThat(step).contains(within ? "within the payload of" : "more than the payload of"));
    }

    /** T11 and T12, verified and computed: water at the rate of the label, 8.3 lb a gallon; tongue weight is cargo. */
    @Test
    void publishedCargoLeft() {
        WeightLimit limit = new WeightLimit(WeightLimit.Kind.LABEL, pounds(3_100), 1, 1, pounds(498), 1);

        assertThat(limit.left(4, pounds(150), 1, pounds(0)).pounds()).isCloseTo(2_002, within(0.001));
        assertThat(limit.left(4, pounds(150), 1, pounds(500)).pounds()).isCloseTo(1_502, within(0.001));
        assertThat(WeightLimit.exceeded(limit.left(10, pounds(150), 1, pounds(1_000))))
                .isFalse();
        assertThat(WeightLimit.exceeded(limit.left(11, pounds(150), 1, pounds(1_000))))
                .isTrue();
    }

    /** T22, from memory: n = 4 with the driver, L = 7.2 m. */
    @Test
    void leastEuropeanPayload() {
        assertThat(MinimumPayload.of(4, new Meters(7.2)).value()).isCloseTo(112, within(1e-9));
    }

    /** T24, S8 and S9 verified: 3,500 kg less 2,950 + 120 kg, driver within, less three passengers: 205 kg. */
    @Test
    void publishedEuropeanPayload() {
        Coach coach = TestCoach.of("""
                region: europe
                people: {belted-seats: 4, sleeping-places: 2}
                tanks: []
                weights:
                  gross: 3,500 kg
                  as-weighed: {total: 3070 kg, people: 1, fresh-water: 0 %, state: driver on board}
                """);
        PayloadLimits carrying = PayloadLimits.of(coach).orElseThrow();

        assertThat(carrying.first(4, 0).more().value()).isCloseTo(205, within(0.1));
        assertThat(carrying.capacity().value()).isCloseTo(430, within(1e-9));
        assertThat(((Explained.Explanation) TestCoach.told(Question.LOADING, coach)).answer())
                .isEqualTo(
                        "With 2 people: 355 kg (782 lb) for your things. With 4 people: 205 kg (451 lb) for your things.");
    }

    /** The program builds the same sample coach: 4 people, water at its own weight. */
    @Test
    void limitsFollowTheMoments() {
        PayloadLimits carrying = PayloadLimits.of(TestCoach.of(COACH + WEIGHTS)).orElseThrow();
        WeightLimit rear = carrying.limits().get(2);

        assertThat(carrying.limits())
                .extracting(WeightLimit::kind)
                .containsExactly(WeightLimit.Kind.GROSS, WeightLimit.Kind.FRONT_AXLE, WeightLimit.Kind.REAR_AXLE);
        assertThat(rear.room().pounds()).isCloseTo(2_900, within(0.001));
        assertThat(rear.cargo()).isCloseTo(180 / 220.0, within(1e-9));
        assertThat(rear.water().pounds()).isCloseTo(60 * GALLON / POUND * 250 / 220, within(0.001));
        assertThat(rear.left(4, pounds(150), 0, pounds(0)).pounds()).isCloseTo(2_750, within(0.001));
    }

    /** A coach weighed with people and water comes out as the same coach weighed without. */
    @Test
    void whatWasOnBoardIsTakenOff() {
        PayloadLimits empty = PayloadLimits.of(TestCoach.of(COACH + WEIGHTS)).orElseThrow();
        Axles.Carried water = empty.carried(WaterTanks.fresh(empty.unit()), 0.5);
        Axles.Carried people = PayloadLimits.seated(3, Region.NORTH_AMERICA);
        Axles.Carried sum =
                new Axles.Carried(pounds(6_300), pounds(11_100)).plus(water).plus(people);
        PayloadLimits laden = PayloadLimits.of(TestCoach.of(COACH
                        + """
                weights:
                  gross: 20,500 lb
                  front-axle: 8,000 lb
                  rear-axle: 14,000 lb
                  as-weighed: {total: %.3f kg, front: %.3f kg, rear: %.3f kg, people: 3, fresh-water: 50 %%, state: laden}
                """.formatted(
                                        sum.front().plus(sum.rear()).value(),
                                        sum.front().value(),
                                        sum.rear().value())))
                .orElseThrow();

        for (int each = 0; each < empty.limits().size(); each++) {
            assertThat(laden.limits().get(each).room().value())
                    .isCloseTo(empty.limits().get(each).room().value(), within(0.01));
        }
    }

    @Test
    void saysWhatIsLacking() {
        assertThat(((Explained.Lacking) TestCoach.told(
                                Question.LOADING, TestCoach.of("people: {belted-seats: 2, sleeping-places: 2}")))
                        .facts())
                .isEmpty();
        assertThat(((Explained.Lacking) TestCoach.told(Question.LOADING, TestCoach.of("weights: {gross: 3500 kg}")))
                        .facts())
                .containsExactly("the weight of the coach on a scale, with what was on board");
        assertThat(((Explained.Lacking) TestCoach.told(Question.LOADING, TestCoach.of("""
                people: {belted-seats: 2, sleeping-places: 2}
                weights: {gross: 3500 kg, as-weighed: {total: 3000 kg, state: unknown}}
                """))).facts())
                .containsExactly(
                        "how many people were on board when it was weighed",
                        "how full the fresh tanks were when it was weighed");
        assertThat(TestCoach.calculator(Question.LOADING, TestCoach.of("{}"))).isEmpty();
    }

    /** T05, S3 verified, with water at its own weight: tank and heater count, by whatever the water is heated. */
    @ParameterizedTest
    @ValueSource(strings = {"water-heater", "blown-air-heater"})
    void waterInTheHeaterCounts(String what) {
        PayloadLimits without = PayloadLimits.of(TestCoach.of(COACH + WEIGHTS)).orElseThrow();
        PayloadLimits with = PayloadLimits.of(TestCoach.of(COACH + WEIGHTS + """
                appliances:
                  - {id: heater, name: Heater, what: %s, capacity: 10 gal, side: left, from-front: 12 ft}
                """.formatted(what)))
                .orElseThrow();

        assertThat(less(without, with, WeightLimit.Kind.GROSS)).isCloseTo(83.454, within(0.001));
        assertThat(less(without, with, WeightLimit.Kind.FRONT_AXLE) + less(without, with, WeightLimit.Kind.REAR_AXLE))
                .isCloseTo(83.454, within(0.001));
        assertThat(with.capacity()).isEqualTo(without.capacity());
    }

    private static double less(PayloadLimits without, PayloadLimits with, WeightLimit.Kind name) {
        return room(without, name) - room(with, name);
    }

    private static double room(PayloadLimits carrying, WeightLimit.Kind name) {
        return carrying.limits().stream()
                .filter(limit -> limit.kind() == name)
                .findFirst()
                .orElseThrow()
                .room()
                .pounds();
    }

    @Test
    void waterThatWasInTheHeaterOnTheScaleIsNotAddedAgain() {
        String heater = """
                appliances:
                  - {id: heater, name: Heater, what: water-heater, capacity: 10 gal, side: left, from-front: 12 ft}
                """;
        PayloadLimits without = PayloadLimits.of(TestCoach.of(COACH + WEIGHTS)).orElseThrow();
        PayloadLimits full = PayloadLimits.of(
                        TestCoach.of(COACH + WEIGHTS.replace("people: 0,", "people: 0, heater-full: yes,") + heater))
                .orElseThrow();

        assertThat(WEIGHTS).contains("people: 0,");
        assertThat(less(without, full, WeightLimit.Kind.GROSS)).isZero();
    }

    @Test
    void whatIsNobodyKnowsWhereIsSaidAndOnNoAxle() {
        Explained.Explanation reckoning =
                (Explained.Explanation) TestCoach.told(Question.LOADING, TestCoach.of(COACH + WEIGHTS + """
                appliances:
                  - {id: heater, name: Boiler, what: water-heater, capacity: 10 gal}
                """));

        assertThat(reckoning.assumed()).contains("The axles are not counted. Not known: place of Boiler.");
        assertThat(reckoning.grids().get(1).head()).doesNotContain("Front axle", "Rear axle");
    }

    /** Reckoned by hand in a review: 2,865 + 4 x 75 + 97 + 10 kg of 3,500 kg, and 10 kg more on turnstone, too. */
    @ParameterizedTest
    @CsvSource({"redpoll, '3,272', 218", "turnstone, '3,200', 280"})
    void theBoilersOfEuropeCount(String unit, String all, String left) {
        Explained.Explanation reckoning =
                (Explained.Explanation) TestCoach.told(Question.LOADING, TestCoach.demo(unit));
        List<String> full = reckoning.grids().get(1).rows().get(1);

        assertThat(full.get(0)).isEqualTo("fresh water full");
        assertThat(full.get(1)).startsWith(all + " kg");
        assertThat(reckoning.answer()).contains("With 4 people and full water: " + left + " kg");
    }

    /** What stands on both axles is what the coach weighs. */
    @ParameterizedTest
    @MethodSource("bayfolio.DemoFleet#coaches")
    void theAxlesCarryTheWholeCoach(String unit) {
        Explained.Explanation reckoning =
                (Explained.Explanation) TestCoach.told(Question.LOADING, TestCoach.demo(unit));

        assertThat(reckoning.grids().get(1).rows())
                .allSatisfy(row ->
                        assertThat(figure(row.get(2)) + figure(row.get(3))).isCloseTo(figure(row.get(1)), within(2.0)));
    }

    private static double figure(String text) {
        return Double.parseDouble(text.replaceAll(" .*|,", ""));
    }

    @Test
    void withoutAxlesTheGrossLimitIsLeft() {
        Coach coach = TestCoach.of("people: {belted-seats: 2, sleeping-places: 2}\n" + WEIGHTS);
        Explained.Explanation reckoning = (Explained.Explanation) TestCoach.told(Question.LOADING, coach);

        assertThat(reckoning.assumed())
                .contains("The axles are not counted. Not known: wheelbase and front overhang,"
                        + " place of a storage compartment, place of Fresh tank.");
        assertThat(reckoning.grids().get(1).head()).hasSize(3);
    }

    /** More on board never leaves more; what still fits never exceeds a limit. */
    @Test
    void moreOnBoardNeverLeavesMore() {
        Random random = new Random(571_120);
        for (int each = 0; each < 2_000; each++) {
            WeightLimit limit = new WeightLimit(
                    WeightLimit.Kind.GROSS,
                    new Kilograms(3_000 * random.nextDouble() - 500),
                    random.nextDouble(),
                    random.nextDouble(),
                    new Kilograms(400 * random.nextDouble()),
                    1.5 * random.nextDouble() - 0.2);
            int people = random.nextInt(8);
            Kilograms weight = new Kilograms(150 * random.nextDouble());
            double fresh = random.nextDouble();
            Kilograms left = limit.left(people, weight, fresh, new Kilograms(0));

            assertThat(limit.left(people + 1, weight, fresh, new Kilograms(0)).value())
                    .isLessThanOrEqualTo(left.value());
            assertThat(limit.left(people, weight, 1, new Kilograms(0)).value()).isLessThanOrEqualTo(left.value());
            limit.more(left)
                    .filter(more -> !WeightLimit.exceeded(more))
                    .ifPresent(more -> assertThat(WeightLimit.exceeded(limit.left(people, weight, fresh, more)))
                            .isFalse());
        }
    }

    /** Both axles together carry all of a load, wherever it is. */
    @Test
    void axlesCarryAllOfIt() {
        Random random = new Random(14);
        for (int each = 0; each < 1_000; each++) {
            Axles axles = new Axles(new Meters(2 + 6 * random.nextDouble()), new Meters(2 * random.nextDouble()));
            Kilograms weight = new Kilograms(1_000 * random.nextDouble());
            Axles.Carried carried = axles.carried(weight, new Meters(13 * random.nextDouble()));

            assertThat(carried.front().plus(carried.rear()).value()).isCloseTo(weight.value(), within(1e-9));
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void answersForEachDemoCoach(Coach coach) {
        Explained.Explanation reckoning = (Explained.Explanation) TestCoach.told(Question.LOADING, coach);

        assertThat(PayloadLimits.of(coach).orElseThrow().missing()).isEmpty();
        assertThat(reckoning.grids()).hasSize(2);
        assertThat(reckoning.grids().get(1).rows()).hasSize(4);
        assertThat(List.of(reckoning.answer()))
                .allSatisfy(answer -> assertThat(answer).contains("for your things"));
    }

    /** The calculator begins with what the table says: two people as the regulation takes them, full water. */
    @ParameterizedTest
    @MethodSource("demos")
    void theCalculatorAgreesWithTheTable(Coach coach) {
        boolean europe = coach.unit().region() == Region.EUROPE;
        String cell = ((Explained.Explanation) TestCoach.told(Question.LOADING, coach))
                .grids()
                .get(0)
                .rows()
                .get(1)
                .get(3);
        Calculator.Result result = TestCoach.calculator(Question.LOADING, coach)
                .orElseThrow()
                .result(new Calculator.Chosen(
                        Map.of("people", 2.0, "each", europe ? 75.0 : 150.0, "cargo", 0.0, "fresh", 2)));

        assertThat(result.answer()).startsWith("Left to load: " + cell.substring(0, cell.indexOf(" (")));
    }
}
