package bayfolio.mail;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What power there is where a renter stays, as bookings tell it: {@code 50 A, 30 A}, {@code none}.
 *
 * @param least the smallest of the sites, in amps; 0 where one has none
 */
record SiteSupply(double least) {
    private static final Pattern ONE = Pattern.compile("(?i)([0-9]{1,3}(?:\\.[0-9])?) ?a(?:mps?)?|none|no");

    /** Empty where it cannot be read. */
    static Optional<SiteSupply> parse(String words) {
        double least = Double.MAX_VALUE;
        for (String word : words.split("[,/+;]|\\band\\b")) {
            Matcher one = ONE.matcher(word.strip());
            if (!one.matches()) {
                return Optional.empty();
            }
            least = Math.min(least, one.group(1) == null ? 0 : Double.parseDouble(one.group(1)));
        }
        return Optional.of(new SiteSupply(least));
    }
}
