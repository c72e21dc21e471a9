package bayfolio.check.text;

import bayfolio.check.Text;
import bayfolio.check.TextRule;
import bayfolio.finding.Finding;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Flags a word that stands there twice. */
public final class DoubledWord implements TextRule {
    private static final Pattern DOUBLED =
            Pattern.compile("(?<![\\w-])(?!(?:that|had)\\s)([a-z]++)\\s++\\1(?![\\w-])", Pattern.CASE_INSENSITIVE);

    @Override
    public Stream<Finding> check(Text text) {
        return text.plate() || !text.words().repeat()
                ? Stream.empty()
                : DOUBLED.matcher(text.own())
                        .results()
                        // `winter WINTER` names a position by its plate
                        .filter(part -> !part.group().matches(".*\\b[A-Z]{2,}"))
                        .map(part -> finding(text, part));
    }

    private static Finding finding(Text text, MatchResult part) {
        return Finding.warning("doubled-word", text.at(part), "`" + text.typed(part) + "`: the word stands there twice")
                .mend("Take one of them out.");
    }
}
