package bayfolio.read;

import bayfolio.fact.Shape;
import bayfolio.finding.Finding;
import bayfolio.source.SourceFile;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A Markdown file below a head of YAML, as it lies on disk.
 *
 * @param before the head: its first line, with the mark of its encoding
 * @param head with its line ends
 * @param after the head, from its last line on
 */
public record HeadedText(String path, String before, String head, String after) {
    private static final Pattern HEAD = Pattern.compile(
            "\\A(\uFEFF?[ \\t]*---[ \\t]*(?:\\r\\n|\\r|\\n))(.*?)^([ \\t]*---[ \\t]*(?:\\r|\\n|\\z).*)\\z",
            Pattern.DOTALL | Pattern.MULTILINE);

    /** The line of the file that a head begins on. */
    private static final int FIRST_LINE = 2;

    /** Empty where it has no head. */
    public static Optional<HeadedText> of(SourceFile file) {
        Matcher head = HEAD.matcher(file.text());
        return head.matches()
                ? Optional.of(new HeadedText(file.path(), head.group(1), head.group(2), head.group(3)))
                : Optional.empty();
    }

    /** What its head says. */
    public List<Scalars.Scalar> scalars(Shape<?> shape, Consumer<Finding> findings) {
        return Scalars.of(new SourceFile(path, before + head + after), head, FIRST_LINE, shape, findings);
    }

    /** The whole text with edits of its head. */
    public String with(List<Edit> edits) throws RewriteException {
        return before + Rewrite.of(new SourceFile(path, head), edits) + after;
    }
}
