package bayfolio.render.print;

import bayfolio.catalog.Catalog;
import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.Handbook;
import bayfolio.document.Node;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.render.Means;
import bayfolio.render.Media;
import bayfolio.render.html.DrawingView;
import bayfolio.render.html.View;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.stream.IntStream;

/** The handbook as a book, to be printed on both sides and bound: for both sizes of paper, and in large print. */
public final class Book extends PaperOutput {
    /** At the end of a column that is shorter. */
    private static final View NOTHING = new View().with("href", "").with("words", "");

    private final Press.Form form;
    private final Map<String, String> symbols;

    public Book(Means means) {
        super(means, Audience.RENTERS);
        this.form = press.form("book");
        this.symbols = means.theme().symbols();
    }

    @Override
    public Map<String, byte[]> files(Handbook handbook, Media media, Around around) {
        Map<String, byte[]> files = new ConcurrentSkipListMap<>();
        // Each takes seconds; nothing is shared but what is read.
        books(handbook).entrySet().parallelStream()
                .forEach(book -> files.put(
                        book.getKey(),
                        press.pdf(
                                form,
                                filled(
                                        handbook,
                                        media,
                                        book.getValue().paper(),
                                        book.getValue().letters()),
                                media,
                                around.before().apply(book.getKey()))));
        return files;
    }

    /** All are made of the same: neither the paper nor the size of the letters hangs on the document. */
    @Override
    public Optional<Map<String, byte[]>> sources(Handbook handbook, Media media) {
        byte[] source = filled(handbook, media, Paper.A4, Printed.CLEAR).getBytes(StandardCharsets.UTF_8);
        Map<String, byte[]> sources = new TreeMap<>();
        books(handbook).keySet().forEach(path -> sources.put(path, source));
        return Optional.of(sources);
    }

    private record One(Paper paper, double letters) {}

    private static Map<String, One> books(Handbook handbook) {
        Map<String, One> books = new TreeMap<>();
        for (Paper paper : Paper.values()) {
            books.put(Printed.BOOK.path(handbook, paper), new One(paper, Printed.CLEAR));
        }
        books.put(Printed.LARGE_PRINT.path(handbook), new One(Printed.at(handbook), Printed.LARGE));
        return books;
    }

    /** @param letters of the body, in points */
    Pdf laid(Handbook handbook, Media media, Paper paper, double letters) {
        return press.pdf(form, filled(handbook, media, paper, letters), media);
    }

    /** What is laid out. */
    String filled(Handbook handbook, Media media, Paper paper, double letters) {
        return press.filled(form, view(handbook, media, paper, letters));
    }

    private View view(Handbook handbook, Media media, Paper paper, double letters) {
        Catalog screen = means.catalogs().of(handbook.language());
        Leaves leaves = Leaves.of(handbook);
        Optional<View> drawing = drawing(handbook);
        PaperView view = new PaperView(means, handbook, screen, symbols, media, words, leaves::place);
        return view.frame(paper, letters)
                .with("title", screen.say("print.book-of", "coach", handbook.name()))
                .with("word", words.of(screen))
                // What is new goes first where large letters leave no room for both.
                .with(
                        "drawn",
                        drawing.isPresent()
                                && (letters <= Printed.CLEAR
                                        || handbook.revision()
                                                .filter(it -> it.before() > 0)
                                                .isEmpty()))
                .with("drawing", drawing.orElseGet(View::new))
                .with(
                        "notices",
                        notices(handbook).stream()
                                .map(page -> view.page(page, true))
                                .toList())
                .with(
                        "card",
                        handbook.pages().stream()
                                .filter(page -> page.kind() == PageKind.NIGHT_CARD)
                                .map(page -> view.page(page, true))
                                .toList())
                .with(
                        "chapters",
                        leaves.chapters().stream()
                                .map(chapter -> chapter(chapter, view))
                                .toList())
                .with(
                        "index",
                        new View()
                                .with("id", PaperView.id(PageKind.INDEX.node()))
                                .with("rows", rows(leaves.index(), view)));
    }

    /** The first page with what is to be known first, which is no page of the book. */
    private static List<Page> notices(Handbook handbook) {
        return handbook.pages().stream()
                .filter(page -> page.kind() == PageKind.HOME)
                .filter(page -> !Leaves.notices(page).isEmpty())
                .map(page -> Leaves.with(page, Leaves.notices(page), List.of()))
                .toList();
    }

    private static View entry(Content.LinkList.Entry entry, PaperView view) {
        return new View()
                .with("href", view.to(entry.link().target()))
                .with("words", entry.link().plain());
    }

    /** In two columns, the left one first. */
    private static List<View> rows(List<Content.LinkList.Entry> index, PaperView view) {
        int half = (index.size() + 1) / 2;
        return IntStream.range(0, half)
                .mapToObj(row -> new View()
                        .with(
                                "cells",
                                IntStream.of(row, row + half)
                                        .mapToObj(at -> at < index.size() ? entry(index.get(at), view) : NOTHING)
                                        .toList()))
                .toList();
    }

    private static View chapter(Leaves.Chapter chapter, PaperView view) {
        return view.page(chapter.page(), true)
                .with("listed", chapter.listed())
                .with("glossary", chapter.page().kind() == PageKind.WORDS)
                .with(
                        "pages",
                        chapter.pages().stream()
                                .map(page -> view.page(page, false).with("goes-on", Leaves.goesOn(page)))
                                .toList());
    }

    /** The coach from its first side. */
    private Optional<View> drawing(Handbook handbook) {
        return handbook.pages().stream()
                .filter(page -> page.kind() == PageKind.HOME)
                .flatMap(Node::walk)
                .filter(Content.Drawn.class::isInstance)
                .map(Content.Drawn.class::cast)
                .findFirst()
                .map(drawn -> DrawingView.of(drawn.drawing(), drawn.title(), "cover", symbols, it -> Optional.empty()));
    }
}
