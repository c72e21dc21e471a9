package bayfolio.reckon.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bayfolio.explain.Explained;
import bayfolio.measure.Liters;
import bayfolio.measure.LitersPer100Kilometers;
import bayfolio.measure.NotAQuantityException;
import bayfolio.reckon.Question;
import bayfolio.reckon.TestCoach;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DrivingRangeTest {
    private static final double GALLON = 3.785411784;

    /** Definitions: 10 gal at 8 mpg are 80 mi, 50 L at 10 L/100 km are 500 km. T-U1 for the gallon. */
    @Test
    void distances() throws NotAQuantityException {
        assertThat(DrivingRange.distance(new Liters(10 * GALLON), LitersPer100Kilometers.SCALE.parse("8 mpg"))
                        .miles())
                .isCloseTo(80, within(1e-9));
        assertThat(DrivingRange.distance(new Liters(50), LitersPer100Kilometers.SCALE.parse("10 L/100 km"))
                        .value())
                .isCloseTo(500_000, within(1e-6));
        assertThat(Liters.SCALE.parse("1 gal").value()).isEqualTo(GALLON);
    }

    /** 75 gal × 95 % × 7.5 mpg = 534 mi; 56.25 gal × 7.5 = 421 mi; 15 gal × 7.5 = 112 mi, all rounded down. */
    @Test
    void theDemoCoaches() {
        Explained.Explanation whimbrel =
                (Explained.Explanation) TestCoach.told(Question.RANGE, TestCoach.demo("whimbrel"));

        assertThat(whimbrel.answer()).isEqualTo("Fuel tank, full: 420 mi (670 km) until 25 % is left. Fill up then.");
        assertThat(whimbrel.grids().get(0).rows())
                .extracting(row -> row.get(2))
                .containsExactly("420 mi (670 km)", "110 mi (180 km)", "530 mi (850 km)");
        assertThat(whimbrel.assumed())
                .contains("The generator is off. It burns the same fuel, so with it you get less far.");
        // 75 L × 0.92 ÷ 10.5 = 657 km; 75 L × 0.75 ÷ 10.5 = 535 km
        assertThat(((Explained.Explanation) TestCoach.told(Question.RANGE, TestCoach.demo("turnstone"))).answer())
                .isEqualTo("Fuel tank, full: 530 km (330 mi) until 25 % is left. Fill up then.");
        assertThat(((Explained.Explanation) TestCoach.told(Question.RANGE, TestCoach.demo("turnstone"))).assumed())
                .noneMatch(it -> it.contains("generator"));
        // 90 L × 0.75 ÷ 9.4 = 718 km
        assertThat(((Explained.Explanation) TestCoach.told(Question.RANGE, TestCoach.demo("redpoll"))).answer())
                .contains("710 km (440 mi)");
        // 55 gal × 0.75 × 9 = 371 mi; 150 gal × 0.75 × 7 = 787 mi
        assertThat(((Explained.Explanation) TestCoach.told(Question.RANGE, TestCoach.demo("dunlin"))).answer())
                .contains("370 mi");
        assertThat(((Explained.Explanation) TestCoach.told(Question.RANGE, TestCoach.demo("phalarope"))).answer())
                .contains("780 mi");
    }

    @Test
    void whatIsMissingIsSaid() {
        assertThat(((Explained.Lacking) TestCoach.told(Question.RANGE, TestCoach.of("engine: {fuel: diesel}\n")))
                        .facts())
                .isEqualTo(List.of("fuel consumption of the engine", "capacity of the fuel tank"));
    }

    @Test
    void anElectricDriveIsNotAskedForFuel() {
        assertThat(DrivingRange.lacking(TestCoach.of("engine: {fuel: electric}\n")))
                .isEmpty();
    }

    /** Seeded: more fuel never goes less far, the two parts are the whole, and only numbers. */
    @Test
    void invariants() {
        Random random = new Random(13);
        for (int number = 0; number < 60; number++) {
            LitersPer100Kilometers consumption = new LitersPer100Kilometers(1 + random.nextDouble() * 50);
            double fuel = random.nextDouble() * 500;
            assertThat(DrivingRange.distance(new Liters(fuel + random.nextDouble() * 10), consumption)
                            .value())
                    .isGreaterThanOrEqualTo(
                            DrivingRange.distance(new Liters(fuel), consumption).value());

            Explained reckoned = TestCoach.told(Question.RANGE, TestCoach.of("""
                    engine: {fuel: gasoline, consumption: %d mpg}
                    generator: {power: 3 kW, volts: 120 V, legs: 1, fuel: gasoline, pick-up: %d %%}
                    tanks:
                      - {id: fuel, name: Fuel tank, contents: gasoline, capacity: %d gal, usable: %d %%}
                    """.formatted(
                            random.nextInt(1, 30), random.nextInt(101), random.nextInt(3) * 40, random.nextInt(101))));
            assertThat(TestCoach.said(reckoned)).doesNotContain("NaN", "Infinity", "∞", "-");
        }
    }
}
