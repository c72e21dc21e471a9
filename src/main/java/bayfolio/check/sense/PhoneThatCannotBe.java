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
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Flags a phone number that has too many or too few digits for its country. A number without a country, such as that of
 * a depot as people nearby dial it, is taken as one of the country of the fleet.
 *
 * <p>Whether a number is given out is not asked: those kept for examples are not, and pass.
 */
public final class PhoneThatCannotBe implements FleetRule {
    /** The library's word for no country. */
    private static final String UNKNOWN = "ZZ";

    private static final PhoneNumberUtil PHONES = PhoneNumberUtil.getInstance();

    /** Kept for examples in North America, and written without an area code in them: 555-0100 to 555-0199. */
    private static final Pattern EXAMPLE = Pattern.compile("^(?:\\+?1[ -])?555-?01[0-9]{2}$");

    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        Optional<String> country =
                fleet.facts().facts().find(FleetFacts.COUNTRY).map(it -> it.toUpperCase(Locale.ROOT));
        List<Located<String>> numbers = fleet.phones().stream()
                .flatMap(phone -> phone.facts().located(Phone.NUMBER).stream())
                .filter(number -> !EXAMPLE.matcher(number.value().strip()).matches())
                .toList();
        boolean ruled = country.filter(PHONES.getSupportedRegions()::contains).isPresent();
        Stream<Finding> told = numbers.stream()
                .filter(number -> ruled || international(number))
                .flatMap(number -> check(number, country.orElse(UNKNOWN)).stream());
        Stream<Finding> unruled = numbers.stream()
                .filter(number -> !ruled && !international(number))
                .limit(1)
                .flatMap(number -> country.map(it -> withoutRules(number, it)).stream());
        return Stream.concat(told, unruled);
    }

    private static boolean international(Located<String> number) {
        return number.value().strip().startsWith("+");
    }

    private static Optional<Finding> check(Located<String> number, String country) {
        try {
            return PHONES.isPossibleNumber(PHONES.parse(number.value(), country))
                    ? Optional.empty()
                    : Optional.of(finding(number, "has too many or too few digits for a phone of its country"));
        } catch (NumberParseException e) {
            return Optional.of(finding(
                    number,
                    e.getErrorType() == NumberParseException.ErrorType.INVALID_COUNTRY_CODE
                            ? "begins with the code of no country"
                            : "has too many or too few digits for a phone of its country"));
        }
    }

    private static Finding finding(Located<String> number, String fault) {
        return Finding.error("phone-that-cannot-be", number.at(), "`" + number.value() + "` " + fault)
                .mend("Dial it once, then write it with its country: `+49 30 1234567`.");
    }

    private static Finding withoutRules(Located<String> number, String country) {
        return Finding.note(
                        "phone-that-cannot-be",
                        number.at(),
                        "the numbering rules of country `" + country + "` are not known here, so `" + number.value()
                                + "` is not judged")
                .mend("Write phones with the code of their country: `+49 30 1234567`.");
    }
}
