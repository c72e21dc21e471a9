package bayfolio.issue;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.publish.SmallFleet;
import com.google.gson.JsonArray;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/** A binder with the book of one edition becomes that of the next by the leaves that have changed, and by no others. */
class ChangedPagesTest {
    private static final String UNIT = "units/knot/unit.yaml";
    private static final Pattern RUN = Pattern.compile("(\\d+)(?:\u2013(\\d+))?");

    @TempDir
    private Path folder;

    private Path fleet = Path.of("");

    @BeforeEach
    void aCoach() throws IOException {
        fleet = SmallFleet.write(folder.resolve("fleet"), List.of("knot"));
    }

    private void run(String... words) {
        assertThat(new TypedFleet(fleet).said(words)).endsWith("exit 0\n");
    }

    private Path printed(String file) {
        return fleet.resolve("site-out/web/knot/print/" + file + ".pdf");
    }

    private void issueAndPrint(String note, String day) {
        run("issue", "knot", "--note", note, "--date", day);
        run("publish", "--only", "book,web");
    }

    /** Of each page what is read on it, without the lines at its head and at its foot. */
    private static List<String> pages(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            List<String> pages = new ArrayList<>();
            PDFTextStripper text = new PDFTextStripper();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                text.setStartPage(page);
                text.setEndPage(page);
                pages.add(text.getText(document)
                        .lines()
                        .filter(line ->
                                !line.matches("^(Edition [0-9a-f]{6,}.*|Edition \\d+, .* \\d{4}|.*page \\d+ of \\d+)$"))
                        .collect(Collectors.joining("\n")));
            }
            return pages;
        }
    }

    /** Numbers in a column of the sheet: first those that are taken out, then those that are put in, line by line. */
    private static List<Integer> numbers(String sheet) {
        List<Integer> numbers = new ArrayList<>();
        Matcher run =
                RUN.matcher(sheet.substring(sheet.indexOf("Put in pages"), sheet.indexOf("All other leaves stay")));
        int column = 0;
        while (run.find()) {
            if (column++ % 2 == 1) {
                int first = Integer.parseInt(run.group(1));
                int last = run.group(2) == null ? first : Integer.parseInt(run.group(2));
                IntStream.rangeClosed(first, last).forEach(numbers::add);
            }
        }
        return numbers;
    }

    @Test
    void leavesThatAreExchangedMakeTheBookOfTheNextEdition() throws Exception {
        issueAndPrint("As bought.", "2026-05-02");
        assertThat(printed("changed-pages-letter")).doesNotExist();
        List<String> binder = pages(printed("book-letter"));

        new TypedFleet(fleet).edit(UNIT, "on-look: red edge up", "on-look: green edge up");
        issueAndPrint("The pump has a new switch.", "2026-06-01");
        List<String> book = pages(printed("book-letter"));
        exchanged(binder, book);
        tellsOfEach(binder, book);
        isValid(printed("changed-pages-letter"));

        // What was written down of a book is not guessed at.
        Path pages = fleet.resolve("units/knot/editions/1.pages");
        assertThat(Files.readAllLines(pages))
                .anyMatch(line -> line.matches("letter 1 [0-9a-f]{12}"))
                .anyMatch(line -> line.startsWith("a4 1 "));
        Files.writeString(pages, Files.readString(pages).replace("a4 2 ", "a4 3 "));
        assertThat(new TypedFleet(fleet).said("publish", "--only", "book,web"))
                .contains("units/knot/editions/1.pages")
                .contains("does not tell how the book of edition 1 was printed")
                .endsWith("exit 1\n");
        Files.delete(pages);
        run("publish", "--only", "book,web");
        assertThat(printed("changed-pages-letter")).doesNotExist();
    }

    private void exchanged(List<String> before, List<String> book) throws IOException {
        List<String> all = pages(printed("changed-pages-letter"));
        List<Integer> numbers = numbers(all.get(0));
        // The sheet has a back, on which nothing is printed of the book.
        assertThat(all).hasSize(numbers.size() + 2);
        List<String> binder = new ArrayList<>(before);
        TreeSet<Integer> needed = new TreeSet<>();
        for (int i = 0; i < numbers.size(); i++) {
            int page = numbers.get(i);
            if (page > binder.size() || !binder.get(page - 1).equals(all.get(i + 2))) {
                needed.add((page + 1) / 2);
            }
            if (page > binder.size()) {
                binder.add(all.get(i + 2));
            } else {
                binder.set(page - 1, all.get(i + 2));
            }
        }
        assertThat(binder).isEqualTo(book);
        TreeSet<Integer> leaves = new TreeSet<>();
        numbers.forEach(page -> leaves.add((page + 1) / 2));
        assertThat(needed).as("leaves that differ").isEqualTo(leaves);
        assertThat(leaves.size()).isBetween(2, book.size() / 4);
        System.out.println(leaves.size() + " of " + (book.size() + 1) / 2 + " leaves");
    }

    /** Of each page that reads otherwise a change tells the number; only the cover is not about the coach. */
    private void tellsOfEach(List<String> before, List<String> now) {
        TreeSet<Integer> told = new TreeSet<>();
        JsonParser.parseString(new TypedFleet(fleet)
                        .said("changes", "knot", "--from", "1", "--to", "2", "--json")
                        .replaceFirst("exit 0\n$", ""))
                .getAsJsonArray()
                .get(0)
                .getAsJsonObject()
                .getAsJsonArray("changes")
                .forEach(change -> change.getAsJsonObject()
                        .getAsJsonArray("consequences")
                        .forEach(consequence -> {
                            JsonArray on = consequence.getAsJsonObject().getAsJsonArray("on");
                            if (on != null) {
                                on.forEach(size -> {
                                    if (size.getAsJsonObject()
                                            .get("size")
                                            .getAsString()
                                            .equals("letter")) {
                                        size.getAsJsonObject()
                                                .getAsJsonArray("pages")
                                                .forEach(page -> told.add(page.getAsInt()));
                                    }
                                });
                            }
                        }));
        TreeSet<Integer> differ = new TreeSet<>();
        for (int page = 2; page <= before.size(); page++) {
            if (!before.get(page - 1).equals(now.get(page - 1))) {
                differ.add(page);
            }
        }
        assertThat(told).containsAll(differ);
        assertThat(told.size()).as(told + " for " + differ).isLessThan(3 * differ.size());
    }

    private static void isValid(Path pdf) throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        List<PDFAFlavour> standards = List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_3_A);
        try (PDFAParser parser = Foundries.defaultInstance().createParser(Files.newInputStream(pdf), standards.get(1));
                PDFAValidator validator =
                        Foundries.defaultInstance().createValidator(standards, 20, false, false, false)) {
            List<ValidationResult> results = validator.validateAll(parser);
            assertThat(results)
                    .hasSize(2)
                    .allSatisfy(result -> assertThat(result.getTestAssertions())
                            .as(pdf.getFileName() + " " + result.getPDFAFlavour())
                            .isEmpty());
        }
    }
}
