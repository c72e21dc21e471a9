package bayfolio.publish;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Looks for many texts in one pass over another: Karp and Rabin, "Efficient randomized pattern-matching algorithms", 1987.
 * By hand, since a search for each of them by itself took a seventh of the time of publishing.
 */
final class Phrases {
    static final Phrases NONE = new Phrases(List.of());

    private static final int BASE = 31;

    /** As many as hardly any two beginnings of texts share one. */
    private static final int SLOTS = 1 << 16;

    private final int length;
    private final int highest;
    private final Map<Integer, List<String>> byBeginning = new HashMap<>();
    private final BitSet slots = new BitSet(SLOTS);

    /** @param texts none of them empty */
    Phrases(Collection<String> texts) {
        this.length = texts.stream().mapToInt(String::length).min().orElse(0);
        int power = 1;
        for (int i = 1; i < length; i++) {
            power *= BASE;
        }
        this.highest = power;
        for (String text : texts) {
            int hash = hash(text, 0);
            byBeginning.computeIfAbsent(hash, it -> new ArrayList<>()).add(text);
            slots.set(slot(hash));
        }
    }

    /**
     * A text with one space between words, so that it does not matter how its lines were broken. By an expression it took a
     * thirtieth of the time of publishing.
     */
    static String spaced(String text) {
        StringBuilder spaced = new StringBuilder(text.length());
        boolean within = false;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            boolean blank = letter == ' ' || letter >= '\t' && letter <= '\r';
            if (!blank) {
                spaced.append(letter);
            } else if (!within) {
                spaced.append(' ');
            }
            within = blank;
        }
        return spaced.toString();
    }

    boolean isEmpty() {
        return byBeginning.isEmpty();
    }

    /** Those that stand in a text, each once, in the order of where they stand. */
    List<String> in(String text) {
        List<String> found = new ArrayList<>();
        if (isEmpty() || text.length() < length) {
            return found;
        }
        int hash = hash(text, 0);
        for (int at = 0; ; at++) {
            if (slots.get(slot(hash))) {
                for (String phrase : byBeginning.getOrDefault(hash, List.of())) {
                    if (text.startsWith(phrase, at) && !found.contains(phrase)) {
                        found.add(phrase);
                    }
                }
            }
            if (at + length >= text.length()) {
                return found;
            }
            hash = (hash - text.charAt(at) * highest) * BASE + text.charAt(at + length);
        }
    }

    private int hash(String text, int from) {
        int hash = 0;
        for (int i = from; i < from + length; i++) {
            hash = hash * BASE + text.charAt(i);
        }
        return hash;
    }

    private static int slot(int hash) {
        return (hash ^ hash >>> 16) & SLOTS - 1;
    }
}
