package bayfolio.read;

import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.util.Comparator;
import java.util.List;

/**
 * A word of a text in the place of another.
 *
 * @param at on one line
 * @param before what stands there
 */
public record Replacement(Place at, String before, String after) {
    private static final String MARK = "\uFEFF";

    /**
     * @param text of a file as it lies on disk, with the line ends and the byte order mark of its writer
     * @param all at places that do not overlap; one that stands there twice is made once
     * @throws RewriteException where something else stands at a place
     */
    public static String in(String text, List<Replacement> all) throws RewriteException {
        String mark = text.startsWith(MARK) ? MARK : "";
        SourceFile file = new SourceFile("", text.substring(mark.length()));
        StringBuilder changed = new StringBuilder(file.text());
        List<Replacement> backward = all.stream()
                .distinct()
                .sorted(Comparator.comparing((Replacement it) -> it.at.start()).reversed())
                .toList();
        for (Replacement each : backward) {
            int start = file.offset(each.at.start());
            int end = start + each.before.length();
            if (end > file.text().length() || !file.text().substring(start, end).equals(each.before)) {
                throw new RewriteException(
                        "`" + each.before + "` is written in a way that cannot be edited without a person");
            }
            changed.replace(start, end, each.after);
        }
        return mark + changed;
    }
}
