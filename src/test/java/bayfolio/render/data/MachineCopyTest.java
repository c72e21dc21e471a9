package bayfolio.render.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bayfolio.Canaries;
import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.catalog.Catalogs;
import bayfolio.check.Check;
import bayfolio.compose.Composer;
import bayfolio.document.Audience;
import bayfolio.document.Handbook;
import bayfolio.finding.Findings;
import bayfolio.measure.Meters;
import bayfolio.measure.Scale;
import bayfolio.model.Country;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Size;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import bayfolio.render.BlankMedia;
import bayfolio.render.Means;
import bayfolio.render.Media;
import bayfolio.render.Output;
import bayfolio.render.Printing;
import bayfolio.render.theme.Theme;
import bayfolio.render.web.WebSite;
import bayfolio.source.Digest;
import bayfolio.source.Located;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;

/** The copy for other programs, read by another reader than the one that wrote it. */
final class MachineCopyTest {
    private static final JsonMapper JSON = new JsonMapper();
    private static final String BASE = "https://handbook.hollinbay.example/";
    private static final Path SCHEMA = Path.of("src/main/resources/bayfolio/" + MachineCopy.SCHEMA);
    private static final FleetReader.Reading READING = FleetReader.read(Folders.at(Path.of("")));

    /** Longer than what stands on pages for other reasons. */
    private static final String CANARY = "qx7staffqx7";

    private static Path root(Audience reader) {
        Path web = DemoFleet.web();
        return reader == Audience.STAFF ? web.resolveSibling("staff") : web;
    }

    private static Stream<Audience> readers() {
        return Stream.of(Audience.RENTERS, Audience.STAFF);
    }

    private static JsonNode copy(Audience reader, String coach) throws Exception {
        return JSON.readTree(Files.readAllBytes(root(reader).resolve(coach).resolve(MachineCopy.FILE)));
    }

    private static Schema schema() throws Exception {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(SCHEMA));
    }

    @Test
    void eachCopyIsAsTheSchemaBesideItWants() throws Exception {
        Schema schema = schema();
        for (Audience reader : readers().toList()) {
            assertThat(root(reader).resolve(MachineCopy.SCHEMA)).hasSameBinaryContentAs(SCHEMA);
            for (String coach : DemoFleet.coaches()) {
                String json = Files.readString(root(reader).resolve(coach).resolve(MachineCopy.FILE));

                assertThat(schema.validate(json, InputFormat.JSON)).as(coach).isEmpty();
                assertThat(json).endsWith("}\n").doesNotContain("\r").doesNotEndWith("\n\n");
                assertThat(copy(reader, coach).path("$schema").asString()).isEqualTo(BASE + MachineCopy.SCHEMA);
                assertThat(copy(reader, coach).path("reader").asString())
                        .isEqualTo(reader == Audience.STAFF ? "staff" : "renters");
            }
        }
    }

    @Test
    void aFieldOfAnotherNameIsRefused() throws Exception {
        Schema schema = schema();
        String json = Files.readString(root(Audience.STAFF).resolve("dunlin").resolve(MachineCopy.FILE));
        Set<String> names = new TreeSet<>();
        names(JSON.readTree(json), names);

        assertThat(names).contains("staff", "urgent", "figures", "hangs-on", "inputs", "sha-256", "anchor");
        for (String name : names) {
            String quoted = "\"" + name + "\":";
            assertThat(schema.validate(json.replace(quoted, "\"un" + name + "\":"), InputFormat.JSON))
                    .as(name)
                    .isNotEmpty();
        }
    }

    private static void names(JsonNode json, Set<String> names) {
        json.properties().forEach(each -> names.add(each.getKey()));
        json.forEach(each -> names(each, names));
    }

    @Test
    void itsAddressesArePagesAndItsTitlesTheirHeadings() throws Exception {
        int anchors = 0;
        for (String coach : DemoFleet.looked()) {
            for (Audience reader : readers().toList()) {
                Path folder = root(reader).resolve(coach);
                Map<String, Document> pages = new TreeMap<>();
                DemoFleet.files(folder).forEach((path, bytes) -> {
                    Document page =
                            Jsoup.parse(path.endsWith(".html") ? new String(bytes, StandardCharsets.UTF_8) : "");
                    // What leads on from an old address is no page of the handbook.
                    if (page.body().className().startsWith("page-")) {
                        pages.put(path, page);
                    }
                });
                JsonNode copy = copy(reader, coach);
                Set<String> told = new HashSet<>();
                for (JsonNode page : copy.path("pages")) {
                    String address = page.path("address").asString();
                    told.add(address);
                    Document html = Objects.requireNonNull(pages.get(address), address);
                    assertThat(heading(html))
                            .as(coach + address)
                            .isEqualTo(page.path("title").asString());
                    assertThat(html.body().hasClass("urgent"))
                            .isEqualTo(page.path("urgent").asBoolean());
                    for (JsonNode part : parts(page)) {
                        assertThat(html.getElementById(part.path("anchor").asString()))
                                .as("%s", part)
                                .isNotNull();
                        anchors++;
                    }
                    for (JsonNode step : page.path("steps")) {
                        assertThat(Objects.requireNonNull(html.getElementById(
                                                step.path("anchor").asString()))
                                        .attr("value"))
                                .isEqualTo(step.path("number").asString());
                    }
                    Path open = root(Audience.RENTERS).resolve(coach).resolve(address);
                    assertThat(page.path("url").asString(""))
                            .as(address)
                            .isEqualTo(Files.exists(open) ? BASE + coach + "/" + address : "");
                    assertThat(page.has("staff")).isEqualTo(!Files.exists(open));
                }
                assertThat(told).isEqualTo(pages.keySet());
                assertThat(copy.path("photos"))
                        .allSatisfy(photo -> assertThat(sha256(Files.readAllBytes(
                                        folder.resolve(photo.path("address").asString()))))
                                .isEqualTo(photo.path("sha-256").asString()));
            }
        }
        assertThat(anchors).isGreaterThan(5000);
    }

    private static List<JsonNode> parts(JsonNode page) {
        return Stream.concat(
                        page.path("sections").valueStream(), page.path("steps").valueStream())
                .toList();
    }

    private static String heading(Document page) {
        Element heading = Objects.requireNonNull(page.selectFirst("h1")).clone();
        heading.select(".said").remove();
        return heading.text();
    }

    private static String sha256(byte[] bytes) {
        MessageDigest digest = Digest.sha256();
        digest.update(bytes);
        return Digest.whole(digest);
    }

    @Test
    void aMeasureIsThereInMetricUnitsToo() throws Exception {
        for (Unit unit : READING.fleet().units()) {
            JsonNode heights = facts(copy(Audience.RENTERS, unit.id()), "size/height");

            assertThat(heights).isNotEmpty();
            for (JsonNode height : heights) {
                assertThat(height.path("figures").path(0).asDouble())
                        .isEqualTo(unit.size().facts().get(Size.HEIGHT).value(), toNineDigits());
                assertThat(height.path("unit").asString()).isEqualTo("m");
            }
        }
        JsonNode units = JSON.readTree(SCHEMA).at("/$defs/fact/properties/unit/enum");
        assertThat(units.valueStream().map(JsonNode::asString))
                .containsExactlyInAnyOrderElementsOf(Scale.all().stream()
                        .map(scale -> scale.kept().isEmpty() ? "1" : scale.kept())
                        .toList());
    }

    private static Offset<Double> toNineDigits() {
        return within(1e-7);
    }

    private static JsonNode facts(JsonNode copy, String way) {
        ArrayNode found = JSON.createArrayNode();
        copy.path("facts").forEach(fact -> {
            if (fact.path("way").asString().equals(way)) {
                found.add(fact);
            }
        });
        return found;
    }

    @Test
    void digestsAreMadeAsTheSchemaSays() throws Exception {
        JsonNode copy = copy(Audience.RENTERS, "whimbrel");
        for (JsonNode fact : copy.path("facts")) {
            String text = String.join(
                    "\n",
                    Stream.concat(
                                    Stream.of(fact.path("way").asString()),
                                    fact.path("value").valueStream().map(JsonNode::asString))
                            .toList());
            assertThat(fact.path("digest").asString()).isEqualTo(twelve(text));
        }
        assertThat(copy.path("digest").asString())
                .isEqualTo(twelve(String.join(
                        "\n",
                        copy.path("pages")
                                .valueStream()
                                .map(page -> page.path("digest").asString())
                                .toList())));
    }

    private static String twelve(String text) {
        return sha256(text.getBytes(StandardCharsets.UTF_8)).substring(0, 12);
    }

    /** What stands on a page of a question, and what follows from a fact. */
    @Test
    void whatIsWorkedOutSaysWhatItHangsOn() throws Exception {
        for (String coach : DemoFleet.coaches()) {
            JsonNode copy = copy(Audience.RENTERS, coach);
            List<String> questions = copy.path("pages")
                    .valueStream()
                    .filter(page -> page.path("kind").asString().equals("question"))
                    .map(page -> page.path("id").asString())
                    .toList();
            assertThat(copy.path("worked-out")
                            .valueStream()
                            .filter(each -> each.has("inputs"))
                            .map(each -> each.path("id").asString()))
                    .isNotEmpty()
                    .containsExactlyElementsOf(questions);
            assertThat(copy.path("worked-out")).anySatisfy(sign -> {
                assertThat(sign.path("id").asString()).isEqualTo("home#read-out.list.lowest-sign");
                assertThat(sign.path("hangs-on").path(0).asString()).isEqualTo("size/height");
            });
            assertThat(copy.path("facts"))
                    .noneMatch(fact -> fact.path("id").asString().endsWith("lowest-sign"));
        }
    }

    @Test
    void noPhoneKeepsIt() throws Exception {
        for (String coach : DemoFleet.looked()) {
            for (String file : List.of("kept.json", "worker.js")) {
                assertThat(Files.readString(DemoFleet.web().resolve(coach).resolve(file)))
                        .doesNotContain(MachineCopy.FILE);
            }
        }
    }

    @Test
    void nothingForStaffIsInThatOfRenters() throws Exception {
        int told = 0;
        for (Unit each : READING.fleet().units()) {
            Unit unit = Canaries.in(each, CANARY);
            Fleet fleet = new Fleet(
                    new FleetFacts(Canaries.in(READING.fleet().facts().facts(), CANARY)),
                    List.of(unit),
                    READING.fleet()
                            .shared()
                            .with(READING.fleet().countries().stream()
                                    .map(country -> new Country(Canaries.in(country.facts(), CANARY)))
                                    .toList()));

            String renters = text(fleet, Audience.RENTERS);
            Stream<String> ids = Canaries.WITH_SOME_FOR_STAFF.stream().map(Canaries::id);
            for (String word : Stream.concat(Stream.of(CANARY, "July 4, 2031", "4 July 2031", "2031-07-04"), ids)
                    .toList()) {
                assertThat(renters).as(unit.id()).doesNotContain(word);
            }
            assertThat(renters).doesNotContain("\"staff\"");
            told += text(fleet, Audience.STAFF).split(CANARY, -1).length - 1;
        }
        assertThat(told).as("in those of staff").isGreaterThan(1000);
    }

    private static String text(Fleet fleet, Audience reader) throws Exception {
        Site site = new Site(fleet, reader);
        return new String(site.file(MachineCopy.FILE), StandardCharsets.UTF_8);
    }

    /** Each page of which a reader reads anything else has another digest, and no other page. */
    @Test
    void aPageHasAnotherDigestExactlyIfItSaysSomethingElse() throws Exception {
        for (String coach : List.of("dunlin", "whimbrel")) {
            Unit before = READING.fleet().units().stream()
                    .filter(it -> it.id().equals(coach))
                    .findFirst()
                    .orElseThrow();
            for (Unit after : List.of(named(before), higher(before))) {
                for (Audience reader : readers().toList()) {
                    Site was = new Site(only(before), reader);
                    Site is = new Site(only(after), reader);
                    Map<String, String> texts = was.texts();
                    Map<String, String> digests = was.digests();
                    Set<String> said = others(texts, is.texts());

                    assertThat(said).isNotEmpty().hasSizeLessThan(texts.size());
                    assertThat(others(digests, is.digests())).isEqualTo(said);
                    assertThat(digests.keySet()).isEqualTo(texts.keySet());
                }
            }
        }
    }

    /** Keys of which the second has another value. */
    private static Set<String> others(Map<String, String> was, Map<String, String> is) {
        Set<String> others = new TreeSet<>();
        was.forEach((path, value) -> {
            if (!value.equals(is.get(path))) {
                others.add(path);
            }
        });
        return others;
    }

    /** A foot higher: on many pages, in what is worked out, on drawings. */
    private static Unit higher(Unit unit) {
        Located<Meters> height = unit.size().facts().located(Size.HEIGHT).orElseThrow();
        return unit.with(unit.facts()
                .with(
                        Unit.SIZE,
                        new Located<>(
                                new Size(unit.size()
                                        .facts()
                                        .with(
                                                Size.HEIGHT,
                                                new Located<>(
                                                        new Meters(
                                                                height.value().value() + 0.3048),
                                                        height.at()))),
                                unit.facts().at(Unit.SIZE))));
    }

    private static Unit named(Unit unit) {
        return unit.with(unit.facts()
                .with(Unit.NUMBER, new Located<>("ZZ 99", unit.facts().at(Unit.NUMBER))));
    }

    private static Fleet only(Unit unit) {
        return new Fleet(READING.fleet().facts(), List.of(unit), READING.fleet().shared());
    }

    /** The pages and the machine copy of a coach that is alone in its fleet. */
    private static final class Site {
        private final String unit;
        private final Map<String, byte[]> files = new TreeMap<>();

        Site(Fleet fleet, Audience reader) throws Exception {
            Theme theme = Theme.load(Path.of(""), Theme.BUILT_IN);
            Catalogs screen = theme.catalogs();
            Unit coach = fleet.units().get(0);
            this.unit = coach.id();
            Check check = new Check(fleet, READING.library(), screen, Findings.of(List.of()), Map.of());
            Handbook seen = Composer.compose(check.of(coach)).seenBy(reader);
            Media media = BlankMedia.of(coach).seenBy(coach, reader);
            Means means = new Means(theme, screen, fleet, Printing.USUAL);
            for (Output output : List.of(new WebSite(means), new MachineCopy(means))) {
                files.putAll(output.files(seen, media, Output.Around.NOTHING));
            }
        }

        byte[] file(String path) {
            return Objects.requireNonNull(files.get(unit + "/" + path));
        }

        Map<String, String> digests() {
            Map<String, String> digests = new TreeMap<>();
            JSON.readTree(file(MachineCopy.FILE))
                    .path("pages")
                    .forEach(page -> digests.put(
                            page.path("address").asString(), page.path("digest").asString()));
            return digests;
        }

        /** What is read on each page, without menus and foot. */
        Map<String, String> texts() {
            Map<String, String> texts = new TreeMap<>();
            files.forEach((path, bytes) -> {
                if (path.startsWith(unit + "/") && path.endsWith(".html")) {
                    Document page = Jsoup.parse(new String(bytes, StandardCharsets.UTF_8));
                    texts.put(
                            path.substring(unit.length() + 1),
                            Objects.requireNonNull(page.selectFirst("main")).text());
                }
            });
            return texts;
        }
    }
}
