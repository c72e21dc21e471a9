package bayfolio.measure;

import static bayfolio.measure.MeasureSystem.METRIC;
import static bayfolio.measure.MeasureSystem.US;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class PrintingTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    100 gal       | 100 gal        | 379 L
                    0.5 gal       | 0.5 gal        | 1.9 L
                    2.5 gal       | 2.5 gal        | 9.5 L
                    1 qt          | 1 qt           | 946 mL
                    0.25 cup      | 0.25 cup       | 59 mL
                    1 cup         | 1 cup          | 237 mL
                    2 cup         | 2 cups         | 473 mL
                    0 L           | 0 gal          | 0 L
                    12 ft 11 in   | 12 ft 11 in    | 3.94 m
                    3.94 m        | 12 ft 11 in    | 3.94 m
                    12.5 ft       | 12 ft 6 in     | 3.81 m
                    7 in          | 7 in           | 18 cm
                    11.6 in       | 1 ft           | 29 cm
                    99.6 cm       | 3 ft 3 in      | 1 m
                    6 mm          | 0 in           | 0.6 cm
                    30 ft         | 30 ft          | 9.14 m
                    500 m         | 1,640 ft       | 500 m
                    50 mi         | 50 mi          | 80.5 km
                    44,600 lb     | 44,600 lb      | 20,230 kg
                    20 lb         | 20 lb          | 9.1 kg
                    250 g         | 0.6 lb         | 250 g
                    80 psi        | 80 psi         | 5.5 bar
                    30 mbar       | 0.4 psi        | 30 mbar
                    45 °F         | 45 °F          | 7 °C
                    -0.4 °C       | 31 °F          | 0 °C
                    -7 °C         | 19 °F          | -7 °C
                    0.5 gal/h     | 0.5 gal/h      | 1.9 L/h
                    65 mph        | 65 mph         | 105 km/h
                    6 AWG         | 6 AWG          | 13.3 mm²
                    4/0 AWG       | 4/0 AWG        | 107.2 mm²
                    2.5 mm2       | 13 AWG         | 2.5 mm²
                    300 mm2       | 300 mm²        | 300 mm²
                    8 mpg         | 8 mpg          | 29.4 L/100 km
                    1500 W        | 1,500 W        | 1,500 W
                    1.5 kW        | 1,500 W        | 1,500 W
                    12.65 V       | 12.65 V        | 12.65 V
                    12.5 A        | 12.5 A         | 12.5 A
                    100 Ah        | 100 Ah         | 100 Ah
                    1.2 kWh       | 1,200 Wh       | 1,200 Wh
                    80 %          | 80 %           | 80 %
                    2.5 deg       | 2.5°           | 2.5°
                    40 s          | 40 s           | 40 s
                    300 s         | 5 min          | 5 min
                    90 s          | 90 s           | 90 s
                    90 min        | 90 min         | 90 min
                    2 h           | 2 h            | 2 h
                    36 h          | 36 h           | 36 h
                    1 day         | 1 day          | 1 day
                    72 h          | 3 days         | 3 days
                    3661 s        | 61 min         | 61 min
                    9001 s        | 2.5 h          | 2.5 h
                    0 s           | 0 s            | 0 s
                    """)
    void quantitiesArePrintedAsARenterReadsThem(String written, String us, String metric) {
        Quantity quantity = anyParsed(written);

        assertThat(quantity.in(US)).isEqualTo(us);
        assertThat(quantity.in(METRIC)).isEqualTo(metric);
    }

    @Test
    void bothSystemsStandSideBySideUnlessTheyAgree() {
        assertThat(new Meters(3.937).both(US).toString()).isEqualTo("12 ft 11 in (3.94 m)");
        assertThat(new Meters(3.937).both(METRIC).toString()).isEqualTo("3.94 m (12 ft 11 in)");
        assertThat(new Amps(12.5).both(US).toString()).isEqualTo("12.5 A");
    }

    /** Each unit that is printed as it is written, up to where the next unit takes over. */
    @ParameterizedTest
    @CsvSource({
        "gal, US, 2000",
        "L, METRIC, 2000",
        "mL, METRIC, 999",
        "cup, US, 1",
        "lb, US, 2000",
        "kg, METRIC, 2000",
        "g, METRIC, 999",
        "ft, US, 2000",
        "in, US, 11",
        "m, METRIC, 999",
        "cm, METRIC, 99",
        "mi, US, 2000",
        "km, METRIC, 2000",
        "psi, US, 2000",
        "bar, METRIC, 2000",
        "mbar, METRIC, 99",
        "°F, US, 2000",
        "°C, METRIC, 2000",
        "gal/h, US, 2000",
        "L/h, METRIC, 2000",
        "mph, US, 2000",
        "km/h, METRIC, 2000",
        "mm², METRIC, 2000",
        "mpg, US, 999",
        "L/100 km, METRIC, 999",
        "W, US, 2000",
        "W, METRIC, 2000",
        "Wh, US, 2000",
        "V, US, 2000",
        "A, US, 2000",
        "Ah, US, 2000",
        "%, US, 100",
        "s, US, 59",
        "min, US, 59",
        "h, US, 23",
        "days, US, 2000",
    })
    void whatIsWrittenInAUnitComesBackInIt(String unit, MeasureSystem system, int most) {
        for (int figure = 1; figure <= most; figure++) {
            String back = anyParsed(figure + " " + unit).in(system);

            assertThat(back.replace(",", "").replaceAll(" day$", " days")).isEqualTo(figure + " " + unit);
        }
    }

    @Test
    void gaugesComeBack() {
        for (int number = 1; number <= 36; number++) {
            assertThat(anyParsed(number + " AWG").in(US)).isEqualTo(number + " AWG");
        }
        for (int zeros = 1; zeros <= 4; zeros++) {
            assertThat(anyParsed(zeros + "/0 AWG").in(US)).isEqualTo(zeros + "/0 AWG");
        }
    }

    static Stream<Scale<?>> scales() {
        return Scale.all().stream();
    }

    @ParameterizedTest
    @MethodSource("scales")
    void whatIsPrintedCanBeWritten(Scale<?> scale) {
        Random random = new Random(3785);
        for (int i = 0; i < 2000; i++) {
            String unit = scale.units().get(random.nextInt(scale.units().size()));
            double size = Math.pow(10, 5 * random.nextDouble() - 2);
            String written = Figure.of(size, 3) + " " + unit;
            // Of fuel, no more than ordinary: a thousand liters for 100 km are less than 1 mpg.
            if (scale.accepts(written) && (scale != LitersPer100Kilometers.SCALE || size < 200)) {
                Quantity quantity = ScaleTest.parsed(scale, written);
                for (MeasureSystem system : MeasureSystem.values()) {
                    assertThat(quantity.in(system)).matches(scale.pattern());
                }
            }
        }
    }

    @Test
    void minusZeroIsNeverPrinted() {
        assertThat(new Celsius(-0.0).in(METRIC)).isEqualTo("0 °C");
        assertThat(new Kilograms(-0.0001).in(METRIC)).isEqualTo("0 kg");
        assertThat(new Meters(-0.001).in(US)).isEqualTo("0 in");
        assertThat(new Meters(-0.0001).in(METRIC)).isEqualTo("0 cm");
        assertThat(new Meters(-0.001).roundedUp(METRIC).toString()).isEqualTo("0 cm");
    }

    @Test
    void halvesAreRoundedUp() {
        assertThat(new Liters(12.5).in(METRIC)).isEqualTo("13 L");
        assertThat(new Amps(0.125 + 0.01 - 0.01).in(US)).isEqualTo("0.13 A");
        assertThat(new Meters(12.5 * 0.0254 * 3).in(US)).isEqualTo("3 ft 2 in");
    }

    @Test
    void aMissingClearanceIsNegative() {
        assertThat(new Meters(3.8).minus(new Meters(3.937)).in(US)).isEqualTo("-5 in");
        assertThat(new Meters(-0.5).in(METRIC)).isEqualTo("-50 cm");
    }

    @Test
    void heightsAreRoundedUpAndGapsDown() {
        Meters height = new Meters(3.932);

        assertThat(height.roundedUp(US).toString()).isEqualTo("12 ft 11 in");
        assertThat(height.roundedUp(METRIC).toString()).isEqualTo("3.94 m");
        assertThat(height.roundedDown(US).toString()).isEqualTo("12 ft 10 in");
        assertThat(height.roundedDown(METRIC).toString()).isEqualTo("3.93 m");
        assertThat(new Meters(-0.01).roundedDown(US).toString()).isEqualTo("-1 in");
        assertThat(new Meters(-0.01).roundedUp(US).toString()).isEqualTo("0 in");
    }

    @Test
    void anExactFigureIsNotPushedOn() {
        for (int inches = 1; inches <= 2000; inches++) {
            String exact = new FeetAndInches(inches).amount().toString();

            assertThat(new Meters(inches * 0.0254).roundedUp(US).toString()).isEqualTo(exact);
            assertThat(new Meters(inches * 0.0254).roundedDown(US).toString()).isEqualTo(exact);
            assertThat(new Meters(inches * 0.0254 + 5e-10).roundedUp(US).toString())
                    .isEqualTo(exact);
            assertThat(new Meters(inches * 0.0254 + 1e-6).roundedUp(US).toString())
                    .isEqualTo(new FeetAndInches(inches + 1).amount().toString());
            assertThat(new Meters(inches * 0.01).roundedUp(METRIC))
                    .isEqualTo(new Meters(inches * 0.01).roundedDown(METRIC));
        }
    }

    @Test
    void theSafeSideIsNeverMissed() {
        Random random = new Random(1255);
        for (int i = 0; i < 5000; i++) {
            Meters exact = new Meters(0.3 + 10 * random.nextDouble());
            for (MeasureSystem system : MeasureSystem.values()) {
                Quantity up =
                        ScaleTest.parsed(Meters.SCALE, exact.roundedUp(system).toString());
                Quantity down =
                        ScaleTest.parsed(Meters.SCALE, exact.roundedDown(system).toString());

                assertThat(up.value()).isBetween(exact.value() - 1e-9, exact.value() + 0.0255);
                assertThat(down.value()).isBetween(exact.value() - 0.0255, exact.value() + 1e-9);
            }
        }
    }

    @Test
    void onlyFiniteFiguresAreQuantities() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Liters(Double.NaN))
                .withMessageContaining("NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Meters(Double.NEGATIVE_INFINITY))
                .withMessageContaining("-Infinity");
        assertThatIllegalArgumentException().isThrownBy(() -> new Share(1.01)).withMessageContaining("1.01");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LitersPer100Kilometers(0))
                .withMessageContaining("0.0");
    }

    private static Quantity anyParsed(String written) {
        return Scale.all().stream()
                .filter(scale -> scale.accepts(written))
                .map(scale -> ScaleTest.parsed(scale, written))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no scale takes " + written));
    }

    /** The unit and the digits of the writer come first, then what it is in the other system. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    92 gal      | 92 gal (348 L)
                    1 qt        | 1 qt (946 mL)
                    2.25gal     | 2.25 gal (8.5 L)
                    75 L        | 75 L (20 gal)
                    500 mL      | 500 mL (2.1 cups)
                    """)
    void aVolumeAsWritten(String written, String shown) throws NotAQuantityException {
        assertThat(Liters.SCALE.parse(written).asWritten(written).toString()).isEqualTo(shown);
    }

    @Test
    void measuresAsWritten() throws NotAQuantityException {
        assertThat(Kilograms.SCALE.parse("15,500 lb").asWritten("15,500 lb").toString())
                .isEqualTo("15,500 lb (7,031 kg)");
        assertThat(Seconds.SCALE.parse("90 min").asWritten("90 min").toString()).isEqualTo("90 min");
        assertThat(Celsius.SCALE.parse("32°F").asWritten("32°F").toString()).isEqualTo("32 °F (0 °C)");
        assertThat(Meters.SCALE.parse("12 ft 11 in").asWritten("12 ft 11 in").toString())
                .isEqualTo("12 ft 11 in (3.94 m)");
        assertThat(Watts.SCALE.parse("6 kW").asWritten("6 kW").toString()).isEqualTo("6 kW");
        assertThat(Share.SCALE.parse("80%").asWritten("80%").toString()).isEqualTo("80 %");
        assertThat(Degrees.SCALE.parse("3°").asWritten("3°").toString()).isEqualTo("3°");
    }
}
