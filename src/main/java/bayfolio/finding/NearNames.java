package bayfolio.finding;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

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

    private NearNames() {}

    /** At most four, nearest first, then by the alphabet. */
    public static List<String> to(String wanted, Collection<String> known) {
        List<Candidate> all = known.stream()
                .distinct()
                .filter(name -> !name.equals(wanted))
                .map(name -> new Candidate(name, words(name).containsAll(words(wanted)), distance(wanted, name)))
                .toList();
        List<Candidate> near = all.stream()
                .filter(candidate -> candidate.longer || candidate.distance <= reach(wanted))
                .toList();
        // Where one is nearly right, those that merely sound alike would only be in the way.
        return (near.isEmpty() ? all.stream().filter(candidate -> sharesWords(wanted, candidate.name)) : near.stream())
                .sorted(NEAREST)
                .limit(MOST)
                .map(Candidate::name)
                .toList();
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
    private static boolean sharesWords(String wanted, String name) {
        List<String> left = words(wanted);
        List<String> right = words(name);
        long shared = left.stream().filter(right::contains).count();
        return shared > 0 && 2 * shared >= Math.max(left.size(), right.size());
    }

    private static List<String> words(String name) {
        return List.of(name.toLowerCase(Locale.ROOT).split("[-. :]"));
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
