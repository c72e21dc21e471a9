package bayfolio;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import nu.validator.validation.SimpleDocumentValidator;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;

/** What the validator of the web's own makers finds in pages of HTML. */
public final class HtmlFaults {
    private static final String SCHEMA = "http://s.validator.nu/html5-rdfalite.rnc";

    private final Messages messages = new Messages();
    private final SimpleDocumentValidator validator;

    /** Takes a second, so once for all pages of a test. */
    public HtmlFaults() throws Exception {
        validator = new SimpleDocumentValidator(true, true, true);
        validator.setUpMainSchema(SCHEMA, new Messages());
    }

    public void check(String path, byte[] page) throws Exception {
        messages.page = path;
        validator.setUpValidatorAndParsers(messages, false, false);
        InputSource source = new InputSource(new ByteArrayInputStream(page));
        source.setEncoding("UTF-8");
        source.setSystemId("http://localhost/" + path);
        validator.checkHtmlInputSource(source);
    }

    /** One line each, of all pages that were looked at. */
    public List<String> told() {
        return messages.told;
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
