package bayfolio.check.text;

import bayfolio.check.Text;
import bayfolio.check.TextRule;
import bayfolio.finding.Finding;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Flags a web or mail address typed into a text: nobody can see from here when it is gone. */
public final class AddressInText implements TextRule {
    private static final Pattern ADDRESS = Pattern.compile(
            "\\bhttps?://[^\\s)>]*[^\\s)>.,;]|\\bwww\\.[^\\s)>]*[^\\s)>.,;]|(?<![\\w.+-])[\\w.+-]++@[\\w-]+(?:\\.[\\w-]+)+",
            Pattern.CASE_INSENSITIVE);

    @Override
    public Stream<Finding> check(Text text) {
        return mayHoldOne(text.own())
                ? ADDRESS.matcher(text.own()).results().map(part -> finding(text, part))
                : Stream.empty();
    }

    /** Most texts do not, which is told sooner so than by the pattern. */
    private static boolean mayHoldOne(String text) {
        return text.indexOf('@') >= 0 || text.contains("//") || text.contains("ww.") || text.contains("WW.");
    }

    private static Finding finding(Text text, MatchResult part) {
        return Finding.error(
                        "address-in-text", text.at(part), "address `" + text.typed(part) + "` is typed into the text")
                .mend("Send it in a message, or describe what it leads to.");
    }
}
