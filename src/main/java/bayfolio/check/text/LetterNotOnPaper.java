package bayfolio.check.text;

import bayfolio.check.Text;
import bayfolio.check.TextRule;
import bayfolio.finding.Finding;
import bayfolio.source.Hidden;
import bayfolio.typeface.Face;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Flags a letter that no face has with which books and labels are printed: another sign would stand in its place. */
public final class LetterNotOnPaper implements TextRule {
    /** All faces have the letters of ASCII. */
    private static final Pattern OTHER = Pattern.compile("[^\\x00-\\x7E]");

    @Override
    public Stream<Finding> check(Text text) {
        return OTHER.matcher(text.own())
                .results()
                .filter(letter -> Face.lacking(letter.group()).isPresent())
                .map(letter -> finding(text, letter));
    }

    private static Finding finding(Text text, MatchResult letter) {
        return Finding.error(
                        "letter-not-on-paper",
                        text.at(letter),
                        "`" + letter.group() + "` cannot be printed: no face has "
                                + Hidden.name(letter.group().codePointAt(0)))
                .mend("Say it in words.");
    }
}
