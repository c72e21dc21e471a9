package bayfolio.check.text;

import bayfolio.check.Text;
import bayfolio.check.TextRule;
import bayfolio.fact.Phrase;
import bayfolio.finding.Finding;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Flags a fact in words that is not what its key wants: a name, a place, what a hand does, what one sees, a state, a figure.
 * Pages put them into sentences of their own.
 */
public final class OtherForm implements TextRule {
    private static final int MOST_WORDS_OF_A_NAME = 9;

    private static final Pattern ENDED = Pattern.compile("[.!?]\\s*$|[.!?] [A-Z]");
    private static final Pattern SENTENCE = Pattern.compile("^(?:It|There|You|This|That|Look|Open|Turn|Go|Reach)\\b");
    private static final Pattern STATEMENT = Pattern.compile("^(?:The|An?|It|Its|This|There|These|You)\\s");
    private static final Pattern ORDER = Pattern.compile(
            "^(?:Look|See|Check|Press|Turn|Push|Pull|Open|Shut|Close|Lift|Slide|Move|Set|Hold|Put|Take|Make sure)\\s");
    private static final Pattern FIGURE = Pattern.compile(
            "[0-9]|\\b(?:half|quarter|third|full|empty|one|two|three|four|five|six|seven|eight|nine|ten|lamps?|bars?)\\b");
    private static final Pattern BLANKS = Pattern.compile("\\s+");

    @Override
    public Stream<Finding> check(Text text) {
        return text.passage().isPresent()
                ? Stream.of()
                : why(text.phrase(), text.own().strip()).stream()
                        .map(why -> Finding.warning("other-form", text.at(), why)
                                .mend("Write " + text.phrase().inWords() + "."));
    }

    private static Optional<String> why(Phrase phrase, String words) {
        return switch (phrase) {
            case NAME -> ended(words, "a name").or(() -> tooLong(words, MOST_WORDS_OF_A_NAME, "a name"));
            case PLACE -> begins(SENTENCE, words, "a place");
            case STATE -> ended(words, "a state");
            case ACT -> begins(STATEMENT, words, "what a hand does");
            case LOOK -> begins(ORDER, words, "what one sees");
            case FIGURE ->
                FIGURE.matcher(words).find()
                        ? Optional.empty()
                        : Optional.of("this is no figure: nothing in it counts");
            case PLATE, SENTENCES, NONE -> Optional.empty();
        };
    }

    private static Optional<String> ended(String words, String what) {
        return ENDED.matcher(words).find()
                ? Optional.of("this is " + what + ", and is written as a sentence")
                : Optional.empty();
    }

    private static Optional<String> begins(Pattern with, String words, String what) {
        return with.matcher(words).find()
                ? Optional.of("this is not " + what + ": it begins with `" + BLANKS.split(words)[0] + "`")
                : Optional.empty();
    }

    private static Optional<String> tooLong(String words, int most, String what) {
        int count = BLANKS.split(words).length;
        return count > most
                ? Optional.of("this is " + what + ", and has " + count + " words; the most is " + most)
                : Optional.empty();
    }
}
