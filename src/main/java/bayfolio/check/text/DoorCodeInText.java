package bayfolio.check.text;

import bayfolio.check.Text;
import bayfolio.check.TextRule;
import bayfolio.finding.Finding;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Flags the code of a door or key box in a text for renters: every former renter still has it. */
public final class DoorCodeInText implements TextRule {
    private static final Pattern CODE = Pattern.compile(
            "\\b(?:code|PIN|combination)\\b(?:[\\s:=]+(?!\\d)[\\w\u2019\u0027-]+[,:]?){0,4}[\\s:=#]+\\d(?:[ -]?\\d){2,}\\b",
            Pattern.CASE_INSENSITIVE);

    private static final int LEAST_DIGITS = 3;

    @Override
    public Stream<Finding> check(Text text) {
        return text.forRenters() && text.hasDigits(LEAST_DIGITS)
                ? CODE.matcher(text.own()).results().map(part -> finding(text, part))
                : Stream.empty();
    }

    private static Finding finding(Text text, MatchResult part) {
        return Finding.error(
                        "door-code-in-text",
                        text.at(part),
                        "`" + text.typed(part) + "` gives a code to everyone who reads this")
                .mend("Send the code in the message for pickup, and change it.");
    }
}
