package bayfolio.check.procedure;

import bayfolio.check.ScriptRule;
import bayfolio.finding.Finding;
import bayfolio.procedure.Script;
import bayfolio.procedure.SourceBlock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Flags a step that asks for two actions: a second verb after {@code then} or a semicolon, or two
 * sentences that each begin with a verb of their own. What goes on until something happens, and what
 * is to be done only if or when, is no second action.
 */
public final class TwoActionsInAStep implements ScriptRule {
    private static final String VERB = "(add|apply|bring|call|charge|choose|clean|close|connect|count|disconnect|drain"
            + "|drive|empty|fill|find|flush|free|go|hang|insert|lay|lift|light|lock|look|lower|move|open|park|plug|pour"
            + "|press|pull|push|put|raise|read|release|remove|rinse|roll|screw|set|shut|slide|start|stow|switch|take"
            + "|tighten|turn|unlock|unplug|unscrew|unwind|wait|wash|wipe|write)\\b";

    private static final Pattern JOINED =
            Pattern.compile("(?:\\band\\s+then|,\\s*then|;)\\s+" + VERB, Pattern.CASE_INSENSITIVE);

    /** From its first letter. */
    private static final Pattern SENTENCE = Pattern.compile("\\s*" + VERB + "([^.!?]*)", Pattern.CASE_INSENSITIVE);

    private static final Pattern END = Pattern.compile("[.!?]");

    /** Mostly nothing follows the end of a sentence. */
    private static final Pattern SEVERAL = Pattern.compile("[.!?]\\P{L}*\\p{L}");

    /** Points within a step are not told apart from its action. */
    private static final Pattern LIST = Pattern.compile("\\n\\s*(?:[-*]|\\d+[.)])\\s");

    private static final Pattern CONDITION = Pattern.compile("\\b(?:if|when|unless)\\b");

    @Override
    public Stream<Finding> check(Script script) {
        return script.passages().stream()
                .filter(passage -> passage.part() == SourceBlock.Part.STEP)
                .flatMap(passage -> check(passage).stream());
    }

    private static Optional<Finding> check(SourceBlock step) {
        Matcher list = LIST.matcher(step.text());
        String own =
                step.own().substring(0, list.find() ? list.start() : step.text().length());
        Matcher joined = JOINED.matcher(own);
        if ((own.indexOf(';') >= 0 || own.toLowerCase(Locale.ROOT).contains("then")) && joined.find()) {
            return Optional.of(finding(step, joined.start(1), joined.end(1)));
        }
        if (!SEVERAL.matcher(own).find()) {
            return Optional.empty();
        }
        Matcher sentence = SENTENCE.matcher(own);
        String first = "";
        List<Integer> starts = Stream.concat(
                        Stream.of(0), END.matcher(own).results().map(MatchResult::end))
                .toList();
        for (int start : starts) {
            if (!sentence.region(start, own.length()).lookingAt()) {
                continue;
            }
            String verb = sentence.group(1).toLowerCase(Locale.ROOT);
            if (!first.isEmpty()
                    && !first.equals(verb)
                    && !CONDITION.matcher(sentence.group(2)).find()) {
                return Optional.of(finding(step, sentence.start(1), sentence.end(1)));
            }
            first = first.isEmpty() ? verb : first;
        }
        return Optional.empty();
    }

    private static Finding finding(SourceBlock step, int from, int to) {
        return Finding.warning(
                        "two-actions-in-a-step",
                        step.at(from, to),
                        "this step asks for a second action: `" + step.text().substring(from, to) + "`")
                .mend("Make it a step of its own.");
    }
}
