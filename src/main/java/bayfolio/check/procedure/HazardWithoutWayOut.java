package bayfolio.check.procedure;

import bayfolio.check.ScriptRule;
import bayfolio.finding.Finding;
import bayfolio.procedure.Script;
import bayfolio.procedure.SourceBlock;
import bayfolio.prose.Readability;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Flags a hazard of one sentence: it cannot say what the danger is, what it does and how to keep
 * out of it.
 */
public final class HazardWithoutWayOut implements ScriptRule {
    private static final Pattern SIGNAL = Pattern.compile("^\\s*>\\s*\\**(?:DANGER|WARNING|CAUTION|NOTICE)\\b");

    @Override
    public Stream<Finding> check(Script script) {
        return script.passages().stream()
                .filter(passage -> passage.part() == SourceBlock.Part.HAZARD)
                .filter(passage -> SIGNAL.matcher(passage.text()).find())
                .filter(passage -> Readability.of(passage.own()).sentences() < 2)
                .map(passage -> Finding.warning(
                                "hazard-without-way-out", passage.at(), "this hazard is one sentence only")
                        .mend("Say what the danger is, what it does, and how to keep out of it."));
    }
}
