package bayfolio.edition;

import bayfolio.source.Lazy;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Whether other words say nothing else: case, points, spaces, or one slip of the finger in a word that stands nowhere else.
 * Whatever is not sure to be that is technical: `upper` for `under` is one letter, too, and both are words.
 */
final class Editorial {
    private static final Pattern WORDS =
            Pattern.compile("[\\p{L}\\p{N}]+(?:[.,:/'’-][\\p{L}\\p{N}]+)*|[<>=+±%°]|-(?=\\p{N})");

    /** Shorter ones are too easily another word. */
    private static final int LETTERS = 5;

    private final Lazy<Set<String>> known;

    /** @param texts all of the handbook as it is now; looked through when a word may be a slip */
    Editorial(Collection<String> texts) {
        this.known = new Lazy<>(() -> texts.stream()
                .flatMap(text -> words(text).stream())
                .map(word -> word.toLowerCase(Locale.ROOT))
                .collect(Collectors.toSet()));
    }

    static List<String> words(String text) {
        return WORDS.matcher(text).results().map(it -> it.group()).toList();
    }

    boolean is(String before, String after) {
        List<String> was = words(before);
        List<String> is = words(after);
        if (was.size() != is.size()) {
            return false;
        }
        for (int i = 0; i < was.size(); i++) {
            // Capitals may be what is printed on a plate: ON is not on.
            String one = was.get(i);
            String other = is.get(i);
            if (!one.equals(other) && !sameButForTheFirst(one, other, i) && !slip(one, other)) {
                return false;
            }
        }
        return true;
    }

    private static boolean sameButForTheFirst(String one, String other, int at) {
        return at == 0 && one.equalsIgnoreCase(other) && one.substring(1).equals(other.substring(1));
    }

    private boolean slip(String was, String is) {
        String wrong = was.toLowerCase(Locale.ROOT);
        return wrong.length() >= LETTERS
                && wrong.chars().allMatch(Character::isLetter)
                && is.chars().allMatch(Character::isLetter)
                && oneLetter(wrong, is.toLowerCase(Locale.ROOT))
                && !known.get().contains(wrong);
    }

    /** Whether one letter more, less or other, or two turned about, make one of the other. */
    static boolean oneLetter(String one, String other) {
        if (Math.abs(one.length() - other.length()) > 1) {
            return false;
        }
        int same = 0;
        while (same < one.length() && same < other.length() && one.charAt(same) == other.charAt(same)) {
            same++;
        }
        String restOfOne = one.substring(same);
        String restOfOther = other.substring(same);
        return !restOfOne.isEmpty()
                        && !restOfOther.isEmpty()
                        && restOfOne.substring(1).equals(restOfOther.substring(1))
                || !restOfOne.isEmpty() && restOfOne.substring(1).equals(restOfOther)
                || !restOfOther.isEmpty() && restOfOther.substring(1).equals(restOfOne)
                || restOfOne.length() > 1
                        && restOfOther.length() > 1
                        && restOfOne.charAt(0) == restOfOther.charAt(1)
                        && restOfOne.charAt(1) == restOfOther.charAt(0)
                        && restOfOne.substring(2).equals(restOfOther.substring(2));
    }
}
