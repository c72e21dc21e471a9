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
        return text.plate() || !mayHoldOne(text.own())
                ? Stream.empty()
                : DOUBLED.matcher(text.own())
                        .results()
                        // `winter WINTER` names a position by its plate
                        .filter(part -> !part.group().matches(".*\\b[A-Z]{2,}"))
                        .map(part -> finding(text, part));
    }

    /** Most texts do not, which is told sooner so than by the pattern. */
    private static boolean mayHoldOne(String text) {
        int before = 0;
        int beforeEnd = 0;
        int start = 0;
        for (int i = 0; i <= text.length(); i++) {
            if (i == text.length() || Character.isWhitespace(text.charAt(i))) {
                if (i > start) {
                    // The second may have marks behind it.
                    int length = beforeEnd - before;
                    if (length > 0 && i - start >= length && text.regionMatches(true, before, text, start, length)) {
                        return true;
                    }
                    before = firstLetter(text, start, i);
                    beforeEnd = i;
                }
                start = i + 1;
            }
        }
        return false;
    }

    /** The first may have marks before it. */
    private static int firstLetter(String text, int start, int end) {
        int first = start;
        for (int i = start; i < end; i++) {
            char letter = Character.toLowerCase(text.charAt(i));
            if (letter < 'a' || letter > 'z') {
                first = i + 1;
            }
        }
        return first;
    }

    private static Finding finding(Text text, MatchResult part) {
        return Finding.warning("doubled-word", text.at(part), "`" + text.typed(part) + "`: the word stands there twice")
                .mend("Take one of them out.");
    }
}
