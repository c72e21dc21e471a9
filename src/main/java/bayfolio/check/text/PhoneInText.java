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
    private static final Pattern PHONE = Pattern.compile(
            "(?=[+(0-9])(?<![\\w.,/-])(?:\\+\\d[\\d ()-]{6,20}\\d|\\(?\\d{3}\\)?[ -]\\d{3}[ -]\\d{4}|\\d{3}-\\d{4}|0\\d{2,4} \\d{5,8})(?![\\w-])");

    private static final int LEAST_DIGITS = 2;

    @Override
    public Stream<Finding> check(Text text) {
        return text.hasDigits(LEAST_DIGITS)
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
