package bayfolio.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import bayfolio.DemoFleet;
import bayfolio.publish.BusyDay;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import nu.validator.validation.SimpleDocumentValidator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;

/** Every page through the Nu HTML Checker; its schema is in its jar, nothing is fetched. */
class HtmlValidityTest {
    private static final String SCHEMA = "http://s.validator.nu/html5-rdfalite.rnc";

    @SuppressWarnings("NullAway.Init") // set before the first test
    private static SimpleDocumentValidator validator;

    private final Messages messages = new Messages();

    /** Takes a second, so once for all pages. */
    @BeforeAll
    static void setUp() throws Exception {
        validator = new SimpleDocumentValidator(true, true, true);
        validator.setUpMainSchema(SCHEMA, new Messages());
    }

    @Test
    void everyPageOfTheDemoFleetIsValid() throws Exception {
        int pages = 0;
        for (Map.Entry<String, byte[]> file : DemoFleet.pages().entrySet()) {
            if (file.getKey().endsWith(".html")) {
                check(file.getKey(), file.getValue());
                pages++;
            }
        }

        assertThat(messages.told).isEmpty();
        assertThat(pages).isGreaterThan(100);
    }

    @Test
    void whatStaffSeeOfTheFleetIsValid() throws Exception {
        Map<String, byte[]> files = DemoFleet.files(DemoFleet.web().resolveSibling("staff"));
        for (String page : List.of("index.html", "fleet.html", "due.html")) {
            check(page, Objects.requireNonNull(files.get(page), page));
        }
        Map<String, byte[]> busy = DemoFleet.files(BusyDay.published().out().resolve("staff"));
        check("index.html", Objects.requireNonNull(busy.get("index.html")));

        assertThat(messages.told).isEmpty();
    }

    @Test
    void aFaultIsTold() throws Exception {
        String page = "<!doctype html><html lang='en'><title>x</title><ul><p>lost</p></ul>";

        check("x.html", page.getBytes(StandardCharsets.UTF_8));

        assertThat(messages.told)
                .singleElement(STRING)
                .startsWith("x.html:1:")
                .contains(": error: Element “p” not allowed as child of element “ul”");
    }

    private void check(String path, byte[] page) throws Exception {
        messages.page = path;
        validator.setUpValidatorAndParsers(messages, false, false);
        InputSource source = new InputSource(new ByteArrayInputStream(page));
        source.setEncoding("UTF-8");
        source.setSystemId("http://localhost/" + path);
        validator.checkHtmlInputSource(source);
    }

    private static final class Messages implements ErrorHandler {
        private final List<String> told = new ArrayList<>();
        private String page = "";

        @Override
        public void warning(SAXParseException message) {
            told.add(sentence("warning", message));
        }

        @Override
        public void error(SAXParseException message) {
            told.add(sentence("error", message));
        }

        @Override
        public void fatalError(SAXParseException message) {
            told.add(sentence("fatal", message));
        }

        private String sentence(String severity, SAXParseException message) {
            return page
                    + ":"
                    + message.getLineNumber()
                    + ":"
                    + message.getColumnNumber()
                    + ": "
                    + severity
                    + ": "
                    + message.getMessage();
        }
    }
}
