package bayfolio.render.print;

import bayfolio.catalog.Catalog;
import bayfolio.document.Content;
import bayfolio.document.Handbook;
import bayfolio.document.NodeId;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.PlainText;
import bayfolio.document.Revision;
import bayfolio.document.Sketch;
import bayfolio.prose.Target;
import bayfolio.render.Means;
import bayfolio.render.Media;
import bayfolio.render.html.ContentView;
import bayfolio.render.html.View;
import bayfolio.render.html.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Pages of a handbook as names for templates of paper, where links lead to page numbers. */
record PaperView(
        Means means,
        Handbook handbook,
        Catalog screen,
        Map<String, String> symbols,
        Media media,
        Words words,
        Function<Target, Optional<NodeId>> places) {
    /** So many letters as fit beside the name of the coach. */
    private static final int LINE = 44;

    /** Of what is looked up and not read, against the body: no smaller than ten points. */
    static final String SMALL = "0.84";

    /** Stands for a number that only the engine knows; another one is the next letter. */
    private static final String NUMBER = "\uE000";

    private static final String OTHER = "\uE001";

    /** The page that a link leads to. */
    private static final String THERE = "target-counter(attr(href), page)";

    /** As an attribute names it: pages, with what is within them after a dot. */
    static String id(NodeId node) {
        return node.page().replace('/', '_') + (node.within().isEmpty() ? "" : "." + node.within());
    }

    /** Of a page by itself, from which nothing leads on. */
    static PaperView alone(Means means, Handbook handbook, Media media, Words words) {
        return new PaperView(
                means,
                handbook,
                means.catalogs().of(handbook.language()),
                means.theme().symbols(),
                media,
                words,
                it -> Optional.empty());
    }

    /** The page of a kind, by itself. */
    View alone(Paper paper, double letters, PageKind kind) {
        Page page = (Page) handbook.find(kind.node()).orElseThrow();
        return frame(paper, letters)
                .with("title", page.title() + ", " + handbook.name())
                .with("word", words.of(screen))
                .with("sheet", page(page, true))
                .with("running", running(page.title()))
                .with("sort", kind.id());
    }

    /** What stands on all of its paper. */
    View frame(Paper paper, double letters) {
        Handbook.Cover cover = handbook.cover();
        return new View()
                .with("language", handbook.language())
                .with("size", paper.size())
                .with("letters", Double.toString(letters))
                .with("small", letters > Printed.CLEAR ? "1" : SMALL)
                .with("fleet", means.fleet().name())
                .with("coach", cover.name())
                .with("number", cover.number())
                .with("head", running((cover.number() + " " + cover.name()).strip()))
                .with("numbered", !cover.number().isEmpty())
                .with("kind", cover.kind())
                .with("edition", edition())
                .with("replacing", !replaces().isEmpty())
                .with("replaces", replaces())
                .with("news", news())
                .with("see", counted(screen.say("print.see", "page", NUMBER), THERE))
                .with("explains", counted(screen.say("print.explained", "page", NUMBER), THERE))
                .with("turn", THERE)
                .with("footed", footed(screen));
    }

    /** The number of a page, as styles have it. */
    static String footed(Catalog screen) {
        return counted(screen.say("print.page", "page", NUMBER, "pages", OTHER), "counter(page)", "counter(pages)");
    }

    private String edition() {
        return handbook.revision()
                .filter(Revision::asIssued)
                .map(it -> screen.say("print.edition-of", "edition", handbook.edition(), "day", screen.day(it.day())))
                .orElseGet(() -> edition(means, handbook.edition(), screen));
    }

    /** What is new in it, in a few lines; all of it stands on the phone. */
    private List<View> news() {
        return handbook.find(PageKind.WHAT_CHANGED.node()).stream()
                .flatMap(page -> ((Page) page).opening().stream())
                .flatMap(content -> content instanceof Content.LinkList list
                        ? list.entries().stream()
                                .map(it ->
                                        it.link().plain() + (it.link().plain().endsWith("?") ? " " : ": ") + it.note())
                        : content instanceof Content.Text text
                                        && content.id().within().equals("note")
                                ? PlainText.of(text)
                                : Stream.of())
                .map(line -> new View().with("line", line))
                .toList();
    }

    /** Which copies are no longer true; nothing where no edition was before. */
    private String replaces() {
        return handbook.revision()
                .filter(it -> it.before() > 0)
                .map(it -> screen.say("print.replaces", "edition", it.before()))
                .orElse("");
    }

    static String edition(Means means, String digest, Catalog screen) {
        return means.printing()
                .day()
                .map(day -> screen.say("print.edition-of", "edition", digest, "day", screen.day(day)))
                .orElseGet(() -> screen.say("print.edition", "edition", digest));
    }

    /**
     * A message with numbers of pages in it, as styles have it.
     *
     * @param counters for {@link #NUMBER} and {@link #OTHER}
     */
    private static String counted(String said, String... counters) {
        StringBuilder css = new StringBuilder("\"");
        for (char letter : said.toCharArray()) {
            int number = letter - NUMBER.charAt(0);
            if (number >= 0 && number < counters.length) {
                css.append("\" ").append(counters[number]).append(" \"");
            } else if (letter == '"' || letter == '\\') {
                css.append('\\').append(letter);
            } else {
                css.append(letter);
            }
        }
        return css.append('"').toString();
    }

    /** A page with what is on it; {@code own} for one that opens a chapter. */
    View page(Page page, boolean own) {
        ContentView contents = new ContentView(handbook, page, screen, symbols, media, new OnPaper());
        return contents.inLanguage(new View(), page.stamp())
                .with("id", id(page.id()))
                .with("title", page.title())
                .with("running", running(page.title()))
                .with("own", own)
                .with("carded", page.kind().part().equals(PageKind.NIGHT_CARD.part()))
                .with("deep", false)
                .with("run-in", false)
                .with("urgent", page.urgent())
                .with("glossary", false)
                .with("first", contents.first())
                .with("opening", contents.opening())
                .with("sections", contents.sections(id -> List.of()));
    }

    /** A title at the head of a page has one line; all of it stands below. */
    private static String running(String title) {
        if (title.length() <= LINE) {
            return title;
        }
        int end = title.lastIndexOf(' ', LINE);
        return title.substring(0, end < LINE / 2 ? LINE : end) + "\u2026";
    }

    /** Where it is in this print; nothing where it is not in it. */
    String to(Target target) {
        if (target instanceof Target.OfPhone phone) {
            return phone.dialed();
        }
        return places.apply(target).map(place -> "#" + id(place)).orElse("");
    }

    private final class OnPaper implements ContentView.Ways {
        @Override
        public String to(Target target) {
            return PaperView.this.to(target);
        }

        @Override
        public String drawing(Sketch sketch) {
            return "";
        }

        @Override
        public String photo(String file) {
            return Pdf.PHOTO + file;
        }

        @Override
        public String film(String file) {
            return "";
        }

        @Override
        public List<ContentView.Print> prints() {
            return List.of();
        }
    }
}
