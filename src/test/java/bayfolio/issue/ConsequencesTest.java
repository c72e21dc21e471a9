package bayfolio.issue;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.publish.SmallFleet;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What follows from changes, the list of work, and who is told, as somebody sees it who types the command. */
final class ConsequencesTest {
    private static final String UNIT = "units/knot/unit.yaml";
    private static final String LIST = "units/knot/editions/to-do.md";

    @TempDir
    private Path fleet;

    private String said(String... words) {
        return new TypedFleet(fleet).said(words);
    }

    private void edit(String file, String before, String after) throws IOException {
        new TypedFleet(fleet).edit(file, before, after);
    }

    private String list() throws IOException {
        return Files.readString(fleet.resolve(LIST));
    }

    @BeforeEach
    void anEdition() throws IOException {
        SmallFleet.write(fleet, List.of("knot"));
        edit(
                UNIT,
                "    off-look: handle upright\n",
                "    off-look: handle upright\n    on-pose: [level]\n    off-pose: [up]\n    plate: HOUSE\n");
        edit(
                UNIT,
                "doors:\n",
                "  - {id: l2-spare, name: L2 Spare, side: left, from-front: 16 ft, width: 2 ft, access: free,"
                        + " opens: Press the latch.}\n\ndoors:\n");
        assertThat(said("issue", "knot", "--note", "As bought", "--date", "2026-05-02"))
                .endsWith("exit 0\n");
    }

    private void moved() throws IOException {
        edit(UNIT, "where: on the front wall", "where: on the rear wall");
    }

    @Test
    void labelsOfWhatIsGoneMovedAndReworded() throws IOException {
        edit(
                UNIT,
                "  - {id: l2-spare, name: L2 Spare, side: left, from-front: 16 ft, width: 2 ft, access: free,"
                        + " opens: Press the latch.}\n",
                "");
        moved();
        edit(UNIT, "name: R1 Batteries", "name: R1 House batteries");
        edit(UNIT, "plate: HOUSE", "plate: COACH");

        assertThat(said("changes", "knot"))
                .contains("\n  scrape off label `L2 Spare`, left side\n", "\n  no longer there compartment/l2-spare\n")
                .contains("\n  scrape off label `House battery switch`, L1 Gear, on the front wall\n"
                        + "  stick on label `House battery switch`, L1 Gear, on the rear wall\n")
                .contains("\n  print anew label `R1 House batteries`, right side\n")
                .contains(
                        "\n  look up switch house-battery-switch, whether its plate reads `COACH` and no longer `HOUSE`\n");
        assertThat(said("changes", "knot", "--json"))
                .contains("\"act\": \"scrape-off\"", "\"paper\": \"book\"", "\"gone\": true");
    }

    @Test
    void aThingThatIsFoundUnderItsFormerIdKeepsItsLabel() throws IOException {
        edit(UNIT, "id: r1-batteries\n", "id: r1-house\n    formerly: [r1-batteries]\n");

        assertThat(said("changes", "knot"))
                .contains("renamed: compartment r1-batteries is r1-house now")
                .doesNotContain("label `");
    }

    @Test
    void picturesAndWhatHangsOnARefit() throws IOException {
        edit(
                UNIT,
                "notes:\n",
                "refits:\n  - {on: 2026-05-20, what: Another panel, things: [panel], measures: [weights]}\n\nnotes:\n");

        assertThat(said("changes", "knot"))
                .contains(
                        "\n  look up switch panel, whether all is so that is said of it\n",
                        "\n  look up coach, what it weighs\n");
        edit(UNIT, "    name: Panel\n", "    name: Panel\n    checked-on: 2026-05-21\n");
        assertThat(said("changes", "knot")).doesNotContain("look up switch panel");
    }

    @Test
    void textsThatSomebodyTranslates() throws IOException {
        Path texts = fleet.resolve("units/knot/translations/de/facts.yaml");
        Files.createDirectories(texts.getParent());
        Files.writeString(
                texts,
                said("texts", "--language", "de", "knot")
                        .replaceFirst("(?s)exit 0\n$", "")
                        .replaceFirst(
                                "(of: switch/pump/name\\n    source: \"[0-9a-f]{12}\"\\n    )# text:",
                                "$1text: Pumpenschalter"));
        edit(UNIT, "name: Pump switch", "name: Water switch");

        assertThat(said("changes", "knot")).contains("\n  translate de switch/pump/name\n");
    }

    @Test
    void theListKeepsTicksAndLinesOfSomebodysOwn() throws IOException {
        moved();
        assertThat(said("changes", "knot", "--work-list"))
                .contains("Wrote " + LIST + ": ")
                .endsWith("exit 0\n");
        String first = list();
        assertThat(first)
                .startsWith("# To do: knot\n")
                .contains(
                        "\n## On the coach\n\n- [ ] Scrape off the label `House battery switch`, L1 Gear, on the front wall. <!-- ")
                .contains("\n## To print and swap\n\n- [ ] Print the book and swap");
        assertThat(said("changes", "knot", "--work-list")).contains("Nothing new in " + LIST);
        assertThat(list()).isEqualTo(first);

        String ticked = first.replace("- [ ] Scrape off", "- [X] Scrape off")
                        .replace("## To print and swap\n", "Ask for the heat gun.\n\n## To print and swap\n")
                        .replaceFirst("(- \\[ \\] Print the book[^\n]*\n)", "$1  - two copies\n")
                + "\n## For the yard\n\n- [ ] sweep\n";
        Files.writeString(fleet.resolve(LIST), ticked);
        edit(UNIT, "name: R1 Batteries", "name: R1 House batteries");
        said("changes", "knot", "--work-list");
        assertThat(list())
                .contains("- [x] Scrape off the label `House battery switch`")
                .contains("- [ ] Print anew and swap the label `R1 House batteries`")
                .contains("\nAsk for the heat gun.\n", "\n  - two copies\n", "\n## For the yard\n\n- [ ] sweep\n");
        String second = list();
        said("changes", "knot", "--work-list");
        assertThat(list()).isEqualTo(second);

        // Put back where it was: what is ticked stays, what is not goes.
        edit(UNIT, "where: on the rear wall", "where: on the front wall");
        edit(UNIT, "name: R1 House batteries", "name: R1 Batteries");
        said("changes", "knot", "--work-list");
        assertThat(list())
                .doesNotContain("Stick on", "R1 House batteries", "Print the book")
                .contains("\n## Done\n\n- [x] Scrape off the label `House battery switch`")
                .contains("Ask for the heat gun.", "two copies", "- [ ] sweep");
    }

    @Test
    void whatWasDoneForAnotherChangeIsDueAgain() throws IOException {
        moved();
        said("changes", "knot", "--work-list");
        Files.writeString(fleet.resolve(LIST), list().replace("- [ ]", "- [x]"));
        edit(UNIT, "where: on the rear wall", "where: on the floor");
        said("changes", "knot", "--work-list");

        assertThat(list()).contains("- [ ] Stick on the label `House battery switch`, L1 Gear, on the floor.");
    }

    @Test
    void whatIsDoneStaysDoneUnderANewName() throws IOException {
        moved();
        edit(UNIT, "plate: HOUSE", "plate: COACH");
        edit(UNIT, "doors:\n", "  - {id: shelf, name: Shelf, side: right, access: free, opens: Lift it.}\n\ndoors:\n");
        said("changes", "knot", "--work-list");
        Files.writeString(
                fleet.resolve(LIST),
                list().replace("- [ ]", "- [x]")
                        .replaceFirst("(Stick on the label `Shelf`[^\n]*)", "$1\n  - by the rear wheel")
                        .replaceFirst("- \\[x](?= Stick on the label `House)", "- [ ]"));
        for (String ids : List.of("shelf rack", "house-battery-switch main-switch")) {
            String[] each = ids.split(" ");
            assertThat(said("rename", "knot", each[0], each[1], "--yes")).contains("+++ " + LIST, "exit 0\n");
        }
        // Of the bay that a switch is in nothing is to be done.
        assertThat(said("rename", "knot", "l1-gear", "l1-bay", "--yes")).doesNotContain(LIST);

        said("changes", "knot", "--work-list");
        assertThat(list())
                .contains("- [ ] Stick on the label `House battery switch`", " <!-- stick-on/switch/main-switch ")
                .contains("- [x] Scrape off the label `House battery switch`", "\n  - by the rear wheel\n")
                .contains("- [x] Look up on the coach, switch main-switch: ", " <!-- look-up/switch/main-switch ")
                .contains(" <!-- stick-on/compartment/rack ")
                .doesNotContain("/shelf ", "/house-battery-switch ");
        assertThat(WorkList.open(list())).as(list()).isEqualTo(1);
    }

    @Test
    void workIsNotForgottenWithAnEdition() throws IOException {
        moved();
        said("changes", "knot", "--work-list");
        said("issue", "knot", "--note", "Moved", "--date", "2026-06-01");

        assertThat(said("changes", "knot", "--work-list")).startsWith("knot: edition 1 and now, 1 change\n");
        Files.writeString(fleet.resolve(LIST), list().replace("- [ ]", "- [x]"));
        assertThat(said("changes", "knot", "--work-list")).startsWith("knot: edition 2 and now say the same.\n");
        assertThat(list()).contains("<!-- since edition 2 -->", "\n## Done\n\n- [x] Scrape off");
    }

    @Test
    void aListThatCannotBeReadIsToldAndNothingIsOverwritten() throws IOException {
        moved();
        said("changes", "knot", "--work-list");
        String whole = list();

        spoilt(
                whole.replace("## On the coach", "<<<<<<< ours\n## On the coach")
                        .getBytes(StandardCharsets.UTF_8),
                "error: `<<<<<<< ours` is left of a merge [conflict-marker]");
        spoilt(
                whole.replaceFirst("- \\[ ]", "- [v]").getBytes(StandardCharsets.UTF_8),
                "error: `[v]` is neither `[ ]`, to be done, nor `[x]`, done [work-list-unreadable]");
        spoilt(new byte[] {(byte) 0xC3, 0x28}, "error: the file cannot be read as UTF-8 text [work-list-unreadable]");

        // What a merge has doubled is told once.
        Files.writeString(fleet.resolve(LIST), whole.replaceFirst("(- \\[ ])( Scrape off[^\n]*\n)", "$1$2- [x]$2"));
        said("changes", "knot", "--work-list");
        assertThat(list()).isEqualTo(whole.replace("- [ ] Scrape", "- [x] Scrape"));

        assertThat(said("changes", "knot", "--work-list", "--to", "1"))
                .startsWith("`--work-list` is of what the files say now")
                .endsWith("exit 2\n");
    }

    private void spoilt(byte[] bytes, String finding) throws IOException {
        Files.write(fleet.resolve(LIST), bytes);
        assertThat(said("changes", "knot", "--work-list"))
                .contains(LIST + ":", finding)
                .endsWith("exit 1\n");
        assertThat(Files.readAllBytes(fleet.resolve(LIST))).isEqualTo(bytes);
    }

    @Test
    void nothingToBeDoneBeginsNoList() {
        assertThat(said("changes", "knot", "--work-list"))
                .contains("Nothing new in " + LIST + ": 0 to be done.")
                .endsWith("exit 0\n");
        assertThat(fleet.resolve(LIST)).doesNotExist();
    }

    @Test
    void whoHoldsAnOlderEditionIsToldByNumber() throws IOException {
        moved();
        Path bookings = fleet.resolve("bookings.csv");
        String head = "booking,renter,coach,pickup,return,language,edition sent\n";
        Files.writeString(
                bookings,
                head + "B-2,Jane Doe,knot,2026-07-02 15:00,2026-07-09 10:00,,1\n"
                        + "B-1,John Doe,knot,2026-06-02 15:00,2026-06-09 10:00,en-GB,1\n"
                        + "B-3,Past,knot,2026-01-02 15:00,2026-01-09 10:00,,1\n"
                        + "B-4,None,knot,2026-08-02 15:00,2026-08-09 10:00,,\n");
        String[] call = {"changes", "knot", "--bookings", bookings.toString(), "--as-of", "2026-05-03"};

        assertThat(said(call))
                .contains(
                        "2 bookings to come with an older edition\n\nbooking B-1, pickup 2026-06-02 15:00, edition 1\n"
                                + "The handbook of Knot has changed since edition 1, which you have.\nNew or changed: ")
                .contains("House battery switch", "/knot/\n\nbooking B-2, ")
                .doesNotContain("Doe", "B-3", "B-4")
                .endsWith("exit 0\n");
        edit(UNIT, "where: on the rear wall", "where: on the front wall");
        edit(UNIT, "where: below the driver's seat", "where: below the bed");
        Files.writeString(
                bookings,
                head + "B-1,Jane Doe,knto,2026-06-02 15:00,2026-06-09 10:00,,1\n"
                        + "B-2,John Doe,knot,2026-06-02 15:00,2026-06-09 10:00,,7\n"
                        + "B-3,John Doe,knot,2026-06-02 15:00,2026-06-09 10:00,,1\n");
        assertThat(said(call))
                .contains("1 booking to come with an older edition\n\nbooking B-3,")
                .containsPattern("New or changed: [^\n]*(Fire|Use the extinguisher)[;.,]")
                .contains(
                        "bookings.csv:2:1: error: there is no coach `knto` [booking-unreadable]",
                        "did you mean `knot`?")
                .contains("bookings.csv:3:1: error: there is no edition 7 of `knot` [booking-unreadable]")
                .doesNotContain("Doe")
                .endsWith("exit 1\n");
        assertThat(said("changes", "knot", "--bookings", "none.csv", "--as-of", "2026-05-03"))
                .startsWith("There is no file `none.csv`.")
                .endsWith("exit 2\n");
    }

    private void swap(String one, String other) throws IOException {
        edit(UNIT, one, "~");
        edit(UNIT, other, one);
        edit(UNIT, "~", other);
    }

    /** All that is to be done with labels, as the list has it. */
    private List<String> labels() throws IOException {
        assertThat(said("changes", "knot", "--work-list")).contains("Wrote " + LIST);
        return list().lines()
                .filter(line -> line.contains("the label `"))
                .map(line -> line.replaceFirst("^- \\[ ] (.*)\\. <!-- .*$", "$1"))
                .toList();
    }

    @Test
    void eachOfTwoDoorsThatSwapNamesGetsAnotherLabel() throws IOException {
        swap("name: L1 Gear", "name: L2 Spare");

        assertThat(labels())
                .containsExactly(
                        "Scrape off the label `L1 Gear`, left side, 12 ft from the front",
                        "Stick on the label `L2 Spare`, left side, 12 ft from the front",
                        "Scrape off the label `L2 Spare`, left side, 16 ft from the front",
                        "Stick on the label `L1 Gear`, left side, 16 ft from the front");
    }

    @Test
    void eachOfTwoDoorsThatSwapCodesGetsAnotherLabel() throws IOException {
        edit(UNIT, "name: L1 Gear", "name: L2 Gear");
        edit(UNIT, "name: L2 Spare", "name: L1 Spare");

        assertThat(labels())
                .containsExactly(
                        "Scrape off the label `L1 Gear`, left side, 12 ft from the front",
                        "Stick on the label `L2 Gear`, left side, 12 ft from the front",
                        "Scrape off the label `L2 Spare`, left side, 16 ft from the front",
                        "Stick on the label `L1 Spare`, left side, 16 ft from the front");
    }

    @Test
    void eachOfTwoDoorsThatSwapIdsGetsAnotherLabel() throws IOException {
        swap("id: l1-gear\n", "id: l2-spare,");
        edit(UNIT, "id: l2-spare,", "id: l2-spare\n");
        edit(UNIT, "id: l1-gear\n", "id: l1-gear,");
        edit(UNIT, "in: l1-gear", "in: l2-spare");
        List<String> labels = labels();

        assertThat(labels)
                .contains(
                        "Scrape off the label `L1 Gear`, left side, 12 ft from the front",
                        "Stick on the label `L2 Spare`, left side, 16 ft from the front",
                        "Scrape off the label `L2 Spare`, left side, 16 ft from the front",
                        "Stick on the label `L1 Gear`, left side, 12 ft from the front");
        // That each was called as the other one is, is an error, so that only facts are compared.
        edit(UNIT, "id: l2-spare\n", "id: l2-spare\n    formerly: [l1-gear]\n");
        edit(UNIT, "{id: l1-gear,", "{id: l1-gear, formerly: [l2-spare],");
        assertThat(said("changes", "knot", "--work-list"))
                .contains("`knot` has 2 errors: only its facts were compared.")
                .endsWith("exit 1\n");
        assertThat(list()).contains(labels);
    }

    @Test
    void eachOfTwoDoorsThatSwapPlacesOnOneSideGetsItsLabelThere() throws IOException {
        swap("from-front: 12 ft", "from-front: 16 ft");

        assertThat(labels())
                .containsExactly(
                        "Scrape off the label `L1 Gear`, left side, 12 ft from the front",
                        "Stick on the label `L1 Gear`, left side, 16 ft from the front",
                        "Scrape off the label `L2 Spare`, left side, 16 ft from the front",
                        "Stick on the label `L2 Spare`, left side, 12 ft from the front");
    }

    @Test
    void doorsThatAreMeasuredAnewKeepTheirLabels() throws IOException {
        edit(UNIT, "from-front: 12 ft", "from-front: 12 ft 7 in");
        edit(UNIT, "from-front: 16 ft", "from-front: 15 ft 11 in");

        assertThat(said("changes", "knot"))
                .contains("moved: compartment l1-gear")
                .doesNotContain("label `");
    }

    @Test
    void aBayThatGoesThroughByNowHasALabelOnEachDoor() throws IOException {
        edit(UNIT, "name: R1 Batteries", "name: R1 and B1 Batteries");

        assertThat(labels())
                .containsExactly(
                        "Scrape off the label `R1 Batteries`, right side, 13 ft from the front",
                        "Stick on the label `R1 and B1 Batteries`, right side, 13 ft from the front");
    }

    @Test
    void aSwitchOnAnotherPanelTakesItsLabelThere() throws IOException {
        edit(
                UNIT,
                "where: on the front wall\n",
                "where: on the front wall\n    panel: Main\n    row: 1\n    column: 2\n");
        said("issue", "knot", "--note", "Panel", "--date", "2026-05-03");
        edit(UNIT, "panel: Main\n    row: 1\n", "panel: Galley\n    row: 3\n");

        assertThat(labels())
                .containsExactly(
                        "Scrape off the label `House battery switch`, L1 Gear, on the front wall, Main, row 1, column 2",
                        "Stick on the label `House battery switch`, L1 Gear, on the front wall, Galley, row 3, column 2");
    }
}
