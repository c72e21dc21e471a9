package bayfolio.check.text;

import bayfolio.check.ScriptRule;
import bayfolio.finding.Finding;
import bayfolio.procedure.Script;
import bayfolio.procedure.SourceBlock;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Flags a text for several coaches that says where a thing is, beside the reference by which each coach says it of its
 * own: {@code [](switch:house-battery-switch), inside the entry door}.
 */
public final class PlaceInSharedText implements ScriptRule {
    private static final String AT =
            "(?:inside|behind|beside|below|under(?:neath)?|above|near|next to|left of|right of|opposite|in|on|at|by)";

    private static final String PLACE =
            AT + " (?:the|its|your) (?:[\\w-]+ ){0,3}?(?:door|dash|wall|step|step well|seat|bench"
                    + "|bed|galley|bath|hall|cab|panel|bay|box|locker|cabinet|cupboard|wardrobe|sink|floor|ceiling|hood|bumper|wheels?"
                    + "|tank|side|corner|end|front|rear|left|right|bottom|top|column|mirror|window)\\b";

    private static final String THING = "(?:switch|gauge|connection|compartment|item|door|tray|tank|appliance)";

    /** A reference, and words of place right behind it. */
    private static final Pattern BEHIND =
            Pattern.compile("]\\(" + THING + ":[^()\\n]*\\),? (?:(?:it|which|that) (?:is|sits|hangs|stands) )?"
                    + "(?:just |right |low |high )?(" + PLACE + ")");

    /** In a passage with a reference, a sentence that says of something where it is. */
    private static final Pattern SAID =
            Pattern.compile("\\b(?:switch|breaker|valve|tap|knob|button|panel|gauge|alarm|inlet|outlet"
                    + "|filler|port|hatch|locker|compartment|box|extinguisher|handle|lever|fuses?) (?:is|are|sits?|hangs?|stands?|lies)"
                    + " (?:just |right |low |high |found )?(" + PLACE + ")");

    private static final Pattern REFERENCE = Pattern.compile("]\\(" + THING + ":|\\{\\{#" + THING + "\\.");

    @Override
    public Stream<Finding> check(Script script) {
        return script.whose().shared() ? script.passages().stream().flatMap(PlaceInSharedText::check) : Stream.empty();
    }

    private static Stream<Finding> check(SourceBlock passage) {
        String text = passage.text();
        return REFERENCE.matcher(text).find()
                ? Stream.concat(
                                BEHIND.matcher(text).results(),
                                SAID.matcher(text).results())
                        .map(said -> finding(passage, said))
                : Stream.empty();
    }

    private static Finding finding(SourceBlock passage, MatchResult said) {
        return Finding.warning(
                        "place-in-shared-text",
                        passage.at(said.start(1), said.end(1)),
                        "`" + said.group(1).replace('\n', ' ')
                                + "` says where a thing is, for coaches that have it elsewhere, too")
                .mend("Leave the words out; the page of each coach says where its own is.");
    }
}
