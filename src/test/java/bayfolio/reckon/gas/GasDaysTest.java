package bayfolio.reckon.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bayfolio.Folders;
import bayfolio.explain.Explained;
import bayfolio.measure.Kilograms;
import bayfolio.measure.Liters;
import bayfolio.measure.NotAQuantityException;
import bayfolio.measure.Seconds;
import bayfolio.measure.WattHours;
import bayfolio.measure.Watts;
import bayfolio.model.Coach;
import bayfolio.model.Fleet;
import bayfolio.model.Region;
import bayfolio.read.FleetReader;
import bayfolio.reckon.Endurance;
import bayfolio.reckon.Question;
import bayfolio.reckon.TestCoach;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GasDaysTest {
    private static final double GALLON = 3.785411784;
    private static final double POUND = 0.45359237;

    /** Energy divided by input; the comment names the case of the power reference, section 12, its source and status. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "T-P1 [P16] V            | 430000  | 42500 | 10.118 | 0.001",
                "T-P3 [P15] V            | 433000  | 4000  | 108.25 | 1e-9",
                "T-P4 [P4] V             | 91502   | 45000 | 2.0334 | 1e-4",
                "T-P4 [P11] V            | 91500   | 26000 | 3.5192 | 1e-4",
            })
    void publishedEndurance(String id, double btu, double input, double hours, double tolerance)
            throws NotAQuantityException {
        Watts taken = Watts.SCALE.parse(Math.round(input) + " BTU/h");

        assertThat(Endurance.of(WattHours.ofBtu(btu), taken).value() / 3600)
                .as(id)
                .isCloseTo(hours, within(tolerance));
    }

    /** T-P2 [P15], V: 4.73 gal at 91,690 BTU a gallon. */
    @Test
    void energyOfACylinderByVolume() {
        assertThat(LpGas.ofBtu(91_690, 21_548).in(new Liters(4.73 * GALLON)).btu())
                .isCloseTo(433_693.7, within(0.1));
    }

    /** T-P6 [P13][P1], VI: 30 gal of water capacity are 24 gal of gas, and 2,196,048 BTU. */
    @Test
    void aTankIsFilledToFourFifths() {
        GasStore store = GasStore.all(gas("capacity: 30 gal", "")).get(0);

        assertThat(store.liquid().gallons()).isCloseTo(24, within(1e-9));
        assertThat(store.energy(LpGas.GROSS).btu()).isCloseTo(2_196_048, within(1.0));
    }

    /** T-P5 [P12], V: filling by weight of water gives 79.877 gal for 100; filling to 80 % is no more than 0.2 gal off. */
    @Test
    void theFillLimitAgreesWithFillingByWeight() {
        assertThat(100 * GasStore.FILL_LIMIT.value().value()).isCloseTo(79.877, within(0.2));
    }

    /** T-P7 [P1], VI: 20 lb at 21,548 BTU a pound. */
    @Test
    void enduranceByWeight() throws NotAQuantityException {
        WattHours held = LpGas.GROSS.in(new Kilograms(20 * POUND));

        assertThat(Endurance.of(held, Watts.SCALE.parse("30,000 BTU/h")).value() / 3600)
                .isCloseTo(14.365, within(0.001));
    }

    /** T-P8 and T-P9 [P5], VI: a bottle of 11 kg, and a heater of 6 kW. Gross it would be 153.78 kWh [P7]. */
    @Test
    void aEuropeanBottleIsReckonedNet() {
        WattHours held = LpGas.of(Region.EUROPE).in(new Kilograms(11));

        assertThat(held.value()).isCloseTo(141_570, within(10.0));
        assertThat(Endurance.of(held, new Watts(6000)).value() / 3600).isCloseTo(23.595, within(0.001));
        assertThat(LpGas.NET.burnedHourly(new Watts(6000)).value()).isCloseTo(0.4662, within(1e-4));
    }

    /** T-P10 [P1][P2], V: the two gross figures make 4.2464 lb a gallon, and not the 4.20 of the same table. */
    @Test
    void theGrossFiguresAreOneTable() {
        double perGallon = LpGas.GROSS.in(new Liters(GALLON)).btu();
        double perPound = LpGas.GROSS.in(new Kilograms(POUND)).btu();

        assertThat(perGallon / perPound).isCloseTo(4.2464, within(1e-4));
    }

    /** T-P11 [P5][P9], VI: the net figure by volume is 84,111 BTU a gallon, within 0.2 % of the 84,250 of AFDC. */
    @Test
    void theNetFiguresAgree() {
        double perGallon = LpGas.NET.in(new Liters(GALLON)).btu();

        assertThat(perGallon).isCloseTo(84_111, within(40.0)).isCloseTo(84_250, within(0.002 * 84_250));
    }

    /** T-U2 [U2], V and T-U5, VI. */
    @Test
    void britishThermalUnits() throws NotAQuantityException {
        assertThat(3600 * WattHours.ofBtu(1).value()).isCloseTo(1055.05585262, within(1e-9));
        assertThat(Watts.SCALE.parse("13,500 BTU/h").value()).isCloseTo(3956.459, within(0.001));
        assertThat(Watts.SCALE.parse("15,000 BTU/h").value()).isCloseTo(4396.066, within(0.001));
    }

    /** By hand: 19.2 gal × 91,502 = 1,756,838 BTU; 40,000 BTU/h empties that in 43.92 h. */
    @Test
    void anAmericanTank() {
        Explained.Explanation reckoning =
                (Explained.Explanation) TestCoach.told(Question.GAS_DAYS, gas("capacity: 24 gal, usable: 80 %", """
                  - {id: furnace, name: Furnace, what: furnace, energy: [gas], gas-input: "40,000 BTU/h", gas-hours: 0 h, gas-hours-frost: 10 h}
                  - {id: fridge, name: Fridge, what: fridge-two-way, energy: [gas, ac], gas-input: "1,500 BTU/h", gas-hours: 14 h}
                """));

        assertThat(reckoning.answer())
                .isEqualTo(
                        "Gas tank, full: 83 days in mild weather, 4.1 days in frost. Furnace without pause: 43.9 h.");
        assertThat(reckoning.grids().get(0).rows())
                .containsExactly(List.of("Mild", "21,000 BTU", "83 days"), List.of("Frost", "421,000 BTU", "4.1 days"));
        assertThat(reckoning.grids().get(1).rows())
                .containsExactly(
                        List.of("Furnace", "uses none", "4.3 days", "43.9 h"),
                        List.of("Fridge", "83 days", "83 days", "1,171.2 h"));
        assertThat(reckoning.assumed()).contains("On gas all the time: Fridge. On shore power the gas lasts longer.");
    }

    @Test
    void nothingOnBoard() {
        assertThat(TestCoach.told(Question.GAS_DAYS, TestCoach.of("name: Tiny\n")))
                .isEqualTo(new Explained.Lacking(Question.GAS_DAYS, "How long does the gas last?", List.of()));
    }

    @Test
    void whatIsMissingIsSaid() {
        assertThat(((Explained.Lacking) TestCoach.told(Question.GAS_DAYS, gas("capacity: 24 gal", """
                          - {id: hob, name: Hob, what: hob-gas, energy: [gas]}
                        """))).facts())
                .containsExactly("gas input of Hob");
        assertThat(((Explained.Lacking) TestCoach.told(Question.GAS_DAYS, TestCoach.of("""
                        appliances:
                          - {id: hob, name: Hob, what: hob-gas, energy: [gas], gas-input: 1 kW}
                        """))).facts())
                .containsExactly("the gas tank or the gas cylinders");
        assertThat(((Explained.Lacking) TestCoach.told(Question.GAS_DAYS, TestCoach.of("""
                        gas: {kind: cylinders}
                        tanks:
                          - {id: lp, name: Cylinder, contents: lp-gas, capacity: 9.8 L}
                        appliances:
                          - {id: hob, name: Hob, what: hob-gas, energy: [gas], gas-input: 1 kW}
                        """))).facts())
                .containsExactly("the gas in one full cylinder");
    }

    /** No hours known: only the time without pause, and no days. */
    @Test
    void hoursMayBeUnknown() {
        Explained.Explanation reckoning =
                (Explained.Explanation) TestCoach.told(Question.GAS_DAYS, gas("capacity: 10 gal", """
                  - {id: hob, name: Hob, what: hob-gas, energy: [gas], gas-input: "10,000 BTU/h"}
                """));

        assertThat(reckoning.answer()).isEqualTo("Hob without pause: 73.2 h.");
        assertThat(reckoning.grids()).hasSize(1);
    }

    /** A day has 24 hours, whatever is written. */
    @Test
    void aDayHasNoMoreHours() {
        GasFlame flame = GasFlame.of(
                        gas("capacity: 10 gal", """
                  - {id: hob, name: Hob, what: hob-gas, energy: [gas], gas-input: 1 kW, gas-hours: 3 days}
                """).unit().appliances().get(0))
                .orElseThrow();

        assertThat(flame.daily(flame.mild().orElseThrow()).value()).isEqualTo(24_000);
    }

    /** By hand: Turnstone 2 × 11 kg × 0.95 × 12.87 kWh = 268.98 kWh; 9.0 + 3.6 + 2.1 and 48.0 + 2.4 + 2.1 kWh a day. */
    @Test
    void theDemoCoaches() {

        assertThat(((Explained.Explanation) TestCoach.told(Question.GAS_DAYS, demo("turnstone"))).answer())
                .isEqualTo("Gas cylinders, full: 18 days in mild weather, 5.1 days in frost. "
                        + "Combined heater without pause: 44.8 h.");
        // 5 kg × 0.95 × 12.87 = 61.13 kWh; 2.4 kWh a day
        assertThat(((Explained.Explanation) TestCoach.told(Question.GAS_DAYS, demo("redpoll"))).answer())
                .isEqualTo("Gas cylinder, full: 25 days of gas. Hob without pause: 16.9 h.");
        // 19.2 gal = 1,756,838 BTU; 80,000 + 18,000 + 21,000 + 9,167 + 2,367 BTU a mild day, 447,534 in frost
        assertThat(((Explained.Explanation) TestCoach.told(Question.GAS_DAYS, demo("whimbrel"))).answer())
                .isEqualTo("LP tank, full: 13 days in mild weather, 3.9 days in frost. Furnace without pause: 43.9 h.");
        // 11.2 gal = 1,024,822 BTU; 50,000 + 13,200 + 16,800 + 7,500 + 1,775 and 250,000 + 17,600 + 9,600 + 9,275 BTU
        assertThat(((Explained.Explanation) TestCoach.told(Question.GAS_DAYS, demo("dunlin"))).answer())
                .isEqualTo("LP tank, full: 11 days in mild weather, 3.5 days in frost. Furnace without pause: 40.9 h.");
        assertThat(TestCoach.told(Question.GAS_DAYS, demo("phalarope")))
                .isInstanceOfSatisfying(
                        Explained.Lacking.class, it -> assertThat(it.facts()).isEmpty());
    }

    /** Seeded: more in the tank never lasts shorter, a larger flame never longer, and no text holds what is no number. */
    @Test
    void moreNeverLastsShorter() {
        Random random = new Random(7);
        for (int number = 0; number < 200; number++) {
            double held = random.nextDouble() * 1e6;
            double input = 1 + random.nextDouble() * 20_000;
            Seconds lasts = Endurance.of(new WattHours(held), new Watts(input));

            assertThat(Endurance.of(new WattHours(held * (1 + random.nextDouble())), new Watts(input))
                            .value())
                    .isGreaterThanOrEqualTo(lasts.value());
            assertThat(Endurance.of(new WattHours(held), new Watts(input * (1 + random.nextDouble())))
                            .value())
                    .isLessThanOrEqualTo(lasts.value());
        }
        for (int number = 0; number < 40; number++) {
            Coach coach = gas(
                    "capacity: %d gal, usable: %d %%".formatted(random.nextInt(1, 60), random.nextInt(0, 101)),
                    """
                      - {id: hob, name: Hob, what: hob-gas, energy: [gas], gas-input: "%d BTU/h", gas-hours: %d h}
                    """.formatted(random.nextInt(0, 30_000), random.nextInt(0, 30)));
            assertThat(TestCoach.told(Question.GAS_DAYS, coach).toString()).doesNotContain("NaN", "Infinity", "∞");
        }
    }

    static Coach demo(String id) {
        Fleet fleet = FleetReader.read(Folders.at(Path.of(""))).fleet();
        return fleet.units().stream()
                .filter(unit -> unit.id().equals(id))
                .map(unit -> new Coach(fleet, unit))
                .findFirst()
                .orElseThrow();
    }

    private static Coach gas(String tank, String appliances) {
        return TestCoach.of("""
                region: north-america
                gas: {kind: tank}
                tanks:
                  - {id: lp, name: Gas tank, contents: lp-gas, %s}
                """.formatted(tank) + (appliances.isEmpty() ? "" : "appliances:\n" + appliances.indent(0)));
    }
}
