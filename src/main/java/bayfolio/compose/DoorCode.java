package bayfolio.compose;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** What a door is called by in short, as its name begins: {@code L6} of {@code L6 Electric bay}. */
final class DoorCode {
    /** Doors are lettered by their side: {@code L6 and R7 Rear trunk}. */
    private static final Pattern LETTERED = Pattern.compile("\\b([LRFB][0-9]{1,2})\\b");

    /** Of a fleet that names its doors otherwise: capitals and digits before the words. */
    private static final Pattern OTHER = Pattern.compile("^([A-Z0-9-]{2,14})(?= )");

    private DoorCode() {}

    /** One for each of its doors. */
    static List<String> all(String name) {
        List<String> lettered = codes(LETTERED, name);
        return lettered.isEmpty() ? codes(OTHER, name) : lettered;
    }

    private static List<String> codes(Pattern pattern, String name) {
        return pattern.matcher(name)
                .results()
                .map(MatchResult::group)
                .distinct()
                .toList();
    }

    /** The words alone. */
    static String without(String name) {
        String words = name.replaceFirst("^(?:[LRFB][0-9]{1,2}\\b[ /,]*(?:and )?)+", "");
        return words.equals(name) ? OTHER.matcher(name).replaceFirst("").strip() : words.strip();
    }
}
