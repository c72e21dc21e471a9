package bayfolio.edition;

import bayfolio.finding.Finding;
import bayfolio.source.Digest;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import com.google.gson.FormattingStyle;
import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import com.google.gson.JsonPrimitive;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import java.io.IOException;
import java.io.StringReader;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * An edition as a file: JSON, a value a line, in one order, so that version control shows what is otherwise. Its checksum is
 * of all the other lines: what somebody has changed by hand was never issued. So whether a file is whole is known without
 * taking it apart, which takes many times as long.
 */
public final class EditionFile {
    /** Of the form. It goes up when a reader of the one before would misread it. */
    static final int VERSION = 1;

    private static final String CHECKSUM = "checksum";

    /** So many lines have all that comes before the facts. */
    private static final int HEAD = 20;

    private static final Gson GSON = new GsonBuilder()
            .setFormattingStyle(FormattingStyle.PRETTY.withIndent(""))
            .disableHtmlEscaping()
            .create();

    static final String RESTORE = "Take the file back from version control; an edition is never edited.";

    private EditionFile() {}

    public static String write(Edition edition) {
        JsonObject file = new JsonObject();
        file.addProperty("version", VERSION);
        file.addProperty("unit", edition.snapshot().unit());
        file.addProperty("edition", edition.number());
        file.addProperty("date", edition.date().toString());
        file.addProperty("note", edition.note());
        file.addProperty(CHECKSUM, "");
        Snapshot snapshot = edition.snapshot();
        JsonObject facts = new JsonObject();
        snapshot.facts()
                .forEach((way, values) -> facts.add(way, values.size() == 1 ? text(values.get(0)) : texts(values)));
        file.add("facts", facts);
        JsonObject scripts = new JsonObject();
        snapshot.scripts().forEach(scripts::addProperty);
        file.add("texts", scripts);
        JsonObject answers = new JsonObject();
        snapshot.answers().forEach((question, ways) -> answers.add(question, texts(ways)));
        file.add("answers", answers);
        snapshot.document().ifPresent(document -> file.add("document", document));
        file.addProperty(CHECKSUM, checksum(GSON.toJson(file)));
        return GSON.toJson(file) + "\n";
    }

    /**
     * What is wrong with a file; empty where it is as it was issued.
     *
     * @param number that its name has
     * @param ids those that the coach has had
     */
    static Optional<Finding> fault(SourceFile file, String unit, int number, Set<String> ids) {
        try {
            return fault(Head.of(file.text()), file, unit, number, ids);
        } catch (IOException | IllegalStateException | NumberFormatException e) {
            return Optional.of(unreadable(file, unit, number));
        }
    }

    /** Empty where something is wrong with it, which is told. */
    static Optional<Edition> read(
            SourceFile file, String unit, int number, Set<String> ids, Consumer<Finding> findings) {
        Optional<Finding> fault = fault(file, unit, number, ids);
        if (fault.isPresent()) {
            findings.accept(fault.get());
            return Optional.empty();
        }
        try {
            JsonObject json = JsonParser.parseString(file.text()).getAsJsonObject();
            return Optional.of(new Edition(
                    number,
                    LocalDate.parse(get(json, "date").getAsString()),
                    get(json, "note").getAsString(),
                    snapshot(unit, json)));
        } catch (JsonParseException
                | IllegalStateException
                | ClassCastException
                | NumberFormatException
                | UnsupportedOperationException
                | DateTimeException e) {
            findings.accept(unreadable(file, unit, number));
            return Optional.empty();
        }
    }

    private static Optional<Finding> fault(Head head, SourceFile file, String unit, int number, Set<String> ids) {
        int version = head.number("version");
        if (version != VERSION) {
            return Optional.of(unreadable(
                            at(file, "version"),
                            "the form of edition " + number + " is version " + version + ", and this program reads "
                                    + VERSION)
                    .mend("Read it with the version of the program that wrote it, or issue a new edition."));
        }
        if (!head.text(CHECKSUM).equals(checksum(file.text()))) {
            return Optional.of(
                    isJson(file.text())
                            ? Finding.error(
                                            "edition-changed-by-hand",
                                            at(file, CHECKSUM),
                                            "edition " + number + " of `" + unit
                                                    + "` is not as it was issued: its checksum is that of another text")
                                    .mend(RESTORE)
                            : unreadable(file, unit, number));
        }
        String of = head.text("unit");
        int issued = head.number("edition");
        return ids.contains(of) && issued == number
                ? Optional.empty()
                : Optional.of(
                        misplaced(
                                        at(file, ids.contains(of) ? "edition" : "unit"),
                                        "it is edition " + issued + " of `" + of + "`, and stands where edition "
                                                + number + " of `" + unit + "` belongs")
                                .mend(
                                        ids.contains(of)
                                                ? RESTORE
                                                : "Move it out of this folder: editions are of the coach that they were issued of, and each begins with its own."));
    }

    private static Finding unreadable(SourceFile file, String unit, int number) {
        return unreadable(
                Place.whole(file),
                isJson(file.text())
                        ? "something in it is not as editions are written"
                        : "edition " + number + " of `" + unit + "` is cut off, or no JSON");
    }

    /** Who knows better what to do about it says so. */
    static Finding unreadable(Place at, String message) {
        return Finding.error("edition-unreadable", at, message).mend(RESTORE);
    }

    static Finding misplaced(Place at, String message) {
        return Finding.error("edition-misplaced", at, message);
    }

    private static boolean isJson(String text) {
        try {
            return JsonParser.parseString(text).isJsonObject();
        } catch (JsonParseException e) {
            return false;
        }
    }

    /** What stands before the facts. */
    private record Head(Map<String, String> fields) {
        static Head of(String text) throws IOException {
            Map<String, String> fields = new HashMap<>();
            try (JsonReader reader = new JsonReader(new StringReader(text))) {
                reader.beginObject();
                while (reader.peek() == JsonToken.NAME) {
                    String name = reader.nextName();
                    if (reader.peek() == JsonToken.BEGIN_OBJECT) {
                        break;
                    }
                    fields.put(name, reader.nextString());
                }
            }
            return new Head(fields);
        }

        String text(String name) {
            @Nullable String value = fields.get(name);
            if (value == null) {
                throw new IllegalStateException(name + " is missing");
            }
            return value;
        }

        int number(String name) {
            return Integer.parseInt(text(name));
        }
    }

    private static JsonElement get(JsonObject json, String name) {
        @Nullable JsonElement value = json.get(name);
        if (value == null) {
            throw new IllegalStateException(name + " is missing");
        }
        return value;
    }

    private static Snapshot snapshot(String unit, JsonObject json) {
        SortedMap<String, List<String>> facts = new TreeMap<>();
        get(json, "facts")
                .getAsJsonObject()
                .entrySet()
                .forEach(fact -> facts.put(
                        fact.getKey(),
                        fact.getValue() instanceof JsonArray list
                                ? list.asList().stream()
                                        .map(JsonElement::getAsString)
                                        .toList()
                                : List.of(fact.getValue().getAsString())));
        SortedMap<String, String> scripts = new TreeMap<>();
        get(json, "texts")
                .getAsJsonObject()
                .entrySet()
                .forEach(text -> scripts.put(text.getKey(), text.getValue().getAsString()));
        SortedMap<String, SortedSet<String>> answers = new TreeMap<>();
        get(json, "answers").getAsJsonObject().entrySet().forEach(answer -> {
            SortedSet<String> ways = new TreeSet<>();
            answer.getValue().getAsJsonArray().forEach(way -> ways.add(way.getAsString()));
            answers.put(answer.getKey(), ways);
        });
        return new Snapshot(
                unit,
                facts,
                scripts,
                answers,
                Optional.ofNullable(json.get("document")).map(JsonElement::getAsJsonObject));
    }

    /** Of all lines but its own, however they end: version control may write them otherwise. */
    private static String checksum(String text) {
        String lines = text.replace("\r\n", "\n").stripTrailing();
        int from = lines.indexOf("\n\"" + CHECKSUM + "\":");
        int to = lines.indexOf('\n', from + 1);
        return from < 0 || to < 0 ? "" : Digest.of(lines.substring(0, from) + lines.substring(to));
    }

    private static JsonPrimitive text(String text) {
        return new JsonPrimitive(text);
    }

    private static JsonArray texts(Iterable<String> all) {
        JsonArray array = new JsonArray();
        all.forEach(array::add);
        return array;
    }

    /** Where a field stands, each having a line of its own; the file where it has none. */
    private static Place at(SourceFile file, String name) {
        String field = "\"" + name + "\":";
        List<String> lines = file.text().lines().limit(HEAD).toList();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).startsWith(field)) {
                return Place.of(file, i + 1, 1, name.length() + 2);
            }
        }
        return Place.whole(file);
    }
}
