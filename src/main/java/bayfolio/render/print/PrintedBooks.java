package bayfolio.render.print;

import bayfolio.document.Handbook;
import bayfolio.document.Page;
import bayfolio.edition.PrintedPage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;

/** Books as they are printed, page by page, read from their files. */
public final class PrintedBooks {
    /** In points: the margin, and less than a line of text with the room above a heading. */
    private static final double TOP = 85;

    private PrintedBooks() {}

    /**
     * Those that are among some files; empty where none is.
     *
     * @param files of a coach, by path below the root
     * @return pages in their order, by the name of the paper
     */
    public static SortedMap<String, List<PrintedPage>> among(Map<String, byte[]> files, Handbook handbook) {
        SortedMap<String, List<PrintedPage>> books = new TreeMap<>();
        for (Paper paper : Paper.values()) {
            Optional.ofNullable(files.get(Printed.BOOK.path(handbook, paper)))
                    .ifPresent(book -> books.put(paper.id(), pages(book, handbook)));
        }
        return books;
    }

    private static List<PrintedPage> pages(byte[] book, Handbook handbook) {
        try (PDDocument document = Loader.loadPDF(book)) {
            List<String> digests = PageDigest.of(document);
            List<Begin> begins = begins(document, handbook);
            return IntStream.range(0, digests.size())
                    .mapToObj(page -> new PrintedPage(digests.get(page), on(page, begins)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Where a page of the handbook begins.
     *
     * @param page from 0
     * @param below how far from the upper edge, in points
     */
    private record Begin(String id, int page, double below) {
        /** Whether nothing of the page before is above it. */
        boolean isFirst() {
            return below < TOP;
        }
    }

    private static List<Begin> begins(PDDocument book, Handbook handbook) throws IOException {
        Map<String, PDPageXYZDestination> names = Names.of(book);
        List<Begin> begins = new ArrayList<>();
        for (Page page : handbook.pages()) {
            PDPageXYZDestination to = names.get(PaperView.id(page.id()));
            if (to != null) {
                begins.add(new Begin(
                        page.address(),
                        book.getPages().indexOf(to.getPage()),
                        to.getPage().getMediaBox().getHeight() - to.getTop()));
            }
        }
        begins.sort(Comparator.comparing(Begin::page).thenComparing(Begin::below));
        return begins;
    }

    /** One that began before goes on until the next begins. */
    private static List<String> on(int page, List<Begin> begins) {
        List<String> on = new ArrayList<>();
        for (int i = 0; i < begins.size(); i++) {
            Begin begin = begins.get(i);
            boolean ended = i + 1 < begins.size()
                    && (begins.get(i + 1).page() < page
                            || begins.get(i + 1).page() == page
                                    && begins.get(i + 1).isFirst());
            if (begin.page() == page || begin.page() < page && !ended) {
                on.add(begin.id());
            }
        }
        return on;
    }
}
