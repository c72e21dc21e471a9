package bayfolio.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RefusalTest {
    @Test
    void aBareNumberLacksItsUnit() {
        assertThat(refusal(Liters.SCALE, "100"))
                .isEqualTo("`100` has no unit; write it with one of gal, L, qt, mL, cup");
        assertThat(refusal(Share.SCALE, "80")).isEqualTo("`80` has no unit; write it with %");
    }

    @Test
    void aUnitNearlySpelledIsMended() {
        assertThat(refusal(Liters.SCALE, "100 galons"))
                .isEqualTo(
                        "`100 galons` is not a volume; did you mean `100 gal`?" + " units taken: gal, L, qt, mL, cup");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    100 gallons | 100 gal
                    100 GAL     | 100 gal
                    100  gal    | 100 gal
                    5 liters    | 5 L
                    5 litres    | 5 L
                    44,600 lbs  | 44,600 lb
                    44,600 Pounds | 44,600 lb
                    12 feet     | 12 ft
                    7 inches    | 7 in
                    1500 w      | 1500 W
                    15 amps     | 15 A
                    2 hours     | 2 h
                    45 °f       | 45 °F
                    29.4 L/100km | 29.4 L/100 km
                    6 awg       | 6 AWG
                    """)
    void usualNamesAndSlipsLeadToTheUnit(String written, String meant) {
        assertThat(Scale.all())
                .filteredOn(scale -> scale.accepts(meant))
                .hasSize(1)
                .allSatisfy(scale -> assertThat(refusal(scale, written)).contains("did you mean `" + meant + "`?"));
    }

    @Test
    void aDecimalCommaIsMended() {
        assertThat(refusal(Meters.SCALE, "3,94 m"))
                .isEqualTo("`3,94 m` has a comma where a point is meant; write `3.94 m`");
        assertThat(refusal(Kilograms.SCALE, "0,500 kg")).endsWith("write `0.500 kg`");
    }

    @Test
    void anotherQuantityIsCalledByItsName() {
        assertThat(refusal(Liters.SCALE, "40 psi")).isEqualTo("`40 psi` is a pressure, not a volume");
        assertThat(refusal(Amps.SCALE, "3°")).isEqualTo("`3°` is an angle, not a current");
        assertThat(refusal(WattHours.SCALE, "5 kW")).isEqualTo("`5 kW` is a power, not an energy");
    }

    @Test
    void anUnknownUnitIsToldTheKnownOnes() {
        assertThat(refusal(Meters.SCALE, "5 cubits"))
                .isEqualTo("`5 cubits` is not a length such as `12 ft 11 in`;"
                        + " units taken: ft, in, m, cm, mm, mi, km");
        assertThat(refusal(Liters.SCALE, "full")).startsWith("`full` is not a volume such as `100 gal`;");
        assertThat(refusal(Liters.SCALE, "")).startsWith("`` is not a volume such as `100 gal`;");
    }

    @Test
    void aNumberOutOfRangeIsToldTheRange() {
        assertThat(refusal(Share.SCALE, "101 %"))
                .isEqualTo("`101 %` is not a share such as `80 %`; before `%` goes a number from 0 to 100");
        assertThat(refusal(SquareMillimeters.SCALE, "5/0 AWG")).contains("units taken: AWG, mm²");
        assertThat(refusal(Liters.SCALE, "-5 gal"))
                .isEqualTo("`-5 gal` is not a volume such as `100 gal`; before `gal` goes a number such as"
                        + " 12.5 or 1,250, not negative and of nine digits at most");
    }

    @ParameterizedTest
    @ValueSource(strings = {"5 tons", "5 m/s", "5 gal/min", "5 gpm", "5 cms", "5 kV", "5 oz"})
    void aUnitOfAnotherWorthIsNeverSuggested(String written) {
        for (Scale<?> scale : Scale.all()) {
            assertThat(refusal(scale, written)).doesNotContain("did you mean");
        }
    }

    @Test
    void everySuggestionIsTaken() {
        Pattern suggestion = Pattern.compile("(?:did you mean|write) `([^`]*)`");
        for (Scale<?> scale : Scale.all()) {
            for (String unit : scale.units()) {
                for (String number : new String[] {"1.2.3", "3,5", "1,2345", "007", "5", "-5", "500"}) {
                    String written = number + "  " + unit;
                    Matcher matcher = suggestion.matcher(refusal(scale, written));
                    if (matcher.find()) {
                        assertThat(scale.accepts(matcher.group(1)))
                                .as(matcher.group())
                                .isTrue();
                    }
                }
            }
        }
    }

    @Test
    void aRefusalIsOneLine() {
        assertThat(refusal(Liters.SCALE, "100\ngal\n")).doesNotContain("\n");
    }

    private static String refusal(Scale<?> scale, String text) {
        try {
            throw new AssertionError(text + " was taken as " + scale.parse(text));
        } catch (NotAQuantityException e) {
            return String.valueOf(e.getMessage());
        }
    }
}
