package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PublisherTest {
    /** Planted in what is for staff, and shorter than what the audit looks for. */
    private static final String PLANTED = "qx7staffqx7";

    @SuppressWarnings("NullAway.Init") // set before the first test
    private static DemoFleet demo;

    @SuppressWarnings("NullAway.Init")
    private static DemoFleet small;

    @BeforeAll
    static void read(@TempDir Path copy) throws Exception {
        demo = DemoFleet.of(DemoFleet.copy(Path.of(""), copy));
        small = DemoFleet.of(DemoFleet.SMALL);
    }

    @Test
    void theDemoFleetIsPublishedCoachByCoach() {
        Map<String, byte[]> site = DemoFleet.files(DemoFleet.web());
        assertThat(site)
                .containsKeys(
                        "index.html",
                        "dunlin/index.html",
                        "turnstone/walk-round.html",
                        "whimbrel/do/start-generator.html");
        assertThat(site.keySet().stream()
                        .map(path -> path.replaceFirst("/.*", ""))
                        .distinct())
                .containsExactlyInAnyOrder(
                        "404.html",
                        "L",
                        "_headers",
                        "desk.vcf",
                        "handbook.schema.json",
                        "index.html",
                        "assets",
                        "avocet",
                        "curlew",
                        "dunlin",
                        "godwit",
                        "phalarope",
                        "redpoll",
                        "turnstone",
                        "whimbrel");
        assertThat(site.keySet()).anyMatch(path -> path.matches("assets/[0-9a-f]{12}/style.css"));
        assertThat(text(site, "index.html"))
                .contains("href=\"dunlin/index.html\"")
                .contains("href=\"turnstone/index.html\"")
                .contains("href=\"whimbrel/index.html\"");
    }

    @Test
    void publishingAgainGivesTheSameBytes(@TempDir Path out) throws Exception {
        demo.publish(out, "dunlin", "curlew");
        Map<String, String> first = DemoFleet.bytes(out.resolve("web/dunlin"));
        Map<String, String> firstStaff = DemoFleet.bytes(out.resolve("staff/dunlin"));

        demo.publishFresh(out);

        assertThat(DemoFleet.bytes(out.resolve("web/dunlin"))).isEqualTo(first);
        assertThat(DemoFleet.bytes(out.resolve("staff/dunlin"))).isEqualTo(firstStaff);
        // Another run, into another folder, has made all of them before.
        assertThat(DemoFleet.bytes(out.resolve("web"))).isEqualTo(DemoFleet.bytes(DemoFleet.web()));
        assertThat(DemoFleet.bytes(out.resolve("staff")))
                .isEqualTo(DemoFleet.bytes(DemoFleet.web().resolveSibling("staff")));
    }

    @Test
    void publishingOneCoachKeepsTheOthers(@TempDir Path folder) throws Exception {
        Path out = folder.resolve("out");
        demo.publish(out, "curlew", "dunlin", "whimbrel");
        Map<String, String> before = DemoFleet.bytes(out.resolve("web"));
        Path changed = DemoFleet.copy(Path.of(""), folder.resolve("fleet"));
        replace(changed.resolve("units/dunlin/unit.yaml"), "\nname: Dunlin\n", "\nname: Knot\n");
        replace(changed.resolve("units/whimbrel/unit.yaml"), "\nname: Whimbrel\n", "\nname: Ruff\n");

        DemoFleet.of(changed).publish(out, "dunlin");

        Map<String, String> after = DemoFleet.bytes(out.resolve("web"));
        assertThat(after.keySet()).isEqualTo(before.keySet());
        assertThat(after.get("dunlin/index.html")).contains("Knot").doesNotContain("Dunlin");
        assertThat(after.get("index.html")).contains("Knot");
        before.forEach((path, text) -> {
            if (!path.startsWith("dunlin/")
                    && !path.startsWith("L/DUNLIN/")
                    && path.contains("/")
                    && !path.startsWith("assets/")) {
                assertThat(after.get(path)).as(path).isEqualTo(text);
            }
        });
    }

    @Test
    void aCoachThatWasNotPublishedYetIsNotLinked(@TempDir Path out) throws Exception {
        demo.publish(out, "dunlin");

        Map<String, String> site = DemoFleet.bytes(out.resolve("web"));
        assertThat(site).containsKey("dunlin/index.html").doesNotContainKey("whimbrel/index.html");
        assertThat(site.get("index.html")).contains("dunlin/").doesNotContain("whimbrel/");
    }

    @Test
    void whatIsForStaffStandsInNoFile(@TempDir Path folder) throws Exception {
        Path fleet = DemoFleet.copy(Path.of(""), folder.resolve("fleet"));
        for (String unit : DemoFleet.whole()) {
            plant(fleet.resolve("units/" + unit + "/unit.yaml"), 10);
        }
        plant(fleet.resolve("units/models/bay-24/model.yaml"), 7);
        Path procedure = fleet.resolve("units/shared/procedures/shut-down-coach.md");
        String steps = Files.readString(procedure);
        Files.writeString(
                procedure,
                steps.replaceAll("(?m)^(title: |1\\. |Start |\\[S)", "$1" + PLANTED + " ")
                        .replaceAll("(?m)^sources: \\[", "sources: [" + PLANTED + ", "));

        DemoFleet.of(fleet).publish(folder.resolve("out"), DemoFleet.looked().toArray(String[]::new));

        DemoFleet.bytes(folder.resolve("out/web"))
                .forEach((path, text) -> assertThat(text).as(path).doesNotContain(PLANTED));
    }

    /** Puts the planted word into every text of a coach, or of a model, that is for staff. */
    private static void plant(Path file, int least) throws Exception {
        String text = Files.readString(file);
        String planted = text.replaceAll(
                        "(?m)^( +(?:override|after-override|checked-by|measured-by): )", "$1" + PLANTED + " ")
                .replaceAll("(?m)^(  - text: )((?:(?!^  - ).*\\R)*?    staff-only: yes)", "$1" + PLANTED + " $2")
                .replaceAll("(?m)^(    name: )((?:(?!^  - ).*\\R)*?    for: staff)", "$1" + PLANTED + " $2");
        assertThat(planted.split(PLANTED, -1).length)
                .as("places for staff in " + file)
                .isGreaterThan(least);
        Files.writeString(file, planted);
    }

    @Test
    void aTextForStaffThatARenterReadsIsStopped(@TempDir Path folder) throws Exception {
        assertLockIsStopped(DemoFleet.copy(DemoFleet.SMALL, folder.resolve("fleet")), folder);
    }

    /** What somebody typed for the wrong coach. */
    @Test
    void aTextForStaffOfOneCoachIsStoppedOnThePagesOfAnother(@TempDir Path folder) throws Exception {
        Path fleet = SmallFleet.write(folder.resolve("fleet"), List.of("knot", "plover"));
        replace(
                fleet.resolve("units/plover/unit.yaml"),
                "The lock of L1 was changed after the spring fair.",
                "The safe of this one is behind the seat.");
        assertLockIsStopped(fleet, folder);
    }

    /** Typed where a renter reads it. */
    private void assertLockIsStopped(Path fleet, Path folder) throws Exception {
        replace(
                fleet.resolve("units/plover/unit.yaml"),
                "The tap is shut by turning it left.",
                "The lock of L1 was changed after the spring fair.");

        assertRefused(
                DemoFleet.of(fleet),
                folder.resolve("out"),
                "  plover/switch/pump.html: a text for staff stands on it: `The lock of L1 was changed after the spring fair.`");
    }

    @Test
    void aForeignFileIsNamedAndStays(@TempDir Path out) throws Exception {
        Path foreign = out.resolve("web/photos/holiday.jpg");
        DemoFleet.write(foreign, "mine");

        assertThatThrownBy(() -> small.publish(out))
                .isInstanceOf(PublishException.class)
                .hasMessageContaining("`" + foreign + "`");
        assertThat(DemoFleet.bytes(out)).containsOnlyKeys(".editions/lock", "web/photos/holiday.jpg");
        assertThat(foreign).hasContent("mine");
    }

    @Test
    void aFileInPlaceOfTheRootIsNamedAndStays(@TempDir Path out) throws Exception {
        Files.writeString(out.resolve("web"), "mine");

        assertThatThrownBy(() -> small.publish(out))
                .isInstanceOf(PublishException.class)
                .hasMessageContaining("`" + out.resolve("web") + "` is no folder");
        assertThat(out.resolve("web")).hasContent("mine");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "..",
                "units",
                "units/plover",
                "units/new/folder",
                "themes",
                "themes/harbor",
                "site-out/../units/plover",
                "link-to-the-fleet",
                "link-to-the-fleet/units/plover",
                "link-to-units/plover/new"
            })
    void aPlaceWithinTheDescriptionsOrThemesOrAroundThemIsRefused(String out, @TempDir Path folder) throws Exception {
        Path fleet = DemoFleet.copy(DemoFleet.SMALL, folder.resolve("fleet"));
        Files.createDirectory(fleet.resolve("site-out"));
        Files.createSymbolicLink(fleet.resolve("link-to-the-fleet"), fleet);
        Files.createSymbolicLink(fleet.resolve("link-to-units"), fleet.resolve("units"));
        Map<String, String> before = DemoFleet.bytes(folder);

        assertThatThrownBy(() -> DemoFleet.of(fleet).publish(fleet.resolve(out)))
                .isInstanceOf(PublishException.class)
                .hasMessageStartingWith("`" + fleet.resolve(out) + "` is no place for the site: ");
        assertThat(DemoFleet.bytes(folder)).isEqualTo(before);
    }

    @Test
    void aPlaceInTheFleetFolderBesideThemIsTaken(@TempDir Path folder) throws Exception {
        Path fleet = DemoFleet.copy(DemoFleet.SMALL, folder.resolve("fleet"));

        DemoFleet.of(fleet).publish(fleet.resolve("site-out"));

        assertThat(fleet.resolve("site-out/web/plover/index.html")).isRegularFile();
    }

    @Test
    void aFolderThatIsNotThereIsMade(@TempDir Path folder) throws Exception {
        small.publish(folder.resolve("a/b/c"));

        assertThat(folder.resolve("a/b/c/web/plover/index.html")).isRegularFile();
    }

    @Test
    void aSectionOfAThemeLeftOpenIsToldByFileAndLine(@TempDir Path folder) throws Exception {
        DemoFleet themed = themed(folder, "page.mustache", "{{#navigation}}\n<li>", "{{#navigation}}{{#here}}\n<li>");

        assertRefused(themed, folder.resolve("out"), "  themes/harbor/page.mustache:");
        assertThatThrownBy(() -> themed.publish(folder.resolve("out")))
                .message()
                .matches("The theme is wrong, nothing was published:\n"
                        + "  themes/harbor/page\\.mustache:[0-9]+:[0-9]+: [^\n]+");
    }

    @Test
    void anUnknownNameInAThemeIsToldByFileAndLine(@TempDir Path folder) throws Exception {
        DemoFleet themed = themed(folder, "page.mustache", "{{title}}</h1>", "{{titel}}</h1>");
        List<String> lines = Files.readAllLines(Path.of("themes/harbor/page.mustache"));
        int at = IntStream.range(0, lines.size())
                .filter(i -> lines.get(i).contains("{{title}}</h1>"))
                .findFirst()
                .orElseThrow();
        String line = (at + 1) + ":" + (lines.get(at).indexOf("{{title}}</h1>") + 1);

        assertRefused(
                themed, folder.resolve("out"), "  themes/harbor/page.mustache:" + line + ": there is no name `titel`");
    }

    @Test
    void aThemeThatLacksATemplateIsToldByFileAndLine(@TempDir Path folder) throws Exception {
        DemoFleet themed = themed(folder, "page.mustache", "{{>head}}", "{{>hed}}");

        assertRefused(
                themed,
                folder.resolve("out"),
                "  themes/harbor/page.mustache:4:1: the template is malformed: there is no partial `hed`");
    }

    @Test
    void aBrokenLinkInAThemeIsStoppedByTheAudit(@TempDir Path folder) throws Exception {
        DemoFleet themed = themed(folder, "page.mustache", "</footer>", "<a href=\"imprint.html\">Us</a></footer>");

        assertRefused(
                themed,
                folder.resolve("out"),
                "  plover/a-z.html: the link `imprint.html` leads to no file of the site");
    }

    @Test
    void aThemeWithoutALanguageIsStoppedByTheAudit(@TempDir Path folder) throws Exception {
        DemoFleet themed = themed(folder, "page.mustache", "<html lang=\"{{language}}\">", "<html>");

        assertRefused(themed, folder.resolve("out"), "  plover/a-z.html: no language is set");
    }

    @Test
    void aThemeThatLoadsFromOutsideIsStoppedByTheAudit(@TempDir Path folder) throws Exception {
        DemoFleet themed = themed(
                folder,
                "assets/style.css",
                "* { box-sizing",
                "@import url(https://elsewhere.example/font.css);\n* { box-sizing");

        assertRefused(
                themed,
                folder.resolve("out"),
                "  assets/",
                "/style.css: `https://elsewhere.example/font.css` would be loaded from outside the site");
    }

    /** Its pages name the style that they were made with. */
    @Test
    void aCoachThatIsNotMadeAnewKeepsItsLook(@TempDir Path folder) throws Exception {
        Path out = folder.resolve("out");
        DemoFleet.of(DemoFleet.copy(Path.of(""), folder.resolve("fleet"))).publish(out, "dunlin", "turnstone");
        String before = text(DemoFleet.files(out.resolve("web")), "turnstone/index.html");
        DemoFleet.write(folder.resolve("fleet/themes/harbor/assets/style.css"), "body { color: red }\n");

        DemoFleet.of(folder.resolve("fleet")).publish(out, "dunlin");

        Map<String, byte[]> site = DemoFleet.files(out.resolve("web"));
        assertThat(text(site, "turnstone/index.html")).isEqualTo(before);
        String style =
                Jsoup.parse(before).select("link[rel=stylesheet]").attr("href").replace("../", "");
        assertThat(site).containsKey(style);
        assertThat(Jsoup.parse(text(site, "dunlin/index.html"))
                        .select("link[rel=stylesheet]")
                        .attr("href"))
                .isNotEqualTo("../" + style);
        assertThat(Jsoup.parse(text(site, "index.html"))
                        .select(".coaches .number")
                        .eachText())
                .containsExactlyElementsOf(Jsoup.parse(text(DemoFleet.files(DemoFleet.web()), "index.html"))
                        .select(".coaches a[href^=dunlin] .number, .coaches a[href^=turnstone] .number")
                        .eachText())
                .hasSize(2);
    }

    @Test
    void aThemeMayChangeOneScreenWordAndKeepTheRest(@TempDir Path folder) throws Exception {
        Path fleet = DemoFleet.copy(DemoFleet.SMALL, folder.resolve("fleet"));
        DemoFleet.write(fleet.resolve("themes/harbor/words-en.properties"), "page.words=Our words\n");

        DemoFleet.of(fleet).publish(folder.resolve("out"));

        assertThat(folder.resolve("out/web/plover/words.html"))
                .content()
                .contains("<h1>Our words</h1>")
                .contains(">Walk round the coach</a>");
    }

    @Test
    void aPageSaysTheLanguageThatItIsWrittenIn(@TempDir Path folder) throws Exception {
        Path fleet = DemoFleet.copy(DemoFleet.SMALL, folder.resolve("fleet"));
        Path facts = fleet.resolve("units/fleet.yaml");
        Files.writeString(facts, Files.readString(facts).replaceAll("(?m)^languages: .*", "languages: [de-DE, en-US]"));
        Path coach = fleet.resolve("units/plover/unit.yaml");
        Files.writeString(coach, Files.readString(coach) + "languages: [de-DE, en-GB]\n");
        StringWriter err = new StringWriter();
        String[] publish = {
            "publish",
            "--fleet",
            fleet.toString(),
            "--out",
            folder.resolve("out").toString()
        };

        int without = Folders.run(new PrintWriter(new StringWriter()), new PrintWriter(err), publish);
        DemoFleet.write(fleet.resolve("themes/harbor/words-de.properties"), "page.words=Unsere W\u00f6rter\n");
        int with = Folders.run(new PrintWriter(new StringWriter()), new PrintWriter(err), publish);

        assertThat(without).isEqualTo(1);
        assertThat(err.toString()).contains("[language-without-words]");
        assertThat(with).isZero();
        assertThat(folder.resolve("out/web/plover/words.html"))
                .content()
                .contains("<html lang=\"de-DE\">", "<h1>Unsere W\u00f6rter</h1>");
        assertThat(folder.resolve("out/web/index.html")).content().contains("<html lang=\"de-DE\">");
        Document page = Jsoup.parse(Files.readString(folder.resolve("out/web/plover/do/open-the-bed.html")));
        assertThat(page.select("h1").attr("lang"))
                .as("a procedure in the words of its writer")
                .isEqualTo("en-US");
        assertThat(page.select(".steps li [lang=en-US] p")).isNotEmpty();
        assertThat(page.select("p.mark.foreign").text()).isEqualTo("This text is not in your language yet.");
        assertThat(page.select("h2[lang]"))
                .as("titles of sections are of the catalog")
                .isEmpty();
    }

    @Test
    void nothingIsWrittenWhenTheCheckFindsAnError(@TempDir Path folder) throws Exception {
        Path fleet = DemoFleet.copy(DemoFleet.SMALL, folder.resolve("fleet"));
        Path out = folder.resolve("out");
        small.publish(out);
        Map<String, String> before = DemoFleet.bytes(out);
        replace(fleet.resolve("units/plover/unit.yaml"), "about: pump", "about: pumps");

        StringWriter err = new StringWriter();
        int exit = Folders.run(
                new PrintWriter(new StringWriter()),
                new PrintWriter(err),
                "publish",
                "--fleet",
                fleet.toString(),
                "--out",
                out.toString());

        assertThat(exit).isEqualTo(1);
        assertThat(err.toString()).contains("pumps").endsWith("Nothing was published.\n");
        assertThat(DemoFleet.bytes(out)).isEqualTo(before);
    }

    /** The small fleet with one file of the theme changed. */
    private static DemoFleet themed(Path folder, String file, String before, String after) throws Exception {
        Path fleet = DemoFleet.copy(DemoFleet.SMALL, folder.resolve("fleet"));
        Path own = fleet.resolve("themes/harbor").resolve(file);
        DemoFleet.write(own, Files.readAllBytes(Path.of("themes/harbor").resolve(file)));
        replace(own, before, after);
        return DemoFleet.of(fleet);
    }

    /** That a site published before stays, and what is said. */
    private void assertRefused(DemoFleet wrong, Path out, String... parts) throws Exception {
        small.publish(out);
        Map<String, String> before = DemoFleet.bytes(out.resolve("web"));

        assertThatThrownBy(() -> wrong.publish(out))
                .isInstanceOf(PublishException.class)
                .hasMessageContaining("nothing was published:\n")
                .hasMessageContaining("\n" + parts[0])
                .hasMessageContaining(parts[parts.length - 1]);
        assertThat(DemoFleet.bytes(out.resolve("web"))).isEqualTo(before);
    }

    private static void replace(Path file, String before, String after) throws Exception {
        String text = Files.readString(file);
        assertThat(text).contains(before);
        Files.writeString(file, text.replace(before, after));
    }

    private static String text(Map<String, byte[]> site, String path) {
        return new String(site.getOrDefault(path, new byte[0]), StandardCharsets.UTF_8);
    }

    /** What is printed for renters and for staff, each where its readers are, offered with its size. */
    @Test
    void whatIsPrintedIsOfferedToItsReaders(@TempDir Path out) throws Exception {
        DemoFleet small = DemoFleet.of(DemoFleet.SMALL);
        small.publish(out, Publisher.ways());

        Map<String, byte[]> web = DemoFleet.files(out.resolve("web"));
        Map<String, byte[]> staff = DemoFleet.files(out.resolve("staff"));
        assertThat(web.keySet())
                .contains(
                        "plover/print/book-a4.pdf",
                        "plover/print/book-letter.pdf",
                        "plover/print/large-print.pdf",
                        "plover/print/night-card.pdf",
                        "plover/print/phone-card.pdf",
                        "plover/print/quick-card.pdf")
                .noneMatch(path -> path.matches(".*/print/.*(label|damage|condition|inventory|ready).*"));
        assertThat(staff.keySet())
                .contains(
                        "plover/print/condition.pdf",
                        "plover/print/damage.pdf",
                        "plover/print/inventory.pdf",
                        "plover/print/ready.pdf",
                        "plover/print/door-labels.pdf");
        Element home = Jsoup.parse(text(web, "plover/index.html"));
        for (Element link : home.select(".prints a")) {
            byte[] file = web.get("plover/" + link.attr("href"));
            assertThat(file).as(link.attr("href")).isNotNull();
            assertThat(Objects.requireNonNull(link.parent()).text())
                    .matches(file.length > 900_000 ? ".* PDF, 1\\.[0-9] MB" : ".* PDF, [0-9]{1,3} KB");
        }
        assertThat(home.select(".prints a")).hasSize(6);
        assertThat(Jsoup.parse(text(staff, "plover/index.html"))
                        .select(".prints a")
                        .eachText())
                .anyMatch(words -> words.matches("Condition sheet PDF, [0-9]+ KB"))
                .anyMatch(words -> words.startsWith("Damage sheet "))
                .anyMatch(words -> words.startsWith("Door labels "));
    }

    @Test
    void whatIsNotAskedForIsNotMade(@TempDir Path out) throws Exception {
        DemoFleet small = DemoFleet.of(DemoFleet.SMALL);
        small.publish(out, Set.of("cards", Publisher.WEB));

        assertThat(DemoFleet.files(out.resolve("web")).keySet())
                .contains("plover/print/night-card.pdf", "plover/index.html")
                .noneMatch(path -> path.contains("/print/book"));
        assertThat(DemoFleet.files(out.resolve("staff")).keySet()).noneMatch(path -> path.contains("/print/"));
        // Pages that somebody was sent to do not go away with a word of the call.
        assertThatThrownBy(() -> small.publish(out, Set.of("book")))
                .isInstanceOf(PublishException.class)
                .hasMessageContaining("`--only` leaves out `web`");
        assertThat(DemoFleet.files(out.resolve("web")).keySet()).contains("plover/index.html");
    }

    /** A file is not laid out anew where it is made of the same, and is where it is not. */
    @Test
    void whatIsPrintedIsTakenOverWhereNothingChanged(@TempDir Path folder) throws Exception {
        Path root = DemoFleet.copy(DemoFleet.SMALL, folder.resolve("fleet"));
        Path out = folder.resolve("out");
        DemoFleet.of(root).publish(out, Set.of("cards", "sheets", Publisher.WEB));
        Map<String, String> first = DemoFleet.bytes(out.resolve("web"));

        DemoFleet.of(root).publish(out, Set.of("cards", "sheets", Publisher.WEB));
        assertThat(DemoFleet.bytes(out.resolve("web"))).isEqualTo(first);

        Path unit = root.resolve("units/plover/unit.yaml");
        DemoFleet.write(unit, Files.readString(unit).replace("name: Plover", "name: Godwit"));
        DemoFleet.of(root).publish(out, Set.of("cards", "sheets", Publisher.WEB));
        Map<String, String> second = DemoFleet.bytes(out.resolve("web"));
        first.forEach((path, bytes) -> {
            if (path.contains("/print/")) {
                assertThat(second.get(path)).as(path).isNotEqualTo(bytes);
            }
        });
    }

    /** Read by another program: neither the text nor what a file says of itself holds what is for staff. */
    @Test
    void nothingForStaffIsInWhatRentersPrint(@TempDir Path folder) throws Exception {
        Path root = DemoFleet.copy(DemoFleet.SMALL, folder.resolve("fleet"));
        Path unit = root.resolve("units/plover/unit.yaml");
        DemoFleet.write(
                unit,
                Files.readString(unit)
                        + "services:\n  - what: Grease the quokka bearings\n    every-days: 90\n    by: the Zanzibar workshop\n");
        DemoFleet.write(
                root.resolve("units/plover/marks.yaml"),
                "marks:\n  - {side: left, where: beside the xylophone, kind: dent, since: 2024-01-05}\n");
        Path out = folder.resolve("out");
        DemoFleet.of(root).publish(out, Publisher.ways());

        int files = 0;
        for (Map.Entry<String, byte[]> file :
                DemoFleet.files(out.resolve("web")).entrySet()) {
            if (file.getKey().endsWith(".pdf")) {
                files++;
                assertThat(PdfWords.of(file.getValue()))
                        .as(file.getKey())
                        .contains("Plover")
                        .doesNotContain("quokka")
                        .doesNotContain("Zanzibar")
                        .doesNotContain("xylophone");
            }
        }
        assertThat(files).isEqualTo(6);
        assertThat(PdfWords.of(Objects.requireNonNull(
                        DemoFleet.files(out.resolve("staff")).get("plover/print/damage.pdf"))))
                .contains("xylophone");
    }
}
