package bayfolio.read;

import bayfolio.fact.Aside;
import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.finding.Article;
import bayfolio.measure.Quantity;
import bayfolio.model.Unit;
import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;

/**
 * Writes the JSON Schema of a file, so that an editor completes and checks what is typed.
 *
 * <p>It takes what {@link Decoder} takes and nothing else. What no schema can see is left to reader
 * and rules: a key said twice, an alias, a reference that names nothing.
 *
 * @see <a href="https://json-schema.org/draft/2020-12">JSON Schema, draft 2020-12</a>
 */
public final class SchemaWriter {
    private static final String DRAFT = "https://json-schema.org/draft/2020-12/schema";
    private static final String HOME = "https://bayfolio.example/schema/";
    private static final String ID = "id";
    private static final Gson GSON =
            new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

    /**
     * Days of the Gregorian calendar with a year of four digits: 31 or 30 days as the month has
     * them, February up to the 28th, and the 29th in years that can be divided by 4, of full
     * centuries by 400.
     */
    static final String DAY = "^(?:[0-9]{4}-(?:(?:0[13578]|1[02])-(?:0[1-9]|[12][0-9]|3[01])"
            + "|(?:0[469]|11)-(?:0[1-9]|[12][0-9]|30)"
            + "|02-(?:0[1-9]|1[0-9]|2[0-8]))"
            + "|(?:[0-9]{2}(?:0[48]|[2468][048]|[13579][26])"
            + "|(?:[02468][048]|[13579][26])00)-02-29)$";

    private final Map<String, JsonObject> values = new TreeMap<>();
    private final Map<String, JsonObject> records = new LinkedHashMap<>();
    private final Map<String, Shape<?>> shapes = new LinkedHashMap<>();
    private boolean ofACoach;

    private final Part part;

    /** What a file says of a coach. */
    private enum Part {
        /** All that there is. */
        WHOLE,
        /** What sisters share: nothing has to be there, and nothing may that is each coach's own. */
        MODEL,
        /** What differs from a model. */
        DIFFERENCE
    }

    /** Of a difference: the ids of the model, by kinds of things. */
    private final Map<String, List<String>> ids;

    private SchemaWriter(Part part, Map<String, List<String>> ids) {
        this.part = part;
        this.ids = ids;
    }

    /** {@code unit.schema.json} for a unit. */
    public static String fileName(Shape<?> shape) {
        return shape.name() + ".schema.json";
    }

    /** The text of the schema file, the same each time. */
    public static String write(Shape<?> shape) {
        return GSON.toJson(new SchemaWriter(Part.WHOLE, Map.of()).schema(shape, fileName(shape))) + "\n";
    }

    /** {@code model.schema.json}, for what sisters share. */
    public static String writeModel() {
        return GSON.toJson(new SchemaWriter(Part.MODEL, Map.of()).schema(Unit.SHAPE, "model.schema.json")) + "\n";
    }

    /**
     * The schema for what a coach of one model says, to lie beside that; the ids of the model are offered where it names things of it.
     *
     * @param ids of the model, by kinds of things
     */
    static String writeDifference(String model, Map<String, List<String>> ids) {
        return GSON.toJson(new SchemaWriter(Part.DIFFERENCE, ids)
                        .schema(Unit.SHAPE, "models/" + model + "/" + fileName(Unit.SHAPE)))
                + "\n";
    }

    private JsonObject schema(Shape<?> shape, String id) {
        JsonObject schema = new JsonObject();
        schema.addProperty("$schema", DRAFT);
        schema.addProperty("$id", HOME + id);
        ofACoach = shape == Unit.SHAPE;
        record(shape).entrySet().forEach(entry -> schema.add(entry.getKey(), entry.getValue()));
        JsonObject definitions = new JsonObject();
        values.forEach(definitions::add);
        records.forEach(definitions::add);
        if (definitions.size() < values.size() + records.size()) {
            throw new IllegalStateException("a record is called like a value: " + records.keySet());
        }
        schema.add("$defs", definitions);
        return schema;
    }

    private JsonObject record(Shape<?> shape) {
        JsonObject properties = new JsonObject();
        for (Key<?> key : shape.keys()) {
            if (part == Part.MODEL && shape.ofEachCoach(key)) {
                continue;
            }
            JsonObject property = new JsonObject();
            property.addProperty(
                    "description",
                    key.meaning()
                            + key.range().map(range -> " " + range.inWords()).orElse(""));
            value(key.type()).entrySet().forEach(entry -> property.add(entry.getKey(), entry.getValue()));
            if (key.name().equals(ID) && ids.containsKey(shape.name())) {
                property.add("anyOf", offered(ids.get(shape.name()), value(key.type())));
            }
            properties.add(key.name(), property);
        }
        asides(shape).forEach(properties::add);
        JsonObject record = new JsonObject();
        record.addProperty("title", shape.name());
        record.addProperty("description", shape.meaning());
        record.addProperty("type", "object");
        record.add("properties", properties);
        record.add(
                "required",
                strings(shape.keys().stream()
                        .filter(key -> isAsked(shape, key))
                        .map(Key::name)
                        .toList()));
        record.addProperty("additionalProperties", false);
        return record;
    }

    /** The other half may say the rest; of things alone it is asked which they are. */
    private boolean isAsked(Shape<?> shape, Key<?> key) {
        boolean named = key.name().equals(ID) || shape == Unit.SHAPE && (key == Unit.NAME || key == Unit.MODEL);
        return switch (part) {
            case WHOLE -> key.required();
            case MODEL -> named && shape != Unit.SHAPE;
            case DIFFERENCE -> named;
        };
    }

    private Map<String, JsonObject> asides(Shape<?> shape) {
        Map<String, JsonObject> asides = new LinkedHashMap<>();
        if (ofACoach) {
            asides.put(Aside.TO_CONFIRM.name(), list(Aside.TO_CONFIRM, anyOf(shape.keyNames())));
        }
        if (part == Part.DIFFERENCE) {
            Set<String> names = new LinkedHashSet<>(shape.keyNames());
            shape.keys().stream()
                    .flatMap(key -> Layers.things(key.type()).stream())
                    .forEach(things -> names.addAll(ids.getOrDefault(things.name(), List.of())));
            asides.put(Aside.LEAVES_OUT.name(), list(Aside.LEAVES_OUT, anyOf(names)));
            JsonObject said = new JsonObject();
            said.addProperty("description", Aside.MODEL_SAID.meaning());
            said.addProperty("type", "object");
            said.add("additionalProperties", pattern("A digest.", "^[0-9a-f]{12}$"));
            asides.put(Aside.MODEL_SAID.name(), said);
        }
        return asides;
    }

    private static JsonObject list(Aside aside, JsonObject element) {
        JsonObject list = new JsonObject();
        list.addProperty("description", aside.meaning());
        list.addProperty("type", "array");
        list.add("items", element);
        return list;
    }

    private static JsonObject anyOf(Collection<String> names) {
        JsonObject words = new JsonObject();
        words.add("enum", strings(names));
        return words;
    }

    /** An editor offers them; others are taken, too. */
    private static JsonArray offered(List<String> ids, JsonObject any) {
        JsonArray either = new JsonArray();
        either.add(anyOf(ids));
        either.add(any);
        return either;
    }

    private JsonObject value(Type<?> type) {
        return type.accept(new Type.Visitor<JsonObject>() {
            @Override
            public JsonObject text(Type.Text text) {
                return named(text.what(), () -> written(text));
            }

            @Override
            public <Q extends Quantity> JsonObject measured(Type.Measured<Q> measured) {
                return named(measured.scale().name(), () -> written(measured));
            }

            @Override
            public <E> JsonObject choice(Type.Choice<E> choice) {
                JsonObject words = new JsonObject();
                words.add("enum", strings(choice.words().keySet()));
                return words;
            }

            @Override
            public <E> JsonObject listed(Type.Listed<E> listed) {
                return value(Type.ID);
            }

            @Override
            public JsonObject yesNo(Type.YesNo yesNo) {
                JsonObject words = new JsonObject();
                words.add("enum", strings(List.of("yes", "no")));
                return words;
            }

            @Override
            public JsonObject whole(Type.Whole whole) {
                JsonObject number = new JsonObject();
                number.addProperty("type", "integer");
                number.addProperty("minimum", whole.least());
                number.addProperty("maximum", whole.most());
                return number;
            }

            @Override
            public JsonObject day(Type.Day day) {
                return named("day", () -> pattern("A day, such as 2026-04-18.", DAY));
            }

            @Override
            public JsonObject reference(Type.Reference reference) {
                return id("id of " + Article.a(String.join(" or ", reference.kinds())));
            }

            @Override
            public JsonObject role(Type.Role role) {
                return id("role"
                        + role.kind().map(kind -> " of " + Article.a(kind)).orElse(""));
            }

            @Override
            public <E> JsonObject list(Type.ListOf<E> list) {
                if (list.cues()) {
                    return value(Type.FILE_NAME);
                }
                JsonObject array = new JsonObject();
                array.addProperty("type", "array");
                array.add("items", value(list.element()));
                return array;
            }

            @Override
            public <E extends Described> JsonObject record(Type.Nested<E> nested) {
                return nested(nested.shape());
            }
        });
    }

    private static JsonObject written(Type.Text text) {
        JsonObject written = pattern("Write " + text.taken() + ".", text.pattern());
        if (text.takesNumbers()) {
            written.add("type", strings(List.of("string", "number")));
        }
        if (text.equals(Type.EXPONENT)) {
            written.addProperty("minimum", 1);
            written.addProperty("exclusiveMaximum", 2);
        }
        return written;
    }

    private static JsonObject written(Type.Measured<?> measured) {
        JsonObject written = pattern(
                "A number and its unit: " + String.join(", ", measured.scale().units()) + ".",
                measured.scale().pattern());
        written.add("examples", strings(List.of(measured.scale().example())));
        return written;
    }

    private static JsonObject pattern(String description, String pattern) {
        JsonObject text = new JsonObject();
        text.addProperty("description", description);
        text.addProperty("type", "string");
        text.addProperty("pattern", pattern);
        return text;
    }

    private JsonObject id(String title) {
        JsonObject id = new JsonObject();
        id.addProperty("title", title);
        value(Type.ID).entrySet().forEach(entry -> id.add(entry.getKey(), entry.getValue()));
        return id;
    }

    /** One way of writing, defined once however many keys take it. */
    private JsonObject named(String what, Supplier<JsonObject> definition) {
        String name = "written-" + what.replace(' ', '-');
        values.computeIfAbsent(name, it -> definition.get());
        return reference(name);
    }

    private JsonObject nested(Shape<?> shape) {
        Shape<?> before = shapes.putIfAbsent(shape.name(), shape);
        if (before == null) {
            records.put(shape.name(), new JsonObject()); // its turn, before those within it
            records.put(shape.name(), record(shape));
        } else if (before != shape) {
            throw new IllegalStateException("two kinds of record are called " + shape.name());
        }
        return reference(shape.name());
    }

    private static JsonObject reference(String name) {
        JsonObject reference = new JsonObject();
        reference.addProperty("$ref", "#/$defs/" + name);
        return reference;
    }

    private static JsonArray strings(Collection<String> each) {
        JsonArray array = new JsonArray();
        each.forEach(array::add);
        return array;
    }
}
