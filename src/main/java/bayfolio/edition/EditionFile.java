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
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * An edition as a file: JSON, a value a line, in one order, so that version control shows what is otherwise. Its checksum is
 * of all the rest: what somebody has changed by hand was never issued.
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
    // What is told of editions, by whoever reads them.
    static final String UNREADABLE = "edition-unreadable";
    static final String MISPLACED = "edition-misplaced";
    static final String MISSING = "edition-missing";
    private static final String CHANGED = "edition-changed-by-hand";

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
        file.addProperty(CHECKSUM, checksum(file));
        return GSON.toJson(file) + "\n";
    }

    /** @param number that its name has */
    static Optional<Edition> read(SourceFile file, String unit, int number, Consumer<Finding> findings) {
        JsonObject json;
        try {
            json = JsonParser.parseString(file.text()).getAsJsonObject();
        } catch (JsonParseException | IllegalStateException e) {
            findings.accept(Finding.error(
                            UNREADABLE,
                            Place.whole(file),
                            "edition " + number + " of `" + unit + "` is cut off, or no JSON")
                    .mend(RESTORE));
            return Optional.empty();
        }
        try {
            return read(json, file, unit, number, findings);
        } catch (IllegalStateException
                | ClassCastException
                | NumberFormatException
                | UnsupportedOperationException
                | DateTimeException e) {
            return refused(file, "edition", UNREADABLE, "something in it is not as editions are written", findings);
        }
    }

    private static Optional<Edition> read(
            JsonObject json, SourceFile file, String unit, int number, Consumer<Finding> findings) {
        int version = get(json, "version").getAsInt();
        if (version != VERSION) {
            findings.accept(Finding.error(
                            UNREADABLE,
                            at(file, "version"),
                            "the form of edition " + number + " is version " + version + ", and this program reads "
                                    + VERSION)
                    .mend("Read it with the version of the program that wrote it, or issue a new edition."));
            return Optional.empty();
        }
        if (!checksum(json).equals(get(json, CHECKSUM).getAsString())) {
            return refused(
                    file,
                    CHECKSUM,
                    CHANGED,
                    "edition " + number + " of `" + unit
                            + "` is not as it was issued: its checksum is that of another text",
                    findings);
        }
        String of = get(json, "unit").getAsString();
        int issued = get(json, "edition").getAsInt();
        if (!of.equals(unit) || issued != number) {
            return refused(
                    file,
                    of.equals(unit) ? "edition" : "unit",
                    MISPLACED,
                    "it is edition " + issued + " of `" + of + "`, and stands where edition " + number + " of `" + unit
                            + "` belongs",
                    findings);
        }
        return Optional.of(new Edition(
                number,
                LocalDate.parse(get(json, "date").getAsString()),
                get(json, "note").getAsString(),
                snapshot(unit, json)));
    }

    private static JsonElement get(JsonObject json, String name) {
        @Nullable JsonElement value = json.get(name);
        if (value == null) {
            throw new IllegalStateException(name + " is missing");
        }
        return value;
    }

    private static Optional<Edition> refused(
            SourceFile file, String field, String code, String message, Consumer<Finding> findings) {
        findings.accept(Finding.error(code, at(file, field), message).mend(RESTORE));
        return Optional.empty();
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

    private static String checksum(JsonObject file) {
        JsonObject rest = new JsonObject();
        file.entrySet().stream()
                .filter(field -> !field.getKey().equals(CHECKSUM))
                .forEach(field -> rest.add(field.getKey(), field.getValue()));
        return Digest.of(GSON.toJson(rest));
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
