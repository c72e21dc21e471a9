package bayfolio.finding;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Names that a writer probably meant.
 *
 * <p>A name is near when at most two single-letter slips (a letter too many, too few, another, or
 * two neighbors swapped) lie between, letter case aside; for short names one slip, since everything
 * is near `gas`. After a rename whole words may be new, so a name that shares most of its words is
 * near too.
 */
public final class NearNames {
    private static final int MOST = 4;
    private static final Pattern BETWEEN = Pattern.compile("[-. :]");

    private NearNames() {}

    /** At most four, nearest first, then by the alphabet. */
    public static List<String> to(String wanted, Collection<String> known) {
        List<String> words = words(wanted);
        List<String> others =
                known.stream().distinct().filter(name -> !name.equals(wanted)).toList();
        List<Candidate> near = others.stream()
                .map(name -> candidate(wanted, words, name))
                .filter(candidate -> candidate.longer || candidate.distance <= reach(wanted))
                .toList();
        // Where one is nearly right, those that merely sound alike would only be in the way.
        return (near.isEmpty()
                        ? others.stream()
                                .filter(name -> sharesWords(words, name))
                                .map(name -> new Candidate(name, false, distance(wanted, name)))
                        : near.stream())
                .sorted(NEAREST)
                .limit(MOST)
                .map(Candidate::name)
                .toList();
    }

    /** How far it is off is told only where that can matter: there may be many names, and many wanted. */
    private static Candidate candidate(String wanted, List<String> words, String name) {
        boolean longer =
                !words.isEmpty() && mayHold(name, words.get(0)) && words(name).containsAll(words);
        boolean near = Math.abs(wanted.length() - name.length()) <= reach(wanted);
        return new Candidate(name, longer, longer || near ? distance(wanted, name) : Integer.MAX_VALUE);
    }

    /** Names that only have words added first, which is how things are mostly renamed; then by how many slips. */
    private static final Comparator<Candidate> NEAREST = Comparator.comparing(
                    (Candidate candidate) -> !candidate.longer)
            .thenComparingInt(Candidate::distance)
            .thenComparing(Candidate::name);

    private record Candidate(String name, boolean longer, int distance) {}

    private static int reach(String wanted) {
        return wanted.length() <= 3 ? 1 : 2;
    }

    /** `house-battery-switch` and `house-battery-disconnect`: two words of three are the same. */
    private static boolean sharesWords(List<String> left, String name) {
        if (left.stream().noneMatch(word -> mayHold(name, word))) {
            return false;
        }
        List<String> right = words(name);
        long shared = left.stream().filter(right::contains).count();
        return shared > 0 && 2 * shared >= Math.max(left.size(), right.size());
    }

    private static boolean mayHold(String name, String word) {
        for (int i = 0; i + word.length() <= name.length(); i++) {
            if (name.regionMatches(true, i, word, 0, word.length())) {
                return true;
            }
        }
        return false;
    }

    private static List<String> words(String name) {
        return List.of(BETWEEN.split(name.toLowerCase(Locale.ROOT)));
    }

    /** Optimal string alignment: insert, delete, replace, swap of neighbors, each counts one. */
    static int distance(String left, String right) {
        String a = left.toLowerCase(Locale.ROOT);
        String b = right.toLowerCase(Locale.ROOT);
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            cost[i][0] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            cost[0][j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                int replace = cost[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                cost[i][j] = Math.min(replace, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    cost[i][j] = Math.min(cost[i][j], 1 + cost[i - 2][j - 2]);
                }
            }
        }
        return cost[a.length()][b.length()];
    }
}
