package bayfolio.measure;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Why a text is not a quantity of the scale asked for, in one sentence for its writer. */
final class Refusal {
    private static final Pattern NUMBER_AND_REST = Pattern.compile("(-?[0-9][0-9.,]*)\\s*(.*)", Pattern.DOTALL);

    /** Three digits behind a comma might be thousands, but not behind a leading zero. */
    private static final Pattern DECIMAL_COMMA = Pattern.compile("-?(?:[0-9]+,[0-9]{1,2}|0,[0-9]+)(?![0-9,.]).*");

    private Refusal() {}

    static String of(String text, Scale<?> wanted) {
        for (Scale<?> other : Scale.all()) {
            if (other.accepts(text)) {
                return quoted(text) + " is " + a(other) + ", not " + a(wanted);
            }
        }
        Matcher parts = NUMBER_AND_REST.matcher(text.strip());
        if (!parts.matches()) {
            return notOneSuchAs(text, wanted) + "; units taken: " + offered(wanted);
        }
        String number = parts.group(1);
        String rest = parts.group(2);
        if (rest.isEmpty()) {
            String choice = wanted.offered().size() == 1 ? "" : "one of ";
            return quoted(text) + " has no unit; write it with " + choice + offered(wanted);
        }
        String pointed = text.replace(',', '.');
        if (DECIMAL_COMMA.matcher(text).matches() && wanted.accepts(pointed)) {
            return quoted(text) + " has a comma where a point is meant; write " + quoted(pointed);
        }
        return nearest(rest, wanted)
                .map(unit -> meant(text, number + " " + unit.spelling(), unit, wanted))
                .orElseGet(() -> notOneSuchAs(text, wanted) + "; units taken: " + offered(wanted));
    }

    private static String meant(String text, String mended, WrittenUnit unit, Scale<?> wanted) {
        return wanted.accepts(mended)
                ? isNot(text, wanted) + "; did you mean " + quoted(mended) + "? units taken: " + offered(wanted)
                : notOneSuchAs(text, wanted)
                        + "; before "
                        + quoted(unit.spelling())
                        + " goes "
                        + unit.numeral().inWords();
    }

    /** The unit whose spelling or name is nearest, if one is near enough to be what was meant. */
    private static Optional<WrittenUnit> nearest(String written, Scale<?> wanted) {
        Optional<WrittenUnit> nearest = Optional.empty();
        int least = Integer.MAX_VALUE;
        for (WrittenUnit unit : wanted.ways()) {
            for (String name : (Iterable<String>) unit.names()::iterator) {
                int edits = edits(written.toLowerCase(Locale.ROOT), name.toLowerCase(Locale.ROOT));
                // A third of the name at most, or every short unit is near every other: cm and mm.
                if (edits < least && edits <= Math.min(2, name.length() / 3)) {
                    least = edits;
                    nearest = Optional.of(unit);
                }
            }
        }
        return nearest;
    }

    /** Levenshtein's distance: letters to add, drop or change. */
    private static int edits(String from, String to) {
        int[] row = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int change = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[to.length()];
    }

    private static String isNot(String text, Scale<?> wanted) {
        return quoted(text) + " is not " + a(wanted);
    }

    private static String notOneSuchAs(String text, Scale<?> wanted) {
        return isNot(text, wanted) + " such as " + quoted(wanted.example());
    }

    private static String quoted(String text) {
        // A line break in a YAML text would tear the message apart.
        return "`" + text.replaceAll("[\\r\\n\\t]", " ") + "`";
    }

    private static String a(Scale<?> scale) {
        return ("aeiou".indexOf(scale.name().charAt(0)) < 0 ? "a " : "an ") + scale.name();
    }

    private static String offered(Scale<?> wanted) {
        return String.join(", ", wanted.offered());
    }
}
