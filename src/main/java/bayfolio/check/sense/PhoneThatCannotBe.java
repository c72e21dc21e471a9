package bayfolio.check.sense;

import bayfolio.check.FleetRule;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Phone;
import bayfolio.procedure.Library;
import bayfolio.source.Located;
import com.google.i18n.phonenumbers.NumberParseException;
import com.google.i18n.phonenumbers.PhoneNumberUtil;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Flags a phone number that has too many or too few digits for its country. A number without a country, such as that of
 * a depot as people nearby dial it, is taken as one of the country of the fleet.
 *
 * <p>Whether a number is given out is not asked: those kept for examples are not, and pass.
 */
public final class PhoneThatCannotBe implements FleetRule {
    private static final PhoneNumberUtil PHONES = PhoneNumberUtil.getInstance();

    /** Kept for examples in North America, and written without an area code in them: 555-0100 to 555-0199. */
    private static final Pattern EXAMPLE = Pattern.compile("^(?:\\+?1[ -])?555-?01[0-9]{2}$");

    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        String country = fleet.facts()
                .facts()
                .find(FleetFacts.COUNTRY)
                .map(it -> it.toUpperCase(Locale.ROOT))
                .orElse("ZZ");
        return fleet.phones().stream()
                .flatMap(phone -> phone.facts().located(Phone.NUMBER).stream())
                .filter(number -> !dialable(number.value(), country))
                .map(PhoneThatCannotBe::finding);
    }

    private static boolean dialable(String number, String country) {
        if (EXAMPLE.matcher(number.strip()).matches()) {
            return true;
        }
        try {
            return PHONES.isPossibleNumber(PHONES.parse(number, country));
        } catch (NumberParseException e) {
            return false;
        }
    }

    private static Finding finding(Located<String> number) {
        return Finding.error(
                        "phone-that-cannot-be",
                        number.at(),
                        "`" + number.value() + "` has too many or too few digits for a phone of its country")
                .mend("Dial it once, then write it with its country: `+49 30 1234567`.");
    }
}
