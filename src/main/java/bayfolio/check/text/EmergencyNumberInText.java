package bayfolio.check.text;

import bayfolio.check.Text;
import bayfolio.check.TextRule;
import bayfolio.finding.Finding;
import bayfolio.model.Country;
import bayfolio.model.EmergencyNumber;
import bayfolio.model.Fleet;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Flags an emergency number typed into a text: in another country it reaches nobody. */
public final class EmergencyNumberInText implements TextRule {
    private static final int LEAST_DIGITS = 3;

    /** What a number to call follows within its sentence; `112` alone may be amperes or a size. */
    private static final Pattern CALLS =
            Pattern.compile("\\b(?:call|phone|dial|ring|text)(?:s|ed|ing)?\\b[^.!?]*$", Pattern.CASE_INSENSITIVE);

    private final Set<String> numbers;
    private final Pattern number;

    private EmergencyNumberInText(Set<String> numbers) {
        this.numbers = numbers;
        this.number = numbers.isEmpty()
                ? Pattern.compile("(?!)")
                : Pattern.compile("(?<![\\w.,/+-])(?:" + String.join("|", numbers) + ")(?![\\w/-]|[.,]\\d)");
    }

    /** Knows no country yet. */
    public EmergencyNumberInText() {
        this(Set.of());
    }

    @Override
    public TextRule of(Fleet fleet) {
        Set<String> numbers = new TreeSet<>();
        for (Country country : fleet.countries()) {
            country.emergency().stream()
                    .map(EmergencyNumber::number)
                    .filter(it -> it.matches("\\d+"))
                    .forEach(numbers::add);
        }
        return new EmergencyNumberInText(numbers);
    }

    @Override
    public Stream<Finding> check(Text text) {
        return text.words().digits() >= LEAST_DIGITS
                ? number.matcher(text.own())
                        .results()
                        .filter(part -> CALLS.matcher(text.own().substring(0, part.start()))
                                .find())
                        .map(part -> finding(text, part))
                : Stream.empty();
    }

    /** Equal ones find the same. */
    @Override
    public boolean equals(Object other) {
        return other instanceof EmergencyNumberInText rule && rule.numbers.equals(numbers);
    }

    @Override
    public int hashCode() {
        return numbers.hashCode();
    }

    private static Finding finding(Text text, MatchResult part) {
        return Finding.error(
                        "emergency-number-in-text",
                        text.at(part),
                        "emergency number `" + text.typed(part) + "` is typed into the text")
                .mend("Refer to that of the country: `[](phone:emergency)`.");
    }
}
