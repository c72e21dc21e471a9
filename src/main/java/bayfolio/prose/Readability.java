package bayfolio.prose;

import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How hard English text is to read, by the formulas of Flesch and Kincaid.
 *
 * @see <a href="https://apps.dtic.mil/sti/citations/ADA006655">Kincaid and others, Derivation of new
 *     readability formulas, 1975</a>
 */
public record Readability(int sentences, int words, int syllables) {
    private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");

    /** Final letters that are written and not spoken; they are in "table" and in "switches". */
    private static final Pattern SILENT = Pattern.compile(
            "(?:(?<![^aeiouylr]l)e|(?<![^aeiouylr]l)(?<![td])ed|(?<![^aeiouylr]l)(?<![cgszx]|[cs]h)es)$");

    /** Vowels side by side that are spoken as two: in "reptilian", "layer", "going". */
    private static final Pattern TWO = Pattern.compile("(?<![cstgx])i[ao]|(?<=[aeo])y(?=[aeiou])|[aeiouy](?=ing$)");

    /** Words that the rule gets wrong. */
    private static final Map<String, Integer> EXCEPTIONS = Map.ofEntries(
            Map.entry("area", 3),
            Map.entry("create", 2),
            Map.entry("every", 2),
            Map.entry("everybody", 4),
            Map.entry("everyone", 3),
            Map.entry("everything", 3),
            Map.entry("fluid", 2),
            Map.entry("idea", 3),
            Map.entry("quiet", 2),
            Map.entry("safety", 2),
            Map.entry("someone", 2),
            Map.entry("something", 2),
            Map.entry("sometimes", 2));

    /** Letters and digits, and what follows an apostrophe among letters; or the end of a sentence. */
    private static final Pattern PART = Pattern.compile("([A-Za-z0-9]+(?:['\u2019][A-Za-z]+)?)|[.!?]");

    public static Readability of(String text) {
        int sentences = 0;
        int words = 0;
        int syllables = 0;
        boolean begun = false;
        Matcher part = PART.matcher(text);
        while (part.find()) {
            if (part.group(1) != null) {
                words++;
                syllables += spoken(part.group(1));
                begun = true;
            } else if (begun) {
                sentences++;
                begun = false;
            }
        }
        return new Readability(begun ? sentences + 1 : sentences, words, syllables);
    }

    /** Few words make most of all texts; those are counted once. */
    private static final Map<String, Integer> SPOKEN = new ConcurrentHashMap<>();

    private static final int MOST_KEPT = 20_000;

    private static int spoken(String word) {
        Integer known = SPOKEN.get(word);
        if (known != null) {
            return known;
        }
        int syllables = syllables(word);
        if (SPOKEN.size() < MOST_KEPT) {
            SPOKEN.put(word, syllables);
        }
        return syllables;
    }

    /** Of those that {@link #of} counts. */
    public static int words(String text) {
        return (int) PART.matcher(text)
                .results()
                .filter(part -> part.group(1) != null)
                .count();
    }

    /** At least one; a group of vowels is one, a silent ending none. */
    static int syllables(String word) {
        String lower = word.toLowerCase(Locale.ROOT);
        Integer known = EXCEPTIONS.get(lower);
        if (known != null) {
            return known;
        }
        String spoken = SILENT.matcher(lower).replaceFirst("");
        int groups = count(VOWELS, spoken) + count(TWO, spoken);
        return Math.max(1, groups);
    }

    private static int count(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        int count = 0;
        while (matcher.find()) {
            count++;
        }
        return count;
    }

    /** Years of school; 0 where there are no words. */
    public double grade() {
        return words == 0 ? 0 : 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
    }

    /** From 0, hard, to 100, easy; 0 where there are no words. */
    public double ease() {
        return words == 0 ? 0 : 206.835 - 1.015 * words / sentences - 84.6 * syllables / words;
    }
}
