package bayfolio.issue;

import bayfolio.document.DocumentJson;
import bayfolio.edition.Change;
import bayfolio.edition.Changed;
import bayfolio.fact.Type;
import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.lang.reflect.RecordComponent;
import java.util.List;

/** Changes with all that follows from them, for programs: an object each, its kind and fields named as the records that declare them. */
public final class ChangeJson {
    private static final Gson GSON =
            new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

    private ChangeJson() {}

    /** @param from the number of an edition, or {@code now} */
    public static JsonObject of(String coach, String from, String to, List<Consequences> changes) {
        JsonObject all = new JsonObject();
        all.addProperty("unit", coach);
        all.addProperty("from", from);
        all.addProperty("to", to);
        JsonArray list = new JsonArray();
        changes.forEach(changed -> list.add(of(changed)));
        all.add("changes", list);
        return all;
    }

    public static String text(JsonElement json) {
        return GSON.toJson(json) + "\n";
    }

    private static JsonObject of(Consequences consequences) {
        Changed changed = consequences.changed();
        JsonObject json = new JsonObject();
        json.addProperty("kind", DocumentJson.kind(changed.change().getClass()));
        json.addProperty("technical", changed.technical());
        json.addProperty("for-staff", changed.forStaff());
        fields(changed.change()).entrySet().forEach(field -> json.add(field.getKey(), field.getValue()));
        json.add("pages", value(List.copyOf(changed.pages())));
        json.add("parts", value(List.copyOf(changed.parts())));
        JsonArray all = new JsonArray();
        consequences.all().forEach(each -> {
            JsonObject consequence = new JsonObject();
            consequence.addProperty("kind", DocumentJson.kind(each.getClass()));
            fields(each).entrySet().forEach(field -> consequence.add(field.getKey(), field.getValue()));
            all.add(consequence);
        });
        json.add("consequences", all);
        return json;
    }

    private static JsonObject fields(Object record) {
        JsonObject json = new JsonObject();
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            try {
                json.add(
                        DocumentJson.name(component),
                        value(component.getAccessor().invoke(record)));
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException("every change and every consequence is a public record", e);
            }
        }
        return json;
    }

    private static JsonElement value(Object value) {
        if (value instanceof List<?> list) {
            JsonArray array = new JsonArray();
            list.forEach(each -> array.add(value(each)));
            return array;
        } else if (value instanceof Change.Thing
                || value instanceof Change.Value
                || value instanceof Consequence.Numbers) {
            return fields(value);
        } else if (value instanceof Enum<?> word) {
            return new JsonPrimitive(Type.word(word));
        } else if (value instanceof Number number) {
            return new JsonPrimitive(number);
        } else if (value instanceof Boolean yes) {
            return new JsonPrimitive(yes);
        }
        return new JsonPrimitive(String.valueOf(value));
    }
}
