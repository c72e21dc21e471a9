package bayfolio.edition;

import bayfolio.document.RecordForm;
import bayfolio.prose.Block;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The parts of a handbook by their names, in reading order, out of its normal form. */
final class Parts {
    /** Fields that hold an address and are not read. */
    private static final Set<String> LINKS = Set.of("target", "home", "page");

    /** Fields that nobody reads. */
    private static final Set<String> UNREAD =
            Set.of("id", "kind", "sort", "audience", "language", "from", "formerly", "level");

    /** Fields of forms, which have names of their own in them. */
    private static final Set<String> PLAIN = Set.of("calculator", "figures");

    private static final Set<String> BLOCKS = Stream.of(Block.class.getPermittedSubclasses())
            .map(block -> RecordForm.of(block.asSubclass(Record.class)).kind())
            .collect(Collectors.toUnmodifiableSet());

    private final Map<String, Part> all = new LinkedHashMap<>();

    private Parts() {}

    /** @param document see {@link bayfolio.document.DocumentJson} */
    static Map<String, Part> of(JsonObject document) {
        Parts parts = new Parts();
        for (JsonElement part : document.getAsJsonArray("parts")) {
            for (JsonElement page : array(part.getAsJsonObject(), "pages")) {
                parts.add(page.getAsJsonObject(), "", "", List.of(), false);
            }
        }
        return Collections.unmodifiableMap(parts.all);
    }

    private void add(JsonObject node, String in, String around, List<String> fromAround, boolean forStaffAround) {
        String id = node.get("id").getAsString();
        String page = in.isEmpty() ? id : in;
        // A chapter of a film has a moment of that name.
        List<String> from = node.get("from") instanceof JsonArray sources ? strings(sources) : fromAround;
        boolean forStaff =
                node.has("audience") ? node.get("audience").getAsString().equals("staff") : forStaffAround;
        String kind = node.has("kind") ? node.get("kind").getAsString() : "";
        // What holds meanwhile belongs to no edition.
        if (kind.equals("notice")) {
            return;
        }
        StringBuilder text = new StringBuilder();
        List<String> links = new ArrayList<>();
        List<JsonObject> inside = new ArrayList<>();
        read(node, text, links, inside);
        all.put(id, new Part(id, page, around, sort(node), kind, text.toString(), links, from, forStaff));
        inside.forEach(it -> add(it, page, id, from, forStaff));
    }

    private static void read(JsonObject node, StringBuilder text, List<String> links, List<JsonObject> inside) {
        for (Map.Entry<String, JsonElement> field : node.entrySet()) {
            if (LINKS.contains(field.getKey()) && field.getValue().isJsonPrimitive()) {
                links.add(field.getValue().getAsString());
            } else if (PLAIN.contains(field.getKey())) {
                text.append(' ').append(field.getValue());
            } else if (field.getValue() instanceof JsonPrimitive mark && mark.isBoolean()) {
                // That it is urgent, or that one of several is enough, is seen and not read.
                links.add(field.getKey());
            } else if (!UNREAD.contains(field.getKey())) {
                read(field.getValue(), text, links, inside);
            }
        }
    }

    private static void read(JsonElement value, StringBuilder text, List<String> links, List<JsonObject> inside) {
        if (value instanceof JsonArray array) {
            for (JsonElement each : array) {
                if (each.isJsonArray() || isBlock(each)) {
                    newLine(text);
                }
                read(each, text, links, inside);
            }
        } else if (value instanceof JsonObject object) {
            if (object.has("id")) {
                inside.add(object);
            } else {
                read(object, text, links, inside);
            }
        } else if (value.isJsonPrimitive()) {
            String words = value.getAsString();
            boolean joined = text.isEmpty()
                    || Character.isWhitespace(text.charAt(text.length() - 1))
                    || words.startsWith(" ")
                    || words.matches("[.,;:!?)].*");
            text.append(joined ? "" : " ").append(words);
        }
    }

    private static boolean isBlock(JsonElement value) {
        return value instanceof JsonObject object
                && object.get("kind") instanceof JsonPrimitive kind
                && BLOCKS.contains(kind.getAsString());
    }

    private static void newLine(StringBuilder text) {
        if (!text.isEmpty() && text.charAt(text.length() - 1) != '\n') {
            text.append('\n');
        }
    }

    private static Part.Sort sort(JsonObject node) {
        if (node.get("id").getAsString().indexOf('#') < 0) {
            return Part.Sort.PAGE;
        } else if (node.has("act")) {
            return Part.Sort.STEP;
        } else if (node.has("signal")) {
            return Part.Sort.HAZARD;
        } else if (node.has("contents")) {
            return Part.Sort.SECTION;
        }
        // Where a step finds a thing is read, too.
        boolean place = node.has("place") || node.has("pieces");
        return node.has("link") || node.has("thing") && !place ? Part.Sort.POINTER : Part.Sort.TEXT;
    }

    private static JsonArray array(JsonObject of, String name) {
        return of.has(name) ? of.getAsJsonArray(name) : new JsonArray();
    }

    private static List<String> strings(JsonArray array) {
        return array.asList().stream().map(JsonElement::getAsString).toList();
    }
}
