package bayfolio.render.print;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.document.Audience;
import bayfolio.document.From;
import bayfolio.document.Handbook;
import bayfolio.document.Node;
import bayfolio.document.NodeId;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Revision;
import bayfolio.document.Stamp;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/** By what a page of a book is known. */
class PageDigestTest {
    private static final Page NEWS = new Page(
            new Stamp(PageKind.WHAT_CHANGED.node(), Audience.EVERYBODY, From.PROGRAM, "en"),
            PageKind.WHAT_CHANGED,
            PageKind.WHAT_CHANGED.target(),
            "What changed",
            List.of(),
            List.of(),
            false);

    private static List<String> pages(Handbook handbook) throws IOException {
        byte[] book = new Book(DemoBook.means())
                .laid(handbook, DemoBook.small().media(), Paper.LETTER, Printed.CLEAR)
                .bytes();
        try (PDDocument document = Loader.loadPDF(book)) {
            return PageDigest.of(document);
        }
    }

    @Test
    void barsMoveNothingAndAreNoPartOfAPage() throws IOException {
        Handbook handbook = DemoBook.small().renters();
        Set<NodeId> all = handbook.walk().map(Node::id).collect(Collectors.toSet());
        List<String> bare = pages(handbook);
        List<String> barred = pages(handbook.revised(new Revision(1, LocalDate.of(2026, 5, 2), true, all), NEWS));

        TreeSet<Integer> differ = new TreeSet<>();
        for (int page = 0; page < bare.size(); page++) {
            if (!bare.get(page).equals(barred.get(page))) {
                differ.add(page + 1);
            }
        }
        assertThat(barred).hasSameSizeAs(bare);
        // The cover tells the edition.
        assertThat(differ).containsExactly(1);
    }
}
