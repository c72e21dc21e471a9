package bayfolio.render.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.LogManager;
import java.util.logging.Logger;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/**
 * All that is printed is held against ISO 14289-1 (PDF/UA-1) and ISO 19005-3 (PDF/A-3a) by the validator of that trade. Books
 * are held against the second one on some coaches, which takes a minute each; {@code -Dpaper=all} does so with all.
 */
class PdfValidityTest {
    private static final List<String> STANDARDS = List.of("ua1", "3a");

    private static final Set<String> ARCHIVED = Set.of("redpoll");
    private static final boolean ALL = System.getProperty("paper", "").equals("all");

    @BeforeAll
    static void begin() {
        LogManager.getLogManager().reset();
        Logger.getLogger("").setLevel(Level.OFF);
        VeraGreenfieldFoundryProvider.initialise();
    }

    @ParameterizedTest
    @MethodSource("bayfolio.DemoFleet#fewest")
    void allThatIsPrintedKeepsBothStandards(String unit) throws Exception {
        DemoBook demo = DemoBook.of(unit);
        Map<String, byte[]> files = new LinkedHashMap<>();
        // Both sizes of paper, and large print, each on some of the coaches: they differ in nothing but measures.
        Paper paper = unit.compareTo("r") < 0 ? Paper.LETTER : Paper.A4;
        files.put("book", demo.book(paper, unit.equals("turnstone") ? Printed.LARGE : Printed.CLEAR));
        files.putAll(demo.files(new Cards(DemoBook.means())));
        files.putAll(demo.files(new Sheets(DemoBook.means())));
        files.putAll(demo.files(new Labels(DemoBook.means())));
        files.keySet().removeIf(path -> path.endsWith(".svg"));
        List<String> failures = new ArrayList<>();
        int checks = 0;
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            for (String standard : STANDARDS) {
                if (file.getKey().equals("book") && standard.equals("3a") && !ARCHIVED.contains(unit) && !ALL) {
                    continue;
                }
                PDFAFlavour flavour = PDFAFlavour.fromString(standard);
                try (PDFAParser parser = Foundries.defaultInstance()
                                .createParser(new ByteArrayInputStream(file.getValue()), flavour);
                        PDFAValidator validator =
                                Foundries.defaultInstance().createValidator(flavour, 20, false, false, false)) {
                    ValidationResult result = validator.validate(parser);
                    checks += result.getTotalAssertions();
                    for (TestAssertion assertion : result.getTestAssertions()) {
                        failures.add(file.getKey() + " " + standard + ": " + assertion.getRuleId() + " "
                                + assertion.getMessage());
                    }
                    assertThat(result.isCompliant() || !failures.isEmpty())
                            .as(file.getKey())
                            .isTrue();
                }
            }
        }
        System.out.println(
                unit + ": " + files.size() + " files, " + checks + " checks, " + failures.size() + " failures");
        assertThat(failures).isEmpty();
        assertThat(checks).isGreaterThan(100_000);
    }
}
