package bayfolio.survey;

import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/**
 * What was entered at a coach, as the page of a survey gives it out.
 *
 * @param edition digest of the description that the page was made from
 * @param by the role of whoever looked; may be empty
 * @param compared ways to the things, and "" to the coach, all of which was found as described
 */
record Answers(
        SourceFile file,
        String coach,
        String edition,
        String by,
        List<Fact> facts,
        List<Seen> compared,
        List<Picture> pictures) {
    /** By which a file says what it is. */
    static final String FORM = "bayfolio-survey-1";

    private static final int MOST_FACTS = 5000;
    private static final int MOST_PICTURES = 500;

    /** A file that is none; the message says why, in one sentence. */
    static final class Unreadable extends Exception {
        private static final long serialVersionUID = 1L;

        Unreadable(String sentence) {
            super(sentence);
        }
    }

    /**
     * @param path the way to it
     * @param was what the page showed as stated; empty where nothing was
     */
    record Fact(String path, Optional<String> was, String now, LocalDate on) {}

    record Seen(String path, LocalDate on) {}

    /** @param of the way to what it shows, "" for the coach */
    record Picture(String of, byte[] bytes, LocalDate on, String shows) {}

    static Answers read(SourceFile file) throws Unreadable {
        try {
            JsonObject all = JsonParser.parseString(file.text()).getAsJsonObject();
            if (!text(all, "form").equals(FORM)) {
                throw new Unreadable("it is no file of a survey, or one of another version of this program");
            }
            List<Fact> facts = new ArrayList<>();
            for (JsonElement each : list(all, "facts", MOST_FACTS)) {
                JsonObject fact = each.getAsJsonObject();
                boolean stated = fact.has("was") && !fact.get("was").isJsonNull();
                facts.add(new Fact(
                        text(fact, "path"),
                        stated ? Optional.of(text(fact, "was")) : Optional.empty(),
                        text(fact, "now"),
                        day(fact)));
            }
            List<Seen> compared = new ArrayList<>();
            for (JsonElement each : list(all, "compared", MOST_FACTS)) {
                compared.add(new Seen(text(each.getAsJsonObject(), "path"), day(each.getAsJsonObject())));
            }
            List<Picture> pictures = new ArrayList<>();
            for (JsonElement each : list(all, "pictures", MOST_PICTURES)) {
                JsonObject picture = each.getAsJsonObject();
                pictures.add(new Picture(
                        text(picture, "of"),
                        Base64.getDecoder().decode(text(picture, "jpeg")),
                        day(picture),
                        picture.has("shows") ? text(picture, "shows") : ""));
            }
            return new Answers(
                    file,
                    text(all, "coach"),
                    text(all, "edition"),
                    text(all, "by").strip(),
                    facts,
                    compared,
                    pictures);
        } catch (JsonParseException e) {
            throw new Unreadable("it is no JSON: "
                    + String.valueOf(e.getMessage()).lines().findFirst().orElse(""));
        } catch (IllegalStateException | ClassCastException | UnsupportedOperationException e) {
            throw new Unreadable("a text stands in it where a list or a record is meant, or the other way round");
        } catch (DateTimeParseException e) {
            throw new Unreadable("`" + e.getParsedString() + "` in it is no time");
        } catch (IllegalArgumentException e) {
            throw new Unreadable("a picture in it cannot be read");
        }
    }

    private static JsonArray list(JsonObject record, String name, int most) throws Unreadable {
        JsonElement list = record.get(name);
        if (list == null) {
            return new JsonArray();
        }
        if (list.getAsJsonArray().size() > most) {
            throw new Unreadable(
                    "`" + name + "` has " + list.getAsJsonArray().size() + " entries; the most is " + most);
        }
        return list.getAsJsonArray();
    }

    private static String text(JsonObject record, String name) throws Unreadable {
        JsonElement text = record.get(name);
        if (text == null
                || !text.isJsonPrimitive()
                || !text.getAsJsonPrimitive().isString()) {
            throw new Unreadable("`" + name + "` is missing in it, or is no text");
        }
        return text.getAsString();
    }

    private static LocalDate day(JsonObject record) throws Unreadable {
        return OffsetDateTime.parse(text(record, "when")).toLocalDate();
    }

    /** Where a fact stands in the file. */
    Place place(String path) {
        String written = new com.google.gson.JsonPrimitive(path).toString();
        for (int line = 1; line <= file.lineCount(); line++) {
            // A file of one line has pictures in it, which nobody wants to see.
            int column = file.line(line).length() < 1000 ? file.line(line).indexOf(written) : -1;
            if (column >= 0) {
                return Place.of(file, line, column + 1, written.length());
            }
        }
        return Place.whole(file);
    }
}
