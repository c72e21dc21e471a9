package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.model.Item;
import bayfolio.model.Service;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.procedure.Script;
import bayfolio.procedure.Who;
import bayfolio.read.FleetReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** What staff get besides, and that renters do not. */
final class StaffCopyTest {
    private static final List<String> SHEETS =
            List.of("condition.html", "inventory.html", "ready.html", "service.html");

    private final FleetReader.Reading reading = FleetReader.read(Folders.at(Path.of("")));
    private final Path web = DemoFleet.web();
    private final Path staff = web.resolveSibling("staff");

    @Test
    void proceduresForStaffAreInTheirCopyOnly() {
        List<Script> forStaff = reading.library().scripts().stream()
                .filter(script -> script.head().who() == Who.STAFF)
                .toList();
        assertThat(forStaff).hasSizeGreaterThan(4);
        for (Unit unit : reading.fleet().units()) {
            for (Script script : forStaff) {
                String page = unit.id() + "/do/" + script.id() + ".html";
                assertThat(staff.resolve(page).toFile().exists()).as(page).isEqualTo(script.appliesTo(unit));
                assertThat(web.resolve(page)).doesNotExist();
            }
            SHEETS.forEach(sheet -> {
                assertThat(staff.resolve(unit.id()).resolve(sheet)).exists();
                assertThat(web.resolve(unit.id()).resolve(sheet)).doesNotExist();
            });
        }
    }

    @Test
    void theStaffCopySaysSoOnEveryPage() {
        DemoFleet.files(staff).forEach((path, bytes) -> {
            if (path.endsWith(".html")) {
                assertThat(Jsoup.parse(new String(bytes, java.nio.charset.StandardCharsets.UTF_8))
                                .select(".staff-copy"))
                        .as(path)
                        .hasSize(1);
            }
        });
    }

    @Test
    void theInventoryListsEveryItemOnce() throws Exception {
        for (Unit unit : reading.fleet().units()) {
            Document page = page(unit, "inventory.html");
            List<String> names = page.select("tbody tr td:first-child").eachText();

            assertThat(names)
                    .containsExactlyInAnyOrderElementsOf(unit.facts().all(Unit.ITEMS).stream()
                            .map((Item item) -> item.name())
                            .toList());
        }
    }

    @Test
    void readingsAreThoseOfTheCoach() throws Exception {
        for (Unit unit : reading.fleet().units()) {
            List<String> lines = page(unit, "condition.html")
                    .select("#readings tbody td:first-child")
                    .eachText();

            assertThat(lines.contains("Generator hours"))
                    .isEqualTo(unit.generator().isPresent());
            assertThat(lines).containsAll(unit.banks().stream().map(Thing::name).toList());
        }
    }

    /** Dates by another way of counting: days from the last one, on the calendar. */
    @Test
    void serviceIsDueAtTheEndOfItsInterval() throws Exception {
        int dated = 0;
        for (Unit unit : reading.fleet().units()) {
            DateTimeFormatter form = unit.region() == bayfolio.model.Region.EUROPE
                    ? DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.UK)
                    : DateTimeFormatter.ofPattern("MMMM d, uuuu", Locale.US);
            for (Service service : unit.facts().all(Unit.SERVICES)) {
                Element section = page(unit, "service.html").select("section").stream()
                        .filter(it ->
                                it.select("h2").text().equals(service.facts().get(Service.WHAT)))
                        .findFirst()
                        .orElseThrow();
                String due = section.select("dd").get(0).text();
                if (service.facts().has(Service.DUE)) {
                    assertThat(LocalDate.parse(due, form))
                            .isEqualTo(service.facts().get(Service.DUE));
                    continue;
                }
                LocalDate last = service.facts().get(Service.LAST);
                LocalDate next = LocalDate.parse(due.split(" or ")[0], form);

                assertThat(ChronoUnit.DAYS.between(last, next))
                        .isEqualTo(service.facts().get(Service.EVERY_DAYS).longValue());
                dated++;
            }
        }
        assertThat(dated).isGreaterThan(10);
        assertThat(page(
                                reading.fleet().units().stream()
                                        .filter(unit -> unit.id().equals("whimbrel"))
                                        .findFirst()
                                        .orElseThrow(),
                                "service.html")
                        .text())
                // 150 h after 386 h; 5,000 mi after 31,240 mi
                .contains("or 536 h", "or 36,240 mi");
    }

    private Document page(Unit unit, String name) throws Exception {
        return Jsoup.parse(Files.readString(staff.resolve(unit.id()).resolve(name)));
    }
}
