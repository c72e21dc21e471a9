package bayfolio.issue;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.publish.SmallFleet;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Editions are issued, kept and compared as somebody would who types it. */
final class IssueTest {
    @TempDir
    private Path fleet;

    private String said(String... words) {
        return new TypedFleet(fleet).said(words);
    }

    @BeforeEach
    void twoCoaches() throws IOException {
        SmallFleet.write(fleet, List.of("knot", "plover"));
    }

    private Path edition(String coach, int number) {
        return fleet.resolve("units/" + coach + "/editions/" + number + ".json");
    }

    private void edit(String file, String before, String after) throws IOException {
        new TypedFleet(fleet).edit(file, before, after);
    }

    @Test
    void aCoachThatGotAnotherIdKeepsItsEditions() throws IOException {
        said("issue", "knot", "--note", "As bought", "--date", "2026-05-02");
        Files.move(fleet.resolve("units/knot"), fleet.resolve("units/ruff"));
        edit("units/ruff/unit.yaml", "id: knot\n", "id: ruff\nformerly: [knot]\n");

        assertThat(said("check")).doesNotContain("edition-misplaced");
        assertThat(said("changes", "ruff")).startsWith("ruff: edition 1 and now");
    }

    @Test
    void editionsAreNumberedAndTellWhatIsNew() throws IOException {
        assertThat(said("issue", "knot", "--note", "As bought", "--date", "2026-05-02"))
                .isEqualTo("Issued: edition 1 of knot, 2026-05-02.\nexit 0\n");
        assertThat(said("issue", "knot", "--note", "As bought", "--date", "2026-05-02"))
                .isEqualTo("Nothing has changed since the last edition of knot; nothing was issued.\nexit 1\n");
        assertThat(said("changes", "knot")).isEqualTo("knot: edition 1 and now say the same.\nexit 0\n");

        edit("units/knot/unit.yaml", "name: Pump switch", "name: Water switch");
        assertThat(said("changes", "knot"))
                .startsWith("knot: edition 1 and now, 1 change\n\nrelabelled: switch pump\n"
                        + "  switches / pump / name: Pump switch -> Water switch\n  on ")
                .endsWith("exit 0\n");
        assertThat(said("issue", "knot", "--note", "New name", "--date", "2026-05-01"))
                .isEqualTo("Edition 1 of `knot` is of 2026-05-02, and 2026-05-01 is before that;"
                        + " give the day of this one with --date, or set the clock.\nexit 1\n");
        assertThat(said("issue", "knot", "--note", "New name", "--date", "2026-06-01"))
                .startsWith("Issued: edition 2 of knot, 2026-06-01.\nknot: editions 1 and 2, 1 change\n");

        String json =
                said("changes", "knot", "--from", "1", "--to", "2", "--json").replace("exit 0\n", "");
        JsonObject change = JsonParser.parseString(json)
                .getAsJsonArray()
                .get(0)
                .getAsJsonObject()
                .getAsJsonArray("changes")
                .get(0)
                .getAsJsonObject();
        assertThat(change.get("kind").getAsString()).isEqualTo("relabelled");
        assertThat(change.getAsJsonObject("thing").get("id").getAsString()).isEqualTo("pump");
        assertThat(change.get("technical").getAsBoolean()).isTrue();
    }

    @Test
    void theSameStateIsTheSameBytes() throws IOException {
        said("issue", "knot", "--note", "As bought", "--date", "2026-05-02");
        String first = Files.readString(edition("knot", 1));
        Files.delete(edition("knot", 1));
        edit("units/knot/unit.yaml", "name: Pump switch", "name:   Pump switch # as it says");
        said("issue", "knot", "--note", "As bought", "--date", "2026-05-02");

        assertThat(Files.readString(edition("knot", 1)))
                .isEqualTo(first)
                .contains("\n\"switches / pump / name\": \"Pump switch\",\n");
    }

    @Test
    void nothingIsIssuedWhereSomethingIsWrongOrToBeConfirmed() throws IOException {
        edit("units/plover/unit.yaml", "work: press the top", "work: press the top\n    to-confirm: [work]");

        assertThat(said("issue", "knot", "plover", "--note", "Both", "--date", "2026-05-02"))
                .contains("[to-be-confirmed]")
                .endsWith("Nothing was issued.\nexit 1\n");
        assertThat(fleet.resolve("units/knot/editions")).doesNotExist();
        assertThat(said("issue", "knot", "--note", "One", "--date", "2026-05-02"))
                .endsWith("exit 0\n");
    }

    @Test
    void theCallIsRead() {
        assertThat(said("issue", "--note", "All"))
                .startsWith("Name the coaches, or their model with --model.")
                .endsWith("exit 2\n");
        assertThat(said("issue", "knot")).contains("'--note=TEXT'").endsWith("exit 2\n");
        assertThat(said("issue", "knot", "--note", " "))
                .startsWith("`--note` is empty")
                .endsWith("exit 2\n");
        assertThat(said("issue", "--model", "bay-99", "--note", "All"))
                .startsWith("No coach has the model `bay-99`.")
                .endsWith("exit 2\n");
        assertThat(said("changes", "knot")).isEqualTo("No edition of `knot` was issued yet.\nexit 1\n");
        assertThat(said("changes", "knot", "--to", "next"))
                .startsWith("`--to next`")
                .endsWith("exit 2\n");
        said("issue", "knot", "--note", "As bought", "--date", "2026-05-02");
        assertThat(said("changes", "knot", "--from", "7"))
                .startsWith("There is no edition 7; there is 1.")
                .endsWith("exit 2\n");
    }

    @Test
    void aFileThatIsNotAsItWasIssuedIsToldAndNothingIsOverwritten() throws IOException {
        said("issue", "knot", "--note", "As bought", "--date", "2026-05-02");
        edit("units/knot/unit.yaml", "name: Pump switch", "name: Water switch");
        said("issue", "knot", "--note", "New name", "--date", "2026-06-01");
        edit("units/knot/unit.yaml", "name: Water switch", "name: Switch for water");
        String whole = Files.readString(edition("knot", 2));

        told(
                whole.replace("name\": \"Water switch", "name\": \"Watery switch"),
                "2.json:7:1: error: edition 2 of `knot` is not as it was issued: its checksum is that of another text [edition-changed-by-hand]");
        told(whole.substring(0, whole.length() / 2), "edition 2 of `knot` is cut off, or no JSON [edition-unreadable]");
        told("", "edition 2 of `knot` is cut off, or no JSON [edition-unreadable]");
        told("[]", "edition 2 of `knot` is cut off, or no JSON [edition-unreadable]");
        told("{}", "something in it is not as editions are written [edition-unreadable]");
        told(
                whole.replace("\"version\": 1", "\"version\": 9"),
                "the form of edition 2 is version 9, and this program reads 1 [edition-unreadable]");
        told(
                Files.readString(edition("knot", 1)),
                "it is edition 1 of `knot`, and stands where edition 2 of `knot` belongs [edition-misplaced]");
        told("<<<<<<< ours\n" + whole, "edition 2 of `knot` is cut off, or no JSON [edition-unreadable]");

        Files.writeString(edition("knot", 2), whole);
        Files.delete(edition("knot", 1));
        assertThat(said("issue", "knot", "--note", "Another", "--date", "2026-07-01"))
                .contains("edition 1 of `knot`, which came before it, is missing [edition-missing]")
                .endsWith("Nothing was issued.\nexit 1\n");
        assertThat(said("check", "knot")).contains("[edition-missing]").endsWith("exit 1\n");
        Files.move(edition("knot", 2), fleet.resolve("units/knot/editions/two.json"));
        assertThat(said("issue", "knot", "--note", "Another", "--date", "2026-07-01"))
                .contains(
                        "two.json:1:1: error: the name of the file is no number of an edition, such as `1.json` [edition-misplaced]")
                .endsWith("Nothing was issued.\nexit 1\n");
        assertThat(said("check", "knot")).contains("two.json:1:1: error: ").endsWith("exit 1\n");
    }

    /** Git may end lines otherwise, and an editor the last one. */
    @Test
    void howLinesEndIsNoChangeByHand() throws IOException {
        said("issue", "knot", "--note", "As bought", "--date", "2026-05-02");
        String issued = Files.readString(edition("knot", 1));
        Files.writeString(edition("knot", 1), issued.stripTrailing().replace("\n", "\r\n"));

        assertThat(said("check", "knot")).isEqualTo("exit 0\n");
        assertThat(said("changes", "knot")).isEqualTo("knot: edition 1 and now say the same.\nexit 0\n");
    }

    private void told(String spoilt, String finding) throws IOException {
        Files.writeString(edition("knot", 2), spoilt);
        assertThat(said("issue", "knot", "--note", "Another", "--date", "2026-07-01"))
                .contains(finding)
                .endsWith("Nothing was issued.\nexit 1\n");
        assertThat(said("changes", "knot")).contains(finding).endsWith("exit 1\n");
        assertThat(said("check")).containsOnlyOnce(finding).endsWith("exit 1\n");
        assertThat(said("check", "knot")).containsOnlyOnce(finding).endsWith("exit 1\n");
        assertThat(said("check", "plover")).isEqualTo("exit 0\n");
        assertThat(said("publish", "--only", "web"))
                .containsOnlyOnce(finding)
                .contains("Left out: knot (1 error).")
                .endsWith("exit 1\n");
        assertThat(Files.readString(edition("knot", 2))).isEqualTo(spoilt);
        try (Stream<Path> files = Files.list(fleet.resolve("units/knot/editions"))) {
            assertThat(files).hasSize(2);
        }
    }
}
