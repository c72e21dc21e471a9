package bayfolio.prose;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words of a text with their places, found once for all rules that look at it; a word is a run of letters and digits.
 * Most texts hold none of the words that a rule wants, and are done with by that.
 */
public final class WordIndex {
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{Nd}]+");
    private static final Pattern DIGIT = Pattern.compile("[0-9]");

    private final List<Word> all;
    private final Set<String> small = new HashSet<>();
    private final int digits;

    /**
     * @param small in small letters, as an expression compares that minds no case
     * @param end one past the last letter
     */
    public record Word(String text, String small, int start, int end) {}

    private WordIndex(List<Word> all, int digits) {
        this.all = Collections.unmodifiableList(all);
        this.digits = digits;
        all.forEach(word -> small.add(word.small));
    }

    public static WordIndex of(String text) {
        List<Word> all = new ArrayList<>();
        Matcher word = WORD.matcher(text);
        while (word.find()) {
            all.add(new Word(
                    word.group(),
                    word.group().toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT),
                    word.start(),
                    word.end()));
        }
        return new WordIndex(all, (int) DIGIT.matcher(text).results().count());
    }

    /** In their order. */
    public List<Word> all() {
        return all;
    }

    /** Whether one of several words, in small letters, is among them. */
    public boolean holdOneOf(Set<String> words) {
        return !Collections.disjoint(words, small);
    }

    /** Whether a word stands there twice, one behind the other. */
    public boolean repeat() {
        for (int i = 1; i < all.size(); i++) {
            if (all.get(i).small.equals(all.get(i - 1).small)) {
                return true;
            }
        }
        return false;
    }

    /** How many figures from 0 to 9 the text has. */
    public int digits() {
        return digits;
    }
}
