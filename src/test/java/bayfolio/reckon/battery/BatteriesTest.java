package bayfolio.reckon.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.explain.Calculator;
import bayfolio.explain.Explained;
import bayfolio.explain.Explained.Lacking;
import bayfolio.measure.Amps;
import bayfolio.measure.Celsius;
import bayfolio.measure.Seconds;
import bayfolio.measure.Share;
import bayfolio.measure.Watts;
import bayfolio.model.Coach;
import bayfolio.model.Fleet;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import bayfolio.reckon.Given;
import bayfolio.reckon.Origin;
import bayfolio.reckon.Question;
import bayfolio.reckon.TestCoach;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The three questions about the house batteries, asked of the demo coaches and of spoilt ones. */
final class BatteriesTest {
    private static final double HOUR = 3600;

    @TempDir
    @SuppressWarnings("NullAway.Init") // set before each test
    private Path folder;

    @ParameterizedTest
    @MethodSource("bayfolio.DemoFleet#coaches")
    void everyDemoCoachHasAnAnswer(String unit) throws Exception {
        Coach coach = coach(Path.of(""), unit);

        for (Explained reckoned : all(coach)) {
            Explained.Explanation reckoning = (Explained.Explanation) reckoned;
            assertThat(reckoning.answer()).isNotBlank();
            assertThat(reckoning.grids())
                    .isNotEmpty()
                    .allSatisfy(grid -> assertThat(grid.rows()).isNotEmpty());
            assertThat(reckoning.inputs()).isNotEmpty();
            assertThat(reckoning.steps()).isNotEmpty();
            assertThat(reckoning.toString()).doesNotContain("NaN", "Infinity", "null");
        }
    }

    /** Added up by hand: 7 A for 2 h, 3 A for 3 h, 0.85 A for 12 h and so on. */
    @Test
    void aNightAddsUp() throws Exception {
        Night night = Night.of(coach(Path.of(""), "dunlin")).orElseThrow();

        assertThat(night.at(HouseBank.MILD).drawn().value())
                .isCloseTo(7 * 2 + 3 * 3 + 7 * 0.25 + 1 + 2 + 2 * 0.5 + 0.85 * 12, within(1e-9));
    }

    /**
     * The trade knows: an inverter is for a lunch stop, not for a night of air conditioning. 13 A at 120 V through 88 % and
     * 24 W for itself are 150 A, and 450 Ah of lead-acid come down to half within an hour: arithmetic.
     */
    @Test
    void anAirConditionerOnTheInverterLastsALunchStop() throws Exception {
        Coach coach = coach(Path.of(""), "whimbrel");
        Night night = Night.of(coach).orElseThrow();
        Inverting inverter = night.inverter();
        Amps current = inverter.draws(new Watts(13 * 120)).plus(inverter.idles());

        assertThat(current.value()).isCloseTo(149.73, within(0.01));
        assertThat(night.alone(current).value() / HOUR).isCloseTo(0.9356, within(0.001));
        assertThat(((Explained.Explanation) TestCoach.told(Question.A_NIGHT, coach)).steps())
                .anySatisfy(step -> assertThat(step)
                        .startsWith("Front air conditioner on the inverter")
                        .endsWith("That does for a lunch stop, not for a night."));
    }

    @Test
    void whatTheInverterHasNoPowerForIsNotPromised() throws Exception {
        Coach coach = changed("whimbrel", Map.of("rating: 2,000 W", "rating: 1,500 W"));

        assertThat(((Explained.Explanation) TestCoach.told(Question.A_NIGHT, coach))
                        .grids()
                        .toString())
                .doesNotContain("air conditioner");
    }

    @Test
    void theColdTakesPartOfTheCharge() throws Exception {
        Night night = Night.of(coach(Path.of(""), "whimbrel")).orElseThrow();
        Share mild = night.at(new Celsius(25)).left();
        Share freezing = night.at(new Celsius(0)).left();
        Share frost = night.at(new Celsius(-10)).left();

        assertThat(freezing.value()).isLessThan(mild.value());
        assertThat(frost.value()).isLessThan(freezing.value());
    }

    /** -10 C: 1 / 1.65, a sizing note, verified; 0.606 of what is rated. Above 25 C no more is counted on. */
    @ParameterizedTest
    @CsvSource({"-10, 0.606", "-30, 0.606", "25, 1", "40, 1"})
    void leadAcidInTheCold(double celsius, double holds) {
        for (BatteryKind kind : List.of(BatteryKind.FLOODED, BatteryKind.AGM, BatteryKind.GEL)) {
            assertThat(kind.holds(new Celsius(celsius)).value()).isCloseTo(holds, within(0.001));
        }
    }

    @Test
    void warmerBatteriesNeverHoldLess() {
        for (BatteryKind kind : BatteryKind.values()) {
            for (double celsius = -30; celsius < 40; celsius += 0.1) {
                assertThat(kind.holds(new Celsius(celsius + 0.1)).value())
                        .isGreaterThanOrEqualTo(kind.holds(new Celsius(celsius)).value());
            }
        }
    }

    @Test
    void chassisLoadsAndTheInvertersOwnLoadAreNotCounted() throws Exception {
        Coach coach = coach(Path.of(""), "phalarope");
        HouseBank bank = HouseBank.of(coach).orElseThrow();

        assertThat(HouseLoad.all(coach.unit(), bank))
                .extracting(HouseLoad::name)
                .contains("Fridge", "Battery meter")
                .doesNotContain("Step motor", "Jack pump", "Door lock motors", "Battery charger", "Front heat pump");
        assertThat(Night.of(coach).orElseThrow().inverterOn()).isEqualTo(Night.LENGTH);
    }

    /** 450 Ah, half of it usable, 1.6 A on and 5 % lost a month: 225 Ah last 5.859 days without the loss, less with it. */
    @Test
    void standingWithTheSwitchOnAndOff() throws Exception {
        Explained.Explanation standing =
                (Explained.Explanation) TestCoach.told(Question.LEFT_STANDING, coach(Path.of(""), "whimbrel"));

        assertThat(standing.answer())
                .isEqualTo("With the house battery switch on, the limit of 50 % comes after 5.7 days."
                        + " With it off, after 75 days.");
    }

    @Test
    void nothingIsSaidOfTheSwitchOffWhereNobodyLooked() throws Exception {
        Coach coach = changed("dunlin", Map.of("    past-battery-switch: yes\n", ""));

        assertThat(((Explained.Explanation) TestCoach.told(Question.LEFT_STANDING, coach)).answer())
                .doesNotContain("off");
    }

    @Test
    void withoutAGeneratorHookUpCharges() throws Exception {
        assertThat(((Explained.Explanation) TestCoach.told(Question.CHARGING_BACK, coach(Path.of(""), "turnstone")))
                        .answer())
                .startsWith("On hook-up it takes");
        assertThat(((Explained.Explanation) TestCoach.told(Question.CHARGING_BACK, coach(Path.of(""), "dunlin")))
                        .answer())
                .startsWith("The generator must run")
                .contains("gal");
    }

    @Test
    void withoutFuelFiguresTheHoursRemain() throws Exception {
        Coach coach = changed("whimbrel", Map.of("  burn-half: 0.7 gal/h\n", ""));

        assertThat(((Explained.Explanation) TestCoach.told(Question.CHARGING_BACK, coach)).answer())
                .contains(" h ")
                .doesNotContain("gal");
    }

    @Test
    void moreLoadThanChargeSaysWhatToLeaveOut() throws Exception {
        Coach coach = changed("whimbrel", Map.of("a-night: 10 min", "a-night: 1 h"));

        assertThat(((Explained.Explanation) TestCoach.told(Question.A_NIGHT, coach)).answer())
                .startsWith("From a full charge, in mild weather: no, it takes")
                .contains("Without the microwave the charge lasts. In frost");
        Explained.Explanation back = (Explained.Explanation) TestCoach.told(Question.CHARGING_BACK, coach);
        assertThat(back.grids().get(0).rows()).contains(List.of("Taken in the night", "225 Ah"));
    }

    @Test
    void withoutBatteriesThereIsNothingToAsk() throws Exception {
        Coach coach = changed("whimbrel", Map.of("\nbanks:\n", "\nnotes-of-banks:\n"));

        assertThat(all(coach))
                .allSatisfy(reckoned -> assertThat(((Lacking) reckoned).facts()).isEmpty());
    }

    @Test
    void whatIsMissingIsNamed() throws Exception {
        assertThat(((Lacking) TestCoach.told(
                                Question.A_NIGHT, changed("whimbrel", Map.of("amp-hours: 450 Ah", "amp-hours: 0 Ah"))))
                        .facts())
                .containsExactly("amp-hours of the house batteries");
        assertThat(((Lacking) TestCoach.told(
                                Question.A_NIGHT, changed("whimbrel", Map.of("    roles: [house-bank]\n", ""))))
                        .facts())
                .containsExactly("which batteries are the house batteries");
        assertThat(((Lacking) TestCoach.told(
                                Question.A_NIGHT, changed("whimbrel", Map.of("\nloads:\n", "\nelsewhere:\n"))))
                        .facts())
                .isEmpty();
        assertThat(((Lacking) TestCoach.told(
                                Question.LEFT_STANDING, changed("whimbrel", Map.of("\nloads:\n", "\nelsewhere:\n"))))
                        .facts())
                .isEmpty();
        assertThat(((Lacking) TestCoach.told(
                                Question.A_NIGHT,
                                changed("whimbrel", Map.of("    watts: 108 W\n    volts: 12 V\n    amps: 9 A\n", ""))))
                        .facts())
                .containsExactly("what the furnace blower draws");
        assertThat(((Lacking) TestCoach.told(
                                Question.CHARGING_BACK, changed("whimbrel", Map.of("\ncharger:\n", "\nelsewhere:\n"))))
                        .facts())
                .containsExactly("amps that the charger gives");
        assertThat(((Lacking) TestCoach.told(
                                Question.CHARGING_BACK, changed("whimbrel", Map.of("rating: 60 A", "rating: 1 A"))))
                        .facts())
                .containsExactly("a charger that gives more than what is always on");
    }

    @Test
    void theUsualNightIsWhatTheCalculatorBeginsWith() throws Exception {
        for (String unit : DemoFleet.coaches()) {
            Coach coach = coach(Path.of(""), unit);
            Night night = Night.of(coach).orElseThrow();
            Calculator calculator =
                    TestCoach.calculator(Question.A_NIGHT, coach).orElseThrow();
            Map<String, Object> choice = new HashMap<>(Map.of("temperature", 0));
            calculator.fields().forEach(field -> choice.putIfAbsent(field.name(), 0.0));
            night.loads()
                    .forEach(load -> choice.put(load.load().id(), load.hours().value() / HOUR));
            Calculator.Result shown = calculator.result(new Calculator.Chosen(choice));

            assertThat(((Explained.Explanation) TestCoach.told(Question.A_NIGHT, coach)).answer())
                    .contains(shown.rows().get(0).get(1), shown.rows().get(1).get(1));
        }
    }

    /** The hours by hand: the furnace of that coach burns 2 h on a mild day and 10 h in frost, and its blower takes 7 A. */
    @Test
    void aNightInFrostTakesTheHoursOfFrost() throws Exception {
        Coach coach = coach(Path.of(""), "dunlin");
        Night night = Night.of(coach).orElseThrow();

        assertThat(night.at(new Celsius(0)).drawn().value())
                .isCloseTo(7 * 10 + 3 * 3 + 7 * 0.25 + 1 + 2 + 2 * 0.5 + 0.85 * 12, within(1e-9));
        assertThat(night.at(new Celsius(0)).left().value()).isLessThan(0.40);
        assertThat(((Explained.Explanation) TestCoach.told(Question.A_NIGHT, coach)).answer())
                .isEqualTo("From a full charge, in mild weather: yes, it takes 39 Ah and leaves 81 %."
                        + " In frost, with the furnace blower on for 10 h: no, it takes 95 Ah and leaves 38 %."
                        + " Plug in, or run less. The limit is 50 %.");
    }

    /** One fact for both: written anew at the appliance, it moves gas and batteries. */
    @Test
    void gasAndBatteriesTakeTheSameHoursOfAHeater() throws Exception {
        Coach coach = changed("dunlin", Map.of("gas-hours-frost: 10 h", "gas-hours-frost: 4 h"));

        assertThat(Night.of(coach).orElseThrow().heaters())
                .singleElement()
                .satisfies(blower -> assertThat(blower.frosty().value()).isEqualTo(4 * HOUR));
        assertThat(((Explained.Explanation) TestCoach.told(Question.GAS_DAYS, coach)).inputs())
                .anyMatch(it -> it.name().equals("Furnace, hours in frost")
                        && it.value().equals("4 h")
                        && it.origin() instanceof Origin.Stated stated
                        && stated.at().line() > 1);
    }

    @ParameterizedTest
    @MethodSource("bayfolio.DemoFleet#coaches")
    void aCoachWithAHeaterIsToldOfBothNights(String unit) throws Exception {
        assertThat(((Explained.Explanation) TestCoach.told(Question.A_NIGHT, coach(Path.of(""), unit))).answer())
                .contains("in mild weather: ", " In frost, with the ", "The limit is ");
    }

    /** 20 A out of 100 Ah rated over 10 h, with an exponent of 1.3: 10 h x (100 / (20 x 10))^1.3 = 4.0613 h. */
    @Test
    void exponentAndHourRateOfTheBankCount() {
        Night night = Night.of(TestCoach.of(TINY.formatted("agm", "12")
                        .replace("amp-hours: 100 Ah", "amp-hours: 100 Ah, rated-over: 10 h, peukert-exponent: 1.3")
                        .replace("amps: 2 A, a-night: 5 h", "amps: 20 A, a-night: 2 h")))
                .orElseThrow();

        assertThat(night.at(HouseBank.MILD).used()).isCloseTo(2 / 4.06126, within(1e-5));
        assertThat(night.bank().ratedOver().value()).isEqualTo(new Seconds(36_000));
        assertThat(night.bank().exponent().value()).isEqualTo(1.3);
        assertThat(List.of(night.bank().ratedOver(), night.bank().exponent())).allMatch(Given::isStated);
    }

    /** 10 Ah taken from lithium, 99 % of what goes in comes out, at 5 A: 2.02 h; the charger would give 60 A. */
    @Test
    void theChargeLimitOfTheBankCounts() {
        Coach coach = TestCoach.of("charger: {rating: 60 A}\n"
                + "supplies:\n  - {id: shore, name: Shore, source: shore, volts: 120 V, amps: 30 A, legs: 1}\n"
                + TINY.formatted("lithium", "12").replace("amp-hours: 100 Ah", "amp-hours: 100 Ah, charge-limit: 5 A"));

        assertThat(((Explained.Explanation) TestCoach.told(Question.CHARGING_BACK, coach)).answer())
                .isEqualTo("On shore power it takes 2.1 h to bring back a usual night.");
        assertThat(((Explained.Explanation) TestCoach.told(Question.CHARGING_BACK, coach)).inputs())
                .anyMatch(it -> it.name().equals("the most that the batteries take")
                        && it.value().equals("5 A")
                        && it.origin() instanceof Origin.Stated stated
                        && stated.at().line() > 1);
    }

    @Test
    void theGeneratorIsNamedWhenTheChargerHangsOnIt() throws Exception {
        Coach coach = changed(
                "whimbrel",
                Map.of("charged-by: [shore-50, generator-supply, charger-unit", "charged-by: [charger-unit"));
        Coach apart = changed("turnstone", Map.of("charged-by: [shore-16a, charger-230v", "charged-by: [charger-230v"));

        assertThat(((Explained.Explanation) TestCoach.told(Question.CHARGING_BACK, coach)).answer())
                .startsWith("The generator must run");
        assertThat(((Explained.Explanation) TestCoach.told(Question.CHARGING_BACK, apart)).answer())
                .startsWith("On hook-up");
    }

    private static final String TINY = """
            banks:
              - {id: house, name: Leisure battery, roles: [house-bank], chemistry: %s, volts: %s V, amp-hours: 100 Ah}
              - {id: start, name: Starter battery, chemistry: agm, volts: 12 V, amp-hours: 70 Ah}
            circuits:
              - {id: one, name: Lights, current: dc, volts: 12 V, breaker: 10 A}
              - {id: cab, name: Cab, current: dc, volts: 12 V, breaker: 10 A, bank: start}
              - {id: outlets, name: Outlets, current: ac, volts: 120 V, breaker: 15 A}
            loads:
              - {id: lamp, name: Lamp, circuit: one, amps: 2 A, a-night: 5 h}
              - {id: clock, name: Clock, circuit: cab, amps: 9 A, always-on: yes}
            """;

    @Test
    void oneLampOnGel() {
        Coach coach = TestCoach.of(TINY.formatted("gel", "12"));

        assertThat(Night.of(coach).orElseThrow().at(HouseBank.MILD).used()).isCloseTo(0.10, within(1e-12));
        assertThat(((Explained.Explanation) TestCoach.told(Question.A_NIGHT, coach)).answer())
                .isEqualTo("Yes, from a full charge. A usual night takes 10 Ah and leaves 90 %; the limit is 50 %.");
        assertThat(((Lacking) TestCoach.told(Question.LEFT_STANDING, coach)).facts())
                .containsExactly("which loads of the house batteries are always on");
        assertThat(((Lacking) TestCoach.told(Question.CHARGING_BACK, coach)).facts())
                .containsExactly("amps that the charger gives");
    }

    @Test
    void twelveVoltThingsTakeHalfFromTwentyFourVolts() {
        Night night = Night.of(TestCoach.of(TINY.formatted("lithium", "24"))).orElseThrow();

        assertThat(night.at(HouseBank.MILD).drawn().value()).isCloseTo(5, within(1e-12));
    }

    @Test
    void aNightHasTwelveHours() {
        Night night = Night.of(TestCoach.of(TINY.formatted("lithium", "12").replace("a-night: 5 h", "a-night: 20 h")))
                .orElseThrow();

        assertThat(night.at(HouseBank.MILD).drawn().value()).isCloseTo(24, within(1e-12));
    }

    /** Without figures of its own the inverter gives 90 % and takes 30 W: 180 / 10.8 + 2.5 A for 2 h. */
    @Test
    void aUsualInverterWhereNoneIsDescribed() {
        Night night = Night.of(TestCoach.of(TINY.formatted("lithium", "12")
                        + "  - {id: tv, name: TV, circuit: outlets, watts: 180 W, on-inverter: yes, a-night: 2 h}\n"))
                .orElseThrow();

        assertThat(night.at(HouseBank.MILD).drawn().value()).isCloseTo(10 + 2 * (180 / 10.8 + 2.5), within(1e-9));
    }

    @Test
    void moreHoursNeverLeaveMore() throws Exception {
        Random random = new Random(31);
        Night night = Night.of(coach(Path.of(""), "whimbrel")).orElseThrow();
        for (int i = 0; i < 1000; i++) {
            List<HouseLoad> some = night.loads().stream()
                    .map(load -> load.running(new Seconds(HOUR * 12 * random.nextDouble())))
                    .toList();
            int longer = random.nextInt(some.size());
            List<HouseLoad> more = IntStream.range(0, some.size())
                    .mapToObj(at -> at == longer
                            ? some.get(at)
                                    .running(new Seconds(some.get(at).hours().value() + HOUR))
                            : some.get(at))
                    .toList();

            assertThat(used(night, more)).isGreaterThanOrEqualTo(used(night, some));
        }
    }

    private static double used(Night night, List<HouseLoad> loads) {
        return new Night(night.bank(), night.inverter(), loads)
                .at(HouseBank.MILD)
                .used();
    }

    private static List<Explained> all(Coach coach) {
        return Stream.of(
                        TestCoach.told(Question.A_NIGHT, coach),
                        TestCoach.told(Question.LEFT_STANDING, coach),
                        TestCoach.told(Question.CHARGING_BACK, coach))
                .toList();
    }

    private Coach changed(String unit, Map<String, String> changes) throws Exception {
        DemoFleet.copy(Path.of(""), folder);
        Path file = folder.resolve("units").resolve(unit).resolve("unit.yaml");
        String text = Files.readString(file);
        for (Map.Entry<String, String> change : changes.entrySet()) {
            assertThat(text).contains(change.getKey());
            text = text.replaceFirst(
                    java.util.regex.Pattern.quote(change.getKey()),
                    java.util.regex.Matcher.quoteReplacement(change.getValue()));
        }
        Files.writeString(file, text);
        return coach(folder, unit);
    }

    private static Coach coach(Path root, String id) throws Exception {
        Fleet fleet = FleetReader.read(Folders.at(root)).fleet();
        Unit unit = fleet.units().stream()
                .filter(it -> it.id().equals(id))
                .findFirst()
                .orElseThrow();
        return new Coach(fleet, unit);
    }
}
