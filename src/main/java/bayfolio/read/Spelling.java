package bayfolio.read;

import bayfolio.source.Hidden;
import bayfolio.source.SourceFile;
import java.util.Optional;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** How a text is spelled in YAML: in quotes only where the reader would take it for something else without them. */
final class Spelling {
    /** No file of its own: what stands in it was made here. */
    private static final SourceFile NOWHERE = new SourceFile("", "");

    private Spelling() {}

    /** On one line. */
    static String of(Value.Scalar value, boolean inBrackets) {
        return value.bare() || plain(value.text(), inBrackets) ? value.text() : doubleQuoted(value.text());
    }

    /**
     * In the place of another. Quotes that were needed go when they are no longer; those that were not are the writer's
     * habit, and stay.
     */
    static String instead(ScalarNode old, Value.Scalar value, boolean inBrackets) {
        ScalarStyle style = old.getScalarStyle();
        boolean quoted = style == ScalarStyle.SINGLE_QUOTED || style == ScalarStyle.DOUBLE_QUOTED;
        boolean habit = quoted && plain(old.getValue(), inBrackets);
        if (value.bare() || !habit && plain(value.text(), inBrackets)) {
            return value.text();
        }
        return style == ScalarStyle.SINGLE_QUOTED && printable(value.text())
                ? "'" + value.text().replace("'", "''") + "'"
                : doubleQuoted(value.text());
    }

    /** Whether it is read as this text without quotes: the reader itself is asked. */
    private static boolean plain(String text, boolean inBrackets) {
        if (!printable(text) || text.isEmpty()) {
            return false;
        }
        return inBrackets
                ? composed("[" + text + ", {key: " + text + "}]")
                        .filter(node -> node instanceof SequenceNode list
                                && list.getValue().size() == 2
                                && says(list.getValue().get(0), text)
                                && isEntry(list.getValue().get(1), text))
                        .isPresent()
                : composed("key: " + text).filter(it -> isEntry(it, text)).isPresent()
                        && composed("- " + text)
                                .filter(node -> node instanceof SequenceNode list
                                        && list.getValue().size() == 1
                                        && says(list.getValue().get(0), text))
                                .isPresent();
    }

    private static Optional<Node> composed(String yaml) {
        return Yaml.compose(NOWHERE, yaml, 1, finding -> {});
    }

    private static boolean isEntry(Node node, String text) {
        return node instanceof MappingNode record
                && record.getValue().size() == 1
                && says(record.getValue().get(0).getValueNode(), text);
    }

    private static boolean says(Node node, String text) {
        return node.getAnchor().isEmpty() && Value.of(node).equals(Value.text(text));
    }

    private static boolean printable(String text) {
        return text.indexOf('\n') < 0
                && text.indexOf('\r') < 0
                && text.indexOf('\t') < 0
                && text.codePoints().noneMatch(Spelling::hidden);
    }

    private static boolean hidden(int point) {
        return Hidden.is(point) || point == 0xFEFF;
    }

    static String doubleQuoted(String text) {
        return text.codePoints().mapToObj(Spelling::escaped).collect(Collectors.joining("", "\"", "\""));
    }

    private static String escaped(int point) {
        return switch (point) {
            case '"' -> "\\\"";
            case '\\' -> "\\\\";
            case '\n' -> "\\n";
            case '\r' -> "\\r";
            case '\t' -> "\\t";
            default ->
                hidden(point)
                        ? String.format(point > 0xFFFF ? "\\U%08X" : "\\u%04X", point)
                        : Character.toString(point);
        };
    }
}
