package bayfolio.render.html;

import bayfolio.catalog.Catalog;
import bayfolio.catalog.Catalogs;
import bayfolio.document.Audience;
import bayfolio.document.CalculatorFields;
import bayfolio.document.Content;
import bayfolio.document.Handbook;
import bayfolio.document.NodeId;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Sketch;
import bayfolio.document.Stamp;
import bayfolio.drawing.Drawing;
import bayfolio.explain.Begin;
import bayfolio.fact.Type;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.StepLabel;
import bayfolio.prose.Target;
import bayfolio.render.Media;
import com.google.gson.Gson;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What stands in a handbook as names for templates: sections, contents, blocks, inlines. Where things are, an output knows. */
public final class ContentView {
    private static final Gson GSON = new Gson();
    private static final Set<String> INLINES = Set.of("text", "strong", "emphasis", "code", "link", "things");
    private static final Set<String> BLOCKS = Set.of("paragraph", "bullets", "table", "handling");
    private static final Set<String> CONTENTS = Set.of(
            "text",
            "mark",
            "notice",
            "facts",
            "links",
            "steps",
            "picture",
            "film",
            "fold",
            "form",
            "quote",
            "tiles",
            "drawn",
            "sketched",
            "prints",
            "label",
            "sendable");

    /**
     * A list with a heading and more entries than this is folded, so that what follows is not
     * pushed out of sight.
     */
    private static final int MOST_OPEN = 12;

    /** Of what stands still there is one drawing, whatever a step wants. */
    private static final Set<String> ALWAYS = Set.of("", "normal", "levels");

    private static final int MOST_REGIONS = 30;

    /** So wide a phone shows a small drawing; one that is narrower than half of that as it is. */
    private static final double SKETCH = 280;

    private final Handbook handbook;
    private final Page page;
    private final Catalog screen;
    private final Map<String, String> symbols;
    private final Media media;
    private final Ways ways;

    private final Map<String, Sketch> shown = new TreeMap<>();

    /** With which case forms begin. */
    private Begin begin = Begin.USUAL;

    /** The first picture of a page is wanted at once. */
    private boolean pictured;

    private final Content.Visitor<View> contents = new Contents();
    private final Block.Visitor<View> blocks = new Blocks();
    private final Inline.Visitor<View> inlines = new Inlines();

    /** Where an output has what a page leads to and what it shows. */
    public interface Ways {
        String to(Target target);

        String drawing(Sketch sketch);

        String photo(String file);

        String film(String file);

        /** What is offered to be printed. */
        List<Print> prints();
    }

    /**
     * @param reader for whom it is
     * @param size such as {@code PDF, 120 KB}
     */
    public record Print(Audience reader, String href, String words, String size) {}

    /** @param symbols the path of each, by name */
    public ContentView(
            Handbook handbook, Page page, Catalog screen, Map<String, String> symbols, Media media, Ways ways) {
        this.handbook = handbook;
        this.page = page;
        this.screen = screen;
        this.symbols = symbols;
        this.media = media;
        this.ways = ways;
    }

    /**
     * With the language of what it shows, where that is another one than the page's; for a region nobody changes his voice.
     * And whether it says something else than in the edition before.
     */
    public View inLanguage(View view, Stamp stamp) {
        return view.with("changed", handbook.changed(stamp.id()))
                .with("foreign", !Catalogs.main(stamp.language()).equals(Catalogs.main(handbook.language())))
                .with("lang", stamp.language());
    }

    /** Held by the handbook to be there. */
    public static Page quoted(Handbook handbook, Content.Quote quote) {
        return (Page) handbook.find(quote.page()).orElseThrow();
    }

    /** What is to be known before all else. */
    public List<View> first() {
        return opening(true);
    }

    /** What stands before the first section, after that. */
    public List<View> opening() {
        return opening(false);
    }

    private List<View> opening(boolean notices) {
        return page.opening().stream()
                .filter(content -> content instanceof Content.Notice == notices)
                .map(content -> content.accept(contents))
                .toList();
    }

    /** @param old what once stood elsewhere and leads to the head of a section now */
    public List<View> sections(Function<NodeId, List<View>> old) {
        return page.sections().stream()
                .map(section -> section(section).with("old", old.apply(section.id())))
                .toList();
    }

    private View section(Section section) {
        return inLanguage(new View(), section.stamp())
                .with("anchor", section.anchor())
                .with("heading", section.title())
                .with("deep", section.level() > 2)
                // Facts of a part of many, and those on a card of one side, are read one after the other.
                .with("run-in", section.level() > 2 || page.kind() == PageKind.NIGHT_CARD)
                // Where a list or a link says as much as a heading would.
                .with("headless", headless(section))
                // Among so many regions nobody finds his way.
                .with("region", page.sections().size() <= MOST_REGIONS)
                .with(
                        "contents",
                        section.contents().stream()
                                .map(content -> content.accept(contents))
                                .toList());
    }

    private static boolean headless(Section section) {
        return section.anchor().equals("steps")
                || !section.contents().isEmpty()
                        && section.contents().stream().allMatch(Content.Quote.class::isInstance);
    }

    private List<View> inlines(List<Inline> text) {
        return text.stream().map(inline -> inline.accept(inlines)).toList();
    }

    private List<View> blocks(List<Block> text) {
        return text.stream().map(block -> block.accept(blocks)).toList();
    }

    private final class Inlines implements Inline.Visitor<View> {
        @Override
        public View text(Inline.Text inline) {
            return View.oneOf(INLINES).with("text", inline.text());
        }

        @Override
        public View strong(Inline.Strong inline) {
            return View.oneOf(INLINES).with("strong", new View().with("inlines", inlines(inline.inside())));
        }

        @Override
        public View emphasis(Inline.Emphasis inline) {
            return View.oneOf(INLINES).with("emphasis", new View().with("inlines", inlines(inline.inside())));
        }

        @Override
        public View code(Inline.Code inline) {
            return View.oneOf(INLINES).with("code", inline.text());
        }

        @Override
        public View link(Inline.Link inline) {
            return View.oneOf(INLINES)
                    .with(
                            "link",
                            new View()
                                    .with("href", ways.to(inline.target()))
                                    .with("explains", inline.target() instanceof Target.OfWord)
                                    .with("inlines", inlines(inline.inside())));
        }

        @Override
        public View things(Inline.Things inline) {
            List<View> each = new ArrayList<>();
            for (Inline.Things.One one : inline.each()) {
                each.add(place(one.link(), one.place()).with("before", one.before()));
            }
            return View.oneOf(INLINES).with("things", new View().with("each", each));
        }
    }

    private View sketch(Sketch sketch) {
        shown.put(sketch.name(), sketch);
        Drawing drawing = sketch.drawing();
        double scale = drawing.width() > SKETCH / 2 ? SKETCH / drawing.width() : 1;
        return new View()
                .with("src", ways.drawing(sketch))
                .with("title", sketch.title())
                .with("stated", !sketch.state().isEmpty())
                .with("state", sketch.state().isEmpty() ? "" : screen.say("handling.look." + sketch.state()))
                .with("width", DrawingView.px(drawing.width() * scale))
                .with("height", DrawingView.px(drawing.height() * scale));
    }

    /** The small drawings that it shows, by their names. */
    public Map<String, Sketch> shown() {
        return shown;
    }

    private View place(Inline.Link link, String place) {
        return new View()
                .with("href", ways.to(link.target()))
                .with("name", link.plain())
                .with("placed", !place.isEmpty())
                .with("place", place)
                .with("stopped", stopped(place));
    }

    /** Whether a sentence ends with it already. */
    private static boolean stopped(String words) {
        return words.matches("(?s).*[.!?]\\s*");
    }

    private final class Blocks implements Block.Visitor<View> {
        @Override
        public View paragraph(Block.Paragraph block) {
            return View.oneOf(BLOCKS).with("paragraph", new View().with("inlines", inlines(block.text())));
        }

        @Override
        public View bullets(Block.Bullets block) {
            return View.oneOf(BLOCKS)
                    .with(
                            "bullets",
                            new View()
                                    .with(
                                            "items",
                                            block.items().stream()
                                                    .map(item -> new View().with("inlines", inlines(item)))
                                                    .toList()));
        }

        @Override
        public View table(Block.Table block) {
            return View.oneOf(BLOCKS)
                    .with(
                            "table",
                            new View()
                                    .with("head", cells(block.head()))
                                    .with(
                                            "rows",
                                            block.rows().stream()
                                                    .map(row -> new View().with("cells", cells(row)))
                                                    .toList()));
        }

        @Override
        public View handling(Block.Handling block) {
            return View.oneOf(BLOCKS)
                    .with(
                            "handling",
                            new View()
                                    .with("several", block.switches().size() > 1)
                                    .with(
                                            "switches",
                                            block.switches().stream()
                                                    .filter(handled ->
                                                            !handled.pieces().isEmpty())
                                                    .map(this::handled)
                                                    .toList()));
        }

        private View handled(Block.Handled handled) {
            return new View()
                    .with("name", handled.name())
                    .with(
                            "pieces",
                            handled.pieces().stream()
                                    .map(ContentView.this::piece)
                                    .toList());
        }

        private List<View> cells(List<List<Inline>> cells) {
            return cells.stream()
                    .map(cell -> new View()
                            .with("empty", Inline.plain(cell).isBlank())
                            .with("inlines", inlines(cell)))
                    .toList();
        }
    }

    private View piece(Block.Piece piece) {
        String sort = piece.sort().name().toLowerCase(Locale.ROOT);
        return new View()
                .with("sort", sort)
                .with("label", screen.say("handling." + sort + (piece.state().isEmpty() ? "" : "." + piece.state())))
                .with("words", piece.words());
    }

    private final class Contents implements Content.Visitor<View> {
        @Override
        public View text(Content.Text content) {
            return View.oneOf(CONTENTS)
                    .with("text", inLanguage(new View(), content.stamp()).with("blocks", blocks(content.blocks())));
        }

        @Override
        public View drawn(Content.Drawn content) {
            Map<String, Inline.Link> things = new HashMap<>();
            content.things().forEach(link -> things.put(link.target().written(), link));
            return View.oneOf(CONTENTS)
                    .with(
                            "drawn",
                            DrawingView.of(
                                    content.drawing(),
                                    content.title(),
                                    content.id().within(),
                                    symbols,
                                    box -> Optional.ofNullable(things.get(box))
                                            .map(link ->
                                                    new DrawingView.Linked(ways.to(link.target()), link.plain()))));
        }

        @Override
        public View sketched(Content.Sketched content) {
            return View.oneOf(CONTENTS)
                    .with(
                            "sketched",
                            new View()
                                    .with(
                                            "sketches",
                                            handbook.sketches(content.thing()).stream()
                                                    .map(ContentView.this::sketch)
                                                    .toList()));
        }

        @Override
        public View prints(Content.Prints content) {
            boolean forStaff = content.stamp().audience() == Audience.STAFF;
            List<View> each = ways.prints().stream()
                    .filter(print -> forStaff == (print.reader() == Audience.STAFF))
                    .map(print -> new View()
                            .with("href", print.href())
                            .with("words", print.words())
                            .with("size", print.size()))
                    .toList();
            return View.oneOf(CONTENTS)
                    .with("prints", new View().with("some", !each.isEmpty()).with("each", each));
        }

        @Override
        public View label(Content.Label content) {
            return View.oneOf(CONTENTS).with("label", new View().with("address", content.address()));
        }

        @Override
        public View sendable(Content.Sendable content) {
            return View.oneOf(CONTENTS)
                    .with(
                            "sendable",
                            new View()
                                    .with("id", content.id().within())
                                    .with("href", ways.to(content.link().target()))
                                    .with("words", content.link().plain())
                                    .with("line", content.line())
                                    .with("sometimes", content.when().isPresent())
                                    .with(
                                            "when",
                                            content.when()
                                                    .map(it -> screen.say("sent-when." + Type.word(it)))
                                                    .orElse(""))
                                    .with("address", content.address())
                                    .with("short", content.shortAddress()));
        }

        @Override
        public View tiles(Content.Tiles content) {
            return View.oneOf(CONTENTS)
                    .with(
                            "tiles",
                            new View()
                                    .with(
                                            "noted",
                                            content.tiles().stream()
                                                    .anyMatch(it -> !it.note().isEmpty()))
                                    .with(
                                            "drawn-on",
                                            content.tiles().stream()
                                                    .anyMatch(it -> !it.symbol().isEmpty()))
                                    .with(
                                            "each",
                                            content.tiles().stream()
                                                    .map(it -> new View()
                                                            .with(
                                                                    "href",
                                                                    ways.to(it.link()
                                                                            .target()))
                                                            .with(
                                                                    "words",
                                                                    it.link().plain())
                                                            .with(
                                                                    "noted",
                                                                    !it.note().isEmpty())
                                                            .with("note", it.note())
                                                            .with("symbol", it.symbol())
                                                            .with(
                                                                    "formerly",
                                                                    it.formerly()
                                                                            .isPresent())
                                                            .with(
                                                                    "anchor",
                                                                    it.formerly()
                                                                            .orElse(""))
                                                            .with("path", symbols.getOrDefault(it.symbol(), "")))
                                                    .toList()));
        }

        @Override
        public View mark(Content.Mark content) {
            return View.oneOf(CONTENTS)
                    .with(
                            "mark",
                            inLanguage(new View(), content.stamp())
                                    .with("kind", content.kind())
                                    .with("words", content.words())
                                    .with("drawn-on", symbols.containsKey(content.kind()))
                                    .with("path", symbols.getOrDefault(content.kind(), "")));
        }

        @Override
        public View notice(Content.Notice content) {
            return View.oneOf(CONTENTS).with("notice", meanwhile(content));
        }

        private View meanwhile(Content.Notice notice) {
            return inLanguage(new View(), notice.stamp())
                    .with("label", notice.label())
                    .with("words", notice.text())
                    .with("days", notice.days())
                    .with("placed", !notice.about().isEmpty())
                    .with(
                            "about",
                            notice.about().stream()
                                    .map(link -> new View()
                                            .with("href", ways.to(link.target()))
                                            .with("name", link.plain()))
                                    .toList());
        }

        @Override
        public View facts(Content.FactTable content) {
            return View.oneOf(CONTENTS)
                    .with(
                            "facts",
                            new View()
                                    .with(
                                            "rows",
                                            content.rows().stream()
                                                    .map(this::row)
                                                    .toList()));
        }

        private View row(Content.FactTable.Row row) {
            return inLanguage(new View(), row.stamp())
                    .with("label", row.label())
                    .with("several", row.lines().size() > 1)
                    .with(
                            "lines",
                            row.lines().stream()
                                    .map(line -> new View()
                                            .with("inlines", inlines(line.words()))
                                            .with("stopped", stopped(Inline.plain(line.words()))))
                                    .toList());
        }

        @Override
        public View links(Content.LinkList content) {
            return View.oneOf(CONTENTS)
                    .with(
                            "links",
                            new View()
                                    .with("titled", content.heading().isPresent())
                                    .with(
                                            "folded",
                                            content.heading().isPresent()
                                                    && content.entries().size() > MOST_OPEN)
                                    .with("heading", content.heading().orElse(""))
                                    .with(
                                            "entries",
                                            content.entries().stream()
                                                    .map(this::entry)
                                                    .toList()));
        }

        private View entry(Content.LinkList.Entry entry) {
            return inLanguage(new View(), entry.stamp())
                    .with("href", ways.to(entry.link().target()))
                    .with("formerly", entry.formerly().isPresent())
                    .with("anchor", entry.formerly().orElse(""))
                    .with("words", entry.link().plain())
                    .with("noted", !entry.note().isEmpty())
                    .with("note", entry.note());
        }

        @Override
        public View picture(Content.Picture content) {
            Media.Photograph photograph =
                    Objects.requireNonNull(media.photographs().get(content.photo()), content.photo());
            boolean later = pictured;
            pictured = true;
            // A mark is as large as its number, on a phone too.
            double unit = Math.max(photograph.width(), photograph.height()) / 100.0;
            int[] number = {0};
            return View.oneOf(CONTENTS)
                    .with(
                            "picture",
                            new View()
                                    .with("src", ways.photo(photograph.file(content.photo(), photograph.kept())))
                                    .with(
                                            "srcset",
                                            photograph.sizes().keySet().stream()
                                                    .map(size -> ways.photo(photograph.file(content.photo(), size))
                                                            + " " + size + "w")
                                                    .collect(Collectors.joining(", ")))
                                    .with("width", Integer.toString(photograph.width()))
                                    .with("height", Integer.toString(photograph.height()))
                                    .with("later", later)
                                    .with("alt", content.alt())
                                    .with("pointed", !content.pointers().isEmpty())
                                    .with("radius", DrawingView.px(4 * unit))
                                    .with("size", DrawingView.px(5 * unit))
                                    .with(
                                            "pointers",
                                            content.pointers().stream()
                                                    .map(pointer -> new View()
                                                            .with("number", Integer.toString(++number[0]))
                                                            .with(
                                                                    "href",
                                                                    ways.to(pointer.thing()
                                                                            .target()))
                                                            .with(
                                                                    "name",
                                                                    pointer.thing()
                                                                            .plain())
                                                            .with(
                                                                    "x",
                                                                    DrawingView.px(photograph.width()
                                                                            * pointer.across()
                                                                            / 100.0))
                                                            .with(
                                                                    "y",
                                                                    DrawingView.px(photograph.height()
                                                                            * pointer.down()
                                                                            / 100.0))
                                                            .with(
                                                                    "base",
                                                                    DrawingView.px(
                                                                            photograph.height() * pointer.down() / 100.0
                                                                                    + 1.8 * unit)))
                                                    .toList()));
        }

        @Override
        public View film(Content.Film content) {
            Optional<Media.Photograph> poster =
                    content.poster().map(photo -> media.photographs().get(photo));
            return View.oneOf(CONTENTS)
                    .with(
                            "film",
                            new View()
                                    .with("name", content.name())
                                    .with("src", ways.film(content.file()))
                                    .with("type", content.file().endsWith(".webm") ? "video/webm" : "video/mp4")
                                    .with("posted", poster.isPresent())
                                    .with(
                                            "poster",
                                            poster.map(it -> ways.photo(it.file(
                                                            content.poster().orElse(""), it.kept())))
                                                    .orElse(""))
                                    .with("captioned", content.captioned())
                                    .with("captions", ways.film(FilmTracks.captions(content)))
                                    .with("tracked", ways.film(FilmTracks.chapters(content)))
                                    .with(
                                            "chapters",
                                            content.chapters().stream()
                                                    .map(each -> chapter(each, ways.film(content.file())))
                                                    .toList()));
        }

        private String seconds(int thousandths) {
            return BigDecimal.valueOf(thousandths, 3).stripTrailingZeros().toPlainString();
        }

        private View chapter(Content.Film.Chapter chapter, String film) {
            String from = seconds(chapter.from());
            return new View()
                    .with("anchor", chapter.id().within())
                    // A media fragment: browsers begin there of themselves.
                    .with("moment", film + "#t=" + from)
                    .with("from", from)
                    .with("to", seconds(chapter.to()))
                    .with("clock", Content.Film.clock(chapter.from()))
                    .with("href", ways.to(chapter.thing().target()))
                    .with("name", chapter.thing().plain())
                    .with("told", !chapter.title().isEmpty())
                    .with("title", chapter.title());
        }

        @Override
        public View fold(Content.Fold content) {
            return View.oneOf(CONTENTS)
                    .with(
                            "fold",
                            new View()
                                    .with("title", content.title())
                                    .with(
                                            "contents",
                                            content.inside().stream()
                                                    .map(inside -> inside.accept(this))
                                                    .toList()));
        }

        @Override
        public View form(Content.Form content) {
            return View.oneOf(CONTENTS)
                    .with(
                            "form",
                            new View()
                                    .with("title", content.title())
                                    .with(
                                            "question",
                                            content.calculator().question().id())
                                    .with("asks", GSON.toJson(CalculatorFields.fields(content.calculator(), begin))));
        }

        @Override
        public View quote(Content.Quote content) {
            begin = content.begin();
            List<View> inside = quoted(handbook, content).opening().stream()
                    .map(it -> it.accept(this))
                    .toList();
            begin = Begin.USUAL;
            Page page = quoted(handbook, content);
            return View.oneOf(CONTENTS)
                    .with(
                            "quote",
                            new View()
                                    .with("href", ways.to(page.home()))
                                    .with("title", page.title())
                                    .with("contents", inside));
        }

        @Override
        public View steps(Content.Steps content) {
            int[] number = {0};
            return View.oneOf(CONTENTS)
                    .with(
                            "steps",
                            new View()
                                    .with(
                                            "parts",
                                            content.parts().stream()
                                                    .map(part -> part(part, content.ticked(), number))
                                                    .toList()));
        }

        /** Numbers run on from part to part. */
        private View part(Content.Steps.Part part, boolean ticked, int[] number) {
            int start = number[0] + 1;
            return inLanguage(new View(), part.stamp())
                    .with("titled", part.title().isPresent())
                    .with("heading", part.title().orElse(""))
                    .with("ticked", ticked)
                    .with("start", Integer.toString(start))
                    .with(
                            "each",
                            part.steps().stream()
                                    .map(step -> step(step, ++number[0]))
                                    .toList());
        }

        private View step(Content.Steps.Step step, int number) {
            return inLanguage(new View(), step.stamp())
                    .with("changed", changed(step))
                    .with("anchor", step.id().within())
                    .with("number", Integer.toString(number))
                    .with(
                            "notices",
                            step.notices().stream().map(this::meanwhile).toList())
                    .with("hazards", step.hazards().stream().map(this::hazard).toList())
                    .with("act", new View().with("blocks", blocks(step.act())))
                    .with("answered", !step.answers().isEmpty())
                    .with(
                            "answers",
                            step.answers().stream()
                                    .map(each -> new View()
                                            .with("look", new View().with("inlines", inlines(each.look())))
                                            .with("then", new View().with("inlines", inlines(each.then())))
                                            .with("placed", !each.where().isEmpty())
                                            .with(
                                                    "where",
                                                    each.where().stream()
                                                            .map(this::where)
                                                            .toList()))
                                    .toList())
                    .with("more", new View().with("blocks", blocks(step.more())))
                    .with("placed", !step.where().isEmpty())
                    .with("told", !step.known().isEmpty() || !step.readOut().isEmpty())
                    .with(
                            "known",
                            Stream.concat(
                                            step.known().stream()
                                                    .map(each -> known(
                                                            Type.word(each.sort()),
                                                            each.sort() == StepLabel.FACT,
                                                            each.label(),
                                                            each.words())),
                                            step.readOut().stream()
                                                    .map(each -> known(
                                                            "read-out",
                                                            false,
                                                            each.label(),
                                                            List.of(new Inline.Text(each.words())))))
                                    .toList())
                    .with("any", step.any() && step.where().size() > 1)
                    .with("where", step.where().stream().map(this::where).toList());
        }

        /** With where one finds what it is done to. */
        private boolean changed(Content.Steps.Step step) {
            return handbook.changed(step.id())
                    || Stream.concat(
                                    step.where().stream(),
                                    step.answers().stream().flatMap(it -> it.where().stream()))
                            .anyMatch(where -> handbook.changed(where.id()));
        }

        /** @param fact whether the label is the writer's own */
        private View known(String sort, boolean fact, String label, List<Inline> words) {
            return new View()
                    .with("sort", sort)
                    .with("fact", fact)
                    .with("label", label)
                    .with("inlines", inlines(words));
        }

        private View where(Content.Steps.Where where) {
            List<View> sketches = page.urgent() ? List.of() : sketches(where);
            return ContentView.this
                    .place(where.thing(), where.place())
                    .with("sketched", !sketches.isEmpty())
                    .with("sketches", sketches)
                    .with("worked", !where.pieces().isEmpty())
                    .with(
                            "pieces",
                            where.pieces().stream().map(ContentView.this::piece).toList());
        }

        /** Where it is, and how it looks when the step is done. */
        private List<View> sketches(Content.Steps.Where where) {
            List<String> states = where.pieces().stream()
                    .filter(piece -> piece.sort() == Block.Sort.LOOK)
                    .map(Block.Piece::state)
                    .toList();
            return handbook.sketches(where.thing().target()).stream()
                    .filter(sketch ->
                            ALWAYS.contains(sketch.state()) || states.stream().anyMatch(sketch::shows))
                    .map(ContentView.this::sketch)
                    .toList();
        }

        private View hazard(Content.Steps.Hazard hazard) {
            return new View()
                    .with("changed", handbook.changed(hazard.id()))
                    .with("signal", screen.say("signal." + Type.word(hazard.signal())))
                    .with("kind", hazard.signal().name().toLowerCase(Locale.ROOT))
                    .with("blocks", blocks(hazard.text()));
        }
    }
}
