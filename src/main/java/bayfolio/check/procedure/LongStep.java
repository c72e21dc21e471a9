package bayfolio.check.procedure;

import bayfolio.check.ScriptRule;
import bayfolio.finding.Finding;
import bayfolio.procedure.Script;
import bayfolio.procedure.SourceBlock;
import bayfolio.prose.Readability;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Flags a step of more than twenty words, not counting the names and values that are filled in. */
public final class LongStep implements ScriptRule {
    private static final int MOST = 20;

    /** Points are marked off by blanks where their hyphens stood. */
    private static final Pattern POINT = Pattern.compile("\\n(?= {4,})");

    @Override
    public Stream<Finding> check(Script script) {
        return script.passages().stream()
                .filter(passage -> passage.part() == SourceBlock.Part.STEP)
                .filter(passage -> passage.own().length() > 2 * MOST)
                .filter(passage -> words(passage) > MOST)
                .map(passage -> Finding.warning(
                                "long-step",
                                passage.at(),
                                "this step has " + words(passage) + " words; the most is " + MOST)
                        .mend("Split it into two steps, or leave words out."));
    }

    /** Of the longest stretch: a step, or one of the points below it. */
    private static int words(SourceBlock passage) {
        return POINT.splitAsStream(passage.own())
                .mapToInt(Readability::words)
                .max()
                .orElse(0);
    }
}
