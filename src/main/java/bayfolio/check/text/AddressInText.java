package bayfolio.check.text;

import bayfolio.check.Text;
import bayfolio.check.TextRule;
import bayfolio.finding.Finding;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Flags a web or mail address typed into a text: nobody can see from here when it is gone. */
public final class AddressInText implements TextRule {
    /** Of domains, those that are no words at the end of a sentence. */
    private static final String TOP = "(?:com|org|net|edu|gov|info|biz|app|io|eu|de|ch|fr|nl|uk|au|nz|example|invalid)";

    private static final Pattern ADDRESS = Pattern.compile(
            // with its scheme, also misspelt
            "\\b(?:https?|ftp):/[^\\s)>]*[^\\s)>.,;]|\\bmailto:\\S+|\\bwww\\.[^\\s)>]*[^\\s)>.,;]"
                    // mail, with a host of any form
                    + "|(?<![\\w.+-])[\\w.+-]++@\\w[\\w-]*(?:\\.[\\w-]+)*"
                    // mail, taken apart so that no program sees it
                    + "|\\b[\\w.+-]+\\s*(?:@|[(\\[]at[)\\]]|\\bat\\b)\\s*[\\w-]+\\s*(?:\\.|[(\\[]dot[)\\]]|\\bdot\\b)\\s*"
                    + TOP
                    + "\\b"
                    // a domain alone
                    + "|(?<![\\w.@/-])(?:[a-z0-9-]+\\.)+" + TOP + "\\b(?:/[^\\s)>]*[^\\s)>.,;])?",
            Pattern.CASE_INSENSITIVE);

    /** What each of them has. */
    private static final Pattern MARK =
            Pattern.compile("@|:/|mailto:|www\\.|(?:\\.|dot[)\\]]?)\\s*" + TOP + "\\b", Pattern.CASE_INSENSITIVE);

    @Override
    public Stream<Finding> check(Text text) {
        return mayHoldOne(text.own())
                ? ADDRESS.matcher(text.own()).results().map(part -> finding(text, part))
                : Stream.empty();
    }

    /** Most texts do not, which is told sooner so than by the pattern. */
    private static boolean mayHoldOne(String text) {
        return MARK.matcher(text).find();
    }

    private static Finding finding(Text text, MatchResult part) {
        return Finding.error(
                        "address-in-text", text.at(part), "address `" + text.typed(part) + "` is typed into the text")
                .mend("Send it in a message, or describe what it leads to.");
    }
}
