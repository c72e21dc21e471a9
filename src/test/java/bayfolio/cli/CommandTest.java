package bayfolio.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.Jvm;
import bayfolio.Main;
import com.google.gson.JsonArray;
import com.google.gson.JsonParser;
import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.RandomAccessFile;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CommandTest {
    @TempDir
    private Path folder;

    /** What a run printed, and how it ended. */
    private record Said(int exit, String out, String err) {}

    @ParameterizedTest
    @ValueSource(strings = {"", "check", "publish"})
    void helpHoldsAnExampleThatWouldRun(String command) {
        Said help = command.isEmpty() ? run("--help") : run(command, "--help");

        assertThat(help.exit()).isZero();
        assertThat(help.err()).isEmpty();
        assertThat(help.out())
                .contains("Usage: bayfolio")
                .contains("\nExit codes:\n")
                .containsPattern("\nExample: bayfolio (check|publish)")
                .doesNotContain("${");
    }

    @Test
    void theVersionIsTold() {
        assertThat(run("--version")).isEqualTo(new Said(0, "bayfolio 0.1.0\n", ""));
    }

    @Test
    void noCommandIsWrongUsage() {
        Said said = run();

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).startsWith("Name a command.\n").contains("Usage:");
    }

    @Test
    void anUnknownCommandIsWrongUsageAndANearOneIsNamed() {
        Said said = run("chek");

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).contains("'chek'").contains("Did you mean: bayfolio check");
    }

    @Test
    void anUnknownOptionIsWrongUsageAndANearOneIsNamed() {
        Said said = run("check", "--formt", "json");

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).contains("'--formt'").contains("--format");
    }

    @Test
    void anUnknownFormatIsWrongUsageAndTheFormatsAreNamed() {
        Said said = run("check", "--format", "xml");

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.err()).contains("'xml'").containsIgnoringCase("text").contains("JSON");
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "publish"})
    void anUnknownCoachIsWrongUsageAndTheCoachesAreNamed(String command) throws Exception {
        Said said = of(small(), command, "plovr");

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.out()).isEmpty();
        assertThat(said.err())
                .startsWith("There is no coach `plovr`; the fleet has plover.\n")
                .contains("Usage:");
        assertThat(folder.resolve("site-out")).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(strings = {"no-such", "..", "../units", "/etc", ""})
    void anUnknownThemeIsToldInOneSentence(String theme) throws Exception {
        Said said = of(small(), "check", "--theme", theme);

        assertThat(said)
                .isEqualTo(new Said(1, "", "There is no theme `" + theme + "`: no folder themes/" + theme + ".\n"));
    }

    @Test
    void checkIsQuietWhenNothingIsWrong() throws Exception {
        assertThat(of(small(), "check")).isEqualTo(new Said(0, "", ""));
        assertThat(of(small(), "check", "plover")).isEqualTo(new Said(0, "", ""));
    }

    @Test
    void checkTellsErrorsAndEndsWithOne() throws Exception {
        Said said = of(wrong(), "check");

        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.err()).isEmpty();
        assertThat(said.out()).contains("`pumps`").contains("\n\nplover: ").endsWith("\nIn all: 3 errors\n");
    }

    @Test
    void jsonHoldsTheSameFindingsAsText() throws Exception {
        String text = of(wrong(), "check").out();
        Said json = of(folder, "check", "--format", "json");

        assertThat(json.exit()).isEqualTo(1);
        JsonArray findings =
                JsonParser.parseString(json.out()).getAsJsonObject().getAsJsonArray("findings");
        List<String> headings = new ArrayList<>();
        findings.forEach(element -> {
            var finding = element.getAsJsonObject();
            headings.add("%s:%d:%d: %s: %s"
                    .formatted(
                            finding.get("file").getAsString(),
                            finding.get("line").getAsInt(),
                            finding.get("column").getAsInt(),
                            finding.get("severity").getAsString(),
                            finding.get("message").getAsString()));
        });
        assertThat(headings).hasSize(3).allSatisfy(heading -> assertThat(text).contains(heading));
        assertThat(text.lines().filter(line -> line.matches(".+:[0-9]+:[0-9]+: [a-z]+: .+")))
                .hasSameSizeAs(headings);
    }

    @Test
    void explainPrintsThePageOfACode() {
        Said said = run("check", "--explain", "out-of-reach");

        assertThat(said.exit()).isZero();
        assertThat(said.out()).startsWith("# out-of-reach\n").contains("**Why**");
        assertThat(run("check", "--explain", "out-of-reech").exit()).isEqualTo(2);
    }

    @Test
    void sarifNamesEachFinding() throws Exception {
        Said said = of(wrong(), "check", "--format", "sarif");

        assertThat(said.exit()).isEqualTo(1);
        assertThat(JsonParser.parseString(said.out())
                        .getAsJsonObject()
                        .getAsJsonArray("runs")
                        .get(0)
                        .getAsJsonObject()
                        .getAsJsonArray("results"))
                .hasSize(3);
    }

    @Test
    void warningsStopOnlyWhereStrict() throws Exception {
        Path unit = small().resolve("units/plover/unit.yaml");
        Files.writeString(unit, Files.readString(unit) + "accept: [{code: no-such-code, reason: None.}]\n");

        assertThat(of(folder, "check").exit()).isZero();
        assertThat(of(folder, "check", "--strict").exit()).isEqualTo(1);
        assertThat(of(folder, "publish", "--only=web", "--strict").exit()).isEqualTo(1);
        assertThat(of(folder, "publish", "--only=web").exit()).isZero();
    }

    @Test
    void jsonOfACleanFleetIsAnEmptyList() throws Exception {
        Said json = of(small(), "check", "--format", "JSON");

        assertThat(json.exit()).isZero();
        assertThat(JsonParser.parseString(json.out()).toString()).isEqualTo("{\"findings\":[]}");
    }

    @Test
    void publishSaysWhatItDid() throws Exception {
        Said said = of(small(), "publish");

        assertThat(said.exit()).isZero();
        assertThat(said.err()).isEmpty();
        assertThat(said.out())
                .matches("Published [0-9]+ pages into "
                        + Pattern.quote(folder.resolve("site-out/web").toString())
                        + "\\.\n");
        assertThat(folder.resolve("site-out/web/plover/index.html")).isRegularFile();
    }

    @ParameterizedTest
    @CsvSource({
        "--only=books, 'there is book, cards, labels, sheets, web'",
        "--label-stock=a5, 'there is a4-8, a4-4'",
        "--label-start=0, 'the first label of a sheet is 1'"
    })
    void publishRefusesWhatIsNotThere(String word, String said) throws Exception {
        Said refused = of(small(), "publish", word);

        assertThat(refused.exit()).isEqualTo(2);
        assertThat(refused.err()).contains(said);
        assertThat(folder.resolve("site-out")).doesNotExist();
    }

    /** No label could lead anywhere. */
    @Test
    void aFleetWithoutAnAddressPrintsNothing() throws Exception {
        Path file = small().resolve("units/fleet.yaml");
        DemoFleet.write(file, Files.readString(file).replaceAll("(?m)^base-address:.*\n", ""));

        Said said = of(folder, "publish");

        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.err())
                .contains("units/fleet.yaml")
                .contains("`base-address`")
                .endsWith("Nothing was published.\n");
        assertThat(folder.resolve("site-out")).doesNotExist();
    }

    @Test
    void publishMakesWhatItIsAskedFor() throws Exception {
        of(small(), "publish", "--only", "labels,web", "--label-stock", "a4-4", "--label-start", "3");

        assertThat(folder.resolve("site-out/staff/plover/print/door-labels.pdf"))
                .isRegularFile();
        assertThat(folder.resolve("site-out/web/plover/print")).doesNotExist();
    }

    @Test
    void publishGoesWhereItIsTold() throws Exception {
        of(
                small(),
                "publish",
                "--only=web",
                "plover",
                "--out",
                folder.resolve("elsewhere").toString());

        assertThat(folder.resolve("elsewhere/web/plover/index.html")).isRegularFile();
        assertThat(folder.resolve("site-out")).doesNotExist();
    }

    @Test
    void publishWithErrorsTellsThemAndChangesNothing() throws Exception {
        Said said = of(wrong(), "publish", "--only=web");

        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).contains("`pumps`").endsWith("\nIn all: 3 errors\nNothing was published.\n");
        assertThat(folder.resolve("site-out")).doesNotExist();
    }

    @Test
    void anErrorInOneCoachDoesNotStopTheOthers() throws Exception {
        small();
        Path plover = folder.resolve("units/plover/unit.yaml");
        Path knot = folder.resolve("units/knot/unit.yaml");
        DemoFleet.write(
                knot, Files.readString(plover).replace("id: plover", "id: knot").replace("Plover", "Knot"));
        assertThat(of(folder, "publish", "--only=web").exit()).isZero();
        String before = Files.readString(folder.resolve("site-out/web/knot/index.html"));

        // One that is read and wrong, and one that cannot be read at all.
        for (String wrong : new String[] {"accept: yes\n", "colon lost\n"}) {
            DemoFleet.write(knot, Files.readString(knot).replace("Knot", "Knut") + wrong);
            DemoFleet.write(
                    plover, Files.readString(plover).replaceFirst("name: Plover.*", "name: Plover " + wrong.length()));
            Said said = of(folder, "publish", "--only=web");

            assertThat(said.exit()).isEqualTo(1);
            assertThat(said.out()).startsWith("Published ");
            assertThat(said.err())
                    .endsWith(
                            "Left out: knot (1 error). Pages of theirs that were published before stay as they were.\n");
            assertThat(folder.resolve("site-out/web/knot/index.html")).hasContent(before);
            assertThat(folder.resolve("site-out/web/plover/index.html"))
                    .content()
                    .contains("Plover " + wrong.length());
            assertThat(folder.resolve("site-out/web/index.html"))
                    .content()
                    .contains(">Knot")
                    .doesNotContain("Knut");
        }
        assertThat(of(folder, "publish", "--only=web", "plover").exit()).isZero();
        assertThat(of(folder, "publish", "--only=web", "knot").err()).endsWith("Nothing was published.\n");
    }

    @Test
    void anErrorInWhatAllShareStopsAll() throws Exception {
        small();
        Path fleet = folder.resolve("units/fleet.yaml");
        DemoFleet.write(fleet, Files.readString(fleet).replaceFirst("name:", "nam:"));

        assertThat(of(folder, "publish", "--only=web").err()).endsWith("Nothing was published.\n");
    }

    @Test
    void anEmptyFleetFolderIsToldWhatItLacks() {
        Said said = of(folder, "check");

        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.out())
                .startsWith("units/fleet.yaml:1:1: error: the file is missing [unreadable-file]\n")
                .endsWith("\n\nIn all: 1 error\n");
        assertThat(of(folder, "publish", "--only=web").err())
                .contains("units/fleet.yaml")
                .endsWith("Nothing was published.\n");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void aFolderOfOnesOwnNeedsNeitherLibraryNorTheme() throws Exception {
        small();
        assertThat(DemoFleet.files(folder).keySet())
                .containsExactly(
                        "units/fleet.yaml", "units/plover/procedures/open-the-bed.md", "units/plover/unit.yaml");
        Files.delete(folder.resolve("units/plover/procedures/open-the-bed.md"));

        assertThat(of(folder, "check")).isEqualTo(new Said(0, "", ""));
        assertThat(of(folder, "publish", "--only=web").exit()).isZero();
        assertThat(folder.resolve("site-out/web/plover/do/use-water-pump.html")).isRegularFile();
        assertThat(DemoFleet.files(folder.resolve("site-out/web")).keySet())
                .anyMatch(path -> path.endsWith("/style.css"));
        assertThat(DemoFleet.files(folder.resolve("units"))).hasSize(3);
    }

    @Test
    void aFleetWithoutCoachesIsPublishedAsSuch() throws Exception {
        DemoFleet.write(
                folder.resolve("units/fleet.yaml"), Files.readString(DemoFleet.SMALL.resolve("units/fleet.yaml")));

        assertThat(of(folder, "check")).isEqualTo(new Said(0, "", ""));
        assertThat(of(folder, "check", "plover").err()).startsWith("There is no coach `plover`; the fleet has none.\n");
        assertThat(of(folder, "publish", "--only=web").out()).startsWith("Published 1 page into ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "missing",
                "file",
                "units-is-a-file",
                "fleet-is-a-folder",
                "unit-is-a-folder",
                "binary",
                "empty-files",
                "no-yaml",
                "broken-link",
                "link-loop",
                "shared-is-a-file",
                "procedures-is-a-file",
                "deep-yaml"
            })
    void aBadFolderIsToldInSentences(String kind) throws Exception {
        Path bad = bad(kind);

        for (String command : List.of("check", "publish")) {
            Said said = of(bad, command);

            assertThat(said.exit()).isEqualTo(1);
            assertThat(said.out() + said.err()).isNotBlank();
            assertNoTrace(said);
        }
    }

    private Path bad(String kind) throws Exception {
        Path bad = Files.createDirectory(folder.resolve(kind));
        Path units = bad.resolve("units");
        Path fleet = units.resolve("fleet.yaml");
        Path unit = units.resolve("plover/unit.yaml");
        switch (kind) {
            case "missing" -> Files.delete(bad);
            case "file" -> {
                Files.delete(bad);
                Files.writeString(bad, "mine");
            }
            case "units-is-a-file" -> Files.writeString(units, "mine");
            case "fleet-is-a-folder" -> Files.createDirectories(fleet);
            case "unit-is-a-folder" -> Files.createDirectories(unit);
            case "binary" -> {
                DemoFleet.write(fleet, new byte[] {0, 1, 2, (byte) 0xff});
                DemoFleet.write(unit, "id: plover\0");
            }
            case "empty-files" -> {
                DemoFleet.write(fleet, "");
                DemoFleet.write(unit, "\n\n");
                DemoFleet.write(units.resolve("plover/procedures/a.md"), "");
            }
            case "no-yaml" -> {
                DemoFleet.write(fleet, "name: [");
                DemoFleet.write(unit, "- - : {");
                DemoFleet.write(units.resolve("plover/procedures/a.md"), "---\n---\n");
            }
            case "broken-link" -> {
                Files.createDirectories(unit.getParent());
                Files.createSymbolicLink(fleet, bad.resolve("nowhere"));
                Files.createSymbolicLink(unit, bad.resolve("nowhere"));
            }
            case "link-loop" -> {
                Files.createDirectories(units.resolve("plover"));
                Files.createSymbolicLink(units.resolve("plover/again"), units);
                Files.createSymbolicLink(fleet, fleet);
            }
            case "shared-is-a-file" -> DemoFleet.write(units.resolve("shared"), "mine");
            case "procedures-is-a-file" -> DemoFleet.write(units.resolve("shared/procedures"), "mine");
            case "deep-yaml" -> {
                DemoFleet.write(fleet, "[".repeat(5_000));
                DemoFleet.write(unit, "a: ".repeat(5_000));
            }
            default -> throw new IllegalArgumentException(kind);
        }
        return bad;
    }

    @Test
    void whatMayNotBeReadIsToldInSentences() throws Exception {
        Path units = small().resolve("units");
        assertThat(units.toFile().setReadable(false)).isTrue();
        try {
            assumeFalse(Files.isReadable(units), "whoever runs this may read everything");

            for (String command : List.of("check", "publish")) {
                Said said = of(folder, command);

                assertThat(said.exit()).isEqualTo(1);
                assertThat(said.err()).contains(units.toString());
                assertNoTrace(said);
            }
        } finally {
            units.toFile().setReadable(true);
        }
    }

    @Test
    void whatNeverEndsIsNotRead() throws Exception {
        Path memory = Path.of("/proc/self/mem");
        assumeTrue(Files.isRegularFile(memory), "a file that opens and cannot be read");
        small();
        Path unit = folder.resolve("units/plover/unit.yaml");
        Files.delete(unit);
        Files.createSymbolicLink(unit, memory);

        Said said = of(folder, "publish", "--only=web");

        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.err())
                .contains("units/plover/unit.yaml:1:1: error: this is a link that leads out of the fleet folder")
                .endsWith("Nothing was published.\n");
        assertNoTrace(said);
        Files.delete(unit);
    }

    @Test
    void aPlaceThatCannotBePublishedIntoIsToldInSentences() throws Exception {
        small();
        Path file = Files.writeString(folder.resolve("file"), "mine");

        for (Path out : List.of(file, file.resolve("below"))) {
            Said said = of(folder, "publish", "--only=web", "--out", out.toString());

            assertThat(said.exit()).as("%s", out).isEqualTo(1);
            assertThat(said.out()).isEmpty();
            assertThat(said.err()).contains(out.toString()).hasLineCount(1);
            assertNoTrace(said);
        }
        assertThat(file).hasContent("mine");
    }

    @Test
    void aBadThemeIsToldInSentences() throws Exception {
        small();
        Path theme = folder.resolve("themes/harbor");
        DemoFleet.write(theme.resolve("page.mustache"), new byte[] {0, (byte) 0xff, '{', '{'});
        DemoFleet.write(theme.resolve("words-en.properties"), "menu=\\u00zz\n");

        for (String command : List.of("check", "publish")) {
            Said said = of(folder, command);

            assertThat(said.exit()).isEqualTo(1);
            assertThat(said.err()).contains("themes/harbor/words-en.properties");
            assertNoTrace(said);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"assets/style.css", "assets/more", "page.mustache", ""})
    void aThemeThatLeadsOutOfItsFolderIsToldInASentence(String file, @TempDir Path elsewhere) throws Exception {
        Path out = Files.createDirectory(folder.resolve("out"));
        small();
        publish(out);
        Map<String, String> before = DemoFleet.bytes(out.resolve("web"));
        // The descriptions are within the fleet folder, and no part of a theme.
        Path target = file.isEmpty()
                ? Files.createDirectories(elsewhere.resolve("harbor"))
                : folder.resolve(file.endsWith("more") ? "units" : "units/plover/unit.yaml");
        Path link = folder.resolve("themes/harbor").resolve(file);
        Files.createDirectories(link.toAbsolutePath().getParent());
        Files.createSymbolicLink(link, target.toAbsolutePath());

        Said said = publish(out);

        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.err()).hasLineCount(1).contains("themes/harbor").contains("it is a link that leads out of ");
        assertThat(DemoFleet.bytes(out.resolve("web"))).isEqualTo(before);
    }

    @Test
    void tooLittleMemoryIsToldInASentenceAndTheLastSiteStaysWhole() throws Exception {
        Path out = Files.createDirectory(folder.resolve("out"));
        small();
        publish(out);
        Map<String, String> before = DemoFleet.bytes(out.resolve("web"));
        Path huge = folder.resolve("themes/harbor/assets/film.mp4");
        Files.createDirectories(huge.getParent());
        try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
            file.setLength(400_000_000);
        }

        Process process = Jvm.start(
                List.of("-Xmx64m"),
                Main.class,
                "publish",
                "--only=web",
                "--fleet",
                folder.toString(),
                "--out",
                out.toString());
        String said;
        try (BufferedReader reader = process.inputReader()) {
            said = reader.lines().collect(Collectors.joining("\n"));
        }

        assertThat(process.waitFor()).isEqualTo(1);
        assertThat(said)
                .startsWith("The 64 MB of memory that Java was given are not enough;")
                .hasLineCount(1);
        assertThat(DemoFleet.bytes(out.resolve("web"))).isEqualTo(before);
    }

    /** What the file system, a description or the call itself hold; a terminal would obey it. */
    @Test
    void nothingThatATerminalObeysIsPrinted() throws Exception {
        String evil = "\u001B[2J\u202E";
        small();
        Path unit = folder.resolve("units/plover/unit.yaml");
        Files.writeString(unit, Files.readString(unit) + "\"x\\e[2Jy\": 1\nacept: " + evil + "\n");
        DemoFleet.copy(DemoFleet.SMALL, folder.resolve("a" + evil));
        DemoFleet.write(folder.resolve("units/no" + evil + "pe/unit.yaml"), "id: {\n");
        List<Said> all = List.of(
                of(folder, "check"),
                of(folder, "check", "--format", "json"),
                of(folder, "check", "--format", "sarif"),
                of(folder, "publish", "--only=web"),
                of(folder, "check", "no-such-" + evil),
                of(folder, "check", "--theme", evil),
                of(folder, "check", "--" + evil),
                of(folder.resolve("a" + evil), "publish", "--only=web"),
                of(
                        folder.resolve("a" + evil),
                        "publish",
                        "--only=web",
                        "--out",
                        folder.resolve("a" + evil + "/units").toString()),
                of(folder.resolve("none" + evil), "check"),
                run("check", "--explain", evil),
                run(evil));

        assertThat(all)
                .allSatisfy(said -> assertThat(said.out() + said.err())
                        .isNotBlank()
                        .doesNotContain("\u001B")
                        .doesNotContain("\u202E"));
    }

    private Said publish(Path out) {
        return of(folder, "publish", "--only=web", "--out", out.toString());
    }

    private static void assertNoTrace(Said said) {
        assertThat(said.out() + said.err())
                .doesNotContain("at bayfolio")
                .doesNotContain("Exception")
                .doesNotContain("java.");
    }

    private Path small() throws Exception {
        return DemoFleet.copy(DemoFleet.SMALL, folder);
    }

    /** Three faults: a note and two references of a procedure that lead nowhere. */
    private Path wrong() throws Exception {
        small();
        for (String file : List.of("unit.yaml", "procedures/open-the-bed.md")) {
            Path path = folder.resolve("units/plover").resolve(file);
            Files.writeString(
                    path,
                    Files.readString(path)
                            .replace("about: pump", "about: pumps")
                            .replace("switch:pump", "switch:pumps")
                            .replace("phone:hours", "phone:hour"));
        }
        return folder;
    }

    private static Said of(Path fleet, String command, String... words) {
        List<String> all = new ArrayList<>(List.of(command, "--fleet", fleet.toString()));
        all.addAll(List.of(words));
        return run(all.toArray(String[]::new));
    }

    private static Said run(String... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = Folders.run(new PrintWriter(out), new PrintWriter(err), words);
        return new Said(exit, lines(out), lines(err));
    }

    private static String lines(StringWriter said) {
        return said.toString().replace(System.lineSeparator(), "\n");
    }
}
