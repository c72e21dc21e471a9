package bayfolio.read;

import bayfolio.finding.Finding;
import bayfolio.source.Place;
import bayfolio.source.Position;
import bayfolio.source.SourceFile;
import java.util.Optional;
import java.util.function.Consumer;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.composer.Composer;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ParserException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.parser.Parser;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/** YAML text into nodes that know their places. */
final class Yaml {
    /**
     * Deeper nesting than any description needs; without a limit, a hostile file overflows the
     * stack.
     */
    private static final int DEEPEST = 64;

    private static final LoadSettings SETTINGS =
            LoadSettings.builder()
                    .setUseMarks(true)
                    .setCodePointLimit(Folder.MOST_BYTES)
                    .setMaxAliasesForCollections(20)
                    .build();

    private Yaml() {}

    /** One document; what is no YAML is told at its place. */
    static Optional<Node> compose(
            SourceFile file, String text, int firstLine, Consumer<Finding> findings) {
        try {
            Optional<Node> node =
                    new Composer(
                                    SETTINGS,
                                    new Shallow(
                                            new ParserImpl(
                                                    SETTINGS, new StreamReader(SETTINGS, text))))
                            .getSingleNode();
            if (node.isEmpty()) {
                findings.accept(
                        Finding.error(
                                "unreadable-file", Place.whole(file), "the file says nothing"));
            }
            return node;
        } catch (MarkedYamlEngineException e) {
            Place at =
                    e.getProblemMark()
                            .map(mark -> place(file, mark, firstLine))
                            .orElse(Place.whole(file));
            findings.accept(syntax(file, at, e.getProblem()));
        } catch (YamlEngineException e) {
            findings.accept(syntax(file, Place.whole(file), String.valueOf(e.getMessage())));
        }
        return Optional.empty();
    }

    private static Finding syntax(SourceFile file, Place at, String problem) {
        boolean tab = file.line(at.line()).contains("\t");
        Finding finding =
                Finding.error(
                        "yaml-syntax",
                        at,
                        "this is no YAML: " + problem.lines().findFirst().orElse("").strip());
        return finding.mend(
                tab
                        ? "There is a tab on this line; indent with spaces."
                        : "Look at the indentation, at quotes that are not closed, and at `: ` within a text.");
    }

    private static Place place(SourceFile file, Mark mark, int firstLine) {
        return Place.of(file, firstLine + mark.getLine(), 1 + mark.getColumn(), 1);
    }

    /** Where a node is; of a list or a record, its first character. */
    static Place place(SourceFile file, Node node, int firstLine) {
        Mark start = node.getStartMark().orElseThrow();
        Mark end = node.getEndMark().orElseThrow();
        boolean scalar = node instanceof org.snakeyaml.engine.v2.nodes.ScalarNode;
        Position from = new Position(firstLine + start.getLine(), 1 + start.getColumn());
        if (!scalar) {
            return new Place(file, from, new Position(from.line(), from.column() + 1));
        }
        return new Place(file, from, new Position(firstLine + end.getLine(), 1 + end.getColumn()));
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
                throw new ParserException(
                        "nested deeper than " + DEEPEST + " levels", event.getStartMark());
            }
            return event;
        }
    }
}
