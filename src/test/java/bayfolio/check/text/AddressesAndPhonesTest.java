package bayfolio.check.text;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.check.Text;
import bayfolio.check.TextRule;
import bayfolio.fact.Phrase;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Ways of writing an address or a phone number, and what only looks like one. */
class AddressesAndPhonesTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "http:/hollinbay.example/x",
                "See https://hollinbay.example.",
                "Write to mail@host.",
                "anna @ hollinbay . example",
                "anna at hollinbay dot example",
                "anna(at)hollinbay(dot)example",
                "mailto:anna@hollinbay.example",
                "www.hollinbay.example",
                "Ask hollinbay.example.",
                "hollinbay.co.uk/coach"
            })
    void addressesAreTold(String text) {
        assertThat(told(new AddressInText(), text)).as(text).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Turn it @ half.",
                "Charge @ 5 A. It stops by itself.",
                "Look at the sticker. De-icing is next.",
                "Look at the dot on the dial.",
                "Open it e.g. by hand.",
                "From 9 a.m. to 5 p.m.",
                "Off/on, hot/cold: both.",
                "At 2.5 bar."
            })
    void whatOnlyLooksLikeAnAddressIsNot(String text) {
        assertThat(told(new AddressInText(), text)).as(text).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "555.012.3456",
                "Call 555-0110.",
                "(555) 012-3456",
                "1-555-012-3456",
                "+1 555.012.3456",
                "+49 171 555 01 23",
                "0171 555 01 23",
                "0171/5550123",
                "030 1234567",
                "030-123-45-67",
                "(0171) 555 01 23",
                "Call 5550123456.",
                "WhatsApp 01715550123"
            })
    void phonesAreTold(String text) {
        assertThat(told(new PhoneInText(), text)).as(text).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "The serial number is 4-1199.",
                "10-15 minutes",
                "On 01.02.2024",
                "On 2024-05-12",
                "07:00-12:00",
                "12,000 lb",
                "0.125 in, 0.250 in",
                "110-120 V, 50-60 Hz",
                "Serial 5550123456"
            })
    void whatOnlyLooksLikeAPhoneIsNot(String text) {
        assertThat(told(new PhoneInText(), text)).as(text).isFalse();
    }

    private static final Place PLACE = Place.whole(new SourceFile("unit.yaml", "x"));

    private static boolean told(TextRule rule, String text) {
        return rule.check(new Text(text, PLACE, true, true, Phrase.SENTENCES, Optional.empty()))
                .findAny()
                .isPresent();
    }
}
