package bayfolio.check.text;

import bayfolio.check.Text;
import bayfolio.check.TextRule;
import bayfolio.finding.Finding;
import java.util.Comparator;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Flags what reads as the code of a door, key box, gate, alarm or network in a text for renters, whatever the words around
 * it and also spelled out: every former renter still has it.
 */
public final class DoorCodeInText implements TextRule {
    private static final String DIGITS = "\\d(?:[ -]?\\d){2,7}\\b";

    /** A figure with a unit is no code. */
    private static final String NO_UNIT =
            "(?!\\s*(?:%|°|[.,]\\d|(?:mm|cm|m|km|in|ft|mi|kg|lb|l|L|gal|qt|V|A|Ah|W|kW|psi|bar|kPa|mbar|s|min|h|days?|rpm|times|USD|EUR)\\b))";

    private static final String DIGIT_WORD = "(?:zero|oh|one|two|three|four|five|six|seven|eight|nine)";

    private static final List<Pattern> CODES = Stream.of(
                    // The word, then the figure within four words.
                    "\\b(?:code|PIN|combination)\\b(?:[\\s:=]+(?!\\d)[\\w\u2019\u0027-]+[,:]?){0,4}[\\s:=#]+" + DIGITS,
                    // What is done with a code.
                    "\\b(?:type|enter|punch|key|dial|tap)\\s+(?:in\\s+)?" + DIGITS + NO_UNIT,
                    // What a code opens.
                    "\\b(?:key ?box|lock ?box|keypad|gate|padlock|safe|alarm)\\b(?:[\\s:=]+(?!\\d)[\\w\u2019\u0027-]+[,:]?){0,3}[\\s:=#]+\\d{4,8}\\b"
                            + NO_UNIT,
                    // Spelled out.
                    "\\b" + DIGIT_WORD + "(?:[,;]?[ -]" + DIGIT_WORD + "){3,}\\b",
                    // A network.
                    "\\b(?:password|passphrase|network key|Wi-?Fi (?:key|code))\\b\\s*(?:is|:|=)\\s*[^\\s.,]{6,}")
            .map(pattern -> Pattern.compile(pattern, Pattern.CASE_INSENSITIVE))
            .toList();

    @Override
    public Stream<Finding> check(Text text) {
        return text.forRenters()
                ? CODES.stream()
                        .flatMap(code -> code.matcher(text.own()).results())
                        .sorted(Comparator.comparingInt(MatchResult::start))
                        .limit(1)
                        .map(part -> finding(text, part))
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
