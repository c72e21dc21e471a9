package bayfolio.read;

import bayfolio.finding.Finding;
import bayfolio.source.SourceFile;
import bayfolio.source.Steps;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.CollectionNode;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * A YAML file of a writer, edited as text: what an edit does not speak of stays byte for byte, with its comments, order,
 * quotes, indentation and line ends.
 *
 * <p>What is new is written as its neighbors are: a key goes behind the last of its record, an element behind the last of its
 * list, in brackets where they have brackets. Of what is taken out, comments above it stay, since they may head more than
 * that; those within it go. Each edit is held against what the file then says; one that would change anything else, as in a
 * file that says a key twice, is refused.
 */
public final class Rewrite {
    private static final String MARK = "\uFEFF";

    /** The head of a text block: style, indentation and what becomes of the last line break, in either order. */
    private static final Pattern BLOCK_HEAD = Pattern.compile("^([|>])([1-9]?)[+-]?([1-9]?)");

    /** How much deeper a record is written than its key, where the file does not show it. */
    private static final int INDENT = 2;

    private final String text;
    private final Node root;
    private final String lineBreak;

    private Rewrite(String text) throws RewriteException {
        this.text = text;
        this.root = compose(text);
        int end = lineEnd(0);
        this.lineBreak = end == text.length() ? "\n" : text.substring(end, afterBreak(end));
    }

    /**
     * @param file its text as it lies on disk, with the line ends and the byte order mark of its writer
     * @param edits made one after the other
     * @return the new text of the whole file
     */
    public static String of(SourceFile file, List<Edit> edits) throws RewriteException {
        String mark = file.text().startsWith(MARK) ? MARK : "";
        String text = file.text().substring(mark.length());
        for (Edit edit : edits) {
            text = new Rewrite(text).proved(edit);
        }
        return mark + text;
    }

    /** What a file says, all of it. */
    public static Value read(SourceFile file) throws RewriteException {
        return Value.of(compose(file.text().startsWith(MARK) ? file.text().substring(1) : file.text()));
    }

    private static Node compose(String text) throws RewriteException {
        List<Finding> findings = new ArrayList<>();
        Optional<Node> node = Yaml.compose(new SourceFile("", text), text, 1, findings::add);
        return node.orElseThrow(() -> new RewriteException(findings.get(0).message()));
    }

    private String proved(Edit edit) throws RewriteException {
        String edited = edited(edit);
        Optional<Value> wanted = wanted(edit);
        if (!Optional.of(Value.of(compose(edited))).equals(wanted)) {
            throw new RewriteException(
                    "`" + edit.at() + "` is written in a way that cannot be edited without a person");
        }
        return edited;
    }

    private Optional<Value> wanted(Edit edit) {
        Optional<Value> all = Optional.of(Value.of(root));
        return edit instanceof Edit.Rename rename
                ? within(all, rename.at().around().all(), old -> old.map(it -> renamed(it, rename)))
                : within(all, edit.at().all(), asked(edit));
    }

    private String edited(Edit edit) throws RewriteException {
        if (edit instanceof Edit.Put put) {
            return put(put.at(), put.value());
        }
        if (edit instanceof Edit.Add add) {
            return add(add.at(), add.element());
        }
        if (edit instanceof Edit.Rename rename) {
            return rename(rename.at(), rename.name());
        }
        return remove(edit.at());
    }

    // ---- what an edit means, apart from any text

    private static UnaryOperator<Optional<Value>> asked(Edit edit) {
        if (edit instanceof Edit.Put put) {
            return old -> Optional.of(put.value());
        }
        if (edit instanceof Edit.Add add) {
            return old -> Optional.of(new Value.Elements(added(old, add.element())));
        }
        return old -> Optional.empty();
    }

    private static Value renamed(Value old, Edit.Rename rename) {
        Map<String, Value> values = new LinkedHashMap<>();
        if (old instanceof Value.Entries record) {
            record.values()
                    .forEach((name, value) ->
                            values.put(name.equals(rename.at().last().toString()) ? rename.name() : name, value));
        }
        return new Value.Entries(values);
    }

    private static List<Value> added(Optional<Value> old, Value element) {
        List<Value> values =
                new ArrayList<>(old.orElse(null) instanceof Value.Elements list ? list.values() : List.<Value>of());
        if (!(element instanceof Value.Scalar && values.contains(element))) {
            values.add(element);
        }
        return values;
    }

    /** A value with another in it; what is left with nothing is left out. */
    private static Optional<Value> within(
            Optional<Value> old, List<Steps.Step> steps, UnaryOperator<Optional<Value>> change) {
        if (steps.isEmpty()) {
            return change.apply(old.filter(it -> !it.nothing()));
        }
        List<Steps.Step> rest = steps.subList(1, steps.size());
        if (steps.get(0) instanceof Steps.Key key) {
            Map<String, Value> values =
                    new LinkedHashMap<>(old.orElse(null) instanceof Value.Entries it ? it.values() : Map.of());
            within(Optional.ofNullable(values.get(key.name())), rest, change)
                    .ifPresentOrElse(value -> values.put(key.name(), value), () -> values.remove(key.name()));
            return values.isEmpty() ? Optional.empty() : Optional.of(new Value.Entries(values));
        }
        List<Value> values =
                new ArrayList<>(old.orElse(null) instanceof Value.Elements it ? it.values() : List.<Value>of());
        int index = index(values, steps.get(0), Rewrite::names);
        Optional<Value> value =
                within(index < 0 ? fresh(steps.get(0), rest) : Optional.of(values.get(index)), rest, change);
        if (index >= 0) {
            values.remove(index);
        }
        value.ifPresent(it -> values.add(index < 0 ? values.size() : index, it));
        return values.isEmpty() ? Optional.empty() : Optional.of(new Value.Elements(values));
    }

    /** A thing that is made on the way has its id. */
    private static Optional<Value> fresh(Steps.Step step, List<Steps.Step> rest) {
        return step instanceof Steps.Id id && !rest.isEmpty()
                ? Optional.of(Value.record("id", Value.text(id.id())))
                : Optional.empty();
    }

    static boolean names(Value element, String id) {
        return element instanceof Value.Entries record
                ? Value.text(id).equals(record.values().get("id"))
                : element.equals(Value.text(id));
    }

    private static boolean names(Node element, String id) {
        return names(Value.of(element), id);
    }

    static <T> int index(List<T> elements, Steps.Step step, BiFunction<T, String, Boolean> names) {
        if (step instanceof Steps.Nth nth) {
            return nth.number() >= 1 && nth.number() <= elements.size() ? nth.number() - 1 : -1;
        }
        for (int i = 0; i < elements.size() && step instanceof Steps.Id; i++) {
            if (names.apply(elements.get(i), step.toString())) {
                return i;
            }
        }
        return -1;
    }

    private static int index(Node node, Steps.Step step) {
        if (node instanceof SequenceNode list) {
            return index(list.getValue(), step, Rewrite::names);
        }
        if (node instanceof MappingNode record && step instanceof Steps.Key key) {
            for (int i = 0; i < record.getValue().size(); i++) {
                if (Value.key(record.getValue().get(i)).equals(key.name())) {
                    return i;
                }
            }
        }
        return -1;
    }

    private static Node child(Node node, int index) {
        return node instanceof MappingNode record
                ? record.getValue().get(index).getValueNode()
                : ((SequenceNode) node).getValue().get(index);
    }

    // ---- putting

    /** A child of a record or a list, and whether brackets are round it. */
    private record Slot(Node parent, int index, boolean inBrackets) {
        Node node() {
            return child(parent, index);
        }
    }

    private String put(Steps at, Value value) throws RewriteException {
        Node node = root;
        boolean brackets = brackets(root);
        for (int i = 0; i < at.all().size(); i++) {
            Steps.Step step = at.all().get(i);
            List<Steps.Step> rest = at.all().subList(i + 1, at.all().size());
            int index = index(node, step);
            if (index < 0) {
                return placed(node, step, made(step, rest, value), brackets, at);
            }
            Slot slot = new Slot(node, index, brackets);
            node = child(node, index);
            if (rest.isEmpty()) {
                return replaced(slot, value);
            }
            if (Value.of(node).nothing()) {
                return replaced(
                        slot,
                        within(Optional.empty(), rest, old -> Optional.of(value))
                                .orElseThrow());
            }
            brackets |= brackets(node);
        }
        throw new RewriteException("the whole file cannot be put in");
    }

    private static Value made(Steps.Step step, List<Steps.Step> rest, Value value) {
        return within(fresh(step, rest), rest, old -> Optional.of(value)).orElseThrow();
    }

    private String add(Steps at, Value element) throws RewriteException {
        Optional<Slot> slot = slot(at);
        Optional<Node> node = at.all().isEmpty() ? Optional.of(root) : slot.map(Slot::node);
        if (node.isEmpty() || Value.of(node.get()).nothing()) {
            return put(at, new Value.Elements(List.of(element)));
        }
        if (!(node.get() instanceof SequenceNode list)) {
            throw new RewriteException("`" + at + "` is no list");
        }
        if (element instanceof Value.Entries record
                && record.values().get("id") instanceof Value.Scalar id
                && index(list, new Steps.Id(id.text())) >= 0) {
            throw new RewriteException("there is a `" + id.text() + "` in `" + at + "`");
        }
        boolean there = added(Optional.of(Value.of(list)), element).size()
                == list.getValue().size();
        return there ? text : appended(list, element, brackets(list));
    }

    private Optional<Slot> slot(Steps at) {
        Optional<Slot> slot = Optional.empty();
        Node node = root;
        boolean brackets = false;
        for (Steps.Step step : at.all()) {
            brackets |= brackets(node);
            int index = index(node, step);
            if (index < 0) {
                return Optional.empty();
            }
            slot = Optional.of(new Slot(node, index, brackets));
            node = child(node, index);
        }
        return slot;
    }

    /** What was not there, behind its neighbors. */
    private String placed(Node parent, Steps.Step step, Value value, boolean brackets, Steps at)
            throws RewriteException {
        if (parent instanceof MappingNode record && step instanceof Steps.Key key) {
            return appended(record, key.name(), value, brackets);
        }
        if (parent instanceof SequenceNode list && step instanceof Steps.Id) {
            return appended(list, value, brackets);
        }
        throw new RewriteException("there is no `" + step + "` on the way to `" + at + "`");
    }

    private String appended(MappingNode record, String key, Value value, boolean brackets) {
        if (record.getValue().isEmpty()) {
            return spliced(start(record), end(record), "{" + inBrackets(key, value) + "}");
        }
        if (brackets) {
            int at = lastEnd(record.getValue().get(record.getValue().size() - 1));
            return spliced(at, at, ", " + inBrackets(key, value));
        }
        int at = lineEnd(lastEnd(record));
        int column = column(record.getValue().get(0).getKeyNode());
        return spliced(at, at, lineBreak + " ".repeat(column) + entry(key, value, column));
    }

    private String appended(SequenceNode list, Value element, boolean brackets) {
        if (list.getValue().isEmpty()) {
            return spliced(start(list), end(list), "[" + inBrackets(element) + "]");
        }
        Node last = list.getValue().get(list.getValue().size() - 1);
        if (brackets) {
            return spliced(lastEnd(last), lastEnd(last), ", " + inBrackets(element));
        }
        int column = column(list);
        int inside =
                lineStart(start(last)) == lineStart(dash(list, list.getValue().size() - 1))
                        ? column(last) - column
                        : INDENT;
        int at = lineEnd(lastEnd(last));
        return spliced(
                at,
                at,
                lineBreak
                        + (apart(list) ? lineBreak : "")
                        + " ".repeat(column)
                        + "-"
                        + " ".repeat(inside - 1)
                        + (last instanceof CollectionNode<?> && brackets(last)
                                ? inBrackets(element)
                                : block(element, column + inside)));
    }

    /** Whether an empty line stands between the last two. */
    private boolean apart(SequenceNode list) {
        int count = list.getValue().size();
        if (count < 2) {
            return false;
        }
        String between =
                text.substring(lineEnd(lastEnd(list.getValue().get(count - 2))), lineStart(dash(list, count - 1)));
        return between.lines().skip(1).anyMatch(String::isBlank);
    }

    private String replaced(Slot slot, Value value) {
        Node old = slot.node();
        if (old instanceof ScalarNode scalar && value instanceof Value.Scalar it && end(old) > start(old)) {
            if (!isBlock(scalar)) {
                return spliced(start(old), end(old), Spelling.instead(scalar, it, slot.inBrackets));
            }
            Optional<String> block = textBlock(scalar, it.text());
            if (block.isPresent()) {
                return spliced(start(old), lastEnd(old), block.get());
            }
        }
        boolean oneLine = slot.inBrackets || isOneLine(value);
        if (oneLine && !isBlock(old) && end(old) > start(old) && (brackets(old) || old instanceof ScalarNode)) {
            return spliced(start(old), end(old), slot.inBrackets ? inBrackets(value) : oneLine(value));
        }
        if (slot.parent instanceof MappingNode record) {
            NodeTuple entry = record.getValue().get(slot.index);
            int colon = text.indexOf(':', end(entry.getKeyNode())) + 1;
            String written = slot.inBrackets
                    ? " " + inBrackets(value)
                    : behind(value, column(record.getValue().get(0).getKeyNode()));
            return spliced(colon, Math.max(colon, lastEnd(old)), written);
        }
        return spliced(start(old), lastEnd(old), block(value, column(old)));
    }

    private String rename(Steps at, String name) throws RewriteException {
        Slot slot = slot(at).orElseThrow(() -> new RewriteException("there is no `" + at + "`"));
        if (!(slot.parent instanceof MappingNode record)
                || !(record.getValue().get(slot.index).getKeyNode() instanceof ScalarNode key)) {
            throw new RewriteException("`" + at + "` is no key");
        }
        return spliced(start(key), end(key), Spelling.instead(key, Value.text(name), slot.inBrackets));
    }

    // ---- taking out

    private String remove(Steps at) throws RewriteException {
        Slot slot = slot(at).orElseThrow(() -> new RewriteException("there is no `" + at + "`"));
        int length = at.all().size();
        // What would be left with nothing goes as a whole.
        while (size(slot.parent) == 1 && length > 1) {
            length--;
            slot = slot(new Steps(at.all().subList(0, length))).orElseThrow();
        }
        if (size(slot.parent) == 1) {
            throw new RewriteException("nothing would be left of the file");
        }
        return slot.inBrackets ? withoutInBrackets(slot) : withoutLines(slot);
    }

    private String withoutInBrackets(Slot slot) {
        int from = start(slot);
        int to = lastEnd(slot);
        boolean last = slot.index == size(slot.parent) - 1;
        int behind = last
                ? lastEnd(new Slot(slot.parent, slot.index - 1, true))
                : start(new Slot(slot.parent, slot.index + 1, true));
        String gap = last ? text.substring(behind, from) : text.substring(to, behind);
        if (!gap.contains("#")) {
            return last ? spliced(behind, to, "") : spliced(from, behind, "");
        }
        // Comments between the two stay; the comma goes.
        int comma = (last ? behind : to) + gap.indexOf(',');
        return last
                ? text.substring(0, comma) + text.substring(comma + 1, from) + text.substring(to)
                : spliced(from, comma + 1, "");
    }

    private String withoutLines(Slot slot) throws RewriteException {
        int from = slot.parent instanceof SequenceNode list ? dash(list, slot.index) : start(slot);
        int to = lineEnd(lastEnd(slot));
        int line = lineStart(from);
        if (text.substring(line, from).isBlank()) {
            return withoutLines(line, to);
        }
        if (slot.parent instanceof SequenceNode || slot.index > 0) {
            throw new RewriteException("what begins in the middle of a line cannot be taken out without a person");
        }
        // The first key of a thing stands behind its dash, where the next one takes its place.
        int next = start(new Slot(slot.parent, 1, false));
        return text.substring(to, next).isBlank()
                ? spliced(from, next, "")
                : spliced(from - trailing(text.substring(line, from)), to, "");
    }

    private String withoutLines(int from, int to) {
        int after = afterBreak(to);
        int next = after;
        boolean blankAbove =
                from == 0 || text.substring(lineStart(beforeBreak(from)), from).isBlank();
        while (blankAbove
                && next < text.length()
                && text.substring(next, lineEnd(next)).isBlank()) {
            next = afterBreak(lineEnd(next));
        }
        if (next == text.length() && blankAbove) {
            // Nothing follows, so that nothing is to be kept apart.
            while (from > 0
                    && text.substring(lineStart(beforeBreak(from)), from).isBlank()) {
                from = lineStart(beforeBreak(from));
            }
        }
        // A file whose last line has no end goes on having none.
        return to == text.length() ? text.substring(0, beforeBreak(from)) : spliced(from, next, "");
    }

    private static int trailing(String text) {
        return text.length() - text.stripTrailing().length();
    }

    // ---- writing

    private static boolean isOneLine(Value value) {
        return value instanceof Value.Scalar scalar && scalar.text().indexOf('\n') < 0
                || value instanceof Value.Elements list && list.plain()
                || value instanceof Value.Entries record && record.values().isEmpty();
    }

    private static String oneLine(Value value) {
        return value instanceof Value.Scalar scalar ? Spelling.of(scalar, false) : inBrackets(value);
    }

    private static String inBrackets(Value value) {
        if (value instanceof Value.Scalar scalar) {
            return Spelling.of(scalar, true);
        }
        if (value instanceof Value.Elements list) {
            return list.values().stream().map(Rewrite::inBrackets).collect(Collectors.joining(", ", "[", "]"));
        }
        return ((Value.Entries) value)
                .values().entrySet().stream()
                        .map(each -> inBrackets(each.getKey(), each.getValue()))
                        .collect(Collectors.joining(", ", "{", "}"));
    }

    private static String inBrackets(String key, Value value) {
        return Spelling.of(Value.text(key), true) + ": " + inBrackets(value);
    }

    private String entry(String key, Value value, int column) {
        return Spelling.of(Value.text(key), true) + ":" + behind(value, column);
    }

    /** What stands behind the colon of a key in a column. */
    private String behind(Value value, int column) {
        if (isOneLine(value)) {
            return " " + oneLine(value);
        }
        if (value instanceof Value.Scalar scalar) {
            return " " + block(scalar, column + INDENT);
        }
        int inside = column + (value instanceof Value.Elements ? listIndent() : INDENT);
        return lineBreak + " ".repeat(inside) + block(value, inside);
    }

    /** From a column on; the first line begins where that is already. */
    private String block(Value value, int column) {
        String next = lineBreak + " ".repeat(column);
        if (isOneLine(value)) {
            return oneLine(value);
        }
        if (value instanceof Value.Scalar scalar) {
            return literal(scalar.text())
                    .map(lines -> head("|", "", scalar.text()) + indented(lines, column))
                    .orElseGet(() -> Spelling.doubleQuoted(scalar.text()));
        }
        if (value instanceof Value.Elements list) {
            return list.values().stream()
                    .map(each -> "- " + block(each, column + 2))
                    .collect(Collectors.joining(next));
        }
        return ((Value.Entries) value)
                .values().entrySet().stream()
                        .map(each -> entry(each.getKey(), each.getValue(), column))
                        .collect(Collectors.joining(next));
    }

    /** The columns by which the first list of the file stands in. */
    private int listIndent() {
        if (root instanceof MappingNode record) {
            for (NodeTuple entry : record.getValue()) {
                if (entry.getValueNode() instanceof SequenceNode list && !brackets(list)) {
                    return column(list);
                }
            }
        }
        return INDENT;
    }

    // ---- blocks of text

    private static boolean isBlock(Node node) {
        return node instanceof ScalarNode scalar
                && (scalar.getScalarStyle() == ScalarStyle.LITERAL || scalar.getScalarStyle() == ScalarStyle.FOLDED);
    }

    /** In the place of another, with its sign and its indentation; empty where a block cannot say it. */
    private Optional<String> textBlock(ScalarNode old, String value) {
        int from = start(old);
        String head = text.substring(from, lineEnd(from));
        Matcher sign = BLOCK_HEAD.matcher(head);
        Optional<List<String>> lines = literal(value);
        if (!sign.find() || lines.isEmpty()) {
            return Optional.empty();
        }
        int width = 0;
        int column = -1;
        for (int line = afterBreak(lineEnd(from)); line < lastEnd(old); line = afterBreak(lineEnd(line))) {
            String content = text.substring(line, lineEnd(line));
            if (!content.isBlank() && column < 0) {
                column = content.length() - content.stripLeading().length();
            }
            width = Math.max(width, content.length());
        }
        if (column < 1) {
            return Optional.empty();
        }
        boolean folded = sign.group(1).equals(">");
        return Optional.of(head(sign.group(1), sign.group(2) + sign.group(3), value)
                + head.substring(sign.end())
                + indented(folded ? folded(lines.get(), width - column) : lines.get(), column));
    }

    /** The sign of a block, with what becomes of the line breaks at its end. */
    private static String head(String sign, String indent, String value) {
        return sign + indent + (value.endsWith("\n") ? "" : "-");
    }

    /** Its lines, if they can stand in a block: none begins with a space, and one line break at most is at the end. */
    private static Optional<List<String>> literal(String value) {
        List<String> lines = value.lines().toList();
        boolean fits = !lines.isEmpty()
                && !value.startsWith("\n")
                && !value.endsWith("\n\n")
                && value.indexOf('\r') < 0
                && lines.stream()
                        .allMatch(line -> !line.startsWith(" ")
                                && !line.isBlank() | line.isEmpty()
                                && bayfolio.source.Hidden.first(line).isEmpty()
                                && line.indexOf('\t') < 0);
        return fits ? Optional.of(lines) : Optional.empty();
    }

    private String indented(List<String> lines, int column) {
        return lines.stream()
                .map(line -> lineBreak + (line.isEmpty() ? "" : " ".repeat(column) + line))
                .collect(Collectors.joining());
    }

    /** Each line broken at blanks, and an empty line for each line break. */
    private static List<String> folded(List<String> lines, int width) {
        List<String> folded = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (i > 0 && !lines.get(i).isEmpty() && !lines.get(i - 1).isEmpty()) {
                folded.add("");
            }
            StringBuilder line = new StringBuilder();
            for (String word : lines.get(i).split("(?<! ) (?! )", -1)) {
                if (line.length() > 0 && line.length() + 1 + word.length() > width) {
                    folded.add(line.toString());
                    line.setLength(0);
                } else if (line.length() > 0) {
                    line.append(' ');
                }
                line.append(word);
            }
            folded.add(line.toString());
        }
        return folded;
    }

    // ---- where things are

    private static boolean brackets(Node node) {
        return node instanceof CollectionNode<?> collection && collection.getFlowStyle() == FlowStyle.FLOW;
    }

    private static int size(Node node) {
        return ((CollectionNode<?>) node).getValue().size();
    }

    private int index(Mark mark) {
        return text.offsetByCodePoints(0, mark.getIndex());
    }

    private int start(Node node) {
        return index(node.getStartMark().orElseThrow());
    }

    private int end(Node node) {
        return index(node.getEndMark().orElseThrow());
    }

    private static int column(Node node) {
        return node.getStartMark().orElseThrow().getColumn();
    }

    private int start(Slot slot) {
        return slot.parent instanceof MappingNode record
                ? start(record.getValue().get(slot.index).getKeyNode())
                : start(slot.node());
    }

    private int lastEnd(Slot slot) {
        return slot.parent instanceof MappingNode record
                ? lastEnd(record.getValue().get(slot.index))
                : lastEnd(slot.node());
    }

    private int lastEnd(NodeTuple entry) {
        return Math.max(end(entry.getKeyNode()), lastEnd(entry.getValueNode()));
    }

    /** One past the last character that belongs to a node; the reader takes what follows, up to the next one, for it, too. */
    private int lastEnd(Node node) {
        if (node instanceof CollectionNode<?> collection && !brackets(node) && size(collection) > 0) {
            return lastEnd(new Slot(node, size(node) - 1, false));
        }
        int end = end(node);
        if (!isBlock(node)) {
            return end;
        }
        String head = text.substring(start(node), lineEnd(start(node)));
        boolean kept = head.replaceFirst("\\s+#.*", "").contains("+");
        int last = kept
                ? end
                : start(node) + text.substring(start(node), end).stripTrailing().length();
        return kept && last > 0 && isBreak(text.charAt(last - 1)) ? beforeBreak(last) : last;
    }

    /** Where the dash of an element is. */
    private int dash(SequenceNode list, int index) {
        if (index == 0) {
            return start(list);
        }
        int line = afterBreak(lineEnd(lastEnd(list.getValue().get(index - 1))));
        while (!text.substring(line, lineEnd(line)).strip().startsWith("-")) {
            line = afterBreak(lineEnd(line));
        }
        return text.indexOf('-', line);
    }

    private int lineStart(int at) {
        int start = at;
        while (start > 0 && !isBreak(text.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    private int lineEnd(int at) {
        int end = at;
        while (end < text.length() && !isBreak(text.charAt(end))) {
            end++;
        }
        return end;
    }

    /** Behind the line break at an end of a line. */
    private int afterBreak(int end) {
        return end == text.length() ? end : end + (text.startsWith("\r\n", end) ? 2 : 1);
    }

    /** Before the line break that ends where a line begins. */
    private int beforeBreak(int start) {
        return start == 0 ? 0 : start - (start > 1 && text.startsWith("\r\n", start - 2) ? 2 : 1);
    }

    private static boolean isBreak(char letter) {
        return letter == '\n' || letter == '\r';
    }

    private String spliced(int from, int to, String with) {
        return text.substring(0, from) + with + text.substring(to);
    }
}
