package bayfolio.read;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.catalog.Catalogs;
import bayfolio.check.Check;
import bayfolio.check.CheckedCoach;
import bayfolio.finding.Finding;
import bayfolio.model.Features;
import bayfolio.model.Unit;
import bayfolio.procedure.Procedure;
import bayfolio.render.theme.Theme;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What equipment is stands in files: a fleet adds a kind of its own, and what is wrong with one leaves the others alone. */
final class EquipmentTest {
    private static final String SAUNA = """
            ---
            id: sauna
            name: Tent sauna
            meaning: A tent with a stove of its own, beside the coach
            system: outside
            there-when: appliance[what = sauna]
            takes: [hand]
            gives: [heat]
            turn: sauna
            stands: outside
            set-up-by: [put-up-sauna]
            undone-by: [take-down-sauna]
            set-up-after:
              - what: [awning]
                why: The awning would hang over its pipe.
                must: yes
            needs-no-guide: yes
            can-be: [stowed, out]
            states: {driving: stowed, carried: stowed, refueling: any, ferry: any, asleep: any, unattended: any, wind: stowed, frost: any, pickup: stowed, return: stowed, standing: any}
            appliance:
              energy: [hand]
              called: [sauna]
              dry: yes
            ---
            ## Wind
            1. Fold the sauna, cold: [](procedure:take-down-sauna). {#sauna-wind}
            """;

    @TempDir
    private Path folder;

    @BeforeEach
    void copy() throws Exception {
        DemoFleet.copyWhole(folder);
    }

    @Test
    void aFleetAddsAKindWithoutAProgrammer() throws Exception {
        sauna();
        write("units/shared/equipment/sauna.md", SAUNA);

        Check check = check();

        assertThat(check.findings().all().stream().filter(Finding::isError)).isEmpty();
        assertThat(check.fleet().units().stream()
                        .filter(unit -> unit.has("sauna"))
                        .map(Unit::id))
                .containsExactly("redpoll");
        assertThat(steps(check, "redpoll", "set-up-on-site")).containsSubsequence("awning-manual-extend", "sauna");
        assertThat(steps(check, "redpoll", "break-camp")).contains("sauna");
        assertThat(steps(check, "redpoll", "secure-for-wind")).contains("sauna-wind");
        assertThat(steps(check, "turnstone", "secure-for-wind")).doesNotContain("sauna-wind");
    }

    /** What is set up must be undone: told at the coach that has it. */
    @Test
    void aKindWithoutItsWayBackIsTold() throws Exception {
        sauna();
        write("units/shared/equipment/sauna.md", SAUNA.replace("undone-by: [take-down-sauna]\n", ""));

        assertThat(check().findings().all())
                .filteredOn(finding -> finding.code().equals("no-way-back"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.message()).contains("`sauna` (Tent sauna)");
                    assertThat(finding.at().file().path()).isEqualTo("units/redpoll/unit.yaml");
                });
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', textBlock = """
            "wind: stowed"                   | "strom: stowed"                     | unknown-key              | 19
            "wind: stowed"                   | "wind: sitting"                     | wrong-value              | 19
            "wind: stowed"                   | "wind: locked"                      | equipment-against-itself | 19
            "undone-by: [take-down-sauna]"   | "undone-by: [put-up-sauna]"         | equipment-against-itself | 12
            "undone-by: [take-down-sauna]"   | "undone-by: [take-down-suana]"      | unknown-reference        | 12
            "what: [awning]"                 | "what: [awnign]"                    | unknown-reference        | 14
            "appliance[what = sauna]"        | "aplliance[what = sauna]"           | unknown-kind             | 6
            "appliance[what = sauna]"        | "appliance[waht = sauna]"           | unknown-key              | 6
            "appliance[what = sauna]"        | "sauna"                             | feature-of-itself        | 6
            "takes: [hand]"                  | "takes: [hands]"                    | wrong-value              | 7
            "## Wind"                        | "## Storm"                          | unknown-situation        | 25
            """)
    void whatIsWrongIsToldAtItsLineAndHarmsNoOtherKind(String right, String wrong, String code, int line)
            throws Exception {
        Map<String, Features> before = features(check());
        sauna();
        write("units/shared/equipment/sauna.md", SAUNA.replace(right, wrong));

        Check check = check();

        assertThat(check.findings().all())
                .filteredOn(finding -> finding.code().equals(code))
                .anySatisfy(finding -> {
                    assertThat(finding.at().file().path()).isEqualTo("units/shared/equipment/sauna.md");
                    assertThat(finding.at().line()).isEqualTo(line);
                });
        before.forEach((coach, features) -> assertThat(
                        Objects.requireNonNull(features(check).get(coach)).had())
                .as(coach)
                .containsAll(features.had()));
    }

    /** A circle of what must come first, over two files. */
    @Test
    void aCircleIsToldWithBothLines() throws Exception {
        sauna();
        write("units/shared/equipment/sauna.md", SAUNA);
        write(
                "units/shared/equipment/sauna-stove.md",
                SAUNA.replace("id: sauna\n", "id: sauna-stove\n")
                        .replace("turn: sauna\n", "turn: sauna-stove\n")
                        .replace("what: [awning]", "what: [sauna]")
                        .replace("there-when: appliance[what = sauna]", "there-when: item[role = fire-extinguisher]")
                        .replaceAll("appliance:\n(  .*\n)+", ""));
        write("units/shared/equipment/sauna.md", SAUNA.replace("what: [awning]", "what: [sauna-stove]"));

        assertThat(check().findings().all())
                .filteredOn(finding -> finding.code().equals("equipment-against-itself"))
                .singleElement()
                .satisfies(finding ->
                        assertThat(finding.at() + finding.message()).contains("sauna.md:14", "sauna-stove.md:14"));
    }

    @Test
    void twoFilesForOneKindAreTold() throws Exception {
        write("units/shared/equipment/sauna.md", SAUNA);
        write("units/shared/equipment/steam.md", SAUNA);

        assertThat(check().findings().all())
                .filteredOn(finding -> finding.code().equals("two-files-for-one-kind"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.at().file().path()).endsWith("steam.md"));
    }

    /** A coach says of itself what its equipment forbids. */
    @Test
    void anOrderAgainstWhatMustBeIsToldWithBothLines() throws Exception {
        Path unit = folder.resolve("units/redpoll/unit.yaml");
        Files.writeString(unit, Files.readString(unit).replace("order: [step, plug]", "order: [plug, chocks]"));

        assertThat(check().findings().all())
                .filteredOn(finding -> finding.code().equals("order-against-facts"))
                .isNotEmpty()
                .allSatisfy(finding -> {
                    assertThat(finding.at().file().path()).isEqualTo("units/redpoll/unit.yaml");
                    assertThat(finding.message()).contains("equipment/").containsPattern("\\.md:\\d+");
                });
    }

    private void sauna() throws Exception {
        Path unit = folder.resolve("units/redpoll/unit.yaml");
        Files.writeString(
                unit,
                Files.readString(unit)
                        .replace("  appliances: 10\n", "  appliances: 11\n")
                        .replace("\nappliances:\n", """

                                appliances:
                                  - id: sauna
                                    name: Tent sauna
                                    what: sauna
                                    energy: [hand]
                                """));
        write("units/shared/procedures/put-up-sauna.md", procedure("put-up-sauna", "Put up the sauna"));
        write("units/shared/procedures/take-down-sauna.md", procedure("take-down-sauna", "Take down the sauna"));
    }

    private static String procedure(String id, String title) {
        return """
                ---
                id: %s
                title: %s
                stage: living
                who: renter
                when: sauna
                ---
                Stand beside the tent.

                1. Pull the red strap. {#red-strap}

                ## Done when
                The strap is tight.

                ## If not
                Call [](phone:hours).
                """.formatted(id, title);
    }

    private void write(String path, String text) throws Exception {
        DemoFleet.write(folder.resolve(path), text);
    }

    private Check check() throws Exception {
        FleetReader.Reading reading = FleetReader.read(Folders.at(folder));
        Catalogs words = Theme.load(folder, Theme.BUILT_IN).catalogs();
        return Check.of(reading.fleet(), reading.library(), words, reading.findings());
    }

    private static Map<String, Features> features(Check check) {
        return check.fleet().units().stream().collect(Collectors.toMap(Unit::id, Unit::features));
    }

    private static List<String> steps(Check check, String coach, String procedure) {
        CheckedCoach checked = check.fleet().units().stream()
                .filter(unit -> unit.id().equals(coach))
                .findFirst()
                .map((Function<Unit, CheckedCoach>) check::of)
                .orElseThrow();
        Procedure filled = checked.procedures().stream()
                .filter(it -> it.id().equals(procedure))
                .findFirst()
                .orElseThrow();
        return filled.steps().map(step -> step.id()).toList();
    }
}
