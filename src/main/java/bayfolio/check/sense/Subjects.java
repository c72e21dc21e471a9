package bayfolio.check.sense;

import bayfolio.model.Thing;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What words of a text name things, other than how those stand or what is done with them. */
final class Subjects {
    private static final Pattern WORD = Pattern.compile("[\\p{L}0-9]+");

    private static final Pattern CLAUSE_END = Pattern.compile("[,;.:]| and ");

    private static final Set<String> LITTLE =
            words("the a an is are and or of to it its at in on with so this that by as you"
                    + " no not one two both can be when while which still then there from for always all than but have has now"
                    + " see seen show shows read reads point points stand stands lie lies sit sits hang hangs"
                    + " beside under above below between through any each other same only also too than nothing");

    /** How a thing stands, looks or sounds. */
    private static final Set<String> STATES = words(
            "up down left right middle in out on off open shut closed lit dark level"
                    + " flat upright high low upper lower top bottom front rear forward back along across line inside outside"
                    + " against away flush deeper burns glows steady blinks blank silent still moves turns runs flows toward edge");

    private static final List<Set<String>> OPPOSITES = Stream.of(
                    "up down",
                    "top bottom",
                    "upper lower",
                    "in out",
                    "left right",
                    "front rear",
                    "lit dark",
                    "on off",
                    "open shut",
                    "high low",
                    "level upright",
                    "along across")
            .map(Subjects::words)
            .toList();

    /** Longer ones name what it is that stands so. */
    private static final int FEW_WORDS = 6;

    private Subjects() {}

    /** Things that a text names, singular or plural as one, without small words and words for states. */
    static Set<String> of(String text) {
        return all(text).stream()
                .filter(word -> !LITTLE.contains(word) && !STATES.contains(word))
                .collect(Collectors.toSet());
    }

    /** Words by which a thing is called: of its id, its name and its roles. */
    static Set<String> naming(Thing it) {
        return of(it.id() + " " + it.name() + " " + String.join(" ", it.roles()));
    }

    /** Whether the first clauses of two texts say no more than how something stands, one the opposite of the other: top in, bottom in. */
    static boolean opposed(String one, String other) {
        List<String> first = all(CLAUSE_END.split(one, 2)[0]);
        List<String> second = all(CLAUSE_END.split(other, 2)[0]);
        return first.size() <= FEW_WORDS
                && second.size() <= FEW_WORDS
                && OPPOSITES.stream()
                        .anyMatch(pair -> pair.stream().anyMatch(first::contains)
                                && pair.stream().anyMatch(word -> second.contains(word) && !first.contains(word)));
    }

    /** Whether a word is one of the id or the name of a thing. */
    static boolean called(Thing it, String word) {
        return all(it.id() + " " + it.name()).contains(word);
    }

    /** All words of a text, in their order. */
    static List<String> all(String text) {
        return WORD.matcher(text.toLowerCase(Locale.ROOT))
                .results()
                .map(MatchResult::group)
                .map(Subjects::singular)
                .toList();
    }

    private static String singular(String word) {
        return word.length() > 3 && word.endsWith("s") && !word.endsWith("ss")
                ? word.substring(0, word.length() - 1)
                : word;
    }

    /** Words with blanks between them, singular or plural as one. */
    static Set<String> words(String text) {
        return Stream.of(text.split(" ")).map(Subjects::singular).collect(Collectors.toUnmodifiableSet());
    }
}
