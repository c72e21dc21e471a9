package bayfolio.source;

import java.util.List;

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
    private final List<String> lines;

    public SourceFile(String path, String text) {
        this.path = path;
        this.text = text;
        this.lines = text.lines().toList();
    }

    public String path() {
        return path;
    }

    public String text() {
        return text;
    }

    /** The line without its line break; empty past the end. The first line is 1. */
    public String line(int number) {
        return number >= 1 && number <= lines.size() ? lines.get(number - 1) : "";
    }

    public int lineCount() {
        return lines.size();
    }

    @Override
    public String toString() {
        return path;
    }
}
