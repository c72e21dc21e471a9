package bayfolio.read;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Folders;
import bayfolio.catalog.Catalogs;
import bayfolio.check.Check;
import bayfolio.check.HostileInput;
import bayfolio.finding.Finding;
import bayfolio.render.theme.Theme;
import java.io.IOException;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever lies in a fleet folder, reading and checking it ends in findings and never throws. */
class BadInputTest {
    private static final String DUNLIN = "units/dunlin/unit.yaml";
    private static final String TURNSTONE = "units/turnstone/unit.yaml";
    private static final String FLEET = "units/fleet.yaml";
    private static final String PROCEDURE = "units/shared/procedures/use-water-pump.md";

    @TempDir
    Path root;

    @BeforeEach
    void copyTheDemoFleet() throws IOException {
        try (Stream<Path> paths = Files.walk(Path.of("units"))) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                Path copy = root.resolve(path);
                Files.createDirectories(copy.getParent());
                Files.copy(path, copy);
            }
        }
    }

    @Test
    void fleetFileMissing() throws Exception {
        Files.delete(root.resolve(FLEET));

        assertThat(findings()).contains("units/fleet.yaml:1:1: the file is missing [unreadable-file]");
    }

    @Test
    void unitFileMissing() throws Exception {
        Files.delete(root.resolve(DUNLIN));

        assertThat(findings()).contains("units/dunlin/unit.yaml:1:1: the file is missing [unreadable-file]");
    }

    @Test
    void unitFileIsAFolder() throws Exception {
        Files.delete(root.resolve(DUNLIN));
        Files.createDirectory(root.resolve(DUNLIN));

        assertThat(findings()).contains("units/dunlin/unit.yaml:1:1: this is no file [unreadable-file]");
    }

    @Test
    void noFolderAtAll() throws Exception {
        root = root.resolve("nowhere");

        assertThat(findings()).contains("units/fleet.yaml:1:1: the file is missing [unreadable-file]");
    }

    @Test
    void rolesAndWordsLeftOutComeFromTheProgram() throws Exception {
        List<String> before = findings();
        Files.delete(root.resolve("units/shared/roles.yaml"));
        Files.delete(root.resolve("units/shared/words.yaml"));

        assertThat(findings()).isEqualTo(before);
    }

    @Test
    void emptyFiles() throws Exception {
        write(FLEET, "");
        write(DUNLIN, "\n \n");
        write(TURNSTONE, "# nothing yet\n");
        write(PROCEDURE, "");

        assertThat(findings())
                .contains(
                        "units/fleet.yaml:1:1: the file is empty [unreadable-file]",
                        "units/dunlin/unit.yaml:1:1: the file is empty [unreadable-file]",
                        "units/turnstone/unit.yaml:1:1: the file says nothing [unreadable-file]",
                        PROCEDURE + ":1:1: the file is empty [unreadable-file]");
    }

    @Test
    void tabAsIndentation() throws Exception {
        write(DUNLIN, "id: dunlin\nsize:\n\tlength: 20 ft\n");

        assertThat(findings())
                .contains("units/dunlin/unit.yaml:3:1: this is no YAML: a tab stands where only"
                        + " spaces may stand [yaml-syntax]");
    }

    @Test
    void aBrokenBlockHidesNothingElseOfItsFile() throws Exception {
        replace(DUNLIN, "\nsize:\n", "\nsize: [\n");
        replace(DUNLIN, "\npeople:\n", "\npeple:\n");
        replace(DUNLIN, "contents: gray\n", "contents: grey\n");

        assertThat(findings())
                .hasSize(3)
                .anyMatch(told -> told.contains("[yaml-syntax]"))
                .anyMatch(told -> told.contains("`peple`"))
                .anyMatch(told -> told.contains("`grey`"));
    }

    @Test
    void aBrokenSharedFileMakesNothingElseSeemWrong() throws Exception {
        Files.writeString(root.resolve("units/shared/words.yaml"), "words: [\n");

        assertThat(findings())
                .singleElement()
                .asString()
                .contains("units/shared/words.yaml")
                .contains("[yaml-syntax]");
    }

    @Test
    void fileOverTheLimitIsNotReadIntoMemory() throws Exception {
        Path file = root.resolve(DUNLIN);
        Files.delete(file);
        try (SeekableByteChannel sparse = Files.newByteChannel(
                file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE, StandardOpenOption.SPARSE)) {
            sparse.position(200_000_000 - 1);
            sparse.write(UTF_8.encode("x"));
        }

        assertThat(findings())
                .contains("units/dunlin/unit.yaml:1:1: the file has 200000000 bytes; the most that is"
                        + " read is 1000000 [unreadable-file]");
    }

    @Test
    void aliasesThatSwellAreRefused() throws Exception {
        StringBuilder laughs = new StringBuilder("id: dunlin\na0: &a0 [lol, lol, lol, lol]\n");
        for (int i = 1; i <= 30; i++) {
            String before = "*a" + (i - 1);
            laughs.append("a%d: &a%d [%s, %s, %s]\n".formatted(i, i, before, before, before));
        }
        write(DUNLIN, laughs.toString());

        assertThat(findings()).anyMatch(told -> told.startsWith("units/dunlin/unit.yaml:") && told.contains("alias"));
    }

    @Test
    void aliasOfItselfIsRefused() throws Exception {
        write(DUNLIN, "id: dunlin\nsize: &size\n  length: *size\n");

        assertThat(findings())
                .contains("units/dunlin/unit.yaml:2:7: anchors and aliases are not taken" + " [yaml-alias]");
    }

    @Test
    void nestingWithoutEndIsRefused() throws Exception {
        write(DUNLIN, "id: dunlin\nname: " + "[".repeat(9_000) + "\n");
        write(TURNSTONE, "- ".repeat(4_900) + "x\n");

        assertThat(findings())
                .contains(
                        "units/dunlin/unit.yaml:2:70: this is no YAML: nested deeper than 64 levels" + " [yaml-syntax]",
                        "units/turnstone/unit.yaml:1:129: this is no YAML: nested deeper than 64"
                                + " levels [yaml-syntax]");
    }

    @Test
    void nestedQuotesEndInFindings() throws Exception {
        append(PROCEDURE, "\n" + "> ".repeat(4_000) + "deep\n");

        assertThat(findings()).anyMatch(told -> told.startsWith(PROCEDURE));
    }

    @Test
    void nestedSectionsAreRefused() throws Exception {
        append(PROCEDURE, "{{#has.city-water}}".repeat(100) + "deep" + "{{/has.city-water}}".repeat(100));

        assertThat(findings())
                .contains(PROCEDURE + ":11:1: sections are nested deeper than 32 levels" + " [malformed-template]");
    }

    @Test
    void longSectionsAreRead() throws Exception {
        List<String> before = findings();
        append(
                PROCEDURE,
                "\n{{#has.city-water}}\n" + ("Go on. ".repeat(1_000) + "\n\n").repeat(50) + "{{/has.city-water}}\n");

        assertThat(findings()).isEqualTo(before);
    }

    @Test
    void conditionsWithoutEndAreRefused() throws Exception {
        replace(PROCEDURE, "when: every coach", "when: " + "not ".repeat(1_000) + "inverter");

        assertThat(findings())
                .contains(PROCEDURE
                        + ":8:7: the condition has more than 100 words and brackets"
                        + " [malformed-condition]");
    }

    @Test
    void binaryFile() throws Exception {
        Files.write(root.resolve(DUNLIN), new byte[] {'i', 'd', ':', 0, 1, 2, 3});
        Files.write(root.resolve(TURNSTONE), new byte[] {(byte) 0x89, 'P', 'N', 'G', (byte) 0xff});

        assertThat(findings())
                .contains(
                        "units/dunlin/unit.yaml:1:1: the file is binary, not text" + " [unreadable-file]",
                        "units/turnstone/unit.yaml:1:1: the file is not UTF-8 text" + " [unreadable-file]");
    }

    @Test
    void controlCharacters() throws Exception {
        write(DUNLIN, Files.readString(root.resolve(DUNLIN)) + "# \u001B[31m \u0085\n");
        replace(DUNLIN, "name: Dunlin\n", "name: Dun\u0007lin\n");
        replace(PROCEDURE, "1. ", "1. \u2066");
        write(
                TURNSTONE,
                Files.readString(root.resolve(TURNSTONE)).replace("name: Turnstone\n", "name: \"Turn\\estone\"\n"));
        long lines = Files.readString(root.resolve(DUNLIN)).lines().count();

        assertThat(findings())
                .contains(
                        "units/dunlin/unit.yaml:" + line(DUNLIN, "name: Dun")
                                + ":10: a character stands here that nobody " + "sees: U+0007, bel [hidden-character]",
                        "units/dunlin/unit.yaml:" + lines
                                + ":3: a character stands here that nobody sees: U+001B, escape;"
                                + " the line has 1 more [hidden-character]",
                        "units/turnstone/unit.yaml:" + line(TURNSTONE, "name: \"Turn")
                                + ":7: a character stands here that nobody sees: U+001B, escape [hidden-character]")
                .anyMatch(told -> told.startsWith(PROCEDURE) && told.contains("U+2066, left-to-right isolate"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\\u202E", "\\u202A", "\\u2067", "\\u2069", "\\u200E", "\\u200F", "\\u061C", "\\u2028", "\\e", "\\x7F",
                "\\x9B", "\\a", "\\0"
            })
    void aHiddenCharacterIsToldInKeysAndTexts(String written) throws Exception {
        replace(DUNLIN, "\nname: Dunlin\n", "\nname: \"Dun" + written + "lin\"\n\"na" + written + "me\": x\n");
        int line = line(DUNLIN, "name: \"Dun");

        assertThat(findings())
                .filteredOn(told -> told.endsWith(" [hidden-character]"))
                .hasSize(2)
                .anyMatch(told -> told.startsWith(DUNLIN + ":" + line + ":7: "))
                .anyMatch(told -> told.startsWith(DUNLIN + ":" + (line + 1) + ":1: "));
    }

    @ParameterizedTest
    @ValueSource(strings = {"&#7;", "&#x202E;", "&#8206;", "&rlm;", "&lrm;", "&#xD800;", "&#27;"})
    void aHiddenCharacterIsToldInMarkdown(String written) throws Exception {
        append(PROCEDURE, "Call" + written + " us.\n");

        assertThat(findings())
                .singleElement()
                .asString()
                .startsWith(PROCEDURE + ":" + line(PROCEDURE, "Call" + written) + ":5: a character stands here ");
    }

    @Test
    void aHiddenCharacterIsToldInTheNamesOfFilesAndFolders() throws Exception {
        write("units/shared/procedures/a\u001B[2J.md", Files.readString(root.resolve(PROCEDURE)));
        write("units/dun\u202Elin/unit.yaml", Files.readString(root.resolve(DUNLIN)));

        assertThat(findings())
                .anyMatch(told -> told.contains("a\u001B[2J.md:1:1: a character stands here that nobody sees: U+001B"))
                .anyMatch(told ->
                        told.contains("units/dun\u202Elin:1:1: a character stands here that nobody sees: U+202E"));
    }

    @Test
    void tabsAndOrdinaryLettersOfAllScriptsAreNoHiddenCharacters() throws Exception {
        List<String> before = findings();
        append(DUNLIN, "# \u00E9 \u05D0 \u0627 \u200D \uD83D\uDE90 \u00AD\t\n");

        assertThat(findings()).isEqualTo(before);
    }

    @Test
    void linksOutOfTheFleetFolderAreNotFollowed(@TempDir Path elsewhere) throws Exception {
        Path secret = elsewhere.resolve("secret");
        Files.writeString(secret, "id: secret-words\n");
        write("units/dunlin/photos/.keep", "");
        Path picture = elsewhere.resolve("one.png");
        Files.write(picture, HostileInput.png(4, 3));
        Path folder = Files.createDirectories(elsewhere.resolve("coach"));
        Files.writeString(folder.resolve("unit.yaml"), "id: secret-words\n");
        for (String file : List.of(TURNSTONE, PROCEDURE)) {
            Files.delete(root.resolve(file));
            Files.createSymbolicLink(root.resolve(file), secret);
        }
        Files.createSymbolicLink(root.resolve("units/evil"), folder);
        Files.createSymbolicLink(root.resolve("units/dunlin/photos/one.png"), picture);
        replace(DUNLIN, "\nphotos:\n", "\nphotos:\n  - {id: one, name: One, file: one.png, alt: The first}\n");

        assertThat(findings())
                .contains(
                        TURNSTONE + ":1:1: this is a link that leads out of the fleet folder [unreadable-file]",
                        PROCEDURE + ":1:1: this is a link that leads out of the fleet folder [unreadable-file]",
                        "units/evil/unit.yaml:1:1: this is a link that leads out of the fleet folder [unreadable-file]")
                .anyMatch(told ->
                        told.endsWith("`one.png` is a link that leads out of the fleet folder [unreadable-photo]"))
                .noneMatch(told -> told.contains("secret"));
    }

    @Test
    void linksWithinTheFleetFolderAreFollowedAndItMayBeOneItself(@TempDir Path elsewhere) throws Exception {
        List<String> before = findings();
        Files.move(root.resolve(PROCEDURE), root.resolve("use-water-pump.md"));
        Files.createSymbolicLink(root.resolve(PROCEDURE), root.resolve("use-water-pump.md"));
        root = Files.createSymbolicLink(elsewhere.resolve("fleet"), root);

        assertThat(findings()).isEqualTo(before);
    }

    @Test
    void fileInLatin1() throws Exception {
        Files.write(root.resolve(DUNLIN), "id: dunlin\nname: Café\n".getBytes(ISO_8859_1));

        assertThat(findings()).contains("units/dunlin/unit.yaml:1:1: the file is not UTF-8 text [unreadable-file]");
    }

    @Test
    void idsStayWithinTheirFolder() throws Exception {
        replace(DUNLIN, "id: dunlin", "id: ../dunlin");

        assertThat(findings())
                .anyMatch(told ->
                        told.matches("units/dunlin/unit.yaml:\\d+:5: `../dunlin` is no id" + " \\[wrong-value]"));
    }

    @Test
    void photosStayWithinTheirFolder() throws Exception {
        replace(DUNLIN, "\nphotos:\n", """

                photos:
                  - {id: fleet-file, name: Fleet, file: ../../fleet.yaml, alt: The fleet}
                """);

        assertThat(findings()).anyMatch(told -> told.endsWith("`../../fleet.yaml` is no file name [wrong-value]"));
    }

    @Test
    void twoCoachesOfOneId() throws Exception {
        replace(DUNLIN, "id: dunlin", "id: turnstone");

        assertThat(findings())
                .anyMatch(told -> told.contains("the id `turnstone` belongs to another coach already")
                        && told.endsWith("[duplicate-id]"));
    }

    @Test
    void photoMissingOrNoPicture() throws Exception {
        replace(DUNLIN, "\nphotos:\n", """

                photos:
                  - {id: one, name: One, file: one.jpg, alt: The first}
                  - {id: two, name: Two, file: two.jpg, alt: The second}
                """);
        write("units/dunlin/photos/two.jpg", "This is no picture.");

        assertThat(findings())
                .anyMatch(told -> told.endsWith("there is no file `units/dunlin/photos/one.jpg`" + " [missing-photo]"))
                .anyMatch(told -> told.endsWith("`two.jpg` is no picture that can be read" + " [unreadable-photo]"));
    }

    @Test
    void sectionLeftOpenInAProcedure() throws Exception {
        replace(PROCEDURE, "{{/has.fill-valve}}\n", "");

        assertThat(findings())
                .anyMatch(told -> told.startsWith(PROCEDURE)
                        && told.endsWith("the section `has.fill-valve` is never closed" + " [malformed-template]"));
    }

    /** Each wrong in one way; what is right beside them is read as ever. */
    @Test
    void scriptsThatAreWrongHarmNoOthers() throws Exception {
        Map<String, String> wrong = new LinkedHashMap<>();
        wrong.put("no-steps", script("stage: living", "every coach", "Look around.\n"));
        wrong.put(
                "text-between-steps", script("stage: living", "every coach", "1. Look.\n\nThen wait.\n\n1. Go on.\n"));
        wrong.put(
                "unknown-signal-word",
                script("stage: living", "every coach", "> **ATTENTION** Hot. It burns.\n\n1. Look.\n"));
        wrong.put("wrong-value", script("stage: loving", "every coach", "1. Look.\n"));
        wrong.put("unknown-feature", script("stage: living", "generatr", "1. Look.\n"));
        wrong.put(
                "unknown-reference",
                script("stage: living", "every coach", "1. Look at [](switch:house-batery-switch).\n"));
        wrong.put(
                "malformed-template",
                script("stage: living", "every coach", "1. Look.\n{{#has.generator}}\n1. Listen.\n"));
        for (String folder : List.of("procedures", "trouble")) {
            for (Map.Entry<String, String> each : wrong.entrySet()) {
                String text = each.getValue().replace("ID", folder + "-" + each.getKey());
                write(
                        "units/shared/" + folder + "/" + folder + "-" + each.getKey() + ".md",
                        folder.equals("trouble")
                                ? text.replaceFirst("(?s)## Done when.*", "## If nothing helped\nCall us.\n")
                                : text);
            }
            write(
                    "units/shared/" + folder + "/twice.md",
                    script("stage: living", "every coach", "1. Look.\n").replace("ID", "fill-fresh-tank"));
            Files.write(
                    root.resolve("units/shared/" + folder + "/latin.md"), "---\nid: caf\u00e9\n".getBytes(ISO_8859_1));
        }

        List<String> findings = findings();

        for (String folder : List.of("procedures", "trouble")) {
            for (String code : wrong.keySet()) {
                assertThat(findings)
                        .as(folder + " " + code)
                        .anyMatch(it -> it.startsWith("units/shared/" + folder + "/" + folder + "-" + code + ".md:")
                                && it.endsWith("[" + code + "]"));
            }
            assertThat(findings)
                    .anyMatch(it -> it.startsWith("units/shared/" + folder + "/latin.md:1:1:") && it.contains("UTF-8"));
        }
        assertThat(findings).anyMatch(it -> it.contains("twice.md") && it.endsWith("[duplicate-id]"));
        assertThat(findings)
                .filteredOn(it -> !it.contains("/procedures-") && !it.contains("/trouble-"))
                .allMatch(
                        it -> it.contains("twice.md") || it.contains("latin.md") || it.contains("fill-fresh-tank.md"));
    }

    private static String script(String stage, String when, String body) {
        return "---\nid: ID\ntitle: Try it\n" + stage + "\nwho: renter\nwhen: " + when + "\n---\n" + body
                + "\n## Done when\nDone.\n\n## If not\nCall us.\n";
    }

    @Test
    void windowsLineBreaksChangeNothing() throws Exception {
        replace(DUNLIN, "body: cab-over", "body: cab-ovr");
        replace(TURNSTONE, "  length: 6.99 m", "  length: 6,99 m");
        replace(PROCEDURE, "{{/has.fill-valve}}\n", "");
        List<String> before = findings();
        try (Stream<Path> paths = Files.walk(root)) {
            for (Path path : paths.filter(
                            it -> Files.isRegularFile(it) && !it.toString().matches(".*\\.(jpg|mp4)"))
                    .toList()) {
                Files.writeString(path, Files.readString(path).replace("\n", "\r\n"));
            }
        }

        assertThat(findings()).isNotEmpty().isEqualTo(before);
    }

    @Test
    void byteOrderMarkChangesNothing() throws Exception {
        List<String> before = findings();
        for (String path : List.of(FLEET, DUNLIN, PROCEDURE)) {
            write(path, "\uFEFF" + Files.readString(root.resolve(path)));
        }

        assertThat(findings()).isEqualTo(before);
    }

    @Test
    void twoDocumentsInOneFile() throws Exception {
        write(DUNLIN, "id: dunlin\n---\nid: dunlin\n");

        assertThat(findings())
                .contains("units/dunlin/unit.yaml:2:1: this is no YAML: a second document begins here"
                        + " [yaml-syntax]");
    }

    @Test
    void oneBrokenUnitHidesNothingOfAnother() throws Exception {
        replace(TURNSTONE, "body: low-profile", "body: low-profil");
        List<String> before = findings();
        write(DUNLIN, "id: \"dunlin\n");

        assertThat(findings())
                .containsAll(before.stream()
                        .filter(told -> told.startsWith(TURNSTONE))
                        .toList())
                .anyMatch(told -> told.startsWith(TURNSTONE) && told.contains("`low-profil`"))
                .anyMatch(told -> told.startsWith(DUNLIN) && told.contains("a quote is not closed"));
    }

    /** Findings as {@code file:line:column: message [code]}. */
    private List<String> findings() throws Exception {
        FleetReader.Reading reading = FleetReader.read(Folders.at(root));
        Catalogs screen = Theme.load(Path.of("."), Theme.BUILT_IN).catalogs();
        return Check.of(reading.fleet(), reading.library(), screen, reading.findings()).findings().all().stream()
                .map(BadInputTest::told)
                .toList();
    }

    private static String told(Finding finding) {
        return finding.at() + ": " + finding.message() + " [" + finding.code() + "]";
    }

    private void write(String path, String text) throws IOException {
        Path file = root.resolve(path);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    /** The first line that holds a text, from 1. */
    private int line(String path, String text) throws IOException {
        String before = Files.readString(root.resolve(path));
        assertThat(before).contains(text);
        return 1
                + (int) before.substring(0, before.indexOf(text))
                        .chars()
                        .filter(it -> it == '\n')
                        .count();
    }

    private void append(String path, String text) throws IOException {
        write(path, Files.readString(root.resolve(path)) + text);
    }

    private void replace(String path, String from, String to) throws IOException {
        String before = Files.readString(root.resolve(path));
        assertThat(before).contains(from);
        write(path, before.replace(from, to));
    }
}
