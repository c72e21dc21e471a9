package bayfolio.check.text;

import bayfolio.check.FleetRule;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.procedure.Library;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Flags a word that stands for a text that nobody has written yet. */
public final class PlaceholderWord implements FleetRule {
    private static final Pattern PLACEHOLDER =
            Pattern.compile("\\b(?:TODO|TBD|TBC|FIXME|XXX+)\\b|(?i:\\blorem ipsum\\b)|\\?\\?\\?+");

    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        return Text.of(fleet, library)
                .flatMap(text -> PLACEHOLDER.matcher(text.own()).results().map(part -> finding(text, part)));
    }

    private static Finding finding(Text text, MatchResult part) {
        return Finding.error(
                        "placeholder-word",
                        text.at(part),
                        "`" + text.typed(part) + "` stands for a text that is not written yet")
                .mend("Write the text, or leave the fact out.");
    }
}
