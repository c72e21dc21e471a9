package bayfolio.read;

import bayfolio.finding.Finding;
import bayfolio.source.Hidden;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Tells {@link Hidden} characters, as they stand in a file or as YAML and HTML write them with others. */
final class HiddenCharacters {
    /** Such as {@code &#7;}, {@code &#x202E;}, and those with names that are hidden. */
    private static final Pattern ENTITY = Pattern.compile("&(?:#([0-9]{1,7})|#[xX]([0-9a-fA-F]{1,6})|lrm|rlm);");

    private HiddenCharacters() {}

    /** The text with each, told line by line, replaced by a character that everybody sees; places stay as they are. */
    static String shown(String path, String text, Consumer<Finding> findings) {
        if (Hidden.first(text).isEmpty()) {
            return text;
        }
        StringBuilder shown = new StringBuilder(text.length());
        text.codePoints().forEach(point -> shown.appendCodePoint(Hidden.is(point) ? '\uFFFD' : point));
        SourceFile file = new SourceFile(path, shown.toString());
        int line = 1;
        for (String each : text.split("\n", -1)) {
            int[] points = each.codePoints().toArray();
            int[] hidden = IntStream.range(0, points.length)
                    .filter(i -> Hidden.is(points[i]))
                    .toArray();
            if (hidden.length > 0) {
                findings.accept(told(Place.of(file, line, 1 + hidden[0], 1), points[hidden[0]], hidden.length - 1));
            }
            line++;
        }
        return shown.toString();
    }

    /** The first one in a text that was decoded, if there is one. */
    static boolean told(String decoded, Place at, Consumer<Finding> findings) {
        OptionalInt point = Hidden.first(decoded);
        point.ifPresent(it -> findings.accept(told(at, it, 0)));
        return point.isPresent();
    }

    /** Those that Markdown would make of entities. */
    static void inMarkdown(SourceFile file, String body, int firstLine, Consumer<Finding> findings) {
        int line = firstLine;
        for (String text : body.split("\n", -1)) {
            Matcher entity = ENTITY.matcher(text);
            while (entity.find()) {
                int point = point(entity);
                if (Hidden.is(point)) {
                    int column = 1 + text.codePointCount(0, entity.start());
                    findings.accept(told(Place.of(file, line, column, entity.end() - entity.start()), point, 0));
                }
            }
            line++;
        }
    }

    private static int point(Matcher entity) {
        if (entity.group(1) != null) {
            return Integer.parseInt(entity.group(1));
        }
        if (entity.group(2) != null) {
            return Integer.parseInt(entity.group(2), 16);
        }
        return entity.group().equals("&lrm;") ? 0x200E : 0x200F;
    }

    /** @param more how many more there are on the line */
    private static Finding told(Place at, int point, int more) {
        return Finding.error(
                        "hidden-character",
                        at,
                        "a character stands here that nobody sees: " + Hidden.name(point)
                                + (more == 0 ? "" : "; the line has " + more + " more"))
                .mend("Take it out.");
    }
}
