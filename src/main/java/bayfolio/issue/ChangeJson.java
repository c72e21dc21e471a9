package bayfolio.issue;

import bayfolio.document.RecordForm;
import bayfolio.edition.Change;
import bayfolio.edition.Changed;
import bayfolio.fact.Type;
import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.List;
import org.jspecify.annotations.Nullable;

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
        json.addProperty("kind", kind((Record) changed.change()));
        json.addProperty("technical", changed.technical());
        json.addProperty("for-staff", changed.forStaff());
        fields((Record) changed.change()).entrySet().forEach(field -> json.add(field.getKey(), field.getValue()));
        json.add("pages", value(List.copyOf(changed.pages())));
        json.add("parts", value(List.copyOf(changed.parts())));
        JsonArray all = new JsonArray();
        consequences.all().forEach(each -> {
            JsonObject consequence = new JsonObject();
            consequence.addProperty("kind", kind((Record) each));
            fields((Record) each).entrySet().forEach(field -> consequence.add(field.getKey(), field.getValue()));
            all.add(consequence);
        });
        json.add("consequences", all);
        return json;
    }

    private static String kind(Record record) {
        return RecordForm.of(record.getClass()).kind();
    }

    private static JsonObject fields(Record record) {
        JsonObject json = new JsonObject();
        RecordForm.of(record.getClass()).fields().forEach(field -> json.add(field.name(), value(field.value(record))));
        return json;
    }

    private static JsonElement value(@Nullable Object value) {
        if (value instanceof List<?> list) {
            JsonArray array = new JsonArray();
            list.forEach(each -> array.add(value(each)));
            return array;
        } else if (value instanceof Change.Thing
                || value instanceof Change.Value
                || value instanceof Consequence.Numbers) {
            return fields((Record) value);
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
