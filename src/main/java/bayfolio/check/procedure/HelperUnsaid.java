package bayfolio.check.procedure;

import bayfolio.check.ScriptRule;
import bayfolio.finding.Finding;
import bayfolio.procedure.Head;
import bayfolio.procedure.Script;
import bayfolio.procedure.SourceBlock;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Flags a text for renters that speaks of a second person, while its head does not say that one is needed. */
public final class HelperUnsaid implements ScriptRule {
    private static final Pattern SECOND = Pattern.compile(
            "\\b(?:helpers?|(?:a )?second person|two (?:people|persons|adults)|another (?:person|adult))\\b",
            Pattern.CASE_INSENSITIVE);

    @Override
    public Stream<Finding> check(Script script) {
        return !script.form().hasSteps()
                        || !script.head().who().forRenters()
                        || script.head().facts().find(Head.HELPER).orElse(false)
                ? Stream.empty()
                : script.passages().stream()
                        .flatMap(passage -> check(passage).stream())
                        .limit(1);
    }

    private static Optional<Finding> check(SourceBlock passage) {
        Matcher second = SECOND.matcher(passage.own());
        return second.find()
                ? Optional.of(Finding.error(
                                "helper-unsaid",
                                passage.at(second.start(), second.end()),
                                "this speaks of a second person, and the page says that one can do it alone")
                        .mend("State `helper: yes` in the head, or leave the second person out."))
                : Optional.empty();
    }
}
