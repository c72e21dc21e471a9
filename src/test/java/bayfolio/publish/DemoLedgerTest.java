package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.compose.Composer;
import bayfolio.document.Addresses;
import bayfolio.document.Audience;
import bayfolio.document.Handbook;
import bayfolio.model.Unit;
import bayfolio.read.Ledger;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** The ledger of the demo fleet is what is published of it: no line leads nowhere, and none is missing. */
class DemoLedgerTest {
    @Test
    void eachOfItsLinesLeadsSomewhere() throws IOException {
        Path web = DemoFleet.web();
        Path staff = web.resolveSibling("staff");
        Map<Path, Set<String>> places = new TreeMap<>();
        for (String line : lines()) {
            boolean forStaff = line.endsWith(Ledger.STAFF);
            String address = forStaff ? line.substring(0, line.length() - Ledger.STAFF.length()) : line;
            String page = address.replaceFirst("#.*", "");
            String path = page.startsWith("L/")
                    ? page + "/index.html"
                    : page.replaceFirst("^([^/]+)/home$", "$1/index") + ".html";
            Set<String> its = places.computeIfAbsent((forStaff ? staff : web).resolve(path), it -> new TreeSet<>());
            if (address.contains("#")) {
                its.add(address.replaceFirst(".*#", ""));
            }
        }

        List<String> lost = new ArrayList<>();
        for (Map.Entry<Path, Set<String>> each : places.entrySet()) {
            Document page =
                    Files.exists(each.getKey()) ? Jsoup.parse(Files.readString(each.getKey())) : new Document("");
            if (!Files.exists(each.getKey())) {
                lost.add(each.getKey().toString());
            }
            each.getValue().stream()
                    .filter(anchor -> page.getElementById(anchor) == null)
                    .forEach(anchor -> lost.add(each.getKey() + "#" + anchor));
        }
        assertThat(lost).isEmpty();
        assertThat(places).hasSizeGreaterThan(2_500);
    }

    /** Otherwise whoever publishes after a clone has something to commit. */
    @Test
    void itLacksNothing() throws Exception {
        DemoFleet demo = DemoFleet.of(Path.of(""));
        Set<String> lacking = new TreeSet<>();
        for (Unit unit : demo.check().units()) {
            Handbook whole = Composer.compose(demo.check().of(unit));
            Addresses renters = Addresses.of(whole.seenBy(Audience.RENTERS));
            renters.nodes().forEach(node -> lacking.add(Ledger.pages(unit.id()) + node));
            renters.labels().forEach(code -> lacking.add(Ledger.labels(unit.id()) + code));
            Addresses.of(whole.seenBy(Audience.STAFF)).nodes().stream()
                    .filter(node -> !renters.nodes().contains(node))
                    .forEach(node -> lacking.add(Ledger.pages(unit.id()) + node + Ledger.STAFF));
        }
        assertThat(lacking).hasSizeGreaterThan(20_000);

        lacking.removeAll(new TreeSet<>(lines()));

        assertThat(lacking).as("publish the demo fleet, and commit its ledger").isEmpty();
    }

    private static List<String> lines() throws IOException {
        return Files.readAllLines(Path.of(Ledger.FILE)).stream()
                .filter(line -> !line.startsWith("#"))
                .toList();
    }
}
