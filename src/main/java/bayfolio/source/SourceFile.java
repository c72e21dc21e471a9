package bayfolio.source;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * A text file of the fleet folder as its writer sees it.
 *
 * <p>The path is relative to the fleet folder and has forward slashes on every system, so that
 * messages and golden files agree everywhere. Two files are equal only when they are the same
 * object: places compare by file, and nobody wants a hash over the text.
 */
public final class SourceFile {
    private final String path;
    private final String text;

    /** Where each line begins, and one past the end; found when first asked for, since most files are never cut up. */
    private int @Nullable [] starts;

    public SourceFile(String path, String text) {
        this.path = path;
        this.text = text;
    }

    public String path() {
        return path;
    }

    /** The path of the folder that it lies in; empty for one at the top. */
    public String folder() {
        return path.substring(0, Math.max(0, path.lastIndexOf('/')));
    }

    public String text() {
        return text;
    }

    /** The line without its line break; empty past the end. The first line is 1. */
    public String line(int number) {
        int[] lines = starts();
        if (number < 1 || number >= lines.length) {
            return "";
        }
        int end = lines[number];
        // The last line may end without a break.
        if (end > 0 && isBreak(text.charAt(end - 1))) {
            end -= end > 1 && text.charAt(end - 1) == '\n' && text.charAt(end - 2) == '\r' ? 2 : 1;
        }
        return text.substring(lines[number - 1], end);
    }

    /** How many characters of Java are before a position; the length of the text where that is past the end. */
    public int offset(Position at) {
        int[] lines = starts();
        if (at.line() >= lines.length) {
            return text.length();
        }
        String line = line(at.line());
        int column = Math.min(at.column() - 1, line.codePointCount(0, line.length()));
        return lines[at.line() - 1] + line.offsetByCodePoints(0, column);
    }

    public int lineCount() {
        return starts().length - 1;
    }

    private int[] starts() {
        int[] known = starts;
        if (known == null) {
            known = starts(text);
            starts = known;
        }
        return known;
    }

    private static int[] starts(String text) {
        int[] starts = new int[64];
        int lines = 0;
        for (int i = 0; i < text.length(); ) {
            if (lines + 2 > starts.length) {
                starts = Arrays.copyOf(starts, 2 * starts.length);
            }
            starts[lines++] = i;
            while (i < text.length() && !isBreak(text.charAt(i))) {
                i++;
            }
            i += text.startsWith("\r\n", i) ? 2 : 1;
        }
        starts[lines] = text.length();
        return Arrays.copyOf(starts, lines + 1);
    }

    private static boolean isBreak(char letter) {
        return letter == '\n' || letter == '\r';
    }

    @Override
    public String toString() {
        return path;
    }
}
