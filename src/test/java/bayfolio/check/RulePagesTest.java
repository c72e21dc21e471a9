package bayfolio.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import bayfolio.Folders;
import bayfolio.TinyFilm;
import bayfolio.bookings.Bookings;
import bayfolio.bookings.Column;
import bayfolio.catalog.Catalogs;
import bayfolio.check.sense.Relations;
import bayfolio.edition.Editions;
import bayfolio.finding.Finding;
import bayfolio.finding.Findings;
import bayfolio.finding.TextReport;
import bayfolio.issue.WorkList;
import bayfolio.read.FleetReader;
import bayfolio.read.Overlay;
import bayfolio.render.theme.Theme;
import bayfolio.source.Lazy;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every rule has a page, and the examples on the pages say what the program says.
 *
 * <p>An example is made of the fenced blocks below one heading, laid over the tiny coach together:
 *
 * <ul>
 *   <li>{@code yaml} over its description, or over that of another coach with {@code folder=};
 *   <li>{@code yaml model}: what a model says, over which the coaches of the example are laid;
 *   <li>{@code yaml fleet} over the description of the fleet;
 *   <li>{@code markdown equipment}: one more kind of equipment, {@code flagpole}, or that which {@code =} names;
 *   <li>{@code markdown}: one more procedure, with {@code own} one of the tiny coach, in which ids are names, with {@code
 *       trouble} one more trouble guide;
 *   <li>{@code text path=} or another language: a file as it lies in the fleet folder, read from there, and what only
 *       commands read by what they read it with: editions, work lists, bookings;
 *   <li>{@code film path= seconds=}: the head of a film that is so long; with {@code located}, as a phone saves it that
 *       knows where it is, with {@code bytes=}, one of that size;
 *   <li>{@code picture path=}: any picture there; with {@code located}, as a camera saves it that
 *       knows where it is, with {@code side=}, one that claims so many points each way;
 *   <li>{@code findings}: what comes of it, places counted within the block; without it, nothing.
 * </ul>
 */
class RulePagesTest {
    private static final Path PAGES = Path.of("src/main/resources/bayfolio/rules");
    private static final Path SOURCES = Path.of("src/main/java/bayfolio");
    private static final Path TINY = Path.of("src/test/resources/bayfolio/rules/tiny");
    private static final boolean WRITE = "write".equals(System.getProperty("golden"));

    private static final String FLEET = "units/fleet.yaml";
    private static final String PROCEDURES = "units/shared/procedures/";

    private static final Pattern TOLD = Pattern.compile(
            "(?:(?:Finding|proof)\\s*\\.\\s*(?:error|warning|note)|\\btell|(?m:^ +(?:return )?(?:error|warning|note)))\\(\\s*\"([a-z-]+)\""
                    + "|case [A-Z_]+ -> \"([a-z]+(?:-[a-z]+)+)\"");

    /** A code that a constant of the class stands for. */
    private static final Pattern NAMED =
            Pattern.compile("Finding\\s*\\.\\s*(?:error|warning|note)\\(\\s*((?:[A-Za-z]+\\.)?[A-Z][A-Z_]+)\\b");

    /** Of a fleet without a theme of its own. */
    private static final Lazy<Catalogs> BUILT_IN = new Lazy<>(RulePagesTest::builtIn);

    private static Catalogs builtIn() {
        try {
            return Theme.load(TINY, Theme.BUILT_IN).catalogs();
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    @TempDir
    Path temp;

    @TestFactory
    Stream<DynamicNode> findingsOfTheExamples() throws IOException {
        return pages().stream().map(this::tests);
    }

    private DynamicNode tests(RulePage page) {
        return WRITE
                ? dynamicTest(page.code(), () -> write(page))
                : dynamicContainer(
                        page.code(),
                        page.examples().stream()
                                .map(example -> dynamicTest(example.heading(), () -> compare(example))));
    }

    private void compare(RulePage.Example example) throws Exception {
        String expected = example.expected().map(RulePage.Block::text).orElse("");

        assertThat(told(example)).isEqualTo(expected);
    }

    /** What was rewritten fails once, so that somebody reads it. */
    private void write(RulePage page) throws Exception {
        List<String> told = new ArrayList<>();
        for (RulePage.Example example : page.examples()) {
            told.add(told(example));
        }
        String text = page.with(told);
        if (!text.equals(page.text())) {
            Files.writeString(page.path(), text);
            fail("wrote " + page.path());
        }
    }

    /** Whoever takes the name that is offered first is rid of that finding, and gets no other. */
    @TestFactory
    Stream<DynamicNode> theNameThatIsOfferedFirstMendsTheExamples() throws IOException {
        return pages().stream()
                .map(page -> dynamicContainer(
                        page.code(),
                        page.examples().stream()
                                .filter(example -> example.expected()
                                        .filter(it -> it.text().contains("help: did you mean"))
                                        .isPresent())
                                .map(example -> dynamicTest(example.heading(), () -> followNearNames(example)))));
    }

    private void followNearNames(RulePage.Example example) throws Exception {
        List<Told> all = all(example);
        for (Told told : all) {
            if (told.snippet() && !told.finding().near().isEmpty()) {
                List<String> left =
                        new ArrayList<>(all.stream().map(Told::sentence).toList());
                left.remove(told.sentence());
                assertThat(all(mended(example, told.finding())))
                        .as(told.lines())
                        .extracting(Told::sentence)
                        .isSubsetOf(left);
            }
        }
    }

    private static RulePage.Example mended(RulePage.Example example, Finding finding) {
        String text = finding.at().file().text();
        return new RulePage.Example(
                example.heading(),
                example.blocks().stream()
                        .map(block -> block.text().equals(text)
                                ? new RulePage.Block(
                                        block.language(), block.options(), block.first(), block.last(), mended(finding))
                                : block)
                        .toList(),
                example.expected());
    }

    /** The file with the word that the message quotes first replaced; of a section, where it ends, too. */
    private static String mended(Finding finding) {
        Place at = finding.at();
        List<String> lines = new ArrayList<>(at.file().text().lines().toList());
        String line = lines.get(at.line() - 1);
        String written = line.substring(at.column() - 1, at.endColumn() - 1);
        String wrong = finding.message().replaceAll("^[^`]*`([^`]*)`.*$", "$1");
        String right = finding.near().get(0);
        // A name with its kind stands for both.
        int word = right.contains(":") ? -1 : written.lastIndexOf(wrong);
        String better =
                word < 0 ? right : written.substring(0, word) + right + written.substring(word + wrong.length());
        lines.set(at.line() - 1, line.substring(0, at.column() - 1) + better + line.substring(at.endColumn() - 1));
        String text = String.join("\n", lines) + "\n";
        return written.startsWith("{{#") || written.startsWith("{{^")
                ? text.replace("{{/" + written.substring(3), "{{/" + better.substring(3))
                : text;
    }

    @Test
    void theTinyCoachIsClean() throws Exception {
        List<RulePage.Block> nothing = List.of();

        assertThat(told(new RulePage.Example("nothing", nothing, Optional.empty())))
                .isEmpty();
    }

    @Test
    void everyPageTellsWhatWhyAndWhatToUseInstead() throws IOException {
        assertThat(pages()).isNotEmpty().allSatisfy(RulePagesTest::checkForm);
    }

    private static void checkForm(RulePage page) {
        assertThat(page.text()).startsWith("# " + page.code() + "\n**Checks** ").contains("**Why** ", "**Source** ");
        assertThat(page.examples())
                .filteredOn(example -> !example.mended())
                .extracting(RulePage.Example::expected)
                .as("an example that the rule flags")
                .anySatisfy(expected -> assertThat(
                                expected.map(RulePage.Block::text).orElse(""))
                        .contains("[" + page.code() + "]"));
        assertThat(page.examples())
                .filteredOn(RulePage.Example::mended)
                .as("`## " + RulePage.USE_INSTEAD + "`, without findings")
                .hasSize(1)
                .allSatisfy(example -> assertThat(example.expected()).isEmpty());
    }

    @Test
    void codesInTheSourcesAreThePages() throws IOException {
        Set<String> codes = new TreeSet<>();
        for (Path source : sources()) {
            codes.addAll(codes(source));
        }

        assertThat(pages()).extracting(RulePage::code).containsExactlyElementsOf(codes);
    }

    @Test
    void everyRuleIsOnAPage() throws IOException {
        Set<String> pages = pages().stream().map(RulePage::code).collect(Collectors.toCollection(TreeSet::new));

        assertThat(Rules.all())
                .allSatisfy(rule -> assertThat(codes(rule)).isNotEmpty().isSubsetOf(pages));
    }

    /** The code that the class is named after, or else those that it tells. */
    private static Set<String> codes(Object rule) throws IOException {
        if (rule instanceof Relations) {
            return Relations.codes();
        }
        String name = rule.getClass().getSimpleName();
        String code = name.replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
        return Files.exists(PAGES.resolve(code + ".md"))
                ? Set.of(code)
                : codes(Path.of("src/main/java", rule.getClass().getName().replace('.', '/') + ".java"));
    }

    private static Set<String> codes(Path source) throws IOException {
        Set<String> codes = new TreeSet<>();
        String text = Files.readString(source);
        Matcher told = TOLD.matcher(text);
        while (told.find()) {
            codes.add(Objects.requireNonNullElse(told.group(1), told.group(2)));
        }
        Matcher named = NAMED.matcher(text);
        while (named.find()) {
            Matcher constant = Pattern.compile("String " + Pattern.quote(named.group(1)) + " = \"([a-z-]+)\";")
                    .matcher(text);
            assertThat(constant.find())
                    .as("%s: %s stands for a code of this class", source, named.group(1))
                    .isTrue();
            codes.add(constant.group(1));
        }
        return codes;
    }

    private static List<RulePage> pages() throws IOException {
        List<RulePage> pages = new ArrayList<>();
        for (Path path : files(PAGES, ".md")) {
            pages.add(RulePage.read(path));
        }
        return pages;
    }

    private static List<Path> sources() throws IOException {
        return files(SOURCES, ".java");
    }

    private static List<Path> files(Path folder, String ending) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            return paths.filter(path -> path.toString().endsWith(ending))
                    .sorted()
                    .toList();
        }
    }

    /** The lines of a block of findings. */
    private String told(RulePage.Example example) throws Exception {
        return all(example).stream().map(Told::lines).collect(Collectors.joining());
    }

    private List<Told> all(RulePage.Example example) throws Exception {
        Path root = Files.createTempDirectory(temp, "fleet");
        for (RulePage.Block block : example.blocks()) {
            lay(block, root);
        }
        boolean asFiles = example.blocks().stream()
                .anyMatch(it -> it.option("path").filter(path -> isRead(path)).isPresent());
        return asFiles ? toldOfFiles(example, root) : toldOfSnippets(example, root);
    }

    private static boolean isRead(String path) {
        return path.endsWith(".yaml")
                || path.endsWith(".ledger")
                || path.endsWith(".md")
                || path.endsWith(".json")
                || path.endsWith(".csv")
                || path.endsWith(".properties");
    }

    private static void lay(RulePage.Block block, Path root) throws IOException {
        Optional<String> path = block.option("path");
        if (path.isPresent()) {
            Path file = root.resolve(path.get());
            Files.createDirectories(file.getParent());
            Files.writeString(file, block.text());
            if (block.language().equals("picture")) {
                BufferedImage picture = new BufferedImage(4, 3, BufferedImage.TYPE_INT_RGB);
                ImageIO.write(picture, block.option("located").isPresent() ? "jpg" : "png", file.toFile());
            }
            if (block.language().equals("film")) {
                int seconds = Integer.parseInt(block.option("seconds").orElseThrow());
                Files.write(file, TinyFilm.of(seconds, block.option("located").isPresent()));
                if (block.option("bytes").isPresent()) {
                    try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
                        large.setLength(Long.parseLong(block.option("bytes").orElseThrow()));
                    }
                }
            } else if (block.option("located").isPresent()) {
                Files.write(file, located(Files.readAllBytes(file)));
            }
            if (block.option("side").isPresent()) {
                int side = Integer.parseInt(block.option("side").orElseThrow());
                Files.write(file, HostileInput.png(side, side));
            }
        }
    }

    /** The same JPEG with a latitude of 45 degrees: Exif 2.32, 4.5.4 and 4.6.6. */
    private static byte[] located(byte[] jpeg) {
        ByteBuffer latitude = ByteBuffer.allocate(24)
                .putInt(45)
                .putInt(1)
                .putInt(0)
                .putInt(1)
                .putInt(0)
                .putInt(1);
        ByteBuffer exif = ByteBuffer.allocate(4 + 6 + 26 + 18 + 24)
                .putShort((short) 0xFFE1)
                .putShort((short) (2 + 6 + 26 + 18 + 24))
                .put("Exif\0\0MM\0*".getBytes(StandardCharsets.US_ASCII))
                .putInt(8)
                .putShort((short) 1)
                .putShort((short) 0x8825)
                .putShort((short) 4)
                .putInt(1)
                .putInt(26)
                .putInt(0)
                .putShort((short) 1)
                .putShort((short) 2)
                .putShort((short) 5)
                .putInt(3)
                .putInt(44)
                .putInt(0)
                .put(latitude.array());
        return ByteBuffer.allocate(jpeg.length + exif.capacity())
                .put(jpeg, 0, 2)
                .put(exif.array())
                .put(jpeg, 2, jpeg.length - 2)
                .array();
    }

    private static List<Told> toldOfFiles(RulePage.Example example, Path root) throws Exception {
        Path coach = Files.createDirectories(root.resolve("units/tiny"));
        if (!Files.exists(root.resolve(FLEET))) {
            Files.copy(TINY.resolve("fleet.yaml"), root.resolve(FLEET));
        }
        if (!Files.exists(coach.resolve("unit.yaml"))) {
            Files.copy(TINY.resolve("unit.yaml"), coach.resolve("unit.yaml"));
        }
        Set<String> paths = example.blocks().stream()
                .flatMap(block -> block.option("path").stream())
                .collect(Collectors.toSet());
        // The tiny coach has next to nothing of what the procedures of the program speak of.
        return Stream.concat(findings(FleetReader.read(Folders.at(root)), root), foundByCommands(root, paths))
                // A file of another program is named as the command names it.
                .filter(finding -> paths.contains(finding.at().file().path().replace(root + "/", "")))
                .map(finding -> new Told(finding, true))
                .toList();
    }

    /** In files of a coach that are read when somebody asks for what they are about, and in those of another program. */
    private static Stream<Finding> foundByCommands(Path root, Set<String> paths) throws IOException {
        List<Finding> findings = new ArrayList<>();
        FleetReader.read(Folders.at(root))
                .fleet()
                .units()
                .forEach(unit -> findings.addAll(Editions.faults(Folders.at(root), unit)));
        WorkList.read(root, "tiny", findings::add);
        for (String path : paths) {
            if (path.endsWith(".csv")) {
                Path file = root.resolve(path);
                Bookings.read(file, List.of("tiny"), Set.of(Column.EDITION_SENT), booking -> {}, findings::add);
            }
        }
        return findings.stream();
    }

    private static List<Told> toldOfSnippets(RulePage.Example example, Path root) throws Exception {
        Overlay overlay = new Overlay(Folders.at(root));
        overlay.procedure(tiny("procedure.md", PROCEDURES + "ask-us.md"));
        Set<SourceFile> snippets = new HashSet<>();
        Optional<SourceFile> fleet = Optional.empty();
        boolean coach = false;
        Optional<SourceFile> model = example.blocks().stream()
                .filter(block -> block.option("model").isPresent())
                .map(block -> block.file("units/models/twin/model.yaml"))
                .findFirst();
        model.ifPresent(snippets::add);
        for (RulePage.Block block : example.blocks()) {
            if (block.option("equipment").isPresent()) {
                SourceFile file = block.file("units/shared/equipment/"
                        + block.option("equipment").filter(it -> !it.isEmpty()).orElse("flagpole") + ".md");
                overlay.equipment(file);
                snippets.add(file);
            }
        }
        for (RulePage.Block block : example.blocks()) {
            if (block.language().equals("markdown") && block.option("equipment").isEmpty()) {
                String folder = block.option("own").isPresent()
                        ? "units/tiny/procedures/"
                        : block.option("trouble").isPresent() ? "units/shared/trouble/" : PROCEDURES;
                SourceFile file = block.file(folder + "example-" + (1 + snippets.size()) + ".md");
                overlay.procedure(file);
                snippets.add(file);
            } else if (block.language().equals("yaml") && block.option("fleet").isPresent()) {
                fleet = Optional.of(block.file(FLEET));
            } else if (block.language().equals("yaml") && block.option("model").isEmpty()) {
                String path = "units/" + block.option("folder").orElse("tiny") + "/unit.yaml";
                SourceFile file = block.file(path);
                if (model.isPresent()) {
                    overlay.coach(tiny("unit.yaml", path), Optional.of(file), model.get());
                } else {
                    overlay.coach(tiny("unit.yaml", path), Optional.of(file));
                }
                snippets.add(file);
                coach = true;
            }
        }
        if (!coach) {
            overlay.coach(tiny("unit.yaml", "units/tiny/unit.yaml"), Optional.empty());
        }
        fleet.ifPresent(snippets::add);
        overlay.fleet(tiny("fleet.yaml", FLEET), fleet);
        return findings(overlay.read(), root)
                .map(finding -> new Told(finding, snippets.contains(finding.at().file())))
                .toList();
    }

    private static SourceFile tiny(String name, String path) throws IOException {
        return new SourceFile(path, Files.readString(TINY.resolve(name)));
    }

    private static Stream<Finding> findings(FleetReader.Reading reading, Path root) throws Exception {
        Catalogs screen = Files.exists(root.resolve("themes"))
                ? Theme.load(root, Theme.BUILT_IN).catalogs()
                : BUILT_IN.get();
        return Check.of(reading.fleet(), reading.library(), screen, reading.findings()).findings().all().stream();
    }

    /**
     * @param snippet whether it is in a snippet, whose name goes without saying
     */
    private record Told(Finding finding, boolean snippet) {
        String lines() {
            Place at = finding.at();
            String place = snippet ? at.line() + ":" + at.column() : at.toString();
            return place + ": " + sentence() + "\n"
                    + TextReport.of(new Findings(List.of(finding)), false)
                            .lines()
                            .filter(line -> line.startsWith("help: "))
                            .map(line -> line + "\n")
                            .collect(Collectors.joining());
        }

        String sentence() {
            return "%s: %s [%s]".formatted(finding.severity().word(), finding.message(), finding.code());
        }
    }
}
