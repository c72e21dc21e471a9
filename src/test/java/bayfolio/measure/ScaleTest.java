package bayfolio.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ScaleTest {
    private static final List<String> NUMBERS = List.of(
            "0",
            "1",
            "7",
            "12.5",
            "0.5",
            "80",
            "100",
            "999",
            "1,250",
            "44600",
            "44,600.5",
            "123456789",
            "123,456,789",
            "100.5",
            "1250.125",
            "12.345678");

    private static final List<String> NO_NUMBERS = List.of(
            "",
            "-",
            ".5",
            "5.",
            "1.2.3",
            "1,25",
            "12,3456",
            "1234,567",
            "0,500",
            "007",
            "1234567890",
            "1234.5678",
            "1,,250",
            "+5",
            "1e3",
            "½",
            "٣",
            "5 0",
            "1 250");

    static Stream<Scale<?>> scales() {
        return Scale.all().stream();
    }

    /** The scales whose units all take any number that is not negative. */
    static Stream<Scale<?>> ordinaryScales() {
        return scales().filter(scale ->
                scale.ways().stream().allMatch(way -> way.numeral().equals(Numeral.PLAIN)));
    }

    @Test
    void everyKindOfQuantityHasItsScale() {
        List<Class<?>> read = new ArrayList<>();
        for (Scale<?> scale : Scale.all()) {
            read.add(parsed(scale, scale.example()).getClass());
        }

        assertThat(read).containsExactly(Quantity.class.getPermittedSubclasses());
    }

    @ParameterizedTest
    @MethodSource("scales")
    void aQuantityKnowsItsScale(Scale<?> scale) {
        assertThat(parsed(scale, scale.example()).scale()).isSameAs(scale);
    }

    /** By another way: one of the unit that it is kept in is one. */
    @ParameterizedTest
    @MethodSource("scales")
    void oneOfTheUnitThatItIsKeptInIsOne(Scale<?> scale) {
        if (scale.kept().isEmpty()) {
            assertThat(scale).isSameAs(Share.SCALE);
        } else {
            assertThat(parsed(scale, "1 " + scale.kept()).value()).isEqualTo(1);
        }
    }

    @Test
    void noSpellingBelongsToTwoScales() {
        Set<String> seen = new HashSet<>();

        for (Scale<?> scale : Scale.all()) {
            assertThat(scale.units())
                    .allSatisfy(unit -> assertThat(seen.add(unit)).isTrue());
        }
    }

    @Test
    void offeredUnitsComeFirst() {
        assertThat(Liters.SCALE.units()).containsExactly("gal", "L", "qt", "mL", "cup", "l", "cups");
        assertThat(Celsius.SCALE.units()).containsExactly("°F", "°C", "F", "C");
        assertThat(Meters.SCALE.units()).containsExactly("ft", "in", "m", "cm", "mm", "mi", "km");
    }

    @ParameterizedTest
    @MethodSource("ordinaryScales")
    void everyNumberGoesWithEveryUnitWithOrWithoutASpace(Scale<?> scale) {
        for (String unit : scale.units()) {
            for (String number : NUMBERS) {
                assertAgreed(scale, number + unit, true);
                assertAgreed(scale, number + " " + unit, true);
                assertAgreed(scale, number + "  " + unit, false);
                assertAgreed(scale, number + " " + unit + " ", false);
                assertAgreed(scale, " " + number + unit, false);
                assertAgreed(scale, number + unit + "\n", false);
                assertAgreed(scale, "-" + number + unit, false);
                assertAgreed(scale, number, false);
            }
            for (String number : NO_NUMBERS) {
                assertAgreed(scale, number + " " + unit, false);
            }
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    12 ft 11 in   | 3.937
                    12 ft 11.5 in | 3.9497
                    12ft 11in     | 3.937
                    0 ft 7 in     | 0.1778
                    12.5 ft       | 3.81
                    1,234 ft 5 in | 376.2502
                    """)
    void feetAndInchesAreALength(String written, double meters) {
        assertThat(parsed(Meters.SCALE, written).value()).isCloseTo(meters, within(1e-12));
        assertAgreed(Meters.SCALE, written, true);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "12 ft 12 in",
                "12.5 ft 3 in",
                "12 ft  3 in",
                "12 ft3 in",
                "12 ft 3",
                "3 in 2 ft",
                "12' 3\"",
                "12 ft -3 in",
                "-12 ft 3 in",
                "12 m 30 cm"
            })
    void feetAndInchesAreWrittenOneWay(String written) {
        assertAgreed(Meters.SCALE, written, false);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-7 °C", "-7°C", "20 °F", "20 F", "0 C", "-0.5 °F", "-1,250 °C"})
    void temperaturesMayBeNegative(String written) {
        assertAgreed(Celsius.SCALE, written, true);
    }

    @Test
    void minusZeroIsZero() {
        assertThat(parsed(Celsius.SCALE, "-0 °C")).isEqualTo(new Celsius(0));
    }

    @ParameterizedTest
    @CsvSource({
        "0 %, true",
        "80 %, true",
        "80%, true",
        "99.9 %, true",
        "100 %, true",
        "100.0 %, true",
        "100.1 %, false",
        "101 %, false",
        "-1 %, false",
        "080 %, false"
    })
    void sharesEndAtAHundredPercent(String written, boolean taken) {
        assertAgreed(Share.SCALE, written, taken);
    }

    @ParameterizedTest
    @CsvSource({
        "6 AWG, true",
        "1/0 AWG, true",
        "4/0AWG, true",
        "36 AWG, true",
        "2.5 mm2, true",
        "2.5 mm², true",
        "0 AWG, false",
        "37 AWG, false",
        "5/0 AWG, false",
        "6.5 AWG, false",
        "4/0 mm2, false",
        "2.5 mm, false"
    })
    void conductorsAreWrittenByGaugeOrByArea(String written, boolean taken) {
        assertAgreed(SquareMillimeters.SCALE, written, taken);
    }

    @ParameterizedTest
    @CsvSource({
        "8 mpg, true",
        "8.5mpg, true",
        "29.4 L/100 km, true",
        "29.4 l/100 km, true",
        "0 mpg, false",
        "0 L/100 km, false",
        "0.5 mpg, false",
        "29.4 L/100km, false"
    })
    void fuelConsumptionIsNeverZero(String written, boolean taken) {
        assertAgreed(LitersPer100Kilometers.SCALE, written, taken);
    }

    @ParameterizedTest
    @ValueSource(strings = {"5 w", "5 KW", "5 KWH", "5 Gal", "5 M", "5 PSI", "5 kpa", "5 ºC", "5 ml"})
    void spellingsAreExact(String written) {
        for (Scale<?> scale : Scale.all()) {
            assertAgreed(scale, written, false);
        }
    }

    /**
     * A second reading of the rules, without regular expressions, over a hundred thousand slips.
     */
    @Test
    void slipsOfTheKeyboardAreJudgedAlikeByPatternParserAndHand() {
        Random random = new Random(811);
        String keys = "0123456789,.-/ °²%AFCLWVabcdfghiklmnpqrsty\n";

        int taken = 0;
        for (int i = 0; i < 100_000; i++) {
            Scale<?> scale = pick(Scale.all(), random);
            StringBuilder text = new StringBuilder(pick(NUMBERS, random));
            text.append(random.nextBoolean() ? " " : "").append(pick(scale.units(), random));
            for (int slips = random.nextInt(3); slips > 0; slips--) {
                int at = random.nextInt(text.length());
                String key = String.valueOf(keys.charAt(random.nextInt(keys.length())));
                switch (random.nextInt(3)) {
                    case 0 -> text.insert(at, key);
                    case 1 -> text.replace(at, at + 1, key);
                    default -> text.append(key).deleteCharAt(at);
                }
            }

            boolean accepted = matches(scale, text.toString());
            assertAgreed(scale, text.toString(), accepted);
            if (ordinaryScales().anyMatch(scale::equals)) {
                assertThat(accepted).as("%s", text).isEqualTo(ByHand.takes(scale, text.toString()));
            }
            taken += accepted ? 1 : 0;
        }
        assertThat(taken).isBetween(20_000, 80_000);
    }

    @ParameterizedTest
    @MethodSource("scales")
    void patternsKeepToWhatEcmaScriptAndRe2Share(Scale<?> scale) {
        assertThat(scale.pattern())
                .startsWith("^(?:")
                .endsWith(")$")
                .doesNotContain("(?=", "(?!", "(?<", "\\d", "\\p", "*+", "++", "\\Q");
        assertThat(scale.pattern().replace("\\.", "")).doesNotContain("\\");
    }

    private static void assertAgreed(Scale<?> scale, String text, boolean taken) {
        assertThat(matches(scale, text))
                .as("pattern of %s on `%s`", scale, text)
                .isEqualTo(taken);
        if (taken) {
            assertThatCode(() -> scale.parse(text)).doesNotThrowAnyException();
        } else {
            assertThatThrownBy(() -> scale.parse(text)).isInstanceOf(NotAQuantityException.class);
        }
    }

    private static boolean matches(Scale<?> scale, String text) {
        return Pattern.compile(scale.pattern()).matcher(text).matches();
    }

    static Quantity parsed(Scale<?> scale, String text) {
        try {
            return scale.parse(text);
        } catch (NotAQuantityException e) {
            throw new AssertionError(e);
        }
    }

    private static <T> T pick(List<T> list, Random random) {
        return list.get(random.nextInt(list.size()));
    }

    /** The rules for an ordinary quantity, read letter by letter. */
    private static final class ByHand {
        static boolean takes(Scale<?> scale, String text) {
            for (String unit : scale.units()) {
                if (text.endsWith(unit)) {
                    String before = text.substring(0, text.length() - unit.length());
                    if (isNumber(before.endsWith(" ") ? before.substring(0, before.length() - 1) : before)) {
                        return true;
                    }
                }
            }
            return false;
        }

        private static boolean isNumber(String text) {
            int point = text.indexOf('.');
            String whole = point < 0 ? text : text.substring(0, point);
            String fraction = point < 0 ? "0" : text.substring(point + 1);
            String digits = whole.replace(",", "");
            if (!isDigits(digits) || !isDigits(fraction) || (digits.startsWith("0") && !whole.equals("0"))) {
                return false;
            }
            if (whole.contains(",") && !whole.equals(grouped(digits))) {
                return false;
            }
            // Nine places: what the whole part leaves of them in groups of three is for the
            // fraction.
            int left = 9 - 3 * ((digits.length() + 2) / 3);
            return left >= 0 && (point < 0 || fraction.length() <= left);
        }

        private static boolean isDigits(String text) {
            return !text.isEmpty() && text.chars().allMatch(c -> '0' <= c && c <= '9');
        }

        private static String grouped(String digits) {
            return digits.length() <= 3
                    ? digits
                    : grouped(digits.substring(0, digits.length() - 3)) + "," + digits.substring(digits.length() - 3);
        }
    }
}
