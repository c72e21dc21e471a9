package bayfolio.reckon.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bayfolio.explain.Explained;
import bayfolio.explain.Input;
import bayfolio.measure.Liters;
import bayfolio.measure.LitersPerHour;
import bayfolio.measure.Meters;
import bayfolio.measure.NotAQuantityException;
import bayfolio.measure.Rounding;
import bayfolio.measure.Share;
import bayfolio.measure.Volts;
import bayfolio.measure.Watts;
import bayfolio.reckon.Endurance;
import bayfolio.reckon.Origin;
import bayfolio.reckon.Question;
import bayfolio.reckon.TestCoach;
import bayfolio.reckon.battery.ChargingFuel;
import bayfolio.reckon.power.LegRating;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GeneratorHoursTest {
    private static final double GALLON = 3.785411784;

    /** T-G1, C, and from section 6 a set of 8 kW at 240 V; a 10 kW set carries breakers of 45 A: common practice. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "T-G1 C               | 2.8 kW | 120 | 1 | 23.333",
                "T-G1 C               | 4 kW   | 120 | 1 | 33.333",
                "T-G1 C               | 5.5 kW | 120 | 1 | 45.833",
                "T-G1 C               | 7 kW   | 120 | 1 | 58.333",
                "section 6, computed  | 8 kW   | 120 | 2 | 33.333",
                "common practice      | 10 kW  | 120 | 2 | 41.667",
            })
    void ampsOfEachLeg(String id, String power, double volts, int legs, double amps) throws NotAQuantityException {
        assertThat(new LegRating(new Volts(volts), legs)
                        .amps(Watts.SCALE.parse(power))
                        .value())
                .as(id)
                .isCloseTo(amps, within(0.001));
    }

    /**
     * The comment names the case of the power reference, section 12, its source and status. T-G3 adds heat, which is not
     * reckoned here: 2 % on top of the altitude.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "T-G2 [G1] V          | 5500 | 5000 ft | 3 %   | 1000 ft | 0 ft    | 4675   | 1e-6",
                "T-G3 [G3] VI, without heat | 5500 | 5000 ft | 3.5 % | 1000 ft | 1000 ft | 4730   | 0.1",
                "T-G4 [G3] VI         | 5500 | 800 ft  | 3.5 % | 1000 ft | 1000 ft | 5500   | 1e-9",
                "T-G5 [G7] V factor   | 4000 | 2500 m  | 3 %   | 500 m   | 1000 m  | 3640   | 1e-6",
                "T-G6 [G8] VI         | 4000 | 2100 m  | 3.5 % | 300 m   | 1500 m  | 3720   | 1e-6",
                "section 6 [G7] V     | 1000 | 4000 m  | 3 %   | 500 m   | 1000 m  | 820    | 1e-6",
            })
    void thinAir(
            String id,
            double rated,
            String altitude,
            String loss,
            String step,
            String from,
            double left,
            double tolerance)
            throws NotAQuantityException {
        Derating derating = new Derating(Share.SCALE.parse(loss), Meters.SCALE.parse(step), Meters.SCALE.parse(from));

        assertThat(derating.at(Meters.SCALE.parse(altitude), new Watts(rated)).value())
                .as(id)
                .isCloseTo(left, within(tolerance));
    }

    /** T-G2 once more, as the usual figures have it; and nothing is left far up, never less. */
    @Test
    void theUsualLoss() {
        assertThat(Derating.USUAL.at(new Meters(1524), new Watts(5500)).value()).isCloseTo(4675, within(1e-6));
        assertThat(Derating.USUAL.at(new Meters(20_000), new Watts(5500)).value())
                .isZero();
        assertThatThrownBy(() -> new Derating(new Share(0.03), new Meters(0), new Meters(0)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LegRating(new Volts(0), 1)).isInstanceOf(IllegalArgumentException.class);
    }

    /** T-G9 [G9], V: 0.39 gal/h at half and 0.69 gal/h at full load of 8 kW; T-G11, VI, is extrapolated. */
    @ParameterizedTest
    @CsvSource({"6, 0.54", "4, 0.39", "8, 0.69", "2, 0.24"})
    void fuelUseIsALine(double kilowatts, double gallons) {
        ChargingFuel use =
                new ChargingFuel(new Watts(8000), new LitersPerHour(0.39 * GALLON), new LitersPerHour(0.69 * GALLON));

        assertThat(use.at(new Watts(1000 * kilowatts)).gallons()).isCloseTo(gallons, within(1e-9));
    }

    /** T-G10 and T-G11 [G9], VI: 80 gal, a reserve of 25 %. */
    @ParameterizedTest
    @CsvSource({"0.39, 153.85, 0.01", "0.54, 111.11, 0.01", "0.69, 86.96, 0.01", "0.24, 250, 0.1"})
    void enduranceAboveThePickUp(double burned, double hours, double tolerance) {
        Liters tank = new Liters(80 * GALLON);
        Liters reached = new PickUp(tank, new Share(0.25)).above(tank);

        assertThat(reached.gallons()).isCloseTo(60, within(1e-9));
        assertThat(Endurance.of(reached, new LitersPerHour(burned * GALLON)).value() / 3600)
                .isCloseTo(hours, within(tolerance));
    }

    /** T-G12 [G9], V. */
    @Test
    void gallonsAnHour() throws NotAQuantityException {
        assertThat(LitersPerHour.SCALE.parse("1.6 gal/h").value()).isCloseTo(6.0567, within(1e-4));
    }

    /** T-G13 [G16], VI: 15 of 80 gal left are below the pick-up. */
    @Test
    void belowThePickUpNothingRuns() {
        PickUp pickUp = new PickUp(new Liters(80 * GALLON), new Share(0.25));

        assertThat(pickUp.above(new Liters(15 * GALLON)).value()).isZero();
    }

    /** 10,000 W of two legs of 120 V are 41.7 A on each; 60 of 80 gal at 0.5 and 1 gal/h are 120 and 60 h. */
    @Test
    void aDieselGenerator() {
        Explained.Explanation reckoning = reckon("""
                generator: {power: 10 kW, volts: 120 V, legs: 2, breaker: 45 A, fuel: diesel, burn-half: 0.5 gal/h, burn-full: 1 gal/h}
                tanks:
                  - {id: fuel, name: Fuel tank, contents: diesel, capacity: 80 gal}
                """);

        assertThat(reckoning.answer())
                .isEqualTo("Fuel tank, full: 120.0 h at half load, 60.0 h at full load. "
                        + "It gives 41.7 A on each of two legs.");
        assertThat(reckoning.grids().get(0).rows())
                .extracting(row -> row.get(2))
                .containsExactly("120.0 h", "80.0 h", "60.0 h");
        // 3 % for 1,000 ft: 100, 92.5, 85, 77.5 % of 10,000 W
        assertThat(reckoning.grids().get(1).rows())
                .containsExactly(
                        List.of("sea level", "10,000 W", "41.7 A"),
                        List.of("2,500 ft (762 m)", "9,250 W", "38.5 A"),
                        List.of("5,000 ft (1,524 m)", "8,500 W", "35.4 A"),
                        List.of("7,500 ft (2,286 m)", "7,750 W", "32.2 A"));
        assertThat(reckoning.inputs())
                .filteredOn(input -> input.origin() instanceof Origin.Usual)
                .extracting(Input::name)
                .containsExactly(
                        "Level at which it stops",
                        "Loss with each step of altitude",
                        "Step of altitude",
                        "Nothing is lost up to");
    }

    /** Gas has no pick-up: 8 of 10 gal at 0.5 gal/h are 16 h. */
    @Test
    void aGasGenerator() {
        Explained.Explanation reckoning = reckon("""
                generator: {power: 2800 W, volts: 120 V, legs: 1, fuel: lp-gas, burn-half: 0.5 gal/h}
                tanks:
                  - {id: lp, name: LP tank, contents: lp-gas, capacity: 10 gal}
                """);

        assertThat(reckoning.answer()).isEqualTo("LP tank, full: 16.0 h at half load. It gives 23.3 A.");
    }

    @Test
    void withoutItsFuelOnBoardNoHoursAreGiven() {
        Explained.Explanation reckoning = reckon("""
                generator: {power: 2800 W, volts: 120 V, legs: 1, fuel: gasoline, burn-half: 0.5 gal/h}
                tanks:
                  - {id: fuel, name: Fuel tank, contents: diesel, capacity: 80 gal}
                """);

        assertThat(reckoning.answer()).isEqualTo("It gives 23.3 A.");
        assertThat(reckoning.grids()).hasSize(1);
        assertThat(reckoning.assumed()).contains("No tank of this fuel is known, so no hours are given.");
    }

    @Test
    void aEuropeanCoachReadsMeters() {
        Explained.Explanation reckoning = reckon("""
                region: europe
                generator: {power: 3000 W, volts: 230 V, legs: 1, fuel: diesel, burn-half: 0.8 L/h}
                """);

        assertThat(reckoning.grids().get(0).rows().get(2).get(0)).isEqualTo("1,500 m (4,921 ft)");
    }

    @Test
    void nothingOnBoard() {
        assertThat(TestCoach.told(Question.GENERATOR_HOURS, TestCoach.of("name: Tiny\n")))
                .isEqualTo(
                        new Explained.Lacking(Question.GENERATOR_HOURS, "How long does the generator run?", List.of()));
        assertThat(((Explained.Lacking) TestCoach.told(
                                Question.GENERATOR_HOURS,
                                TestCoach.of("generator: {power: 0 W, volts: 0 V, legs: 1, fuel: diesel}\n")))
                        .facts())
                .containsExactly("rated output of the generator", "volts of the generator");
    }

    @Test
    void whatAnHourCosts() {
        FuelPrice gallon = FuelPrice.read("3.45 USD/gal");
        FuelPrice liter = FuelPrice.read("1.6 EUR/L");

        // 3.45 × 0.7 = 2.415; 1.6 × 1.5 = 2.40
        assertThat(gallon.hourly(new LitersPerHour(0.7 * GALLON))).isCloseTo(2.415, within(1e-9));
        assertThat(liter.hourly(new LitersPerHour(1.5))).isCloseTo(2.4, within(1e-9));
        assertThat(gallon).isEqualTo(new FuelPrice(3.45, "USD", FuelPrice.Per.GALLON));
    }

    /** By hand: Whimbrel 56.25 gal at 0.7 and 1.1 gal/h; Dunlin 41.25 at 0.35 and 0.5; Phalarope 112.5 at 0.55 and 1.0. */
    @Test
    void theDemoCoaches() {

        assertThat(((Explained.Explanation) TestCoach.told(Question.GENERATOR_HOURS, TestCoach.demo("whimbrel")))
                        .answer())
                .isEqualTo("Fuel tank, full: 80.3 h at half load, 51.1 h at full load. "
                        + "It gives 29.2 A on each of two legs.");
        assertThat(((Explained.Explanation) TestCoach.told(Question.GENERATOR_HOURS, TestCoach.demo("dunlin")))
                        .answer())
                .isEqualTo("Gasoline tank, full: 117.8 h at half load, 82.5 h at full load. It gives 30.0 A.");
        assertThat(((Explained.Explanation) TestCoach.told(Question.GENERATOR_HOURS, TestCoach.demo("phalarope")))
                        .answer())
                .isEqualTo("Fuel tank, full: 204.5 h at half load, 112.5 h at full load. "
                        + "It gives 41.7 A on each of two legs.");
        assertThat(((Explained.Explanation) TestCoach.told(Question.GENERATOR_HOURS, TestCoach.demo("whimbrel")))
                        .grids()
                        .get(0)
                        .head())
                .contains("An hour costs");
        assertThat(((Explained.Lacking) TestCoach.told(Question.GENERATOR_HOURS, TestCoach.demo("turnstone"))).facts())
                .isEmpty();
        assertThat(((Explained.Lacking) TestCoach.told(Question.GENERATOR_HOURS, TestCoach.demo("redpoll"))).facts())
                .isEmpty();
    }

    /** Seeded: higher up never more, a higher pick-up never longer, and only numbers. */
    @Test
    void invariants() {
        Random random = new Random(11);
        for (int number = 0; number < 200; number++) {
            Derating derating = new Derating(
                    new Share(random.nextDouble()),
                    new Meters(1 + random.nextDouble() * 1000),
                    new Meters(random.nextDouble() * 2000));
            double height = random.nextDouble() * 4000;
            double low = derating.at(new Meters(height), new Watts(5000)).value();
            double high = derating.at(new Meters(height + random.nextDouble() * 1000), new Watts(5000))
                    .value();
            assertThat(high).isBetween(0.0, low);
            assertThat(low).isLessThanOrEqualTo(5000);

            Liters tank = new Liters(random.nextDouble() * 500);
            double level = random.nextDouble() * 0.9;
            assertThat(new PickUp(tank, new Share(level + 0.1)).above(tank).value())
                    .isLessThanOrEqualTo(
                            new PickUp(tank, new Share(level)).above(tank).value());
        }
        for (int number = 0; number < 40; number++) {
            Explained reckoned = TestCoach.told(Question.GENERATOR_HOURS, TestCoach.of("""
                    generator: {power: %d W, volts: %d V, legs: %d, fuel: gasoline, burn-half: %d L/h, burn-full: %d L/h, pick-up: %d %%, altitude-loss: %d %%, altitude-step: %d ft}
                    tanks:
                      - {id: fuel, name: Fuel tank, contents: gasoline, capacity: %d gal}
                    """.formatted(
                            random.nextInt(3) * 3000,
                            random.nextInt(3) * 120,
                            random.nextInt(1, 3),
                            random.nextInt(3),
                            random.nextInt(3),
                            random.nextInt(101),
                            random.nextInt(101),
                            random.nextInt(3) * 500,
                            random.nextInt(3) * 40)));
            assertThat(reckoned.toString()).doesNotContain("NaN", "Infinity", "∞");
        }
    }

    /** The figure of the rule page on breakers. */
    @Test
    void shownAsOnThePlate() {
        assertThat(Rounding.NEAREST
                        .print(new LegRating(new Volts(120), 2).amps(new Watts(10_000)))
                        .toString())
                .isEqualTo("41.7 A");
    }

    private static Explained.Explanation reckon(String yaml) {
        return (Explained.Explanation) TestCoach.told(Question.GENERATOR_HOURS, TestCoach.of(yaml));
    }
}
