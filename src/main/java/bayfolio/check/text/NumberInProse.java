package bayfolio.check.text;

import bayfolio.check.Text;
import bayfolio.check.TextRule;
import bayfolio.finding.Finding;
import bayfolio.procedure.SourceBlock;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Flags a number with a unit of measure typed into a step: the measure of a coach belongs into its description. */
public final class NumberInProse implements TextRule {
    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.])\\d+(?:[.,/]\\d+)?[ \u00A0-]?"
            + "(?:feet|foot|ft|inch(?:es)?|in(?= wide| long| deep| high|[.,;:)])|m|cm|mm|km|miles?|mi|gal|gallons?|quarts?|qt|L|liters?|V|volts?|A|amps?|kW|W"
            + "|watts?|Ah|pounds?|lbs?|kg|psi|bar|kPa)\\b");

    /** Figures that are the same on every coach. */
    private static final Pattern GENERAL = Pattern.compile(
            // sizes of supplies, as the posts say them
            "(?:15|16|20|30|50)[ \u00A0-]A|(?:12|120|230|240)[ \u00A0-]V"
                    // distances to keep from fire, gas and moving parts
                    + "|6[ \u00A0]ft|100[ \u00A0]ft|150[ \u00A0]ft|2[ \u00A0]m|30[ \u00A0]m|50[ \u00A0]m");

    @Override
    public Stream<Finding> check(Text text) {
        return text.words().digits() < 1
                        || text.passage()
                                .filter(it -> it.part() == SourceBlock.Part.STEP)
                                .isEmpty()
                ? Stream.empty()
                : NUMBER.matcher(text.own())
                        .results()
                        .filter(part -> !GENERAL.matcher(part.group()).matches())
                        .map(part -> finding(text, part));
    }

    private static Finding finding(Text text, MatchResult part) {
        return Finding.warning("number-in-prose", text.at(part), "`" + text.typed(part) + "` is typed into a step")
                .mend("State it in the description of the coach, and fill it in from there.");
    }
}
