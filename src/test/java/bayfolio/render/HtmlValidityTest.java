package bayfolio.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import bayfolio.DemoFleet;
import bayfolio.HtmlFaults;
import bayfolio.publish.BusyDay;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Every page through the Nu HTML Checker; its schema is in its jar, nothing is fetched. */
class HtmlValidityTest {
    private final HtmlFaults faults = new HtmlFaults();

    HtmlValidityTest() throws Exception {}

    @Test
    void everyPageOfTheDemoFleetIsValid() throws Exception {
        int pages = 0;
        for (Map.Entry<String, byte[]> file : DemoFleet.pages().entrySet()) {
            if (file.getKey().endsWith(".html")) {
                faults.check(file.getKey(), file.getValue());
                pages++;
            }
        }

        assertThat(faults.told()).isEmpty();
        assertThat(pages).isGreaterThan(100);
    }

    @Test
    void whatStaffSeeOfTheFleetIsValid() throws Exception {
        Map<String, byte[]> files = DemoFleet.files(DemoFleet.web().resolveSibling("staff"));
        for (String page : List.of("index.html", "fleet.html", "due.html")) {
            faults.check(page, Objects.requireNonNull(files.get(page), page));
        }
        Map<String, byte[]> busy = DemoFleet.files(BusyDay.published().out().resolve("staff"));
        faults.check("index.html", Objects.requireNonNull(busy.get("index.html")));

        assertThat(faults.told()).isEmpty();
    }

    @Test
    void aFaultIsTold() throws Exception {
        String page = "<!doctype html><html lang='en'><title>x</title><ul><p>lost</p></ul>";

        faults.check("x.html", page.getBytes(StandardCharsets.UTF_8));

        assertThat(faults.told())
                .singleElement(STRING)
                .startsWith("x.html:1:")
                .contains(": error: Element “p” not allowed as child of element “ul”");
    }
}
