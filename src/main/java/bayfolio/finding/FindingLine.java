package bayfolio.finding;

import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import com.google.gson.Gson;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.StreamSupport;

/** A finding as programs get it ({@link JsonReport}), on one line, to be read again while its file is as it was. */
public final class FindingLine {
    private static final Gson GSON = new Gson();

    private FindingLine() {}

    public static String of(Finding finding) {
        return GSON.toJson(JsonReport.json(finding));
    }

    /**
     * Empty where the line is no finding, or its file is not there.
     *
     * @param files by their paths
     */
    public static Optional<Finding> read(String line, Function<String, Optional<SourceFile>> files) {
        try {
            JsonObject all = GSON.fromJson(line, JsonObject.class);
            return files.apply(all.get("file").getAsString())
                    .map(file -> new Finding(
                            all.get("code").getAsString(),
                            Severity.valueOf(all.get("severity").getAsString().toUpperCase(Locale.ROOT)),
                            new Place(
                                    file,
                                    all.get("line").getAsInt(),
                                    all.get("column").getAsInt(),
                                    all.get("endLine").getAsInt(),
                                    all.get("endColumn").getAsInt()),
                            all.get("message").getAsString(),
                            strings(all.getAsJsonArray("near")),
                            Optional.ofNullable(all.get("mend")).map(JsonElement::getAsString),
                            strings(all.getAsJsonArray("units"))));
        } catch (JsonParseException
                | IllegalArgumentException
                | IllegalStateException
                | UnsupportedOperationException
                | ClassCastException
                | NullPointerException other) {
            return Optional.empty();
        }
    }

    private static List<String> strings(JsonArray array) {
        return StreamSupport.stream(array.spliterator(), false)
                .map(JsonElement::getAsString)
                .toList();
    }
}
