package bayfolio.check.procedure;

import bayfolio.check.ScriptRule;
import bayfolio.finding.Finding;
import bayfolio.procedure.Form;
import bayfolio.procedure.Script;
import bayfolio.procedure.SourceBlock;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Flags a point in a trouble guide that does not say what one sees. */
public final class AnswerWithoutLook implements ScriptRule {
    private static final Pattern POINT = Pattern.compile("(?m)^\\s+[-*]\\s+(?!\\*\\*[^*\\n]+:\\*\\*)(\\S.*)$");

    @Override
    public Stream<Finding> check(Script script) {
        return script.form() != Form.TROUBLE
                ? Stream.of()
                : script.passages().stream()
                        .filter(passage -> passage.part() == SourceBlock.Part.STEP)
                        .flatMap(passage -> POINT.matcher(passage.text())
                                .results()
                                .map(point -> Finding.warning(
                                                "answer-without-look",
                                                passage.at(point.start(1), point.end(1)),
                                                "this point does not say what one sees")
                                        .mend("Begin it with that, in bold: `**It is off:** turn it on.`")));
    }
}
