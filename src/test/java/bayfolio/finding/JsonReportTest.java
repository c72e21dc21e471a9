package bayfolio.finding;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.source.Place;
import bayfolio.source.Position;
import bayfolio.source.SourceFile;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.List;
import org.junit.jupiter.api.Test;

class JsonReportTest {
    private static final SourceFile FILE =
            new SourceFile("units/dunlin/unit.yaml", "id: \ud83d\ude80 wrong\nname: two\n");

    @Test
    void everyPartOfAFindingIsReadBack() {
        Finding finding = Finding.error("unknown-id", Place.of(FILE, 1, 7, 5), "`<wrong> & \"quoted\"` \u2014 no id")
                .near(List.of("right", "bright"))
                .mend("Write it.")
                .on("dunlin");

        JsonObject json = read(finding).get(0).getAsJsonObject();

        assertThat(json.keySet())
                .containsExactly(
                        "code",
                        "severity",
                        "file",
                        "line",
                        "column",
                        "endLine",
                        "endColumn",
                        "message",
                        "near",
                        "mend",
                        "units");
        assertThat(json.get("code").getAsString()).isEqualTo("unknown-id");
        assertThat(json.get("severity").getAsString()).isEqualTo("error");
        assertThat(json.get("file").getAsString()).isEqualTo("units/dunlin/unit.yaml");
        assertThat(json.get("message").getAsString()).isEqualTo(finding.message());
        assertThat(strings(json.get("near"))).containsExactly("right", "bright");
        assertThat(json.get("mend").getAsString()).isEqualTo("Write it.");
        assertThat(strings(json.get("units"))).containsExactly("dunlin");
    }

    @Test
    void placesAreThoseOfTheTextReport() {
        Place at = new Place(FILE, new Position(1, 7), new Position(2, 5));
        Finding finding = Finding.error("c", at, "m");

        JsonObject json = read(finding).get(0).getAsJsonObject();

        assertThat(TextReport.heading(finding))
                .startsWith("%s:%d:%d:"
                        .formatted(
                                json.get("file").getAsString(),
                                json.get("line").getAsInt(),
                                json.get("column").getAsInt()));
        assertThat(json.get("endLine").getAsInt()).isEqualTo(2);
        assertThat(json.get("endColumn").getAsInt()).isEqualTo(5);
    }

    @Test
    void columnsCountCodePoints() {
        Finding finding = Finding.error("c", Place.of(FILE, 1, 7, 5), "m");

        JsonObject json = read(finding).get(0).getAsJsonObject();

        String line = FILE.line(json.get("line").getAsInt());
        int start = line.offsetByCodePoints(0, json.get("column").getAsInt() - 1);
        int end = line.offsetByCodePoints(0, json.get("endColumn").getAsInt() - 1);
        assertThat(line.substring(start, end)).isEqualTo("wrong");
    }

    @Test
    void whatIsNotThereIsEmptyAndAMendLeftOut() {
        JsonObject json =
                read(Finding.warning("c", Place.whole(FILE), "m")).get(0).getAsJsonObject();

        assertThat(json.get("severity").getAsString()).isEqualTo("warning");
        assertThat(strings(json.get("near"))).isEmpty();
        assertThat(strings(json.get("units"))).isEmpty();
        assertThat(json.has("mend")).isFalse();
    }

    @Test
    void findingsAreMergedAndInFileOrder() {
        Finding late = Finding.error("c", Place.of(FILE, 2, 1, 4), "m");
        Finding soon = Finding.error("c", Place.of(FILE, 1, 1, 2), "m");

        JsonArray all = read(late.on("dunlin"), soon, late.on("whimbrel"));

        assertThat(all).hasSize(2);
        assertThat(all.get(0).getAsJsonObject().get("line").getAsInt()).isEqualTo(1);
        assertThat(strings(all.get(1).getAsJsonObject().get("units"))).containsExactly("dunlin", "whimbrel");
    }

    @Test
    void noFindingsAreAnEmptyList() {
        assertThat(read()).isEmpty();
    }

    private static JsonArray read(Finding... findings) {
        String report = JsonReport.of(Findings.of(List.of(findings)));
        return JsonParser.parseString(report).getAsJsonObject().getAsJsonArray("findings");
    }

    private static List<String> strings(JsonElement array) {
        return array.getAsJsonArray().asList().stream()
                .map(JsonElement::getAsString)
                .toList();
    }
}
