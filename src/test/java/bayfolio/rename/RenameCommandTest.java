package bayfolio.rename;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bayfolio.Folders;
import bayfolio.read.FleetReader;
import bayfolio.render.theme.Theme;
import bayfolio.source.Digest;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code rename} on a small fleet with each kind of file that may name a thing, and whatever is against it. */
final class RenameCommandTest {
    private static final String MODEL = """
            # All sisters.
            body: van
            region: north-america
            drive-side: left
            size: {length: 19 ft 7 in, width: 6 ft 9 in, height: 9 ft 2 in}
            tires: {size: 225/75R16, front-pressure: 65 psi}
            compartments:
              - {id: bay, name: Bay, side: left}   # the only one
            switches:
              - id: pump
                name: Pump
                roles: ["water-pump-switch"]
                make: rocker
                access: free
                in: 'bay'
                on-look: its lamp is lit
                off-look: its lamp is dark
            tanks:
              - {id: fresh, name: Fresh tank, roles: [fresh], contents: fresh, capacity: 40 gal}
            items:
              - {id: broom, name: Broom, in: bay}
              - {id: mop, name: Mop, in: bay}
            """;

    private static final String OWN = """
            id: knot
            model: twin # of 2023
            name: Knot
            leaves-out: [broom]
            switches:
              - id: pump # the same
                in: bay
                where: behind the flap
                model-said: {in: %s}
              - {id: lamp, name: Lamp, roles: [tv], make: rocker, access: free, in: bay}
            notes:
              - {text: It hums., about: pump}
            photos:
              - id: bay-photo
                name: Bay
                file: bay.jpg
                alt: The bay
                pointers: [{across: 10 %%, down: 20 %%, thing: bay}, {across: 30 %%, down: 20 %%, thing: pump}]
            """.formatted(Digest.of("bay"));

    private static final String GUIDE = """
            ---
            id: air-the-bay
            title: Air the bay
            stage: living
            who: renter
            when: every coach
            ---
            Stand at [](compartment:bay "open") and not at [the bay](compartment:bay).
            {{#any.compartment.bay}}
            It is called {{compartment.bay.name}}.
            {{/any.compartment.bay}}

            1. Open [](compartment:bay): the bay of {{unit.name}}. {#open}
            {{#compartment.bay}}
            1. Look into {{name}}, `bay`, see {{switch.pump.in.name}}. {#look}
            {{/compartment.bay}}

            ## Done when

            It is dry.

            ## If not

            Call [](phone:hours).
            """;

    @TempDir
    Path folder;

    private String out = "";
    private String err = "";

    @BeforeEach
    void aFleet() throws IOException {
        write("units/fleet.yaml", FleetReader.LEAST_FLEET);
        write("units/models/twin/model.yaml", MODEL);
        write("units/knot/unit.yaml", OWN);
        write("units/ruff/unit.yaml", "id: ruff\nmodel: twin\nname: Ruff\n");
        write("units/knot/procedures/air-the-bay.md", GUIDE);
    }

    private void write(String path, String text) throws IOException {
        Path file = folder.resolve(path);
        Files.createDirectories(file.toAbsolutePath().getParent());
        Files.writeString(file, text);
    }

    private String text(String path) throws IOException {
        return Files.readString(folder.resolve(path));
    }

    private Map<String, String> all() throws IOException {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                all.put(folder.relativize(file).toString(), Files.readString(file, StandardCharsets.ISO_8859_1));
            }
        }
        return all;
    }

    private void run(int exit, String... words) {
        StringWriter said = new StringWriter();
        StringWriter told = new StringWriter();
        List<String> all = new ArrayList<>(List.of("rename"));
        all.addAll(List.of(words));
        all.addAll(List.of("--fleet", folder.toString()));
        int is = Folders.run(new PrintWriter(said), new PrintWriter(told), all.toArray(String[]::new));
        out = said.toString();
        err = told.toString();
        assertThat(is).as(out + err).isEqualTo(exit);
    }

    private void refused(int exit, String... words) throws IOException {
        Map<String, String> before = all();
        run(exit, words);
        assertThat(all()).isEqualTo(before);
        assertThat(out).isEmpty();
    }

    @Test
    void aThingOfAModelIsRenamedWhereverItsCoachesNameIt() throws Exception {
        run(0, "knot", "bay", "side-bay", "--yes");

        assertThat(text("units/models/twin/model.yaml"))
                .isEqualTo(MODEL.replace(
                                "{id: bay, name: Bay, side: left}",
                                "{id: side-bay, name: Bay, side: left, formerly: [bay]}")
                        .replace("in: 'bay'", "in: side-bay".replace("side-bay", "'side-bay'"))
                        .replace("in: bay}", "in: side-bay}"));
        assertThat(text("units/knot/unit.yaml"))
                .isEqualTo(OWN.replace("in: bay", "in: side-bay")
                        .replace("thing: bay", "thing: side-bay")
                        .replace(Digest.of("bay"), Digest.of("side-bay")));
        assertThat(text("units/knot/procedures/air-the-bay.md"))
                .isEqualTo(GUIDE.replace("compartment:bay", "compartment:side-bay")
                        .replace("compartment.bay", "compartment.side-bay"));
        assertThat(text("units/ruff/unit.yaml")).doesNotContain("bay");
        assertThat(out)
                .startsWith("--- units/knot/procedures/air-the-bay.md\n+++ units/knot/procedures/air-the-bay.md\n@@ -")
                .contains("\n-Stand at [](compartment:bay \"open\")", "\n+Stand at [](compartment:side-bay \"open\")")
                .endsWith("It is a thing of the model `twin`, so this is for all of its coaches: knot, ruff.\n"
                        + "Renamed: compartment `bay` is now called `side-bay`, in 3 files.\n");
    }

    @Test
    void aDigestOfWhatWasOlderStaysSo() throws Exception {
        write("units/knot/unit.yaml", OWN.replace(Digest.of("bay"), "0123456789ab"));

        run(0, "ruff", "bay", "side-bay", "--yes");

        assertThat(text("units/knot/unit.yaml")).contains("model-said: {in: 0123456789ab}");
    }

    @Test
    void whatIsLeftOutIsLeftOutUnderItsNewName() throws Exception {
        run(0, "ruff", "broom", "yard-broom", "--yes");

        assertThat(text("units/knot/unit.yaml"))
                .isEqualTo(OWN.replace("leaves-out: [broom]", "leaves-out: [yard-broom]"));
    }

    @Test
    void whatIsDescribedAnewSaysItselfWhatItWasCalled() throws Exception {
        String anew = "items:\n  - {id: mop, name: Short mop, in: bay} # ours\nmodel-said: {mop: 0123456789ab}\n";
        write("units/knot/unit.yaml", OWN.replace("leaves-out: [broom]", "leaves-out: [broom, mop]") + anew);

        run(0, "knot", "mop", "swab", "--yes");

        assertThat(text("units/knot/unit.yaml"))
                .isEqualTo(OWN.replace("leaves-out: [broom]", "leaves-out: [broom, swab]")
                        + "items:\n  - {id: swab, name: Short mop, in: bay, formerly: [mop]} # ours\n"
                        + "model-said: {swab: 0123456789ab}\n");
    }

    @Test
    void aFileOfWindowsStaysOne() throws Exception {
        String before = "\uFEFF" + OWN.replace("\n", "\r\n");
        write("units/knot/unit.yaml", before);
        write("units/knot/procedures/air-the-bay.md", "\uFEFF" + GUIDE.replace("\n", "\r\n"));

        run(0, "knot", "pump", "water-pump", "--yes");

        assertThat(text("units/knot/unit.yaml"))
                .isEqualTo(before.replace("id: pump", "id: water-pump")
                        .replace("about: pump", "about: water-pump")
                        .replace("thing: pump", "thing: water-pump"));
        assertThat(text("units/knot/procedures/air-the-bay.md"))
                .isEqualTo("\uFEFF" + GUIDE.replace("\n", "\r\n").replace("switch.pump", "switch.water-pump"));
    }

    @Test
    void thereAndBackAndOn() throws Exception {
        run(0, "knot", "lamp", "light", "--yes");
        run(0, "knot", "light", "lantern", "--yes");
        assertThat(text("units/knot/unit.yaml")).contains("{id: lantern,", "formerly: [lamp, light]}");

        run(0, "knot", "lantern", "lamp", "--yes");
        assertThat(text("units/knot/unit.yaml"))
                .isEqualTo(OWN.replace("access: free, in: bay}", "access: free, in: bay, formerly: [light, lantern]}"));
    }

    @Test
    void translationsAreOfTheTextUnderItsNewName() throws Exception {
        String body = GUIDE.substring(GUIDE.indexOf("---\n", 4) + 4);
        String head = "---\nof: air-the-bay\ntitle: Bucht lüften\nsource: %s # of May\n---\n";
        String digest = Digest.of("Air the bay\n" + body.stripTrailing());
        write("units/knot/translations/de/procedures/air-the-bay.md", head.formatted(digest) + body);
        write("units/knot/translations/fr/procedures/air-the-bay.md", head.formatted("0123456789ab") + body);
        String facts = """
                texts:
                  - {of: compartment/bay/name, source: %s, text: Bucht} # ours
                  - {of: switch/pump/name, source: %s, text: Pumpe}
                """.formatted(Digest.of("Bay"), Digest.of("Pump"));
        write("units/models/twin/translations/de/facts.yaml", facts);

        run(0, "knot", "bay", "side-bay", "--yes");

        String named = body.replace("compartment:bay", "compartment:side-bay")
                .replace("compartment.bay", "compartment.side-bay");
        String now = Digest.of("Air the bay\n" + named.stripTrailing());
        assertThat(text("units/knot/translations/de/procedures/air-the-bay.md")).isEqualTo(head.formatted(now) + named);
        assertThat(text("units/knot/translations/fr/procedures/air-the-bay.md"))
                .isEqualTo(head.formatted("0123456789ab") + named);
        assertThat(text("units/models/twin/translations/de/facts.yaml"))
                .isEqualTo(facts.replace("compartment/bay/", "compartment/side-bay/"));
    }

    @Test
    void whatIsSeenInAFilmIsSeenUnderItsNewName() throws Exception {
        String cues =
                "WEBVTT\n\nbay\n00:00:01.000 --> 00:00:05.000\nThe bay\n\npump\n00:00:06.000 --> 00:00:09.000\nbay\n";
        write("units/knot/films/round.vtt", cues);

        run(0, "knot", "bay", "side-bay", "--yes");

        assertThat(text("units/knot/films/round.vtt")).isEqualTo(cues.replaceFirst("bay\n00", "side-bay\n00"));
    }

    @Test
    void workThatIsToBeDoneIsKnownUnderTheNewName() throws Exception {
        String list = """
                # To do: ruff
                <!-- since edition 1 -->

                ## Done

                - [x] Scrape off the label `Bay`, bay. <!-- scrape-off/compartment/bay 0123456789ab -->
                  - compartment/bay, both doors
                - [ ] Translate. <!-- text/de/compartment/bay/name 0123456789ab -->
                - [ ] Look up. <!-- look-up/switch/bay 0123456789ab -->
                - [ ] Take it again. <!-- photo/bay-photo 0123456789ab -->
                """.replace("\n", "\r\n");
        write("units/ruff/editions/to-do.md", list);

        run(0, "knot", "bay", "side-bay", "--yes");

        assertThat(text("units/ruff/editions/to-do.md"))
                .isEqualTo(list.replace("-off/compartment/bay ", "-off/compartment/side-bay ")
                        .replace("de/compartment/bay/", "de/compartment/side-bay/"));
        run(0, "knot", "bay-photo", "front", "--yes");
        assertThat(text("units/ruff/editions/to-do.md")).contains("<!-- photo/bay-photo ");
        write("units/knot/editions/to-do.md", "<<<<<<< ours\n" + list);
        refused(1, "knot", "front", "rear", "--yes");
        assertThat(err)
                .contains("units/knot/editions/to-do.md:1:1: error: `<<<<<<< ours` is left of a merge")
                .endsWith("Not all files that hold the name can be read. Nothing was written.\n");
    }

    @Test
    void aRoleOfThatWordStaysWhatItIs() throws Exception {
        String own = GUIDE.replace("`bay`", "[](tank:fresh), {{tank.fresh.capacity}}");
        write("units/knot/procedures/air-the-bay.md", own);

        run(0, "knot", "fresh", "front-tank", "--yes");

        assertThat(text("units/models/twin/model.yaml"))
                .contains(
                        "{id: front-tank, name: Fresh tank, roles: [fresh], contents: fresh, capacity: 40 gal, formerly: [fresh]}");
        assertThat(text("units/knot/procedures/air-the-bay.md")).isEqualTo(own);
    }

    @Test
    void whatStandsAtTheSiteIsRenamedForAllCoaches() throws Exception {
        write("units/knot/procedures/air-the-bay.md", GUIDE.replace("`bay`", "[](switch:post-breaker)"));
        write("units/fleet.yaml", FleetReader.LEAST_FLEET.replace("id: site-breaker", "id: post-breaker"));

        run(0, "ruff", "post-breaker", "pedestal-breaker", "--yes");

        assertThat(text("units/fleet.yaml")).contains("id: pedestal-breaker", "\n    formerly: [post-breaker]\n");
        assertThat(text("units/knot/procedures/air-the-bay.md")).contains("[](switch:pedestal-breaker)");
        assertThat(out).contains("It stands at the site, and is described once for the fleet");
    }

    @Test
    void nothingIsWrittenWhereNobodySaysYes() throws Exception {
        Map<String, String> before = all();

        run(1, "knot", "lamp", "light");

        assertThat(out).contains("+  - {id: light,");
        assertThat(err).isEqualTo("Nothing was written.\n");
        assertThat(all()).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "kont lamp light | There is no coach `kont`; the fleet has knot, ruff. Did you mean `knot`?",
                "knot lmap light | Coach `knot` has nothing called `lmap`. Did you mean `lamp`",
                "knot tank:lamp light | Coach `knot` has nothing called `tank:lamp`.",
                "knot swich:lamp light | There is no kind of thing `swich`. Did you mean `switch`?",
                "knot lamp lamp | `lamp` is its name already.",
                "knot lamp Lamp | `Lamp` is no id; an id is small letters, digits and single hyphens",
                "knot lamp a/../b | `a/../b` is no id",
                "knot lamp | Name the coach, the thing as it is called and as it is to be called.",
                "--role fresh | With --role name the role as it is and as it is to be.",
                "--role watr-can pot | There is no role `watr-can`. Did you mean `water-can` or `waste-can`?",
            })
    void whatMakesNoSenseIsRefused(String words, String sentence) throws Exception {
        refused(2, (words + " --yes").split(" "));

        assertThat(err).startsWith(sentence);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "knot lamp pump | `pump` is the id of another thing already, which the model has, at units/models/twin/model.yaml:10:9.",
                "knot lamp broom | `broom` is the id of another thing already, which the model has",
                "knot bay lamp | `lamp` is the id of another thing already: switch `lamp` of knot, at units/knot/unit.yaml:10:10.",
                "ruff bay lamp | `lamp` is the id of another thing already: switch `lamp` of knot",
                "knot lamp site-breaker | `site-breaker` is the id of another thing already: switch `site-breaker` of knot, at units/fleet.yaml:",
                "--role water-can fresh | `fresh` is another role already, at library/roles.yaml:",
                "--role fresh pot | `fresh` is a role that the program itself asks for by that name;",
            })
    void aNameThatIsNotFreeIsRefused(String words, String sentence) throws Exception {
        refused(1, (words + " --yes").split(" "));

        assertThat(err).startsWith(sentence).endsWith(" Nothing was written.\n");
    }

    @Test
    void aNameThatLeadsElsewhereIsRefused() throws Exception {
        run(0, "knot", "lamp", "light", "--yes");

        refused(1, "knot", "pump", "lamp", "--yes");

        assertThat(err)
                .startsWith("`lamp` is what switch `light` of knot was called before, at units/knot/unit.yaml:10:")
                .contains("old addresses of that name lead there. Choose another name, or take it out there");
        refused(2, "knot", "lamp", "light", "--yes");
        assertThat(err).startsWith("Coach `knot` has nothing called `lamp`. Did you mean `light`?");
    }

    @Test
    void oneOfTwoIsNamedByItsKind() throws Exception {
        String twice = OWN + "items:\n  - {id: lamp, name: Torch, in: bay}\n";
        write("units/knot/unit.yaml", twice);
        refused(2, "knot", "lamp", "light", "--yes");
        assertThat(err)
                .startsWith(
                        "`lamp` is the id of several things: `switch:lamp` at units/knot/unit.yaml:10:10, `item:lamp` at");
    }

    @Test
    void aTextThatWouldMeanSomethingElseIsRefused() throws Exception {
        String own = GUIDE.replace("`bay`", "[](switch:lamp), [](switch:water-pump-switch)");
        write("units/knot/procedures/air-the-bay.md", own);

        refused(1, "knot", "lamp", "water-pump-switch", "--yes");

        assertThat(err)
                .contains("units/knot/procedures/air-the-bay.md:")
                .endsWith("Under the new name something would not mean what it means now. Nothing was written.\n");
    }

    @Test
    void aFileThatCannotBeReadIsToldIfItHoldsTheName() throws Exception {
        write("units/ruff/procedures/other.md", "---\nid: [\n---\nSee [](compartment:bay).\n");
        refused(1, "knot", "bay", "side-bay", "--yes");
        assertThat(err)
                .contains("units/ruff/procedures/other.md:", "this is no YAML")
                .endsWith("Not all files that hold the name can be read. Nothing was written.\n");

        run(0, "knot", "lamp", "light", "--yes");
    }

    @Test
    void aSisterThatCannotBeReadIsTold() throws Exception {
        write("units/ruff/unit.yaml", "id: ruff\nmodel: twin\nname: Ruff\nitems: [\n  {id: bay\n");

        refused(1, "knot", "bay", "side-bay", "--yes");

        assertThat(err).contains("units/ruff/unit.yaml:");
        refused(1, "ruff", "bay", "side-bay", "--yes");
        assertThat(err)
                .contains("units/ruff/unit.yaml:")
                .endsWith("Coach `ruff` cannot be read. Nothing was written.\n");
    }

    @Test
    void whatAModelSaysOfAThingOfACoachKeepsItsName() throws Exception {
        write("units/models/twin/model.yaml", MODEL + "notes:\n  - {text: It shines., about: lamp}\n");
        write("units/knot/unit.yaml", OWN.replace("notes:\n  - {text: It hums., about: pump}\n", ""));

        refused(1, "knot", "lamp", "light", "--yes");

        assertThat(err)
                .contains("units/models/twin/model.yaml:24:31: error: ")
                .endsWith("Under the new name something would be wrong that is not now. Nothing was written.\n");
    }

    @Test
    void aRoleIsRenamedInEachFileOfTheFleetAndNoThingIs() throws Exception {
        String roles = Files.readString(Path.of("units/shared/roles.yaml"));
        String list = roles + "\n  - {id: tea-urn, kind: item, meaning: Boils water for tea} # ours\n";
        write("units/shared/roles.yaml", list);
        String kind = """
                ---
                id: tea-maker
                name: Urn
                meaning: A pot for tea
                system: inside
                there-when: item[role = tea-urn|water-can, count > 0] and not item[role = waste-can]
                features:
                  - id: tea
                    there-when: item[name, role = tea-urn]
                roles: [water-can, tea-urn]
                stands: inside
                needs-no-setting-up: yes
                needs-no-guide: yes
                ---
                ## Driving

                1. Empty [](item:tea-urn). {#empty}
                """;
        write("units/shared/equipment/tea-maker.md", kind);
        String shared = GUIDE.substring(0, GUIDE.indexOf("Stand at")).replace("air-the-bay", "make-tea")
                + "{{#item.tea-urn}}\n1. Fill {{name}}: [](item:tea-urn \"full\"). {#fill}\n{{/item.tea-urn}}\n";
        write("units/shared/procedures/make-tea.md", shared);
        String own = OWN.replace("leaves-out: [broom]", "leaves-out: [broom]\nnot-on-this-coach: [tea-urn, water-can]");
        write("units/knot/unit.yaml", own + "items: [{id: tea-urn, name: Thing, roles: [], in: bay}]\n");
        write(
                "units/ruff/unit.yaml",
                "id: ruff\nmodel: twin\nname: Ruff\nitems: [{id: urn, name: Urn, roles: [tea-urn], in: bay}]\n");
        String guide = GUIDE.replace("`bay`", "[](item:tea-urn)");
        write("units/knot/procedures/air-the-bay.md", guide);
        write("units/ruff/procedures/tea.md", guide.replace("air-the-bay", "tea"));
        String fleet = FleetReader.LEAST_FLEET
                + "notices: [{id: scale, text: Full of scale., since: 2026-05-01, roles: [tea-urn], about: []}]\n";
        write("units/fleet.yaml", fleet);

        run(0, "--role", "tea-urn", "tea-boiler", "--yes");

        assertThat(text("units/shared/roles.yaml"))
                .isEqualTo(list.replace(
                        "{id: tea-urn, kind: item, meaning: Boils water for tea}",
                        "{id: tea-boiler, kind: item, meaning: Boils water for tea, formerly: [tea-urn]}"));
        assertThat(text("units/shared/equipment/tea-maker.md")).isEqualTo(kind.replace("tea-urn", "tea-boiler"));
        assertThat(text("units/shared/procedures/make-tea.md")).isEqualTo(shared.replace("tea-urn", "tea-boiler"));
        assertThat(text("units/knot/unit.yaml"))
                .isEqualTo(own.replace("tea-urn", "tea-boiler")
                        + "items: [{id: tea-urn, name: Thing, roles: [], in: bay}]\n");
        assertThat(text("units/ruff/unit.yaml")).contains("id: urn", "roles: [tea-boiler]");
        assertThat(text("units/knot/procedures/air-the-bay.md")).isEqualTo(guide);
        assertThat(text("units/ruff/procedures/tea.md"))
                .contains("[](item:tea-boiler)")
                .doesNotContain("tea-urn");
        assertThat(text("units/fleet.yaml")).isEqualTo(fleet.replace("tea-urn", "tea-boiler"));

        write("units/ruff/unit.yaml", text("units/ruff/unit.yaml").replace("tea-boiler", "tea-urn"));
        refused(2, "--role", "tea-urn", "pot", "--yes");
        assertThat(err).startsWith("There is no role `tea-urn`. Did you mean `tea-boiler`?");
        write("units/ruff/unit.yaml", text("units/ruff/unit.yaml").replace("tea-urn", "tea-boiler"));
        run(0, "--role", "tea-boiler", "tea-urn", "--yes");
        assertThat(text("units/shared/roles.yaml"))
                .isEqualTo(list.replace("for tea}", "for tea, formerly: [tea-boiler]}"));
        assertThat(text("units/shared/equipment/tea-maker.md")).isEqualTo(kind);
    }

    @Test
    void aRoleOfTheProgramsOwnFilesIsToldWithItsPlaces() throws Exception {
        refused(1, "--role", "water-can", "canister", "--yes");

        assertThat(err)
                .contains(
                        "library/roles.yaml:", "this file is one that the program brings along, and cannot be changed")
                .endsWith("Not every place can be changed. Nothing was written.\n");
    }

    @Test
    void whereOneFileCannotBeWrittenAllStayAsTheyWere() throws Exception {
        Map<String, String> before = all();
        Path locked = folder.resolve("units/models/twin");
        Rename rename = Rename.ofThing(
                Folders.at(folder),
                "knot",
                "bay",
                "side-bay",
                Theme.load(folder, "harbor").catalogs());
        Files.writeString(locked.resolve("model.yaml"), MODEL + "# more\n");

        assertThatThrownBy(rename::make).hasMessageContaining("changed it meanwhile");

        Files.writeString(locked.resolve("model.yaml"), MODEL);
        assertThat(all()).isEqualTo(before);
    }
}
