package bayfolio.check.procedure;

import bayfolio.check.ScriptRule;
import bayfolio.finding.Finding;
import bayfolio.procedure.Head;
import bayfolio.procedure.Script;
import bayfolio.procedure.SourceBlock;
import bayfolio.prose.Readability;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Flags a procedure whose own words, without the names and values that are filled in, ask for more
 * than six years of school, or run on in long sentences.
 */
public final class HardToRead implements ScriptRule {
    private static final double HIGHEST_GRADE = 6.0;

    /** In words. */
    private static final double LONGEST_SENTENCE = 12.0;

    /** The formula says nothing of shorter texts. */
    private static final int FEWEST_WORDS = 100;

    @Override
    public Stream<Finding> check(Script script) {
        Readability text = Readability.of(script.passages().stream()
                .filter(passage -> passage.part() != SourceBlock.Part.HEADING)
                .map(SourceBlock::own)
                .collect(Collectors.joining(". ")));
        if (text.words() < FEWEST_WORDS) {
            return Stream.empty();
        }
        if (text.grade() > HIGHEST_GRADE) {
            return Stream.of(finding(script, "reads at grade %.1f", text.grade(), HIGHEST_GRADE));
        }
        double sentence = (double) text.words() / text.sentences();
        return sentence > LONGEST_SENTENCE
                ? Stream.of(finding(script, "has %.1f words in a sentence on the average", sentence, LONGEST_SENTENCE))
                : Stream.empty();
    }

    private static Finding finding(Script script, String what, double figure, double most) {
        return Finding.warning(
                        "hard-to-read",
                        script.head().facts().at(Head.ID),
                        script.form().called() + " `" + script.id() + "` "
                                + String.format(Locale.ROOT, what + "; the highest is %.1f", figure, most))
                .mend("Use shorter sentences and shorter words.");
    }
}
