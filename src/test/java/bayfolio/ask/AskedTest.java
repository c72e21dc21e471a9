package bayfolio.ask;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.catalog.Catalogs;
import bayfolio.finding.Finding;
import bayfolio.finding.Findings;
import bayfolio.finding.TextReport;
import bayfolio.model.Role;
import bayfolio.read.FleetReader;
import bayfolio.render.theme.Theme;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.junit.jupiter.params.shadow.com.univocity.parsers.csv.CsvFormat;
import org.junit.jupiter.params.shadow.com.univocity.parsers.csv.CsvParser;
import org.junit.jupiter.params.shadow.com.univocity.parsers.csv.CsvParserSettings;

/** Questions to the demo fleet. What the answers must be is counted in its files as plain text, by no reader of ours. */
class AskedTest {
    private static final FleetReader.Reading DEMO = FleetReader.read(Folders.at(DemoFleet.wholeFleet()));
    private static final Map<String, List<String>> FILES = files();

    /** {@code roles: [a, b]}, as all files of the demo fleet write it. */
    private static final Pattern ROLES = Pattern.compile("^ +roles: \\[(.*)]$");

    @TempDir
    private Path folder;

    private static Map<String, List<String>> files() {
        Map<String, List<String>> files = new TreeMap<>();
        DEMO.folders().forEach(coach -> files.put(coach, lines("units/" + coach + "/unit.yaml")));
        return files;
    }

    private static List<String> lines(String file) {
        try {
            return Files.readAllLines(Path.of(file), UTF_8);
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Catalogs words() throws Exception {
        return Theme.load(Path.of(""), Theme.BUILT_IN).catalogs();
    }

    private static Answers ask(String question, String... coaches) throws Exception {
        return ask(DEMO, question, coaches);
    }

    private static Answers ask(FleetReader.Reading fleet, String question, String... coaches) throws Exception {
        List<Finding> findings = new ArrayList<>();
        Asked asked = Asked.read(question, fleet, words(), findings::add)
                .orElseThrow(() -> new AssertionError(TextReport.of(Findings.of(findings), false)));
        return asked.of(List.of(coaches));
    }

    private static String wrong(String question) throws Exception {
        List<Finding> findings = new ArrayList<>();
        assertThat(Asked.read(question, DEMO, words(), findings::add)).isEmpty();
        return TextReport.of(Findings.of(findings), false);
    }

    private static String line(Answer row) {
        return lines(row.at().file().path()).get(row.at().line() - 1);
    }

    /** Every fact of a coach that a line of its file states as {@code key: value} is answered at that line, and no other. */
    @Test
    void heightsAndLengthsAreThoseOfTheLines() throws Exception {
        int compared = 0;
        for (String key : List.of("length", "width", "height", "wheelbase")) {
            Map<String, String> answered = ask("size." + key).rows().stream()
                    .collect(Collectors.toMap(Answer::coach, row -> line(row).strip(), (a, b) -> a + b, TreeMap::new));
            Map<String, String> written = new TreeMap<>();
            FILES.forEach((coach, lines) -> lines.stream()
                    .dropWhile(line -> !line.equals("size:"))
                    .skip(1)
                    .takeWhile(line -> line.startsWith(" "))
                    .filter(line -> line.startsWith("  " + key + ": "))
                    .forEach(line -> written.put(coach, line.strip())));

            assertThat(answered).isEqualTo(written);
            compared += written.size();
        }
        assertThat(compared).isGreaterThanOrEqualTo(5 * 3);
    }

    @Test
    void valuesAreAsTheyWereWritten() throws Exception {
        for (String question : List.of("size.height", "tank.gray.capacity", "tank.fresh.capacity", "generator.power")) {
            Answers answers = ask(question);
            assertThat(answers.rows()).isNotEmpty().allSatisfy(row -> {
                String written = line(row).replaceFirst(".*?: ", "").strip();
                assertThat(row.value().replace(",", "")).startsWith(written.replace(",", ""));
                assertThat(row.figure()).isPresent();
            });
        }
    }

    /** All roles there are, against each place in a file that gives one. */
    @Test
    void everyRoleIsFoundWhereAFileGivesIt() throws Exception {
        Map<String, List<String>> given = new TreeMap<>();
        FILES.forEach((coach, lines) -> {
            for (int i = 0; i < lines.size(); i++) {
                Matcher roles = ROLES.matcher(lines.get(i));
                if (roles.matches()) {
                    for (String role : roles.group(1).split(", *", -1)) {
                        given.computeIfAbsent(role, it -> new ArrayList<>()).add(coach + ":" + (i + 1));
                    }
                }
            }
        });
        assertThat(given).hasSizeGreaterThan(100);
        int roles = 0;
        for (Role role : DEMO.fleet().roles()) {
            List<String> held = ask("role:" + role.id()).rows().stream()
                    .filter(row -> row.at().file().path().endsWith("/unit.yaml"))
                    .map(row -> row.coach() + ":" + row.at().line())
                    .toList();

            assertThat(held)
                    .as(role.id())
                    .containsExactlyInAnyOrderElementsOf(given.getOrDefault(role.id(), List.of()));
            roles += held.size();
        }
        assertThat(roles).isGreaterThan(500);
    }

    @ParameterizedTest
    @CsvSource({"generator", "solar", "inverter", "jacks"})
    void whoHasAPartHasItsBlock(String part) throws Exception {
        List<String> has = FILES.entrySet().stream()
                .filter(file -> file.getValue().contains(part + ":"))
                .map(Map.Entry::getKey)
                .toList();

        assertThat(ask("feature:" + part).coaches()).isEqualTo(has).isNotEmpty();
        assertThat(ask(part).coaches()).isEqualTo(has);
        assertThat(ask("not feature:" + part).coaches())
                .isEqualTo(FILES.keySet().stream()
                        .filter(coach -> !has.contains(coach))
                        .toList());
    }

    /** Each feature that a coach has stands at a line of its file that states something. */
    @Test
    void everyFeatureHasALine() throws Exception {
        int lines = 0;
        for (String feature :
                FleetReader.read(Folders.at(Path.of(""))).fleet().equipment().features()) {
            for (Answer row : ask("feature:" + feature).rows()) {
                assertThat(row.at().file().path()).isEqualTo("units/" + row.coach() + "/unit.yaml");
                assertThat(line(row)).as(row.toString()).containsPattern("^ *(- )?[a-z-]+: *\\S|^ +- ");
                lines += row.at().line() > 20 ? 1 : 0;
            }
        }
        assertThat(lines).isGreaterThan(150);
    }

    @Test
    void joinedWordsHoldAsSetsDo() throws Exception {
        List<String> valve = ask("role:black-dump-valve").coaches();
        List<String> solar = ask("feature:solar").coaches();
        assertThat(valve).isNotEmpty().isNotEqualTo(solar);

        assertThat(ask("role:black-dump-valve and feature:solar").coaches())
                .isEqualTo(valve.stream().filter(solar::contains).toList());
        assertThat(ask("role:black-dump-valve and not feature:solar").coaches())
                .isEqualTo(valve.stream().filter(it -> !solar.contains(it)).toList());
        assertThat(ask("role:black-dump-valve or feature:solar").coaches())
                .isEqualTo(Stream.concat(valve.stream(), solar.stream())
                        .distinct()
                        .sorted()
                        .toList());
        assertThat(ask("not (role:black-dump-valve or feature:solar)").coaches())
                .isEqualTo(FILES.keySet().stream()
                        .filter(it -> !valve.contains(it) && !solar.contains(it))
                        .toList());
    }

    @Test
    void eachOfSeveralHoldersHasARow() throws Exception {
        List<Answer> switches = ask("switch", "whimbrel").rows();

        // Counted by hand on that coach, and written into its description; what stands at a site comes with it.
        assertThat(switches.stream().filter(row -> row.at().file().path().endsWith("whimbrel/unit.yaml")))
                .hasSize(51);
        assertThat(switches)
                .extracting(Answer::what)
                .doesNotHaveDuplicates()
                .allMatch(what -> what.startsWith("switch."));
    }

    @Test
    void whatWasAskedForByARoleIsCalledByItsId() throws Exception {
        assertThat(ask("tank.gray.capacity", "whimbrel").rows()).singleElement().satisfies(row -> {
            assertThat(row.what()).isEqualTo("tank.gray-tank.capacity");
            assertThat(ask(row.what()).rows()).contains(row);
        });
    }

    @Test
    void referencesAreAskedForAsTheyAreWritten() throws Exception {
        assertThat(ask("switch:house-battery-switch").rows())
                .isEqualTo(ask("switch.house-battery-switch").rows())
                .isNotEmpty();
    }

    @Test
    void aNoIsStatedToo() throws Exception {
        assertThat(ask("hire.winter").rows())
                .hasSize(5)
                .extracting(Answer::value)
                .contains("yes", "no");
        assertThat(ask("feature:winter-hire").rows()).hasSizeLessThan(5);
    }

    /** In the published pages of the demo fleet, which another test holds against the descriptions. */
    @Test
    void proceduresAndPagesAreThoseThatArePublished() throws Exception {
        Path staff = DemoFleet.wholeWeb().resolveSibling("staff");
        for (String id : List.of("dump-tanks-gravity", "start-generator", "respond-crash")) {
            List<String> published = DEMO.folders().stream()
                    .filter(coach -> Files.exists(staff.resolve(coach + "/do/" + id + ".html")))
                    .toList();

            assertThat(ask("procedure:" + id).coaches()).isEqualTo(published);
            assertThat(ask("page:do/" + id).coaches()).isEqualTo(published);
        }
        assertThat(ask("page:compartment").rows()).hasSize((int) DemoFleet.files(staff).keySet().stream()
                .filter(path -> path.contains("/compartment/") && path.endsWith(".html"))
                .count());
        assertThat(ask("trouble:no-heat").rows())
                .isNotEmpty()
                .allSatisfy(row -> assertThat(line(row)).startsWith("title:"));
        assertThat(ask("stage:emergency", "dunlin").rows())
                .extracting(Answer::what)
                .contains("procedure:escape-fire", "stage:emergency");
    }

    /** Whatever there is to say of a coach can be asked for, and nothing throws. */
    @Test
    void everythingCanBeAskedFor() throws Exception {
        assertThat(ask("unit").rows()).hasSizeGreaterThan(10_000);
        assertThat(ask("fleet or country or all or any or count or has or reckoned or procedure or trouble or turn"
                                + " or turn-back or phone")
                        .coaches())
                .hasSize(5);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', textBlock = """
                    tank.gray.capasity          | 1  | 18 | `capacity`
                    feature:solr                | 9  | 4  | `solar`
                    role:black-dump-valv        | 6  | 15 | `black-dump-valve`
                    procedure:dump-tank-gravity | 11 | 17 | `dump-tanks-gravity`
                    procedure:no-heat           | 11 | 7  | `trouble:no-heat`
                    stage:emergncy              | 7  | 8  | `emergency`
                    fature:solar                | 1  | 12 | `feature`
                    generater                   | 1  | 9  | `generator`
                    size.heigt                  | 1  | 10 | `height`
                    black-tank                  | 1  | 10 | `feature:black-tank`
                    black-dump-valve            | 1  | 16 | `role:black-dump-valve`
                    solar and page:do/start-generater | 16 | 18 | `do/start-generator`
                    """)
    void aWrongWordIsToldAtItsPlaceWithTheNearName(String question, int column, int carets, String near)
            throws Exception {
        assertThat(wrong(question))
                .startsWith("question:1:" + column + ": error: ")
                .contains("\n1 | " + question + "\n  | " + " ".repeat(column - 1) + "^".repeat(carets) + "\n")
                .contains("help: did you mean " + near);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', ignoreLeadingAndTrailingWhitespace = true, textBlock = """
                    ''                     | a name is missing at the end
                    and                    | a name is missing before `and`
                    solar and              | a name is missing at the end
                    (solar                 | a bracket is not closed
                    solar inverter         | `inverter` is one word too many
                    feature:               | `` is no feature of a coach
                    size.height.more       | `size.height` has no names within it
                    size..height           | there is no name `` in `size`
                    .                      | there is no name ``
                    :                      | nobody can ask for a ``
                    """)
    void aMalformedQuestionIsTold(String question, String message) throws Exception {
        assertThat(wrong(question)).contains(": error: " + message + " [");
    }

    @Test
    void aHundredWordsAreTakenAndNoMore() throws Exception {
        String most = String.join(" ", java.util.Collections.nCopies(49, "solar or")) + " solar";

        assertThat(ask(most).coaches()).isEqualTo(ask("solar").coaches());
        assertThat(wrong(most + " or solar")).contains("more than 100 words");
        assertThat(wrong("(".repeat(50_000))).contains("more than 100 words");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"\u001b[31m", "feature:\u202e", "role:\ud83d\ude80", "solar\u0000", "{{unit}}", "switch:=x"})
    void nothingThatIsAskedThrows(String question) throws Exception {
        assertThat(wrong(question)).startsWith("question:1:").doesNotContain("\u001b", "\u202e", "\u0000");
    }

    private FleetReader.Reading spoilt(String coach, String from, String to) throws Exception {
        DemoFleet.copyWhole(folder);
        Path file = folder.resolve("units/" + coach + "/unit.yaml");
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replaceFirst(Pattern.quote(from), Matcher.quoteReplacement(to)));
        return FleetReader.read(Folders.at(folder));
    }

    @Test
    void aFactThatCouldNotBeReadIsNotAbsent() throws Exception {
        FleetReader.Reading fleet = spoilt("dunlin", "  winter: no", "  winter: perhaps");

        Answers answers = ask(fleet, "hire.winter");
        assertThat(answers.coaches()).containsExactly("phalarope", "redpoll", "turnstone", "whimbrel");
        assertThat(answers.unread()).containsOnlyKeys("dunlin");
        assertThat(ask(fleet, "not hire.winter").unread()).containsOnlyKeys("dunlin");
        assertThat(ask(fleet, "not hire.winter").coaches()).isEmpty();
        // Of what does not hang on it all is known.
        assertThat(ask(fleet, "hire.towing").coaches()).hasSize(5);
        assertThat(ask(fleet, "hire.towing").unread()).isEmpty();
        // It holds anyhow, and something more might stand there.
        Answers either = ask(fleet, "hire.towing or hire.winter", "dunlin");
        assertThat(either.coaches()).containsExactly("dunlin");
        assertThat(either.unread()).containsOnlyKeys("dunlin");
    }

    @Test
    void aCoachThatCouldNotBeReadIsNamed() throws Exception {
        FleetReader.Reading fleet = spoilt("dunlin", "id: dunlin", "id: dunlin\n\t- [");

        Answers answers = ask(fleet, "size.height");
        assertThat(answers.coaches()).containsExactly("phalarope", "redpoll", "turnstone", "whimbrel");
        assertThat(answers.unread()).isEqualTo(Map.of("dunlin", "units/dunlin/unit.yaml could not be read"));
        assertThat(ask(fleet, "size.height", "whimbrel").unread()).isEmpty();
    }

    @Test
    void whereNothingIsKnownOfAnyCoachThatIsSaid() throws Exception {
        DemoFleet.copyWhole(folder);
        Files.writeString(folder.resolve("units/shared/roles.yaml"), "roles: [");
        FleetReader.Reading fleet = FleetReader.read(Folders.at(folder));

        Answers answers = ask(fleet, "role:black-dump-valve");
        assertThat(answers.rows()).isEmpty();
        assertThat(answers.unread()).hasSize(5).containsEntry("dunlin", "what all coaches share could not be read");
    }

    @Test
    void aCoachWithErrorsHasNoPagesAndThatIsSaid() throws Exception {
        FleetReader.Reading fleet = spoilt("dunlin", "  winter: no", "  winter: perhaps");

        Answers answers = ask(fleet, "page:numbers");
        assertThat(answers.coaches()).containsExactly("phalarope", "redpoll", "turnstone", "whimbrel");
        assertThat(answers.unread()).containsOnlyKeys("dunlin");
    }

    /** Read back by the parser that JUnit carries. */
    @Test
    void theTableForProgramsIsReadBackByAnotherReader() throws Exception {
        Answers answers = ask("unit.notes or hire or tank.gray.capacity or role:entry-door");
        String csv = AnswerReport.csv(answers);
        assertThat(csv).startsWith("coach,what,value,number,unit,file,line\r\n").endsWith("\r\n");
        CsvParserSettings settings = new CsvParserSettings();
        settings.setFormat(new CsvFormat());
        settings.getFormat().setLineSeparator("\r\n");
        settings.setEmptyValue("");
        settings.setNullValue("");
        settings.setMaxCharsPerColumn(100_000);
        settings.setNormalizeLineEndingsWithinQuotes(false);
        List<String[]> read = new CsvParser(settings).parseAll(new StringReader(csv));

        assertThat(read.stream().skip(1).map(record -> Arrays.asList(record).subList(0, 3)))
                .containsExactlyElementsOf(answers.rows().stream()
                        .map(row -> List.of(row.coach(), row.what(), row.value()))
                        .toList());
        assertThat(answers.rows()).anyMatch(row -> row.value().contains(","));
        assertThat(read.stream().filter(record -> record[1].endsWith(".capacity")))
                .hasSize(5)
                .anySatisfy(record -> {
                    // 55 US gallons of 231 cubic inches of 16.387064 mL
                    assertThat(Double.parseDouble(record[3])).isCloseTo(55 * 231 * 0.016387064, within(1e-6));
                    assertThat(record[4]).isEqualTo("L");
                });
    }

    @Test
    void jsonSaysWhatTheTableSays() throws Exception {
        Answers answers = ask("size.height or role:entry-door");
        JsonObject json = JsonParser.parseString(AnswerReport.json(answers)).getAsJsonObject();

        assertThat(json.get("question").getAsString()).isEqualTo("size.height or role:entry-door");
        assertThat(json.getAsJsonArray("asked")).hasSize(5);
        assertThat(json.getAsJsonArray("coaches")).hasSize(5);
        assertThat(json.getAsJsonArray("unread")).isEmpty();
        List<String> lines = AnswerReport.table(answers).lines().toList();
        assertThat(json.getAsJsonArray("answers")).hasSize(lines.size());
        for (int i = 0; i < lines.size(); i++) {
            JsonObject row = json.getAsJsonArray("answers").get(i).getAsJsonObject();
            assertThat(lines.get(i).split(" {2,}"))
                    .containsExactly(
                            text(row.get("coach")),
                            text(row.get("what")),
                            text(row.get("value")),
                            text(row.get("file")) + ":" + row.get("line").getAsInt());
            assertThat(row.has("number")).isEqualTo(text(row.get("what")).equals("size.height"));
        }
    }

    private static String text(JsonElement element) {
        return element.getAsString();
    }

    /** The columns of the table stand below each other. */
    @Test
    void theTableIsAligned() throws Exception {
        List<String> lines =
                AnswerReport.table(ask("tank.gray.capacity")).lines().toList();

        assertThat(lines).hasSize(5);
        assertThat(lines.stream().map(line -> line.indexOf("tank.")).distinct()).hasSize(1);
        assertThat(lines.stream().map(line -> line.indexOf("units/")).distinct())
                .hasSize(1);
    }

    @Test
    void onlyThoseThatAreNamedAreAsked() throws Exception {
        Answers answers = ask("size.height", "whimbrel", "redpoll");

        assertThat(answers.asked()).containsExactly("redpoll", "whimbrel");
        assertThat(answers.coaches()).containsExactly("redpoll", "whimbrel");
    }

    /** The three sisters are asked like all others, and each line is that of the file that says it. */
    @Test
    void sistersAnswerFromTheFileThatSaysIt() throws Exception {
        FleetReader.Reading demo = FleetReader.read(Folders.at(Path.of("")));

        assertThat(ask(demo, "model:bay-24").coaches()).containsExactly("avocet", "curlew", "godwit");
        assertThat(ask(demo, "recall:valve-seals").coaches()).containsExactly("curlew");
        assertThat(ask(demo, "model:bay-24 and bank.house-bank.amp-hours").rows())
                .filteredOn(row -> row.what().startsWith("bank"))
                .extracting(row -> row.coach() + " " + row.at().file().path())
                .containsExactly(
                        "avocet units/avocet/unit.yaml",
                        "curlew units/models/bay-24/model.yaml",
                        "godwit units/models/bay-24/model.yaml");
    }
}
