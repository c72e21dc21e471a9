package bayfolio.cli;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Folders;
import bayfolio.read.FleetReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code show}, {@code confirm} and {@code take} on a sister: what she says, what her model says, and that nothing goes into that. */
class SistersCommandsTest {
    private static final String MODEL = """
            # All sisters.
            body: van
            region: north-america
            drive-side: left
            size: {length: 19 ft 7 in, width: 6 ft 9 in, height: 9 ft 2 in}
            tires: {size: 225/75R16, front-pressure: 65 psi}
            tanks:
              - {id: fresh, name: Fresh tank, contents: fresh, capacity: 40 gal}
            items:
              - {id: broom, name: Broom, where: in the entry}
            """;

    @TempDir
    Path folder;

    private Path sister;
    private String err = "";

    @BeforeEach
    void aSister() throws IOException {
        sister = folder.resolve("units/knot/unit.yaml");
        Files.createDirectories(sister.getParent());
        Files.createDirectories(folder.resolve("units/models/twin"));
        Files.writeString(folder.resolve("units/fleet.yaml"), FleetReader.LEAST_FLEET);
        Files.writeString(folder.resolve("units/models/twin/model.yaml"), MODEL);
        Files.writeString(sister, """
                id: knot
                model: twin # of 2023
                name: Knot
                leaves-out: [broom]
                tanks:
                  - id: fresh
                    capacity: 38 gal # measured
                """);
    }

    private String run(int exit, String... words) {
        StringWriter out = new StringWriter();
        StringWriter errors = new StringWriter();
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--fleet", folder.toString()));
        assertThat(Folders.run(new PrintWriter(out), new PrintWriter(errors), all.toArray(String[]::new)))
                .as(errors.toString())
                .isEqualTo(exit);
        err = errors.toString();
        return out.toString();
    }

    @Test
    void whatASisterIsStandsWithThePlaceOfEachLine() {
        assertThat(run(0, "show", "knot", "fresh")).isEqualToNormalizingNewlines("""
                tanks:
                  - id: fresh                                                   # units/knot/unit.yaml:6
                    name: Fresh tank                                            # units/models/twin/model.yaml:8
                    contents: fresh                                             # units/models/twin/model.yaml:8
                    capacity: 38 gal                                            # units/knot/unit.yaml:7
                """);
        assertThat(run(0, "show", "knot")).doesNotContain("broom").contains("front-pressure: 65 psi");
        assertThat(run(0, "show", "knot", "--changed")).isEqualToNormalizingNewlines("""
                tanks / fresh / capacity: 38 gal                                # units/knot/unit.yaml:7
                  the model: 40 gal                                             # units/models/twin/model.yaml:8
                left out: items / broom                                         # units/knot/unit.yaml:4
                  the model: {id: broom, name: Broom, where: in the entry}      # units/models/twin/model.yaml:10
                """);
    }

    @Test
    void whatIsNotThereIsToldWithTheNearName() {
        run(2, "show", "knut");
        assertThat(err).startsWith("There is no coach `knut`; the fleet has knot. Did you mean `knot`?");
        run(2, "show", "knot", "frehs");
        assertThat(err).startsWith("The coach has no thing and no key `frehs`. Did you mean `fresh`?");
    }

    @Test
    void whatIsConfirmedIsAskedAgainWhenTheModelChanges() throws IOException {
        assertThat(run(1, "check")).contains("[override-not-confirmed]");
        assertThat(run(0, "confirm", "knot"))
                .isEqualToNormalizingNewlines(
                        "tanks / fresh / capacity: 38 gal\n  the model: 40 gal\nConfirmed: 1 fact.\n");
        String said = Files.readString(sister);
        assertThat(said)
                .contains("model: twin # of 2023\n", "capacity: 38 gal # measured\n", "model-said:\n      capacity: ");
        assertThat(run(1, "check")).doesNotContain("override-not-confirmed", "model-changed-since");
        assertThat(run(0, "confirm", "knot")).isEqualToNormalizingNewlines("Nothing was to be confirmed.\n");
        assertThat(Files.readString(sister)).isEqualTo(said);
        assertThat(folder.resolve("units/models/twin/unit.schema.json"))
                .content()
                .contains("\"broom\"");

        Files.writeString(folder.resolve("units/models/twin/model.yaml"), MODEL.replace("40 gal", "42 gal"));
        assertThat(run(1, "check")).contains("it says now `42 gal`", "[model-changed-since]");
        run(0, "confirm", "knot", "fresh");
        assertThat(run(1, "check")).doesNotContain("model-changed-since");

        Files.writeString(sister, said.replace("    capacity: 38 gal # measured\n", "    heated: yes\n"));
        assertThat(run(1, "check")).contains("[digest-of-nothing]");
        run(0, "confirm", "knot");
        assertThat(Files.readString(sister)).doesNotContain("model-said");
    }

    @Test
    void aSpoiltModelIsToldAndNothingIsWritten() throws IOException {
        Files.writeString(folder.resolve("units/models/twin/model.yaml"), "tanks: [");
        String before = Files.readString(sister);

        run(1, "confirm", "knot");

        assertThat(err).contains("units/models/twin/model.yaml:2:1: error: this is no YAML", "Nothing was written.");
        assertThat(Files.readString(sister)).isEqualTo(before);
    }

    @Test
    void whatWasSeenOnASisterGoesIntoHerOwnFileAndNeverIntoTheModel() throws IOException {
        Path answers = Files.writeString(folder.resolve("survey-knot.json"), """
                {"form": "bayfolio-survey-1", "coach": "knot", "edition": "0123456789ab", "by": "yard",
                 "facts": [{"path": "tires / front-pressure", "was": "65 psi", "now": "60 psi", "when": "2026-05-02T09:30:00.000Z"}],
                 "compared": [], "pictures": []}
                """);

        String told = run(0, "take", answers.toString(), "--yes");

        assertThat(told).contains("+++ units/knot/unit.yaml");
        assertThat(Files.readString(folder.resolve("units/models/twin/model.yaml")))
                .isEqualTo(MODEL);
        assertThat(Files.readString(sister)).contains("front-pressure: 60 psi", "model-said:", "model: twin # of 2023");
        assertThat(run(0, "show", "knot", "tires")).contains("front-pressure: 60 psi", "size: 225/75R16");
        assertThat(run(1, "check")).doesNotContain("`tires / front-pressure`");
    }
}
