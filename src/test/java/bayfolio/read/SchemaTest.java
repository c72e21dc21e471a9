package bayfolio.read;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.measure.Quantity;
import bayfolio.model.Country;
import bayfolio.model.Equipment;
import bayfolio.model.FactTexts;
import bayfolio.model.FleetFacts;
import bayfolio.model.HireMarks;
import bayfolio.model.Roles;
import bayfolio.model.Sources;
import bayfolio.model.Unit;
import bayfolio.model.Words;
import bayfolio.procedure.Head;
import bayfolio.source.SourceFile;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.dialect.DialectId;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Schema and reader take and refuse the same files, though they share only the declarations. */
class SchemaTest {
    private static final JsonMapper JSON = new JsonMapper();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Map<Shape<?>, Schema> SCHEMAS = new HashMap<>();

    private record Demo(String path, Shape<?> shape, String text) {
        @Override
        public String toString() {
            return path;
        }
    }

    /** The demo fleet, whole; of procedures, the heads. */
    static List<Demo> demos() throws IOException {
        List<Demo> demos = new ArrayList<>();
        for (String unit : DemoFleet.whole()) {
            demos.add(demo("units/" + unit + "/unit.yaml", Unit.SHAPE));
        }
        demos.add(demo("units/fleet.yaml", FleetFacts.SHAPE));
        demos.add(demo("units/shared/roles.yaml", Roles.SHAPE));
        demos.add(demo("units/shared/words.yaml", Words.SHAPE));
        demos.add(demo("units/shared/sources.yaml", Sources.SHAPE));
        demos.add(demo("units/shared/countries/no.yaml", Country.SHAPE));
        try (Stream<Path> files = Files.list(Path.of("units/shared/procedures"))) {
            for (Path file : files.sorted().toList()) {
                String text = Files.readString(file);
                String head = text.substring(4, text.indexOf("\n---\n", 4) + 1);
                demos.add(new Demo(file.toString(), Head.SHAPE, head));
            }
        }
        return demos;
    }

    private static Demo demo(String path, Shape<?> shape) throws IOException {
        return new Demo(path, shape, Files.readString(Path.of(path)));
    }

    static Stream<Shape<?>> shapes() {
        return Stream.of(
                Unit.SHAPE,
                FleetFacts.SHAPE,
                Roles.SHAPE,
                Words.SHAPE,
                Sources.SHAPE,
                Country.SHAPE,
                Equipment.SHAPE,
                Head.SHAPE,
                FactTexts.SHAPE,
                HireMarks.SHAPE);
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void eachSchemaKeepsToTheDraftOf202012(Shape<?> shape) {
        Schema meta = REGISTRY.getSchema(SchemaLocation.of(DialectId.DRAFT_2020_12));

        assertThat(meta.validate(JSON.readTree(SchemaWriter.write(shape)))).isEmpty();
        assertThat(meta.validate(JSON.readTree("{\"type\": \"strnig\"}"))).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void demoFleetIsTakenByBoth(Demo demo) {
        assertThat(findings(demo.text, demo.shape)).isEmpty();
        assertThat(schema(demo.shape).validate(json(demo.text))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void fileWithEveryKeyIsTakenByBoth(Shape<?> shape) {
        demoFleetIsTakenByBoth(withEveryKey(shape));
    }

    private static Demo withEveryKey(Shape<?> shape) {
        return new Demo("every key of " + shape, shape, JSON.writeValueAsString(record(shape)));
    }

    private static ObjectNode record(Shape<?> shape) {
        ObjectNode record = NODES.objectNode();
        shape.keys().forEach(key -> record.set(key.name(), value(key.type())));
        return record;
    }

    private static JsonNode value(Type<?> type) {
        return type.accept(new Type.Visitor<JsonNode>() {
            @Override
            public JsonNode text(Type.Text text) {
                return Stream.of(
                                "gray-valve",
                                "en-US",
                                "+1 555-0100",
                                "https://a.example",
                                "photo.jpg",
                                "3.45 USD/gal",
                                "1.25",
                                "35 USD",
                                "switch.water-pump",
                                "switch:water-pump",
                                "08:00",
                                "desk@a.example",
                                "any")
                        .filter(each ->
                                Pattern.compile(text.pattern()).matcher(each).find())
                        .findFirst()
                        .<JsonNode>map(NODES::stringNode)
                        .orElseThrow();
            }

            @Override
            public <Q extends Quantity> JsonNode measured(Type.Measured<Q> measured) {
                return NODES.stringNode(measured.scale().example());
            }

            @Override
            public <E> JsonNode listed(Type.Listed<E> listed) {
                return NODES.stringNode("other");
            }

            @Override
            public <E> JsonNode choice(Type.Choice<E> choice) {
                return NODES.stringNode(choice.words().keySet().iterator().next());
            }

            @Override
            public JsonNode yesNo(Type.YesNo yesNo) {
                return NODES.stringNode("yes");
            }

            @Override
            public JsonNode whole(Type.Whole whole) {
                return NODES.numberNode(whole.most());
            }

            @Override
            public JsonNode day(Type.Day day) {
                return NODES.stringNode("2024-02-29");
            }

            @Override
            public JsonNode reference(Type.Reference reference) {
                return NODES.stringNode("gray-valve");
            }

            @Override
            public JsonNode role(Type.Role role) {
                return NODES.stringNode("gray-valve");
            }

            @Override
            public <E> JsonNode list(Type.ListOf<E> list) {
                return list.cues() ? value(Type.FILE_NAME) : NODES.arrayNode().add(value(list.element()));
            }

            @Override
            public <E extends Described> JsonNode record(Type.Nested<E> nested) {
                return SchemaTest.record(nested.shape());
            }
        });
    }

    /** As YAML has them without quotes: the kinds of values are told apart before any reading. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "5",
                "-5",
                "5.",
                "5.0",
                "5.5",
                ".5",
                "1e3",
                "2017.0",
                "2.017e3",
                "+1",
                "0x7E1",
                "012",
                "2_017",
                "~",
                "null",
                "Null",
                "''",
                "' '",
                "true",
                "True",
                "yes",
                "\"yes\"",
                "off",
                "${HOME}",
                "2026-02-30",
                "12:30",
                "[]",
                "{}",
                "|-",
                "99999999999999999999",
                "!!str 5",
                "100 W",
                "'100 W'",
                "100"
            })
    void plainScalarsAreTakenAlike(String written) {
        agree("words:\n- id: a\n  word: b\n  meaning: " + written + "\n", Words.SHAPE);
        agree("words:\n- word: b\n  meaning: c\n  id: " + written + "\n", Words.SHAPE);
        String coach = "id: a\nname: b\nbody: van\nregion: europe\ndrive-side: left\n";
        String size = "size: {length: 6 m, width: 2 m, height: 3 m}\n";
        agree(coach + size + "model-year: " + written + "\n", Unit.SHAPE);
        agree(coach + size + "solar:\n  rating: " + written + "\n", Unit.SHAPE);
        agree(coach + size + "surge-protection: " + written + "\n", Unit.SHAPE);
    }

    private static void agree(String text, Shape<?> shape) {
        assertThat(schema(shape).validate(json(text)).isEmpty())
                .as(text)
                .isEqualTo(findings(text, shape).isEmpty());
    }

    // The validator at hand reads patterns as Java does, to which this blank is none.
    @Test
    void textOfNoBreakSpacesIsBlankToTheReaderAsToAnEditor() {
        assertThat(findings("words: [{id: a, word: b, meaning: \"\\u00a0\"}]", Words.SHAPE))
                .extracting(Finding::code)
                .containsExactly("wrong-value");
    }

    @Test
    void patternOfDaysTakesRealDaysOnly() {
        Pattern pattern = Pattern.compile(SchemaWriter.DAY);
        List<Integer> years = new ArrayList<>(List.of(0, 1, 4, 100, 400, 1600, 1700, 2400, 9999));
        for (int year = 1890; year <= 2110; year++) {
            years.add(year);
        }
        for (int year : years) {
            for (int month = 0; month <= 13; month++) {
                for (int day = 0; day <= 32; day++) {
                    String written = String.format("%04d-%02d-%02d", year, month, day);
                    assertThat(pattern.matcher(written).find()).as(written).isEqualTo(isDay(written));
                }
            }
        }
    }

    private static boolean isDay(String written) {
        try {
            LocalDate.parse(written);
            return true;
        } catch (DateTimeException e) {
            return false;
        }
    }

    @Test
    void schemaRefusesWhatReaderRefusesAndNothingElse() throws IOException {
        Set<String> made = new HashSet<>();
        List<String> disagreements = new ArrayList<>();
        int[] refused = new int[1];

        List<Demo> demos = new ArrayList<>(demos());
        shapes().map(SchemaTest::withEveryKey).forEach(demos::add);
        for (Demo demo : demos) {
            new Mutants(demo.shape, made, new Random(20_260_418)).of(json(demo.text), (what, mutant) -> {
                boolean bySchema = !schema(demo.shape).validate(mutant).isEmpty();
                List<Finding> byReader = findings(JSON.writeValueAsString(mutant), demo.shape);
                refused[0] += bySchema ? 1 : 0;
                if (bySchema == byReader.isEmpty()) {
                    disagreements.add(what + (bySchema ? ": schema refuses" : ": reader refuses"));
                }
            });
        }

        System.out.println("SchemaTest: " + made.size() + " mutants, " + refused[0] + " refused");
        assertThat(disagreements).isEmpty();
        assertThat(made).hasSizeGreaterThan(3000);
        assertThat(refused[0]).isBetween(made.size() / 10, made.size() * 9 / 10);
    }

    private static Schema schema(Shape<?> shape) {
        return SCHEMAS.computeIfAbsent(shape, it -> REGISTRY.getSchema(JSON.readTree(SchemaWriter.write(it))));
    }

    private static List<Finding> findings(String text, Shape<?> shape) {
        List<Finding> findings = new ArrayList<>();
        FleetReader.yaml(new SourceFile("mutant.yaml", text), shape, findings::add);
        return findings;
    }

    /** What an editor makes of the YAML. */
    static JsonNode json(String text) {
        return Yaml.compose(new SourceFile("demo.yaml", text), text, 1, finding -> {})
                .map(SchemaTest::json)
                .orElseThrow();
    }

    private static JsonNode json(Node node) {
        if (node instanceof MappingNode mapping) {
            ObjectNode object = NODES.objectNode();
            mapping.getValue()
                    .forEach(entry ->
                            object.set(((ScalarNode) entry.getKeyNode()).getValue(), json(entry.getValueNode())));
            return object;
        }
        if (node instanceof SequenceNode sequence) {
            ArrayNode array = NODES.arrayNode();
            sequence.getValue().forEach(each -> array.add(json(each)));
            return array;
        }
        String value = ((ScalarNode) node).getValue();
        Tag tag = node.getTag();
        if (tag.equals(Tag.NULL)) {
            return NODES.nullNode();
        }
        if (tag.equals(Tag.BOOL)) {
            return NODES.booleanNode(Boolean.parseBoolean(value));
        }
        if (tag.equals(Tag.INT)) {
            return NODES.numberNode(new BigInteger(value));
        }
        if (tag.equals(Tag.FLOAT)) {
            return NODES.numberNode(new BigDecimal(value));
        }
        return NODES.stringNode(value);
    }

    private interface Sink {
        void take(String what, JsonNode mutant);
    }

    /**
     * Makes files with one thing changed. Each has only the record around the change and what the
     * file must have, so that many can be read in little time; the same change at the same key of
     * two records is made once.
     */
    private static final class Mutants {
        private static final List<JsonNode> OTHERS = Stream.of(
                        "7",
                        "0",
                        "-1",
                        "2.0",
                        "2.5",
                        "2017",
                        "1000000",
                        "true",
                        "false",
                        "null",
                        "[]",
                        "[7]",
                        "[null]",
                        "[\"gray-valve\"]",
                        "[[]]",
                        "[{}]",
                        "{}",
                        "{\"id\": \"gray-valve\"}",
                        "\"\"",
                        "\" \"",
                        "\"\\n\"",
                        "\"some words\"",
                        "\"two\\nlines\\n\"",
                        "\"7\"",
                        "\"yes\"",
                        "\"no\"",
                        "\"Yes\"",
                        "\"true\"",
                        "\"left\"",
                        "\"gray-valve\"",
                        "\"gray-valve\\n\"",
                        "\"gray--valve\"",
                        "\"Gray-Valve\"",
                        "\"100 gal\"",
                        "\"100 parsecs\"",
                        "\"100 GAL\"",
                        "\"100  gal\"",
                        "\"-5 gal\"",
                        "\"12 ft 11 in\"",
                        "\"12 ft 12 in\"",
                        "\"1,250.5 W\"",
                        "\"12,5 A\"",
                        "\"120 V\"",
                        "\"120 V\\n\"",
                        "\"15 A\"",
                        "\"80 %\"",
                        "\"101 %\"",
                        "\"-4 °F\"",
                        "\"44,600 lb\"",
                        "\"6 AWG\"",
                        "\"8 mpg\"",
                        "\"80 psi\"",
                        "\"5 min\"",
                        "\"2026-02-30\"",
                        "\"2025-02-29\"",
                        "\"2024-02-29\"",
                        "\"1900-02-29\"",
                        "\"2000-02-29\"",
                        "\"2026-4-18\"",
                        "\"2026-04-18\\n\"",
                        "\"+12026-04-18\"",
                        "\"-2026-04-18\"",
                        "\"en-US\"",
                        "\"en_US\"",
                        "\"+1 555-0100\"",
                        "\"3.45 USD/gal\"",
                        "\"https://a.example\"",
                        "\"http://a.example\"",
                        "\"photo.jpg\"",
                        "\"a/photo.jpg\"")
                .map(JSON::readTree)
                .toList();

        private final Shape<?> shape;
        private final Set<String> made;
        private final Random random;

        Mutants(Shape<?> shape, Set<String> made, Random random) {
            this.shape = shape;
            this.made = made;
            this.random = random;
        }

        void of(JsonNode file, Sink sink) {
            mutate(file, shape.name(), UnaryOperator.identity(), sink);
        }

        /**
         * @param place the keys on the way to the node
         * @param around makes a whole file of what is put in place of the node
         */
        private void mutate(JsonNode node, String place, UnaryOperator<JsonNode> around, Sink sink) {
            for (JsonNode other : OTHERS) {
                make(place + " becomes " + other, other, around, sink);
            }
            if (node.isString()) {
                String misspelled = misspelled(node.stringValue());
                make(place + " " + node + " becomes " + misspelled, NODES.stringNode(misspelled), around, sink);
            }
            if (node instanceof ArrayNode list) {
                for (JsonNode each : list) {
                    mutate(
                            each,
                            place + "[]",
                            changed -> around.apply(NODES.arrayNode().add(changed)),
                            sink);
                }
            }
            if (node instanceof ObjectNode record) {
                ObjectNode whole = place.equals(shape.name()) ? cut(record, "") : record;
                ObjectNode more = whole.deepCopy();
                more.put("surely-unknown", "some words");
                make(place + " gets an unknown key", more, around, sink);
                for (String key : List.copyOf(record.propertyNames())) {
                    ObjectNode here = whole == record ? record : cut(record, key);
                    JsonNode value = here.get(key);

                    ObjectNode less = here.deepCopy();
                    less.remove(key);
                    make(place + " loses " + key, less, around, sink);
                    less.set(misspelled(key), value);
                    make(place + " has " + key + " misspelled", less, around, sink);
                    mutate(
                            value,
                            place + "." + key,
                            changed -> {
                                ObjectNode copy = here.deepCopy();
                                copy.set(key, changed);
                                return around.apply(copy);
                            },
                            sink);
                }
            }
        }

        private void make(String what, JsonNode changed, UnaryOperator<JsonNode> around, Sink sink) {
            if (made.add(what)) {
                sink.take(what, around.apply(changed));
            }
        }

        /** What the file must have, and one key more. */
        private ObjectNode cut(ObjectNode file, String more) {
            ObjectNode cut = NODES.objectNode();
            for (Key<?> key : shape.keys()) {
                if ((key.required() || key.name().equals(more)) && file.has(key.name())) {
                    cut.set(key.name(), file.get(key.name()));
                }
            }
            return cut;
        }

        private String misspelled(String word) {
            int at = random.nextInt(word.length());
            String before = word.substring(0, at);
            String after = word.substring(at + 1);
            return switch (random.nextInt(5)) {
                case 0 -> before + after;
                case 1 -> before + word.charAt(at) + word.charAt(at) + after;
                case 2 -> before + Character.toUpperCase(word.charAt(at)) + after;
                case 3 -> before + "-" + after;
                default -> word + " ";
            };
        }
    }
}
