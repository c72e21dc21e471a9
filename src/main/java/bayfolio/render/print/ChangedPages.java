package bayfolio.render.print;

import bayfolio.catalog.Catalog;
import bayfolio.document.Audience;
import bayfolio.document.Handbook;
import bayfolio.document.Revision;
import bayfolio.edition.PrintedPage;
import bayfolio.render.Means;
import bayfolio.render.Media;
import bayfolio.render.html.View;
import bayfolio.source.Digest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * For a book that lies in a binder: the leaves alone that the edition before has otherwise, behind a sheet that tells which to
 * take out and where to put these. It is made of the book, which comes before it.
 */
public final class ChangedPages extends PaperOutput {
    private final Press.Form form;

    public ChangedPages(Means means) {
        super(means, Audience.RENTERS);
        this.form = press.form("exchange");
    }

    @Override
    public Map<String, byte[]> files(Handbook handbook, Media media, Around around) {
        Map<String, byte[]> files = new TreeMap<>();
        if (around.inBinder().isEmpty() || handbook.revision().isEmpty()) {
            return files;
        }
        Map<String, List<PrintedPage>> before = around.inBinder().get().books();
        Map<String, List<PrintedPage>> now = PrintedBooks.among(around.beside(), handbook);
        for (Paper paper : Paper.values()) {
            List<PrintedPage> was = before.get(paper.id());
            List<PrintedPage> is = now.get(paper.id());
            byte[] book = around.beside().get(Printed.BOOK.path(handbook, paper));
            if (was == null || is == null || book == null) {
                continue;
            }
            Exchange exchange = Exchange.of(digests(was), digests(is));
            if (exchange.runs().isEmpty() || exchange.isAll()) {
                continue;
            }
            String path = Printed.CHANGED_PAGES.path(handbook, paper);
            String sheet = press.filled(
                    form,
                    view(handbook, media, paper, exchange, handbook.revision().get()));
            String source = Pdf.source(sheet + Digest.of(List.of(book)), Map.of());
            files.put(
                    path,
                    around.before()
                            .apply(path)
                            .filter(file -> Pdf.isOf(file, source))
                            .orElseGet(() -> excerpt(sheet, media, book, exchange, source)));
        }
        return files;
    }

    private static List<String> digests(List<PrintedPage> pages) {
        return pages.stream().map(PrintedPage::digest).toList();
    }

    /** They are made of pages of the book, which is compared itself. */
    @Override
    public Optional<Map<String, byte[]>> sources(Handbook handbook, Media media) {
        return Optional.of(Map.of());
    }

    private byte[] excerpt(String sheet, Media media, byte[] book, Exchange exchange, String source) {
        try {
            return Excerpt.of(press.pdf(form, sheet, media).bytes(), book, exchange.printed(), source);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private View view(Handbook handbook, Media media, Paper paper, Exchange exchange, Revision revision) {
        Catalog screen = means.catalogs().of(handbook.language());
        String title = screen.say("print.exchange");
        return PaperView.alone(means, handbook, media, words)
                .frame(paper, Printed.CLEAR)
                .with("title", title + ", " + handbook.name())
                .with("word", words.of(screen))
                .with("running", title)
                .with("heading", title)
                .with("binder", screen.say("print.exchange-binder", "edition", revision.before()))
                .with("others", screen.say("print.exchange-others", "edition", revision.before()))
                .with(
                        "runs",
                        exchange.runs().stream()
                                .map(run -> new View()
                                        .with("out", pages(run.out(), screen))
                                        .with("in", pages(run.in(), screen)))
                                .toList());
    }

    private static String pages(Optional<Exchange.Pages> pages, Catalog screen) {
        return pages.map(Exchange.Pages::toString).orElseGet(() -> screen.say("print.no-page"));
    }
}
