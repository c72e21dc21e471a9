package bayfolio.read;

import bayfolio.finding.Finding;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.composer.Composer;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ParserException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.parser.Parser;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.resolver.ScalarResolver;
import org.snakeyaml.engine.v2.scanner.StreamReader;
import org.snakeyaml.engine.v2.schema.JsonSchema;

/** YAML text into nodes that know their places. */
final class Yaml {
    /**
     * Deeper nesting than any description needs; without a limit, a hostile file overflows the
     * stack.
     */
    private static final int DEEPEST = 64;

    private static final LoadSettings SETTINGS = LoadSettings.builder()
            .setUseMarks(true)
            .setSchema(new Quick())
            .setCodePointLimit(Folder.MOST_BYTES)
            .setMaxAliasesForCollections(20)
            .build();

    private static final Pattern KEY = Pattern.compile("^[A-Za-z][A-Za-z0-9-]*:");

    private Yaml() {}

    /** One document; what is no YAML is told at its place. */
    static Optional<Node> compose(SourceFile file, String text, int firstLine, Consumer<Finding> findings) {
        try {
            Optional<Node> node = new Composer(
                            SETTINGS, new Shallow(new ParserImpl(SETTINGS, new StreamReader(SETTINGS, text))))
                    .getSingleNode();
            if (node.isEmpty()) {
                findings.accept(Finding.error("unreadable-file", Place.whole(file), "the file says nothing"));
            }
            return node;
        } catch (MarkedYamlEngineException e) {
            Problem problem = Problem.of(e.getContext(), e.getProblem());
            Place at = (problem == Problem.OPEN_QUOTE || problem == Problem.OPEN_BRACKET
                            ? e.getContextMark()
                            : e.getProblemMark())
                    .map(mark -> place(file, mark, firstLine))
                    .orElse(Place.whole(file));
            findings.accept(syntax(file, at, problem, e.getProblem()));
        } catch (YamlEngineException e) {
            String message = String.valueOf(e.getMessage());
            findings.accept(syntax(file, Place.whole(file), Problem.of("", message), message));
        }
        return Optional.empty();
    }

    /**
     * A stretch of a file that begins with a key in the first column.
     *
     * @param firstLine the line of the file that it begins on
     */
    record Block(String text, int firstLine) {}

    /** The file cut at the keys of its outermost record: what is broken in one leaves the others readable. */
    static List<Block> blocks(SourceFile file) {
        List<Block> blocks = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        int first = 1;
        for (int line = 1; line <= file.lineCount(); line++) {
            if (KEY.matcher(file.line(line)).find() && !text.isEmpty()) {
                blocks.add(new Block(text.toString(), first));
                text.setLength(0);
                first = line;
            }
            text.append(file.line(line)).append('\n');
        }
        blocks.add(new Block(text.toString(), first));
        return blocks;
    }

    /** Whether what is written without quotes is a text, and no number, yes or nothing of JSON. */
    static boolean isText(String written) {
        return SETTINGS.getSchema().getScalarResolver().resolve(written, true).equals(Tag.STR);
    }

    /** What writers mostly do wrong, in their words; the rest is told in those of the parser. */
    private enum Problem {
        OPEN_QUOTE("a quote is not closed", "Close it on the same line."),
        OPEN_BRACKET("a bracket is not closed", "Close it on the same line."),
        INDENT(
                "this line stands in another column than those it belongs to",
                "Begin all keys of one record in one column."),
        TAB("a tab stands where only spaces may stand", "Indent with spaces."),
        COLON("`:` stands where no key can end", "Put a text that holds `: ` in quotes, or mend the indentation."),
        STAR("a text cannot begin with `*` or `&`", "Put it in quotes."),
        KEY("a list or a record stands where a key is meant", "Write a name before the `:`."),
        VERSION("this version of YAML is none that is taken", "Take the line `%YAML` out."),
        SECOND_DOCUMENT("a second document begins here", "Keep one document in a file."),
        OTHER("", "Look at the indentation and at quotes and brackets that are not closed.");

        private final String message;
        private final String mend;

        Problem(String message, String mend) {
            this.message = message;
            this.mend = mend;
        }

        static Problem of(@Nullable String context, String problem) {
            String where = String.valueOf(context);
            if (where.contains("quoted scalar") && problem.contains("unexpected end of stream")) {
                return OPEN_QUOTE;
            }
            if (where.contains("parsing a flow") && problem.contains("<stream end>")) {
                return OPEN_BRACKET;
            }
            if (problem.contains("expected <block end>")) {
                return INDENT;
            }
            if (problem.contains("(TAB)")) {
                return TAB;
            }
            if (problem.contains("mapping values are not allowed")) {
                return COLON;
            }
            if (where.contains("scanning an alias")
                    || where.contains("scanning an anchor")
                    || problem.contains("undefined alias")) {
                return STAR;
            }
            if (problem.contains("Version{")) {
                return VERSION;
            }
            if (problem.contains("Non scalar key")) {
                return KEY;
            }
            return problem.contains("another document") ? SECOND_DOCUMENT : OTHER;
        }
    }

    private static Finding syntax(SourceFile file, Place at, Problem problem, String words) {
        String message =
                problem == Problem.OTHER ? words.lines().findFirst().orElse("").strip() : problem.message;
        return Finding.error("yaml-syntax", at, "this is no YAML: " + message).mend(problem.mend);
    }

    private static Place place(SourceFile file, Mark mark, int firstLine) {
        return Place.of(file, firstLine + mark.getLine(), 1 + mark.getColumn(), 1);
    }

    /** Where a node is; of a list or a record, its first character. */
    static Place place(SourceFile file, Node node, int firstLine) {
        Mark start = node.getStartMark().orElseThrow();
        Mark end = node.getEndMark().orElseThrow();
        int line = firstLine + start.getLine();
        int column = 1 + start.getColumn();
        return node instanceof ScalarNode
                ? new Place(file, line, column, firstLine + end.getLine(), 1 + end.getColumn())
                : Place.of(file, line, column, 1);
    }

    /**
     * The schema of JSON. What is plainly a text by its first letter, and digits that end in the letters of a measure, is
     * told sooner so than by its patterns.
     */
    private static final class Quick extends JsonSchema {
        @Override
        public ScalarResolver getScalarResolver() {
            ScalarResolver json = super.getScalarResolver();
            return (value, implicit) -> isText(value) ? Tag.STR : json.resolve(value, implicit);
        }

        private static boolean isText(String value) {
            if (value.isEmpty()) {
                return false;
            }
            char first = value.charAt(0);
            return isLetter(first)
                    ? "tfn".indexOf(first) < 0 // true, false, null
                    : first >= '0' && first <= '9' && isLetter(value.charAt(value.length() - 1));
        }

        private static boolean isLetter(char letter) {
            return letter >= 'a' && letter <= 'z' || letter >= 'A' && letter <= 'Z';
        }
    }

    /** Counts how deep a document goes and stops at {@link #DEEPEST}. */
    private static final class Shallow implements Parser {
        private final Parser parser;
        private int depth;

        Shallow(Parser parser) {
            this.parser = parser;
        }

        @Override
        public boolean checkEvent(Event.ID id) {
            return parser.checkEvent(id);
        }

        @Override
        public Event peekEvent() {
            return parser.peekEvent();
        }

        @Override
        public boolean hasNext() {
            return parser.hasNext();
        }

        @Override
        public Event next() {
            Event event = parser.next();
            switch (event.getEventId()) {
                case MappingStart, SequenceStart -> depth++;
                case MappingEnd, SequenceEnd -> depth--;
                default -> {}
            }
            if (depth > DEEPEST) {
                throw new ParserException("nested deeper than " + DEEPEST + " levels", event.getStartMark());
            }
            return event;
        }
    }
}
