package bayfolio.check.text;

import bayfolio.check.Text;
import bayfolio.check.TextRule;
import bayfolio.finding.Finding;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Flags a word that stands for a text that nobody has written yet. */
public final class PlaceholderWord implements TextRule {
    private static final Pattern PLACEHOLDER = Pattern.compile(
            "(?=[TFXLl?])(?:\\b(?:TODO|TBD|TBC|FIXME|XXX+|[Ll](?:orem ipsum|OREM IPSUM))\\b|\\?\\?\\?+)");

    /** Most texts hold none of these, which is told sooner so than by the pattern. */
    private static final List<String> BEGINNINGS =
            List.of("TODO", "TBD", "TBC", "FIXME", "XXX", "orem ipsum", "OREM IPSUM", "???");

    @Override
    public Stream<Finding> check(Text text) {
        return BEGINNINGS.stream().anyMatch(text.own()::contains)
                ? PLACEHOLDER.matcher(text.own()).results().map(part -> finding(text, part))
                : Stream.empty();
    }

    private static Finding finding(Text text, MatchResult part) {
        return Finding.error(
                        "placeholder-word",
                        text.at(part),
                        "`" + text.typed(part) + "` stands for a text that is not written yet")
                .mend("Write the text, or leave the fact out.");
    }
}
