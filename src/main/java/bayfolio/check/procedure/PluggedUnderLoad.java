package bayfolio.check.procedure;

import bayfolio.check.ScriptRule;
import bayfolio.finding.Finding;
import bayfolio.procedure.Script;
import bayfolio.procedure.SourceBlock;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Flags a step that has the reader plug in or unplug the coach with power on the contacts: neither does it send to the
 * procedure for that, nor has it switched the source off and warned of it before.
 */
public final class PluggedUnderLoad implements ScriptRule {
    private static final String CORD = "(?:it|(?:the|our)\\s+(?:coach|plug|cord|power cord|shore cord))\\b";
    private static final String ENDS = "(?=\\s*(?:$|[.,:;!?\u00B7])|\\s+(?:and|at|for|first|from|there|then|again)\\b)";

    /** The cord of the coach, and not what is plugged in inside: {@code Unplug all loads}, {@code Plug in the kettle}. */
    private static final Pattern PLUGS = Pattern.compile(
            "\\bunplug(?:\\s+" + CORD + "|" + ENDS + ")"
                    + "|\\bplug\\s+(?:" + CORD + "|in" + ENDS + ")"
                    + "|\\b(?:pull|push|put)\\s+(?:the|its|our)\\s+(?:plug|power cord|cord)\\s+(?:straight\\s+)?(?:in|into|out|off|there)\\b",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern ITEM = Pattern.compile("\\n\\s*(?:[-*]|\\d+[.)])\\s");
    private static final String SENT = "](procedure:";

    /** What takes the power off the contacts. */
    private static final Pattern SOURCE =
            Pattern.compile("]\\(switch:(?:site-breaker|generator-control)(?: \"(?:any )?off\")?\\)");

    private static final Pattern WARNS = Pattern.compile(
            "\\*\\*(?:DANGER|WARNING)\\*\\*.*\\b(?:live|shock|power)\\b", Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

    @Override
    public Stream<Finding> check(Script script) {
        List<Finding> findings = new ArrayList<>();
        boolean off = false;
        boolean warned = false;
        for (SourceBlock passage : script.passages()) {
            warned |= passage.part() == SourceBlock.Part.HAZARD
                    && WARNS.matcher(passage.text()).find();
            if (passage.part() != SourceBlock.Part.STEP && passage.part() != SourceBlock.Part.ENDING) {
                continue;
            }
            Matcher plugs = PLUGS.matcher(passage.own());
            Matcher item = ITEM.matcher(passage.text());
            for (int from = 0, to; from < passage.text().length(); from = to) {
                to = item.find(from + 1) ? item.start() : passage.text().length();
                String text = passage.text().substring(from, to);
                boolean plugged = plugs.region(from, to).find();
                off |= SOURCE.matcher(text).find() || plugged && text.contains(SENT);
                if (plugged && !text.contains(SENT) && !(off && warned)) {
                    findings.add(finding(passage, plugs));
                }
            }
        }
        return findings.stream();
    }

    private static Finding finding(SourceBlock passage, Matcher plugs) {
        return Finding.error(
                        "plugged-under-load",
                        passage.at(plugs.start(), plugs.end()),
                        "this has the reader plug in or unplug the coach, and the power is not off before that")
                .mend("Send to the procedure for it, or put a WARNING of live contacts and the switching off of"
                        + " [](switch:site-breaker) before.");
    }
}
