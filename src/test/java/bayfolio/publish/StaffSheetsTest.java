package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.model.Awning;
import bayfolio.model.Coach;
import bayfolio.model.Compartment;
import bayfolio.model.Gauge;
import bayfolio.model.Jacks;
import bayfolio.model.Slide;
import bayfolio.model.Switch;
import bayfolio.model.Unit;
import bayfolio.procedure.Head;
import bayfolio.procedure.OnThePhone;
import bayfolio.read.FleetReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** What a yard works with: the sheets of a hire, and what is read out on the phone. */
final class StaffSheetsTest {
    private final FleetReader.Reading reading = FleetReader.read(Folders.at(Path.of("")));
    private final Path web = DemoFleet.web();
    private final Path staff = web.resolveSibling("staff");

    private Document page(String unit, String name) throws Exception {
        return Jsoup.parse(Files.readString(staff.resolve(unit).resolve(name)));
    }

    private static Element row(Document page, String first) {
        return page.select("tbody tr").stream()
                .filter(row -> row.child(0).text().equals(first))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theReadySheetGoesFromTheSeatThroughTheCoachAndOnceAround() throws Exception {
        for (Unit unit : reading.fleet().units()) {
            Document page = page(unit.id(), "ready.html");
            List<String> parts = page.select("main section").eachAttr("id");
            List<String> doors = new Coach(reading.fleet(), unit)
                    .walked()
                    .filter(Compartment.class::isInstance)
                    .map(it -> "place-" + it.id())
                    .toList();

            assertThat(parts).startsWith("link", "seat", "inside", "around").endsWith("signed");
            assertThat(parts.subList(4, parts.size() - 1))
                    .as(unit.id())
                    .isNotEmpty()
                    .isEqualTo(doors.stream().filter(parts::contains).toList());
            // Each line says how it must be, and has its box.
            page.select("main section:not(#signed) tbody tr").forEach(row -> {
                assertThat(row.child(2).text()).as(row.text()).isNotEmpty();
                assertThat(row.child(3).text()).isEmpty();
            });
            assertThat(page.select("#signed thead th").eachText()).containsExactly("Part", "Who", "When");
        }
    }

    @Test
    void theReadySheetHasEachSwitchOnceAsThePickupWantsIt() throws Exception {
        int compared = 0;
        for (Unit unit : reading.fleet().units()) {
            Document page = page(unit.id(), "ready.html");
            for (Switch each : unit.switches()) {
                if (each.facts().has(Switch.AT_PICKUP)) {
                    assertThat(row(page, each.name()).child(2).text())
                            .startsWith(each.facts().get(Switch.AT_PICKUP));
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(200);
    }

    @Test
    void theReadySheetHasTiresFluidsAlarmsWasteAndKeys() throws Exception {
        Document page = page("whimbrel", "ready.html");

        assertThat(row(page, "Tires, front").child(2).text()).isEqualTo("110 psi (7.6 bar), cold");
        assertThat(row(page, "Tires, rear, all four").child(2).text()).isEqualTo("95 psi (6.6 bar), cold");
        assertThat(row(page, "Gas alarm").child(2).text()).contains("replace by March 1, 2029");
        assertThat(row(page, "Fresh tank").child(2).text()).startsWith("one third");
        assertThat(row(page, "Black tank").child(2).text()).isEqualTo("Empty and rinsed");
        assertThat(row(page, "Key set").child(2).text()).isEqualTo("2 sets, each key tried");
        assertThat(page.select("#seat tbody td:first-child").eachText())
                .contains("Lamps outside", "Papers", "Jack control", "Fuel gauge")
                .doesNotContain("House battery switch", "Generator switch, bedroom");
        assertThat(page.select("#place-engine-hatch, section:has(h2:contains(Engine hood))")
                        .text())
                .contains("Oil and coolant");
        for (Unit unit : reading.fleet().units()) {
            Document ready = page(unit.id(), "ready.html");
            for (Gauge alarm : unit.gauges()) {
                if (alarm.roles().stream().anyMatch(role -> role.endsWith("-alarm"))) {
                    assertThat(row(ready, alarm.name()).child(2).text()).startsWith("Sounds at its test button");
                }
            }
        }
    }

    @Test
    void theConditionSheetHasWhatAClaimIsSettledWith() throws Exception {
        Document page = page("whimbrel", "condition.html");

        assertThat(row(page, "Coach").child(1).text()).isEqualTo("Whimbrel, HB 07");
        assertThat(page.select("#booking tbody td:first-child").eachText())
                .contains("License plate", "Booking number", "Drivers", "Licenses seen, valid until");
        assertThat(page.select("#tires tbody tr").eachText())
                .containsExactly(
                        "Front left 110 psi (7.6 bar)",
                        "Front right 110 psi (7.6 bar)",
                        "Rear left, outer 95 psi (6.6 bar)",
                        "Rear left, inner 95 psi (6.6 bar)",
                        "Rear right, inner 95 psi (6.6 bar)",
                        "Rear right, outer 95 psi (6.6 bar)");
        assertThat(page.select("#lamps tbody tr, #papers tbody tr")).hasSize(10);
        assertThat(page.select("#keys tbody tr").text()).startsWith("Key set 2");
        assertThat(page.select("#legend").text())
                .contains("scratch, dent, chip, crack, tear, stain, burn", "thumbnail");
        assertThat(page.select("#marks tbody tr")).hasSize(3);
        assertThat(page.select("#drawn svg").eachText()).anyMatch(drawing -> drawing.contains("1"));
        assertThat(page.select("#handover a").eachAttr("href"))
                .contains("do/start-generator.html", "do/dump-tanks-gravity.html", "do/use-fire-extinguisher.html");
        assertThat(page.select("#defects")).isEmpty();
        assertThat(page("dunlin", "condition.html").select("#marks")).isEmpty();
    }

    /** A notice for renters, with the pages that help; none of those for staff, since a renter signs this. */
    @Test
    void knownDefectsLeadToThePageThatHelpsMeanwhile() throws Exception {
        Element defect =
                page("godwit", "condition.html").select("#defects tbody tr").get(0);

        assertThat(defect.child(0).text()).startsWith("The rear arm of the patio awning sticks");
        assertThat(defect.child(1).text()).isEqualTo("August 20, 2026");
        assertThat(defect.select("a").eachAttr("href")).contains("trouble/awning-stuck.html");
        assertThat(page("curlew", "condition.html").select("#defects")).isEmpty();
    }

    /** The other way round, too: on each page that is named, the item is. */
    @Test
    void theInventorySaysWhatEachItemIsNeededFor() throws Exception {
        int looked = 0;
        for (Unit unit : reading.fleet().units()) {
            for (Element row : page(unit.id(), "inventory.html").select("tbody tr")) {
                for (Element procedure : row.child(4).select("a")) {
                    Document page = DemoFleet.whole(staff.resolve(unit.id()).resolve(procedure.attr("href")));
                    assertThat(page.text()).contains(row.child(0).text());
                    looked++;
                }
            }
        }
        assertThat(looked).isGreaterThan(100);
        Document page = page("whimbrel", "inventory.html");
        assertThat(row(page, "Power cord").child(3).text()).isEqualTo("410 USD");
        assertThat(row(page, "Sewer hose").child(4).text()).startsWith("Connect the sewer hose at a site; Empty");
        assertThat(page.select("main section").eachAttr("id")).startsWith("keys", "supplies");
        assertThat(page.select("#supplies tbody td:first-child").eachText())
                .containsExactly("Disposable gloves", "Toilet treatment pouches", "Spare fuses");
        assertThat(page("dunlin", "inventory.html")
                        .select("#papers tbody td:first-child")
                        .text())
                .isEqualTo("Emergency card");
    }

    /** Whoever has the phone duty reads them at the step where the renter is; the renter has nothing of them. */
    @Test
    void overridesStandAtTheirStepInTheCopyOfStaffAlone() throws Exception {
        Map<String, byte[]> theirs = DemoFleet.files(web);
        int told = 0;
        for (Unit unit : reading.fleet().units()) {
            List<String[]> said = new ArrayList<>();
            unit.facts()
                    .find(Unit.JACKS)
                    .flatMap(it -> it.facts().find(Jacks.OVERRIDE))
                    .ifPresent(words -> said.add(new String[] {"free-stuck-jacks", "On the phone", words}));
            for (Slide slide : unit.slides()) {
                Stream.of(Slide.OVERRIDE, Slide.AFTER_OVERRIDE)
                        .flatMap(key -> slide.facts().find(key).stream())
                        .forEach(words ->
                                said.add(new String[] {"override-slide-out", "On the phone, " + slide.name(), words}));
            }
            for (Awning awning : unit.awnings()) {
                awning.facts()
                        .find(Awning.OVERRIDE)
                        .ifPresent(words -> said.add(
                                new String[] {"secure-stuck-awning", "On the phone, " + awning.name(), words}));
            }
            for (String[] each : said) {
                String page = unit.id() + "/do/" + each[0] + ".html";
                assertThat(DemoFleet.whole(staff.resolve(page))
                                .select("li dl.handling div.read-out")
                                .eachText())
                        .as(page)
                        .contains(each[1] + " " + each[2]);
                assertThat(DemoFleet.whole(web.resolve(page)).text()).doesNotContain("On the phone");
                told++;
            }
            for (String[] each : said) {
                byte[] words = each[2].getBytes(StandardCharsets.UTF_8);
                theirs.forEach((path, bytes) -> {
                    if (path.startsWith(unit.id() + "/")) {
                        assertThat(new String(bytes, StandardCharsets.UTF_8))
                                .as(path)
                                .doesNotContain(new String(words, StandardCharsets.UTF_8));
                    }
                });
            }
        }
        assertThat(told).isGreaterThan(20);
    }

    @Test
    void rentersReadNoPriceAndNoneOfTheSheets() {
        DemoFleet.files(web).forEach((path, bytes) -> {
            assertThat(path.replaceAll(".*/", "")).isNotIn("inventory.html", "ready.html", "condition.html");
            assertThat(new String(bytes, StandardCharsets.UTF_8))
                    .as(path)
                    .doesNotContain("410 USD", "280 USD", "LP hoses");
        });
    }

    /** A key that staff read out and no page has would be known to nobody while a renter waits. */
    @Test
    void allThatIsToldOnThePhoneHasItsStep() {
        Set<String> said = reading.library().scripts().stream()
                .flatMap(script -> script.head().facts().all(Head.ON_THE_PHONE).stream())
                .map(each -> each.facts().get(OnThePhone.SAY))
                .collect(Collectors.toSet());

        assertThat(said)
                .contains(
                        "jacks." + Jacks.OVERRIDE.name(),
                        "awning." + Awning.OVERRIDE.name(),
                        "slide." + Slide.OVERRIDE.name(),
                        "slide." + Slide.AFTER_OVERRIDE.name());
    }
}
