package bayfolio.check.text;

import bayfolio.check.FleetRule;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.procedure.Library;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Flags a web or mail address typed into a text: nobody can see from here when it is gone. */
public final class AddressInText implements FleetRule {
    private static final Pattern ADDRESS = Pattern.compile(
            "\\bhttps?://[^\\s)>]*[^\\s)>.,;]|\\bwww\\.[^\\s)>]*[^\\s)>.,;]|(?<![\\w.+-])[\\w.+-]++@[\\w-]+(?:\\.[\\w-]+)+",
            Pattern.CASE_INSENSITIVE);

    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        return Text.of(fleet, library)
                .flatMap(text -> ADDRESS.matcher(text.own()).results().map(part -> finding(text, part)));
    }

    private static Finding finding(Text text, MatchResult part) {
        return Finding.error(
                        "address-in-text", text.at(part), "address `" + text.typed(part) + "` is typed into the text")
                .mend("Send it in a message, or describe what it leads to.");
    }
}
