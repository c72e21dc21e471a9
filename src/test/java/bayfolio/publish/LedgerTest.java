package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.document.Addresses;
import bayfolio.model.Unit;
import bayfolio.read.Ledger;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An address that was given out leads somewhere for good, or nothing is published. */
class LedgerTest {
    private static final String PUMP = "- id: pump\n";
    private static final String BED = "units/knot/procedures/open-the-bed.md";

    @TempDir
    private Path folder;

    private Path fleet;
    private Path out;

    /** What the ledger says once two coaches were published. */
    private static String given = "";

    /** In order, since the ledger of the first is that of the others. */
    @BeforeEach
    void fleet() throws Exception {
        fleet = SmallFleet.write(folder.resolve("fleet"), List.of("knot", "plover"));
        out = folder.resolve("out");
        if (given.isEmpty()) {
            assertThat(publish()).isEmpty();
            given = Files.readString(file());
            Files.delete(file());
            out = folder.resolve("first");
        }
    }

    /** Both were published long ago. */
    private void given() throws IOException {
        Files.writeString(file(), given);
    }

    @Test
    void whatIsNewIsAddedOnceAndSorted() throws Exception {
        assertThat(publish("knot")).isEmpty();
        List<String> first = ledger();
        assertThat(first)
                .contains(
                        "L/KNOT/PUMP",
                        "knot/home",
                        "knot/home#call",
                        "knot/switch/pump",
                        "knot/do/open-the-bed#done-when",
                        "knot/condition staff")
                .anyMatch(line -> line.startsWith("knot/do/open-the-bed#step-"))
                .noneMatch(line -> line.contains("plover") || line.contains("PLOVER"))
                .isSorted()
                .doesNotHaveDuplicates();

        assertThat(publish()).isEmpty();
        List<String> both = ledger();
        assertThat(both).containsAll(first).contains("plover/switch/pump").isSorted();

        // Where nothing is new, it is not written, and of another folder nothing else becomes known.
        Files.setLastModifiedTime(file(), FileTime.fromMillis(1_000));
        assertThat(publish()).isEmpty();
        out = folder.resolve("elsewhere");
        assertThat(publish("--fresh")).isEmpty();
        assertThat(Files.getLastModifiedTime(file()).toMillis()).isEqualTo(1_000);
        assertThat(DemoFleet.files(fleet.resolve("units")).keySet())
                .noneMatch(path -> path.contains(".addresses.ledger-"));
    }

    @Test
    void aPageThatWouldBeGoneIsToldInItsLineAndNothingIsPublished() throws Exception {
        given();
        List<String> before = ledger();
        rename("knot", "");
        rename("plover", "");

        String told = publish();

        int line = 1 + Files.readAllLines(file()).indexOf("knot/switch/pump");
        assertThat(told)
                .contains("units/addresses.ledger:" + line
                        + ":1: error: `knot/switch/pump` was published and would be gone")
                .contains("error: `plover/switch/pump` was published and would be gone")
                .contains("`formerly: [pump]`", "`was: switch:pump`", "Nothing was published.");
        assertThat(told.split("\\[address-gone]", -1)).hasSize(3);
        assertThat(out.resolve("web")).doesNotExist();
        assertThat(ledger()).isEqualTo(before);
    }

    @Test
    void aRenamedThingIsFoundUnderItsOldIdAndOnItsLabel() throws Exception {
        given();
        List<String> before = ledger();
        rename("knot", "    formerly: [pump]\n");

        assertThat(publish("knot")).isEmpty();

        for (String root : OutputFolder.ROOTS) {
            assertThat(leads(root + "/knot/switch/pump.html")).isEqualTo(root + "/knot/switch/water-pump.html");
        }
        assertThat(leads("web/L/KNOT/PUMP/index.html")).isEqualTo("web/knot/switch/water-pump.html");
        assertThat(Files.readString(out.resolve("web/knot/kept.json"))).contains("switch/pump.html");
        assertThat(ledger()).containsAll(before).contains("knot/switch/water-pump", "L/KNOT/WATER-PUMP");
    }

    @Test
    void whatWasTakenOutSaysWhatBecameOfIt() throws Exception {
        given();
        rename("knot", "");
        String out = "\ntaken-out:\n  - {was: switch:pump, name: Old pump switch, text: The pump turns itself on.";
        append("knot", out + "}\n");

        assertThat(publish("knot")).isEmpty();

        assertThat(page("web/knot/switch/pump.html").text())
                .contains("Old pump switch", "No longer here", "The pump turns itself on.");
        assertThat(leads("web/L/KNOT/PUMP/index.html")).isEqualTo("web/knot/switch/pump.html");
        assertThat(Files.readString(this.out.resolve("web/knot/search.json")))
                .contains("Old pump switch")
                .contains("switch/pump.html");

        replace("units/knot/unit.yaml", "turns itself on.}", "turns itself on., instead: switch:water-pump}");
        assertThat(publish("knot")).isEmpty();
        assertThat(page("web/knot/switch/pump.html").select("main a[href=../switch/water-pump.html]"))
                .isNotEmpty();

        replace("units/knot/unit.yaml", "text: The pump turns itself on., ", "");
        assertThat(publish("knot")).isEmpty();
        assertThat(leads("web/knot/switch/pump.html")).isEqualTo("web/knot/switch/water-pump.html");
    }

    /** What all coaches shared is told once, and only where it was given out. */
    @Test
    void aSharedProcedureThatIsDroppedIsToldOnceForAllThatHadIt() throws Exception {
        String shared = "units/shared/procedures/open-the-bed.md";
        Files.createDirectories(fleet.resolve(shared).getParent());
        Files.move(fleet.resolve(BED), fleet.resolve(shared));
        Files.delete(fleet.resolve("units/plover/procedures/open-the-bed.md"));
        given();
        Files.writeString(file(), given.replaceAll("(?m)^plover/do/open-the-bed.*\n", ""));
        Path facts = fleet.resolve("units/fleet.yaml");
        String before = Files.readString(facts);
        String said = before + "taken-out:\n  - {was: procedure:open-the-bed, name: Open the bed, ";
        Files.writeString(facts, said + "text: The bed is always open.}\n");
        assertThat(publish())
                .contains("`procedure:open-the-bed` is taken out, and a procedure that coaches share has that id, at "
                        + shared)
                .contains("[taken-out-in-use]");

        Files.delete(fleet.resolve(shared));
        Files.writeString(facts, before);
        assertThat(publish("knot"))
                .contains("`knot/do/open-the-bed` was published and would be gone", "`taken-out` in units/fleet.yaml");

        Files.writeString(facts, said + "text: The bed is always open.}\n");
        assertThat(publish()).isEmpty();
        assertThat(page("web/knot/do/open-the-bed.html").text()).contains("Open the bed", "The bed is always open.");
        assertThat(out.resolve("web/plover/do/open-the-bed.html")).doesNotExist();
        assertThat(Files.readString(out.resolve("web/plover/search.json"))).doesNotContain("Open the bed");

        // A coach that says more of it itself goes first.
        append("knot", "\ntaken-out:\n  - {was: procedure:open-the-bed, name: Bed, text: The bed was taken out.}\n");
        assertThat(publish()).isEmpty();
        assertThat(page("web/knot/do/open-the-bed.html").text())
                .contains("The bed was taken out.")
                .doesNotContain("always open");

        replace(
                "units/knot/unit.yaml",
                "  - {was: procedure:open-the-bed, name: Bed, text: The bed was taken out.}\n",
                "");
        replace("units/knot/unit.yaml", "\ntaken-out:\n", "");
        Files.writeString(facts, said + "instead: procedure:wake-up-coach}\n");
        assertThat(publish()).isEmpty();
        assertThat(leads("web/knot/do/open-the-bed.html")).isEqualTo("web/knot/do/wake-up-coach.html");
        sameWhenMadeAnew("knot", "plover");

        Files.writeString(facts, said + "instead: procedure:start-generator}\n");
        assertThat(publish())
                .contains("`procedure:start-generator` is not for coach `knot`, which had `procedure:open-the-bed`")
                .doesNotContain("`plover`");
    }

    @Test
    void aPlaceThatIsGoneLeadsToTheHeadOfWhatItWasIn() throws Exception {
        given();
        String step = "step-turn-the-pump-off-pump";
        assertThat(ledger()).contains("knot/do/open-the-bed#" + step);
        // A place of a fact that was there once.
        Files.writeString(file(), Files.readString(file()) + "knot/home#call.fax\nknot/numbers#tank-black\n");
        Path procedure = fleet.resolve(BED);
        String text = Files.readString(procedure);
        Files.writeString(procedure, text.replaceFirst("(?m)^(1\\. .*)$", "$1 {#now-otherwise}"));
        assertThat(Files.readString(procedure)).isNotEqualTo(text);

        assertThat(publish("knot")).isEmpty();

        Document page = page("web/knot/do/open-the-bed.html");
        assertThat(page.getElementById("step-now-otherwise")).isNotNull();
        assertThat(page.select("#steps > span").eachAttr("id")).containsExactly(step);
        assertThat(page("web/knot/index.html").select("#call > span").eachAttr("id"))
                .containsExactly("call.fax");
        assertThat(page("web/knot/numbers.html").select("main > span").eachAttr("id"))
                .containsExactly("tank-black");
        assertThat(ledger()).isSorted().contains("knot/home#call.fax");
        sameWhenMadeAnew("knot");
    }

    @Test
    void aCoachIsMadeAgainWhenOthersGaveOutMoreOfIt() throws Exception {
        publish("knot");
        List<String> lines = new ArrayList<>(Files.readAllLines(file()));
        assertThat(lines).doesNotContain("knot/letter/xx");
        lines.add(0, "knot/letter/xx");
        lines.add(0, "knot/letter/xx");
        Files.write(file(), lines);

        assertThat(publish("knot")).isEmpty();

        // Of what the program makes of others, the list is left.
        assertThat(leads("web/knot/letter/xx.html")).isEqualTo("web/knot/a-z.html");
        assertThat(ledger()).isSorted().doesNotHaveDuplicates().contains("knot/letter/xx");
    }

    @Test
    void aCoachThatHasLeftOrHasAnotherIdIsFound() throws Exception {
        given();
        Files.move(fleet.resolve("units/knot"), fleet.resolve("units/ruff"));
        replace("units/ruff/unit.yaml", "id: knot\n", "id: ruff\n");
        Path gone = fleet.resolve("units/plover");
        for (String path : new TreeSet<>(DemoFleet.files(gone).keySet()).descendingSet()) {
            Files.delete(gone.resolve(path));
        }
        Files.delete(gone.resolve("procedures"));
        Files.delete(gone);

        assertThat(publish())
                .contains("coach `knot` was published, and its", "coach `plover` was published, and its")
                .contains("`left`", "[address-gone]");

        replace("units/ruff/unit.yaml", "id: ruff\n", "id: ruff\nformerly: [knot]\n");
        Path facts = fleet.resolve("units/fleet.yaml");
        String before = Files.readString(facts);
        Files.writeString(facts, before + "left:\n  - {id: plover, name: Plover, text: This coach was sold.}\n");
        assertThat(publish()).isEmpty();

        assertThat(leads("web/knot/switch/pump.html")).isEqualTo("web/ruff/switch/pump.html");
        assertThat(leads("web/L/KNOT/PUMP/index.html")).isEqualTo("web/L/RUFF/PUMP/index.html");
        assertThat(leads("staff/knot/condition.html")).isEqualTo("staff/ruff/condition.html");
        assertThat(page("web/plover/index.html").text()).contains("Plover", "This coach was sold.");
        assertThat(leads("web/plover/do/open-the-bed.html")).isEqualTo("web/plover/index.html");

        Files.writeString(facts, before + "left:\n  - {id: plover, name: Plover, instead: ruff}\n");
        assertThat(publish()).isEmpty();
        assertThat(leads("web/plover/do/open-the-bed.html")).isEqualTo("web/ruff/index.html");
        assertThat(leads("web/L/PLOVER/PUMP/index.html")).isEqualTo("web/ruff/index.html");
    }

    @Test
    void marksOfAMergeAndJunkAreToldAndNothingIsOverwritten() throws Exception {
        given();
        String broken = "<<<<<<< HEAD\n" + Files.readString(file()) + "no address\n";
        Files.writeString(file(), broken);

        assertThat(publish())
                .contains("units/addresses.ledger:1:1: error: `<<<<<<< HEAD` is left of a merge [conflict-marker]")
                .contains("`no address` is no address [no-address]")
                .contains("Nothing was published.");
        assertThat(file()).hasContent(broken);
    }

    /** Before anything is swapped in. */
    @Test
    void aLedgerThatCannotBeWrittenIsRefused() throws Exception {
        Unit unit = DemoFleet.of(DemoFleet.SMALL).check().units().get(0);
        Path nowhere = Files.createDirectory(folder.resolve("nowhere"));
        GivenOut given = GivenOut.of(nowhere, true);
        Addresses some = new Addresses(new TreeSet<>(List.of("home")), new TreeSet<>());
        given.writing().close();
        given.add(unit, some, some);

        assertThatThrownBy(given::writing)
                .isInstanceOf(PublishException.class)
                .hasMessageContaining("addresses.ledger` cannot be written")
                .hasMessageContaining("nothing was published");
    }

    /** Whatever was published in between, and in whatever order. */
    private void sameWhenMadeAnew(String... coaches) throws Exception {
        Map<String, String> site = BothRoots.of(out);
        out = folder.resolve("fresh");
        publish(Stream.concat(Stream.of("--fresh"), Stream.of(coaches)).toArray(String[]::new));
        assertThat(BothRoots.of(out)).isEqualTo(site);
    }

    private Path file() {
        return fleet.resolve(Ledger.FILE);
    }

    private List<String> ledger() throws IOException {
        return Files.readAllLines(file()).stream()
                .filter(line -> !line.startsWith("#"))
                .toList();
    }

    private void rename(String coach, String formerly) throws IOException {
        replace("units/" + coach + "/unit.yaml", PUMP, "- id: water-pump\n" + formerly);
        replace("units/" + coach + "/unit.yaml", "about: pump\n", "about: water-pump\n");
        replace("units/" + coach + "/procedures/open-the-bed.md", "(switch:pump", "(switch:water-pump");
    }

    private void replace(String path, String words, String others) throws IOException {
        Path file = fleet.resolve(path);
        String text = Files.readString(file);
        assertThat(text).contains(words);
        Files.writeString(file, text.replace(words, others));
    }

    private void append(String coach, String text) throws IOException {
        Path file = fleet.resolve("units/" + coach + "/unit.yaml");
        Files.writeString(file, Files.readString(file) + text);
    }

    /** @return what was wrong */
    private String publish(String... words) {
        List<String> all = new ArrayList<>(
                List.of("publish", "--fleet", fleet.toString(), "--out", out.toString(), "--only", "web"));
        all.addAll(List.of(words));
        StringWriter told = new StringWriter();
        int exit = Folders.run(
                new PrintWriter(new StringWriter()), new PrintWriter(told, true), all.toArray(String[]::new));
        assertThat(exit).as(told.toString()).isEqualTo(told.toString().contains("error") ? 1 : 0);
        return told.toString();
    }

    private Document page(String path) throws IOException {
        return Jsoup.parse(Files.readString(out.resolve(path)));
    }

    /** The file that another one leads on to, without a server. */
    private String leads(String path) throws IOException {
        String to =
                page(path).select("meta[http-equiv=refresh]").attr("content").replaceFirst("^0; URL=", "");
        String file = Path.of(path).resolveSibling(to).normalize().toString().replace('\\', '/');
        assertThat(Stream.of(file)).allMatch(it -> Files.isRegularFile(out.resolve(it)));
        return file;
    }
}
