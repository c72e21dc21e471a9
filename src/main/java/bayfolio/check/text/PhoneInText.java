package bayfolio.check.text;

import bayfolio.check.Text;
import bayfolio.check.TextRule;
import bayfolio.finding.Finding;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Flags a phone number typed into a text: it stays behind when the number changes. */
public final class PhoneInText implements TextRule {
    /** Seven digits or more, with the marks that people put between them. */
    private static final Pattern PHONE = Pattern.compile("(?=[+(0-9])(?<![\\w.,/-])(?:"
            // with its country
            + "\\+\\d[\\d ()./-]{6,20}\\d"
            // as in North America
            + "|(?:1[ .-])?\\(?\\d{3}\\)?[ .-]{1,2}\\d{3}[ .-]\\d{4}|\\d{3}-\\d{4}"
            // as dialed within a country, in any groups
            + "|(?=(?:\\D{0,2}\\d){8})\\(?0\\d{2,4}\\)?(?:[ /.-]{1,3}\\d{2,8}){1,5}"
            // all in one, where it is called
            + "|(?<=\\b(?i:call|phone|dial|ring|text|tel|tel\\.|mobile|cell|number is|WhatsApp)(?: us)?(?: at| on)?:? )\\d{7,12}"
            + ")(?![\\w-])");

    private static final int LEAST_DIGITS = 2;

    @Override
    public Stream<Finding> check(Text text) {
        return text.words().digits() >= LEAST_DIGITS
                ? PHONE.matcher(text.own()).results().map(part -> finding(text, part))
                : Stream.empty();
    }

    private static Finding finding(Text text, MatchResult part) {
        return Finding.error(
                        "phone-in-text",
                        text.at(part),
                        "phone number `" + text.typed(part) + "` is typed into the text")
                .mend("State it under `phones` of the fleet, and refer to it: `[](phone:hours)`.");
    }
}
