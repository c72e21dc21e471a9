package bayfolio.document;

import bayfolio.explain.Calculator;
import bayfolio.fact.Type;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import com.google.gson.FormattingStyle;
import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import java.lang.reflect.ParameterizedType;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The JSON Schema of {@link DocumentJson}, made from the same records, so that the two cannot drift apart.
 *
 * @see <a href="https://json-schema.org/draft/2020-12">JSON Schema 2020-12</a>
 */
public final class DocumentSchema {
    private static final Gson GSON = new GsonBuilder()
            .setFormattingStyle(FormattingStyle.PRETTY.withIndent("  "))
            .disableHtmlEscaping()
            .create();

    private static final String NODE = "^[a-z0-9-]+(/[a-z0-9-]+)?(#[a-z0-9-]+(\\.[a-z0-9-]+)*)?$";

    private final Map<String, Object> definitions = new TreeMap<>();

    private DocumentSchema() {}

    public static String write() {
        DocumentSchema schema = new DocumentSchema();
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put("version", Map.of("const", DocumentJson.VERSION));
        properties.put("unit", text());
        properties.put("name", text());
        properties.put("number", text());
        properties.put("kind", text());
        properties.put("photo", text());
        properties.put("language", text());
        properties.put("reader", Map.of("enum", List.of("renters", "staff")));
        properties.put("parts", array(schema.of(Handbook.Part.class)));
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        json.put("title", "The handbook of a coach");
        json.put("type", "object");
        json.put("properties", properties);
        json.put("required", List.of("version", "unit", "name", "language", "parts"));
        json.put("additionalProperties", false);
        json.put("$defs", schema.definitions);
        return GSON.toJson(json) + "\n";
    }

    private Map<String, Object> of(java.lang.reflect.Type type) {
        if (type instanceof ParameterizedType generic) {
            Map<String, Object> inside = of(generic.getActualTypeArguments()[0]);
            return generic.getRawType() == Optional.class ? inside : array(inside);
        }
        Class<?> plain = (Class<?>) type;
        if (plain == String.class) {
            return text();
        } else if (plain == boolean.class) {
            // `false` is left out.
            return Map.of("const", true);
        } else if (plain == int.class) {
            return Map.of("type", "integer");
        } else if (plain == NodeId.class) {
            return pattern(NODE);
        } else if (plain == Target.class || Target.class.isAssignableFrom(plain)) {
            return pattern("^[a-z]+:.+$");
        } else if (plain == Calculator.class) {
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("type", "object");
            json.put("required", List.of("fields", "figures"));
            return json;
        } else if (plain.isEnum()) {
            return Map.of(
                    "enum",
                    Arrays.stream(plain.getEnumConstants())
                            .map(each -> Type.word((Enum<?>) each))
                            .toList());
        } else if (plain.isSealed()) {
            return Map.of(
                    "anyOf",
                    Arrays.stream(plain.getPermittedSubclasses())
                            .sorted(Comparator.comparing(Class::getName))
                            .map(this::of)
                            .toList());
        } else if (plain == Inline.Text.class) {
            return text();
        }
        return reference(plain);
    }

    private Map<String, Object> reference(Class<?> record) {
        String name = record.getName().replaceAll(".*\\.", "").replace('$', '.');
        if (!definitions.containsKey(name)) {
            // Known before it is made, since some stand in themselves.
            definitions.put(name, Map.of());
            definitions.put(name, record(record));
        }
        return Map.of("$ref", "#/$defs/" + name);
    }

    private Map<String, Object> record(Class<?> record) {
        Map<String, Object> properties = new LinkedHashMap<>();
        List<String> required = new ArrayList<>();
        RecordForm form = RecordForm.of(record.asSubclass(Record.class));
        if (form.isOneOfSeveral()) {
            properties.put("kind", Map.of("const", form.kind()));
            required.add("kind");
        }
        for (RecordForm.Field field : form.fields()) {
            if (field.component().getType() == Stamp.class) {
                properties.put("id", of(NodeId.class));
                required.add("id");
                properties.put("audience", of(Audience.class));
                properties.put("language", text());
                properties.put("from", array(pattern("^(thing|fact|text):.+$")));
            } else {
                properties.put(field.name(), of(field.component().getGenericType()));
                if (!field.mayBeLeftOut()) {
                    required.add(field.name());
                }
            }
        }
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("type", "object");
        json.put("properties", properties);
        json.put("required", required);
        json.put("additionalProperties", false);
        return json;
    }

    private static Map<String, Object> pattern(String pattern) {
        Map<String, Object> json = new LinkedHashMap<>(text());
        json.put("pattern", pattern);
        return json;
    }

    private static Map<String, Object> text() {
        return Map.of("type", "string");
    }

    private static Map<String, Object> array(Object items) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("type", "array");
        json.put("items", items);
        return json;
    }
}
