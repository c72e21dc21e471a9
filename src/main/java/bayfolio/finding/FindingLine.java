package bayfolio.finding;

import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import com.google.gson.Gson;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonParseException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.StreamSupport;

/**
 * A finding on one line, to be read again while its file is as it was: an array of code, severity, file, line, column,
 * endLine, endColumn, message, near, mend (none or one) and units.
 */
public final class FindingLine {
    private static final Gson GSON = new Gson();

    private FindingLine() {}

    public static String of(Finding finding) {
        Place at = finding.at();
        return GSON.toJson(List.of(
                finding.code(),
                finding.severity().name(),
                at.file().path(),
                at.line(),
                at.column(),
                at.endLine(),
                at.endColumn(),
                finding.message(),
                finding.near(),
                finding.mend().map(List::of).orElse(List.of()),
                finding.units()));
    }

    /**
     * Empty where the line is none of these, or its file is not there.
     *
     * @param files by their paths
     */
    public static Optional<Finding> read(String line, Function<String, Optional<SourceFile>> files) {
        try {
            JsonArray all = GSON.fromJson(line, JsonArray.class);
            return files.apply(all.get(2).getAsString())
                    .map(file -> new Finding(
                            all.get(0).getAsString(),
                            Severity.valueOf(all.get(1).getAsString()),
                            new Place(
                                    file,
                                    all.get(3).getAsInt(),
                                    all.get(4).getAsInt(),
                                    all.get(5).getAsInt(),
                                    all.get(6).getAsInt()),
                            all.get(7).getAsString(),
                            strings(all.get(8)),
                            strings(all.get(9)).stream().findFirst(),
                            strings(all.get(10))));
        } catch (JsonParseException
                | IllegalArgumentException
                | IllegalStateException
                | UnsupportedOperationException
                | IndexOutOfBoundsException
                | NullPointerException other) {
            return Optional.empty();
        }
    }

    private static List<String> strings(JsonElement array) {
        return StreamSupport.stream(array.getAsJsonArray().spliterator(), false)
                .map(JsonElement::getAsString)
                .toList();
    }
}
