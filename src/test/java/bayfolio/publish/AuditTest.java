package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AuditTest {
    private static final String HOME = """
            <!doctype html>
            <html lang="en-US">
            <head><title>Fleet</title><link rel="stylesheet" href="assets/style.css"></head>
            <body><h1>Fleet</h1>
            <p><a href="plover/switches.html#pump">Pump</a> <a href="plover/">Plover</a>
            <a href="tel:+15550110">+1 555-0110</a></p>
            </body></html>
            """;
    private static final String SWITCHES = """
            <!doctype html>
            <html lang="en-US">
            <head><title>Switches</title></head>
            <body><h1>Switches</h1>
            <section id="pump"><h2>Pump</h2><p><a href="../index.html">Fleet</a></p></section>
            <!-- more -->
            </body></html>
            """;
    private static final String COACH = """
            <!doctype html>
            <html lang="en-US">
            <head><title>Plover</title></head>
            <body><h1>Plover</h1></body></html>
            """;
    private static final String STYLE = """
            @import "more.css";
            .door { background: url(door.png); }
            .key { background: url(data:image/png;base64,AAAA); }
            """;

    @Test
    void aSoundSitePasses() {
        assertThat(faults(site())).isEmpty();
    }

    @Test
    void percentEncodedAndRelativeLinksResolve() {
        Map<String, String> site = site();
        site.put("plover/do/a b é.html", COACH);
        more(site, "<a href='do/a%20b%20%C3%A9.html'>here</a>");
        more(site, "<a href='../plover/do/../switches.html#pump'>there</a>");
        more(site, "<a href='/plover/switches.html#pump'>from the root</a>");
        more(site, "<a href='#pump'>above</a>");

        assertThat(faults(site)).isEmpty();
    }

    @Test
    void aPercentEncodedFragmentResolves() {
        Map<String, String> site = site();
        more(site, "<p id='für-alle'>all</p><a href='#f%C3%BCr-alle'>for all</a>");

        assertThat(faults(site)).isEmpty();
    }

    @Test
    void aBrokenLinkIsTold() {
        assertThat(withMore("<a href='../plover/switch.html'>lost</a>"))
                .containsExactly("plover/switches.html: the link `../plover/switch.html` leads to no file of the site");
    }

    @Test
    void aLinkOutOfTheSiteIsTold() {
        assertThat(withMore("<a href='../../secret.html'>lost</a>"))
                .containsExactly("plover/switches.html: the link `../../secret.html` leads to no file of the site");
    }

    @Test
    void aBrokenFragmentIsTold() {
        assertThat(withMore("<a href='#pumps'>lost</a>"))
                .containsExactly("plover/switches.html: the link `#pumps` leads to a place that is not on that page");
        assertThat(withMore("<a href='../index.html#pump'>lost</a>")).hasSize(1);
    }

    @Test
    void aLinkToAFolderWithoutAnIndexIsTold() {
        assertThat(withMore("<a href='../assets/'>lost</a>"))
                .containsExactly("plover/switches.html: the link `../assets/` leads to no file of the site");
    }

    @Test
    void aLinkThatIsNoAddressIsTold() {
        assertThat(withMore("<a href='a b.html'>lost</a>"))
                .containsExactly("plover/switches.html: the link `a b.html` is no address");
    }

    @Test
    void aLinkWithoutAnAddressIsTold() {
        assertThat(withMore("<a>lost</a>")).containsExactly("plover/switches.html: the link `lost` leads nowhere");
        assertThat(withMore("<a href=''>lost</a>")).hasSize(1);
    }

    @Test
    void aLinkWithoutWordsIsTold() {
        assertThat(withMore("<a href='../index.html'> </a>"))
                .containsExactly("plover/switches.html: a link to `../index.html` has no words");
    }

    @Test
    void theWordsOfAPictureAreWordsForItsLink() {
        assertThat(withMore("<a href='../index.html'><img src='../assets/door.png' alt='door'></a>"))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "switch:house-main",
                "SWITCH:x",
                "javascript:alert(1)",
                "data:text/html,x",
                "http://elsewhere.example/",
                "//elsewhere.example/"
            })
    void aSchemeThatIsLeftOverOrNotToBeFollowedIsTold(String address) {
        assertThat(withMore("<a href='" + address + "'>lost</a>"))
                .containsExactly(
                        "plover/switches.html: the link `" + address + "` is no address that a renter can follow");
    }

    @Test
    void anIdGivenTwiceIsTold() {
        assertThat(withMore("<p id='pump'>again</p>"))
                .containsExactly("plover/switches.html: the id `pump` is given twice");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "alt=''", "alt='  '", "alt"})
    void aPictureWithoutWordsIsTold(String words) {
        assertThat(withMore("<img src='../assets/door.png' " + words + ">"))
                .containsExactly(
                        "plover/switches.html: the picture `../assets/door.png` has no words for those who cannot see it");
    }

    @Test
    void aPictureThatIsNotThereIsTold() {
        assertThat(withMore("<img src='../assets/window.png' alt='window'>"))
                .containsExactly("plover/switches.html: the link `../assets/window.png` leads to no file of the site");
    }

    @Test
    void aPageWithoutItsMainHeadingIsTold() {
        assertThat(with("<h1>Switches</h1>", ""))
                .containsExactly("plover/switches.html: there are 0 main headings, not one");
    }

    @Test
    void aPageWithTwoMainHeadingsIsTold() {
        assertThat(withMore("<h1>More</h1>"))
                .containsExactly("plover/switches.html: there are 2 main headings, not one");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " lang=''", " lang"})
    void aPageWithoutALanguageIsTold(String language) {
        assertThat(with(" lang=\"en-US\"", language)).containsExactly("plover/switches.html: no language is set");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "<title></title>", "<title> </title>"})
    void aPageWithoutATitleIsTold(String title) {
        assertThat(with("<title>Switches</title>", title)).containsExactly("plover/switches.html: there is no title");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script src='%s'></script>",
                "<link rel='stylesheet' href='%s'>",
                "<img src='%s' alt='a door'>",
                "<img src='../assets/door.png' srcset='%s 2x' alt='a door'>",
                "<picture><source srcset='../assets/door.png 1x, %s 2x'></picture>",
                "<iframe src='%s'></iframe>",
                "<video poster='%s'></video>",
                "<object data='%s'></object>",
                "<style>.a { background: url(%s) }</style>",
                "<style>@import '%s';</style>",
                "<style>@IMPORT url( \"%s\" );</style>",
                "<p style='background: URL(%s)'>door</p>"
            })
    void whatWouldBeLoadedFromOutsideIsTold(String element) {
        for (String address : List.of(
                "https://elsewhere.example/x",
                "http://elsewhere.example/x",
                "//elsewhere.example/x",
                "HTTPS://elsewhere.example/x",
                "ftp://elsewhere.example/x")) {
            assertThat(withMore(element.formatted(address)))
                    .containsExactly("plover/switches.html: `" + address + "` would be loaded from outside the site");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                ".a { background: url('//elsewhere.example/x') }",
                "@import \"//elsewhere.example/x\";",
                "@import\"//elsewhere.example/x\";",
                "@import url(//elsewhere.example/x);",
                "@font-face { src: url( //elsewhere.example/x ) format('woff2') }"
            })
    void whatAStylesheetWouldLoadFromOutsideIsTold(String css) {
        Map<String, String> site = site();
        site.put("assets/style.css", css);

        assertThat(faults(site))
                .containsExactly("assets/style.css: `//elsewhere.example/x` would be loaded from outside the site");
    }

    @Test
    void whatAStylesheetCannotFindIsTold() {
        Map<String, String> site = site();
        site.put("assets/style.css", ".a { background: url(window.png) }");

        assertThat(faults(site))
                .containsExactly("assets/style.css: the link `window.png` leads to no file of the site");
    }

    @ParameterizedTest
    @ValueSource(strings = {"data:image/png;base64,AAAA", "DATA:image/png;base64,AAAA"})
    void whatThePageHoldsItselfIsNotLoaded(String address) {
        assertThat(withMore("<img src='" + address + "' alt='a dot'>")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<p title='%s'>door</p>",
                "<img src='../assets/door.png' alt='%s'>",
                "<script type='application/json'>{\"note\": \"%s\"}</script>",
                "<p data-note='%s'>door</p>"
            })
    void aTextForStaffIsToldInAttributesAndData(String element) {
        Map<String, String> site = site();
        more(site, element.formatted("The spare key hangs behind the grille."));

        assertThat(Audit.of(bytes(site), Set.of("The spare key hangs behind the grille.")))
                .containsExactly(
                        "plover/switches.html: a text for staff stands on it: `The spare key hangs behind the grille.`");
    }

    @Test
    void aTextForStaffIsToldInFilesThatAreNoPages() {
        Map<String, String> site = site();
        site.put("plover/find.json", "{\"note\": \"The spare key\\n hangs.\", \"more\": \"The spare\n key hangs.\"}");
        site.put("plover/The spare key hangs.jpg", "");

        assertThat(Audit.of(bytes(site), Set.of("The spare key hangs.")))
                .containsExactly(
                        "plover/The spare key hangs.jpg: a text for staff stands on it: `The spare key hangs.`",
                        "plover/find.json: a text for staff stands on it: `The spare key hangs.`");
    }

    @Test
    void aTextForStaffIsToldHoweverItIsBroken() {
        Map<String, String> site = site();
        more(site, "<p>The spare key\n hangs <strong>behind</strong> the grille.</p>");

        assertThat(Audit.of(bytes(site), Set.of("The spare key hangs behind the grille.", "The safe is red.")))
                .containsExactly(
                        "plover/switches.html: a text for staff stands on it: `The spare key hangs behind the grille.`");
    }

    @Test
    void allFaultsAreToldInTheOrderOfThePages() {
        Map<String, String> site = site();
        more(site, "<a href='x.html'>lost</a><a href='y.html'>lost</a>");
        site.put("index.html", "<p>nothing</p>");

        assertThat(faults(site))
                .containsExactly(
                        "index.html: no language is set",
                        "index.html: there are 0 main headings, not one",
                        "index.html: there is no title",
                        "plover/switches.html: the link `x.html` leads to no file of the site",
                        "plover/switches.html: the link `y.html` leads to no file of the site");
    }

    private static Map<String, String> site() {
        Map<String, String> site = new TreeMap<>();
        site.put("index.html", HOME);
        site.put("plover/index.html", COACH);
        site.put("plover/switches.html", SWITCHES);
        site.put("assets/style.css", STYLE);
        site.put("assets/more.css", "");
        site.put("assets/door.png", "");
        return site;
    }

    private static void more(Map<String, String> site, String element) {
        site.compute(
                "plover/switches.html",
                (path, page) -> String.valueOf(page).replace("<!-- more -->", element + "<!-- more -->"));
    }

    private static List<String> withMore(String element) {
        Map<String, String> site = site();
        more(site, element);
        return faults(site);
    }

    private static List<String> with(String before, String after) {
        Map<String, String> site = site();
        site.put("plover/switches.html", SWITCHES.replace(before, after));
        return faults(site);
    }

    private static List<String> faults(Map<String, String> site) {
        return Audit.of(bytes(site), Set.of("A text that is on none of the pages."));
    }

    private static Map<String, byte[]> bytes(Map<String, String> site) {
        Map<String, byte[]> files = new TreeMap<>();
        site.forEach((path, text) -> files.put(path, text.getBytes(StandardCharsets.UTF_8)));
        return files;
    }
}
