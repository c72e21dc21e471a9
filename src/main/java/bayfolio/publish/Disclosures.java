package bayfolio.publish;

import bayfolio.fact.Type;
import bayfolio.model.Wording;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.parser.Parser;

/**
 * What is for staff and shows through in the renters' copy.
 *
 * <p>That copy has to be the same whether or not anything was written for staff. So it is made once more from a fleet
 * without all that ({@link ForRenters}) and compared, file by file and byte by byte. Whatever differs can have come from
 * staff alone: a code of four digits, a date, a count, in a text, an attribute, data or the name of a file, also what was
 * only worked out from it. A search for the values would have to leave out short ones, since {@code 2} and {@code yes}
 * stand on most pages for other reasons; here they are no alarm there, as they stand there without staff, too.
 *
 * <p>What a writer has typed twice, for staff and for renters, is in both; {@link StaffTexts} are looked for because of
 * that.
 */
final class Disclosures {
    /** So many facts and letters as a sentence can hold. */
    private static final int MOST_FACTS = 3;

    private static final int MOST_LETTERS = 80;

    private Disclosures() {}

    /**
     * @param published what renters get of the coach, by path
     * @param without the same of a fleet without all that is for staff
     * @return one sentence for each file that tells something, the path first
     */
    static List<String> of(Wording coach, Map<String, byte[]> published, Map<String, byte[]> without) {
        List<Located<String>> said = StaffTexts.facts(coach, type -> !(type instanceof Type.Reference));
        Set<String> paths = new TreeSet<>(published.keySet());
        paths.addAll(without.keySet());
        List<String> faults = new ArrayList<>();
        for (String path : paths) {
            byte[] bytes = published.get(path);
            byte[] theirs = without.get(path);
            if (bytes == null || theirs == null) {
                faults.add(path + ": whether there is such a file tells something that is for staff");
            } else if (!Arrays.equals(bytes, theirs)) {
                faults.add(path + ": something for staff shows through: " + shown(text(bytes), text(theirs), said));
            }
        }
        return faults;
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    /** The facts that stand in what differs, with their places; or what differs, where it says none of them. */
    private static String shown(String text, String theirs, List<Located<String>> said) {
        int start = 0;
        int shorter = Math.min(text.length(), theirs.length());
        while (start < shorter && text.charAt(start) == theirs.charAt(start)) {
            start++;
        }
        int end = 0;
        while (end < shorter - start
                && text.charAt(text.length() - 1 - end) == theirs.charAt(theirs.length() - 1 - end)) {
            end++;
        }
        String more = differing(text, start, end);
        String less = differing(theirs, start, end);
        Map<String, Place> facts = new TreeMap<>(
                Comparator.comparing((String fact) -> -fact.length()).thenComparing(Comparator.naturalOrder()));
        said.stream()
                .filter(fact -> count(fact.value(), more) > count(fact.value(), less))
                .forEach(fact -> facts.putIfAbsent(fact.value(), fact.at()));
        if (!facts.isEmpty()) {
            return facts.entrySet().stream()
                    .limit(MOST_FACTS)
                    .map(fact -> "`" + fact.getKey() + "` (" + fact.getValue() + ")")
                    .collect(Collectors.joining(", "));
        }
        String words = words(more);
        return words.isEmpty() ? "`" + words(less) + "` is left out" : "`" + words + "`";
    }

    private static String words(String html) {
        String words = Jsoup.parse(html).text();
        return words.length() > MOST_LETTERS ? words.substring(0, MOST_LETTERS) + "\u2026" : words;
    }

    /** What stands between the equal beginning and the equal end, in whole words, as a browser reads it. */
    private static String differing(String text, int start, int end) {
        int from = start;
        while (from > 0 && Character.isLetterOrDigit(text.charAt(from - 1))) {
            from--;
        }
        int to = text.length() - end;
        while (to < text.length() && Character.isLetterOrDigit(text.charAt(to))) {
            to++;
        }
        return Parser.unescapeEntities(text.substring(from, to), false);
    }

    /** How often the words stand in a text, not within longer words. */
    private static int count(String words, String text) {
        int count = 0;
        for (int at = text.indexOf(words); at >= 0; at = text.indexOf(words, at + 1)) {
            count += edge(text, at) && edge(text, at + words.length()) ? 1 : 0;
        }
        return count;
    }

    private static boolean edge(String text, int at) {
        return at == 0
                || at == text.length()
                || !Character.isLetterOrDigit(text.charAt(at - 1))
                || !Character.isLetterOrDigit(text.charAt(at));
    }
}
