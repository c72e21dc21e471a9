package bayfolio.render.print;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
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
 * All that is printed is held against ISO 14289-1 (PDF/UA-1) and ISO 19005-3 (PDF/A-3a) by the validator of that trade. A book
 * takes half a minute: one is whole, of the others there is every third page, another third on each coach, and held against
 * the first one; {@code -Dpaper=all} holds all books against both.
 */
class PdfValidityTest {
    private static final Set<String> WHOLE = Set.of("redpoll");
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
        double letters = unit.equals("turnstone") ? Printed.LARGE : Printed.CLEAR;
        boolean whole = ALL || WHOLE.contains(unit);
        int first = DemoFleet.fewest().indexOf(unit);
        files.put("book", whole ? demo.book(paper, letters) : demo.third(first, paper, letters));
        files.putAll(demo.files(new Cards(DemoBook.means())));
        files.putAll(demo.files(new Sheets(DemoBook.means())));
        files.putAll(demo.files(new Labels(DemoBook.means())));
        files.keySet().removeIf(path -> path.endsWith(".svg"));
        List<String> failures = new ArrayList<>();
        int checks = 0;
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            List<PDFAFlavour> standards = file.getKey().equals("book") && !whole
                    ? List.of(PDFAFlavour.PDFUA_1)
                    : List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_3_A);
            // Both are held against what is read once.
            try (PDFAParser parser = Foundries.defaultInstance()
                            .createParser(
                                    new ByteArrayInputStream(file.getValue()), standards.get(standards.size() - 1));
                    PDFAValidator validator =
                            Foundries.defaultInstance().createValidator(standards, 20, false, false, false)) {
                List<ValidationResult> results = validator.validateAll(parser);
                assertThat(results)
                        .extracting(ValidationResult::getPDFAFlavour)
                        .containsExactlyInAnyOrderElementsOf(standards);
                for (ValidationResult result : results) {
                    checks += result.getTotalAssertions();
                    for (TestAssertion assertion : result.getTestAssertions()) {
                        failures.add(file.getKey() + " " + result.getPDFAFlavour() + ": " + assertion.getRuleId() + " "
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
