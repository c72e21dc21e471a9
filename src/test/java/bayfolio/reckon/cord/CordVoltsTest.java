package bayfolio.reckon.cord;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bayfolio.explain.Explained;
import bayfolio.measure.Amps;
import bayfolio.measure.Meters;
import bayfolio.measure.NotAQuantityException;
import bayfolio.measure.SquareMillimeters;
import bayfolio.measure.Volts;
import bayfolio.model.Region;
import bayfolio.reckon.Given;
import bayfolio.reckon.Published;
import bayfolio.reckon.Question;
import bayfolio.reckon.TestCoach;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CordVoltsTest {
    private static final double FOOT = 0.3048;

    private static final String COACH = """
            supplies:
              - {id: shore, name: Shore power, roles: [shore], source: shore, volts: 120 V, amps: 30 A, legs: 1}
            """;

    /** 2 I L r; the first column names the case of the power reference, section 12, its source and status. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "T-V1 [K16] V    | 12 | 10 ft | 2.57 ohm/kft   | 120 | 0.6168 | 0.514 | 1e-4",
                "T-V2 [K17] V    | 4  | 100 ft | 4.99 ohm/kft  | 24  | 3.992  | 16.63 | 1e-3",
                "T-V3 [K18] V    | 20 | 100 ft | 1.588 ohm/kft | 120 | 6.352  | 5.293 | 0.01",
                "T-V4 [K20] V    | 20 | 100 ft | 0.9989 ohm/kft | 240 | 3.9956 | 1.665 | 0.005",
                // 18 mV/A/m is the loop: 9 mV one way
                "T-V5 [K13] V    | 16 | 18 m  | 9 ohm/km       | 230 | 5.184  | 2.254 | 0.005",
                // 0.0225 ohm mm2/m over 6 mm2
                "T-V6 [K12] V    | 32 | 30 m  | 3.75 ohm/km    | 230 | 7.200  | 3.130 | 0.001",
                "T-V7 [K6] VI    | 16 | 25 m  | 7.98 ohm/km    | 230 | 6.384  | 2.776 | 0.001",
                "T-V9 [K6] VI    | 16 | 25 m  | 13.3 ohm/km    | 230 | 10.64  | 4.626 | 0.001",
                "T-V10 [K10] VI  | 30 | 30 ft | 1.24 ohm/kft   | 120 | 2.232  | 1.860 | 0.001",
                "T-V13 [K10] VI  | 40 | 10 ft | 0.308 ohm/kft  | 12  | 0.2464 | 2.053 | 1e-4",
                "T-V14 [K10] VI  | 12 | 50 ft | 3.14 ohm/kft   | 120 | 3.768  | 3.14  | 0.001",
            })
    void publishedDrop(
            String id,
            double amps,
            String length,
            String resistance,
            double source,
            double volts,
            double percent,
            double tolerance)
            throws NotAQuantityException {
        Volts drop = Run.of(new Run.Stretch(Meters.SCALE.parse(length), ohmsPerMeter(resistance)))
                .drop(new Amps(amps));

        assertThat(drop.value()).isCloseTo(volts, within(tolerance));
        assertThat(100 * drop.value() / source).isCloseTo(percent, within(0.01));
    }

    private static double ohmsPerMeter(String resistance) {
        double number = Double.parseDouble(resistance.substring(0, resistance.indexOf(' ')));
        return resistance.endsWith("kft") ? number / (1000 * FOOT) : number / 1000;
    }

    /** T-V8 [K6][K2] VI: 7.638 V, 3.321 %: the cord of T-V7 at 70 degrees. */
    @Test
    void warmMetricCord() {
        Conductor cord = Conductor.of(new SquareMillimeters(2.5)).orElseThrow();

        double drop = Run.of(new Run.Stretch(new Meters(25), cord.warm()))
                .drop(new Amps(16))
                .value();

        assertThat(drop).isCloseTo(7.638, within(0.001));
        assertThat(100 * drop / 230).isCloseTo(3.321, within(0.001));
    }

    /** T-V11 [K10] VI: 5.448 V, 4.540 %; by the table of the program. */
    @Test
    void cordAndExtension() throws NotAQuantityException {
        Volts drop = Run.of(stretch(30, "10 AWG"), stretch(50, "12 AWG")).drop(new Amps(20));

        assertThat(drop.value()).isCloseTo(5.448, within(0.001));
        assertThat(100 * drop.value() / 120).isCloseTo(4.540, within(0.001));
    }

    private static Run.Stretch stretch(double feet, String size) throws NotAQuantityException {
        return new Run.Stretch(new Meters(feet * FOOT), listed(size).warm());
    }

    private static Conductor listed(String size) throws NotAQuantityException {
        return Conductor.of(SquareMillimeters.SCALE.parse(size)).orElseThrow();
    }

    /** T-V12 [K10] VI: 3 % of 120 V are 3.6 V: 48.39 ft. */
    @Test
    void longestCord() {
        assertThat(Run.longest(new Amps(30), 1.24 / (1000 * FOOT), new Volts(3.6))
                        .feet())
                .isCloseTo(48.39, within(0.01));
    }

    /** W12 [K10] VI: 50 A on both legs, 30 ft of 6 AWG: 1.473 V of 240 V, half of that on each leg. */
    @Test
    void bothLegs() throws NotAQuantityException {
        Run run = Run.of(stretch(30, "6 AWG"));

        assertThat(2 * run.perLeg(new Amps(50)).value()).isCloseTo(1.473, within(0.001));
        assertThat(run.drop(new Amps(50)).value()).isCloseTo(1.473, within(0.001));
    }

    /** T-R1 [K7] V, as the area that the diameter makes. */
    @ParameterizedTest
    @CsvSource({"36 AWG,0.0050", "4/0 AWG,0.4600", "12 AWG,0.080808"})
    void gaugeDiameters(String size, double inches) throws NotAQuantityException {
        double area = SquareMillimeters.SCALE.parse(size).value();

        assertThat(Math.sqrt(4 * area / Math.PI) / 25.4).isCloseTo(inches, within(1e-6));
    }

    /** T-R2 [K7] VI for the areas; T-R6 [K10] V and T-R3, T-R4 [K1][K8][K10]: the table is the formula within 0.6 %. */
    @ParameterizedTest
    @CsvSource({
        "14 AWG,2.0809,3.14",
        "12 AWG,3.3088,1.98",
        "10 AWG,5.2612,1.24",
        "8 AWG,8.3656,0.778",
        "6 AWG,13.3018,0.491",
        "4 AWG,21.1506,0.308"
    })
    void americanTable(String size, double area, double ohmsPerThousandFeet) throws NotAQuantityException {
        Conductor listed = listed(size);
        double solidCold = 1 / 58.0 / area;

        assertThat(SquareMillimeters.SCALE.parse(size).value()).isCloseTo(area, within(1e-4));
        assertThat(listed.size().toString()).isEqualTo(size);
        assertThat(listed.ohmsPerMeter() * 1000 * FOOT).isCloseTo(ohmsPerThousandFeet, within(1e-9));
        assertThat(listed.ohmsPerMeter() / (solidCold * 1.21615 * 1.02)).isCloseTo(1, within(0.006));
    }

    /** [K6][K11] V: IEC 60228 class 5, 20 degrees; about 15 % more than the copper alone. */
    @ParameterizedTest
    @CsvSource({"1.5,13.3", "2.5,7.98", "4,4.95", "6,3.30"})
    void metricTable(double area, double ohmsPerKilometer) {
        Conductor listed = Conductor.of(new SquareMillimeters(area)).orElseThrow();

        assertThat(listed.ohmsPerMeter() * 1000).isCloseTo(ohmsPerKilometer, within(1e-9));
        assertThat(listed.ohmsPerMeter() / (1 / 58.0 / area)).isBetween(1.14, 1.16);
    }

    /** T-R4: from 20 to 75 degrees, times 1.21615. */
    @Test
    void warming() {
        Conductor cold = new Conductor(
                new Published<>("test", 1.0, Published.Status.PUBLISHED, "practice"), new SquareMillimeters(1), 1, 20);

        assertThat(cold.ohmsPerMeterAt(75)).isCloseTo(1.21615, within(1e-9));
    }

    @Test
    void sizesBetweenTheTablesAreTakenAsTheNextSmallerOne() {
        assertThat(Conductor.of(new SquareMillimeters(3)).orElseThrow().size().toString())
                .isEqualTo("2.5 mm²");
        assertThat(Conductor.of(new SquareMillimeters(35)).orElseThrow().size().toString())
                .isEqualTo("4 AWG");
        assertThat(Conductor.of(new SquareMillimeters(13.3))
                        .orElseThrow()
                        .size()
                        .toString())
                .isEqualTo("6 AWG");
        assertThat(Conductor.of(new SquareMillimeters(1))).isEmpty();
        assertThat(Conductor.of(new SquareMillimeters(0))).isEmpty();

        assertThat(reckoning(COACH + "cord: {kind: fixed, length: 30 ft, conductor: 3 mm2}\n")
                        .assumed())
                .anyMatch(it -> it.contains("no table has") && it.contains("2.5 mm²"));
    }

    /** T-E5 [E1] V: 2.5 square millimeters and 16 A, 30 m: too long in Europe. */
    @Test
    void longLeadInEurope() {
        assertThat(new Meters(30).exceeds(CordSet.LONGEST_IN_EUROPE)).isTrue();
        assertThat(new Meters(25).exceeds(CordSet.LONGEST_IN_EUROPE)).isFalse();
        String europe = """
                region: europe
                supplies:
                  - {id: shore, name: Hook-up, roles: [shore], source: shore, volts: 230 V, amps: 16 A, legs: 1}
                cord: {kind: detachable, length: %d m, conductor: 2.5 mm2}
                """;
        assertThat(reckoning(europe.formatted(30)).assumed()).anyMatch(it -> it.contains("at most"));
        assertThat(reckoning(europe.formatted(25)).assumed()).noneMatch(it -> it.contains("at most"));
    }

    private static <T> Given<T> given(T value) {
        return Given.usual(new Published<>("test", value, Published.Status.PUBLISHED, "practice"));
    }

    /** NEC 210.24 [N6] V; 2.5 square millimeters at 16 A [E1] V. */
    @ParameterizedTest
    @CsvSource({
        "10 AWG,30,NORTH_AMERICA,true",
        "12 AWG,30,NORTH_AMERICA,false",
        "12 AWG,20,NORTH_AMERICA,true",
        "14 AWG,20,NORTH_AMERICA,false",
        "6 AWG,50,NORTH_AMERICA,true",
        "4 AWG,60,NORTH_AMERICA,false",
        "2.5 mm2,16,EUROPE,true",
        "1.5 mm2,16,EUROPE,false",
        "1.5 mm2,6,EUROPE,true"
    })
    void thinCords(String size, double amps, Region region, boolean carries) throws NotAQuantityException {
        SquareMillimeters area = SquareMillimeters.SCALE.parse(size);

        assertThat(new CordSet(Optional.empty(), given(new Meters(1)), given(area), listed(size))
                        .carries(new Amps(amps), region))
                .isEqualTo(carries);
    }

    /** W9 and W10 [K10] VI: 2.232 V and 5.952 V; a thin extension is not for a large outlet. */
    @Test
    void extensionsOnBoard() {
        Explained.Explanation reckoning = reckoning(COACH + """
                adapters:
                  - {id: small, name: Household adapter, from: 15 A, to: 30 A, volts: 120 V}
                cord: {kind: fixed, length: 30 ft, conductor: 10 AWG}
                items:
                  - {id: thick, name: Thick extension, length: 50 ft, conductor: 10 AWG}
                  - {id: thin, name: Thin extension, length: 50 ft, conductor: 14 AWG}
                  - {id: hair, name: Hair extension, length: 50 ft, conductor: 18 AWG}
                  - {id: yard, name: Extension of the yard, length: 99 ft, conductor: 12 AWG, for: staff}
                """);

        assertThat(reckoning.answer())
                .isEqualTo("At 30 A the cord loses up to 2.3 V. A post of 120 V leaves 117.7 V. "
                        + "A post of 108 V leaves 105.7 V.");
        assertThat(reckoning.grids()).hasSize(3);
        assertThat(reckoning.grids().get(1).rows().get(0))
                .containsExactly("Shore power", "30 A", "6.0 V, 5.0 %", "114.0 V", "108.0 V", "102.0 V");
        assertThat(reckoning.grids().get(2).rows().get(0)).contains("too thin, do not use");
        assertThat(reckoning.grids().get(2).rows().get(1)).doesNotContain("too thin, do not use");
        assertThat(reckoning.assumed())
                .contains("Hair extension is thinner than any size in the tables. Do not use it.");
    }

    /** 25 ft of 10 AWG at 30 A: 1.86 V; 35 ft of 6 AWG at 50 A: 1.7185 V; 30 ft: 1.473 V; 25 m warm: 7.638 V. */
    @ParameterizedTest
    @CsvSource({
        "dunlin,At 30 A the cord loses up to 1.9 V. A post of 120 V leaves 118.1 V. A post of 108 V leaves 106.1 V.",
        "phalarope,At 50 A the cord loses up to 1.8 V. A post of 120 V leaves 118.2 V. A post of 108 V leaves 106.2 V.",
        "whimbrel,At 50 A the cord loses up to 1.5 V. A post of 120 V leaves 118.5 V. A post of 108 V leaves 106.5 V.",
        "turnstone,At 16 A the cord loses up to 7.7 V. A post of 230 V leaves 222.3 V. A post of 207 V leaves 199.3 V.",
        "redpoll,At 16 A the cord loses up to 7.7 V. A post of 230 V leaves 222.3 V. A post of 207 V leaves 199.3 V."
    })
    void theDemoCoaches(String unit, String answer) {
        assertThat(((Explained.Explanation) TestCoach.told(Question.CORD_VOLTS, TestCoach.demo(unit))).answer())
                .isEqualTo(answer);
    }

    @Test
    void whatIsMissingIsSaid() {
        assertThat(lacking("model-year: 2020\n")).isEmpty();
        assertThat(lacking(COACH)).containsExactly("length of the power cord", "conductor size of the power cord");
        assertThat(lacking(COACH + "cord: {kind: fixed, length: 0 ft, conductor: 18 AWG}\n"))
                .containsExactly(
                        "length of the power cord", "conductor size of the power cord, 16 AWG (1.31 mm²) or thicker");
        assertThat(lacking("cord: {kind: fixed, length: 30 ft, conductor: 10 AWG}\n"))
                .containsExactly("shore power with its volts and amps");
    }

    /** Seeded: longer, thinner or more loaded never loses less, an extension adds, and only numbers. */
    @Test
    void invariants() {
        Random random = new Random(17);
        for (int number = 0; number < 200; number++) {
            Conductor thin = Conductor.TABLES.get(random.nextInt(Conductor.TABLES.size() - 1));
            Conductor thick = Conductor.TABLES.get(Conductor.TABLES.indexOf(thin) + 1);
            double length = random.nextDouble() * 100;
            double amps = random.nextDouble() * 50;
            double lost = drop(length, thin, amps);
            assertThat(drop(length + random.nextDouble(), thin, amps)).isGreaterThanOrEqualTo(lost);
            assertThat(drop(length, thin, amps + random.nextDouble())).isGreaterThanOrEqualTo(lost);
            assertThat(drop(length, thick, amps)).isLessThanOrEqualTo(lost);
            assertThat(thick.ohmsPerMeter()).isLessThan(thin.ohmsPerMeter());
        }
        for (int number = 0; number < 40; number++) {
            Explained reckoned = TestCoach.told(
                    Question.CORD_VOLTS,
                    TestCoach.of(COACH
                            + """
                    cord: {kind: fixed, length: %d ft, conductor: %d AWG}
                    items:
                      - {id: more, name: Extension, length: %d ft, conductor: %d AWG}
                    """.formatted(
                                            random.nextInt(3) * 900,
                                            random.nextInt(1, 24),
                                            random.nextInt(200),
                                            random.nextInt(1, 24))));
            assertThat(TestCoach.said(reckoned)).doesNotContain("NaN", "Infinity", "-");
        }
    }

    private static double drop(double length, Conductor conductor, double amps) {
        return Run.of(new Run.Stretch(new Meters(length), conductor.warm()))
                .drop(new Amps(amps))
                .value();
    }

    private static Explained.Explanation reckoning(String yaml) {
        return (Explained.Explanation) TestCoach.told(Question.CORD_VOLTS, TestCoach.of(yaml));
    }

    private static List<String> lacking(String yaml) {
        return ((Explained.Lacking) TestCoach.told(Question.CORD_VOLTS, TestCoach.of(yaml))).facts();
    }
}
