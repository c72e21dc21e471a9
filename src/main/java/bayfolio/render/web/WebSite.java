package bayfolio.render.web;

import bayfolio.catalog.Catalog;
import bayfolio.catalog.Catalogs;
import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.Handbook;
import bayfolio.document.Node;
import bayfolio.document.NodeId;
import bayfolio.document.OldAddresses;
import bayfolio.document.Overview;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Revision;
import bayfolio.document.Section;
import bayfolio.document.Sketch;
import bayfolio.document.Today;
import bayfolio.model.Photo;
import bayfolio.render.Means;
import bayfolio.render.Media;
import bayfolio.render.Output;
import bayfolio.render.html.ContentView;
import bayfolio.render.html.DrawingView;
import bayfolio.render.html.FilmTracks;
import bayfolio.render.html.View;
import bayfolio.render.html.Words;
import bayfolio.render.mail.DeskCard;
import bayfolio.render.print.Printed;
import bayfolio.render.theme.Theme;
import bayfolio.source.SourceFile;
import bayfolio.template.Template;
import bayfolio.template.TemplateProblem;
import com.google.gson.JsonObject;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/** Handbooks through a theme into files of a web site: a page of HTML for each page. */
public final class WebSite implements Output {
    /** In the folder of a coach: it keeps that, and no other one. */
    static final String WORKER = "worker.js";

    /** All texts of the coach in one file, for the script that keeps them. */
    static final String BUNDLE = "kept.json";

    private static final String INDEX = "index.html";

    /** Hosts of static sites show it in place of a page that is not there. */
    public static final String NOT_FOUND = "404.html";

    static final String PHOTOS = "photos/";

    static final String DRAWINGS = "drawings/";

    /** No phone keeps them: they are watched where there is signal. */
    static final String FILMS = "films/";

    /** The card for a helper on the phone as text, to be pasted. */
    static final String CARD = "phone-card.txt";

    /** What is looked through on a phone. */
    static final String SEARCH = "search.json";

    /** What a phone keeps of a handbook to show it like a program of its own. */
    static final String MANIFEST = "manifest.json";

    private final Means means;
    private final Theme theme;
    private final Catalogs catalogs;
    private final List<TemplateProblem> complaints = new ArrayList<>();
    private final Words words = new Words();

    private final Assets assets;
    private final Optional<String> worker;
    private final JsonObject manifest;
    private final Map<String, String> symbols;
    private final Template page;
    private final Template fleet;
    private final Template today;
    private final Template drawing;
    private final Template led;
    private final Template overview;
    private final Template notFound;
    private final Template left;

    public WebSite(Means means) {
        this.means = means;
        this.theme = means.theme();
        this.catalogs = means.catalogs();
        Map<String, byte[]> shared = new TreeMap<>(theme.assets());
        shared.putAll(ScriptWords.files(catalogs));
        this.assets = Assets.of(shared);
        this.worker = theme.worker().map(SourceFile::text);
        this.manifest = theme.manifest();
        this.symbols = theme.symbols();
        this.page = template("page");
        this.fleet = template("fleet");
        this.today = template("today");
        this.drawing = template("drawing");
        this.led = template("led");
        this.overview = template("overview");
        this.notFound = template("not-found");
        this.left = template("left");
    }

    private Template template(String name) {
        SourceFile file = theme.template(name)
                .orElseThrow(() -> new IllegalArgumentException("the theme has no template `" + name + ".mustache`"));
        return Template.compile(file, Template.Escape.HTML, theme::template, complaints::add);
    }

    @Override
    public List<TemplateProblem> complaints() {
        return complaints.stream().distinct().toList();
    }

    @Override
    public boolean of(Audience reader) {
        return true;
    }

    @Override
    public Map<String, byte[]> files(Handbook handbook, Media media, Around around) {
        Catalog screen = catalogs.of(handbook.language());
        List<ContentView.Print> prints = Printed.among(around.beside(), handbook, screen).stream()
                .map(print -> new ContentView.Print(
                        print.reader(),
                        print.path(),
                        print.words(),
                        screen.say("printed.size", "size", size(print, screen))))
                .toList();
        Map<String, byte[]> files = new TreeMap<>();
        Map<String, byte[]> kept = new TreeMap<>();
        media.photographs()
                .forEach((id, photograph) -> photograph.sizes().forEach((size, bytes) -> {
                    String path = PHOTOS + photograph.file(id, size);
                    files.put(handbook.unit() + "/" + path, bytes);
                    if (size == photograph.kept()) {
                        kept.put(path, bytes);
                    }
                }));
        films(handbook, media).forEach((path, bytes) -> files.put(handbook.unit() + "/" + path, bytes));
        Map<String, byte[]> pages = new TreeMap<>();
        Map<String, Sketch> sketches = new TreeMap<>();
        for (Page each : handbook.pages()) {
            pages.put(file(each.id()), page(handbook, media, each, prints, around.old(), sketches));
        }
        around.old()
                .pages()
                .forEach((old, home) -> pages.put(file(NodeId.of(old)), ledOn(handbook, old, home, screen)));
        sketches.forEach((name, sketch) -> pages.put(DRAWINGS + name + ".svg", drawn(sketch)));
        handbook.find(PageKind.PHONE_CARD.node())
                .ifPresent(card -> files.put(handbook.unit() + "/" + CARD, bytes(PageText.of((Page) card))));
        pages.put(SEARCH, SearchIndex.of(handbook));
        pages.putAll(FormFigures.of(handbook));
        kept.putAll(pages);
        if (handbook.reader().equals(Optional.of(Audience.STAFF))) {
            files.put(handbook.unit() + "/" + LinkTable.CSV, LinkTable.csv(handbook, screen));
            files.put(handbook.unit() + "/" + LinkTable.JSON, LinkTable.json(handbook, screen));
        } else {
            files.putAll(shortAddresses(handbook, screen));
            around.old()
                    .labels()
                    .forEach((code, home) -> files.put(
                            shortAddresses(handbook.unit()) + code + "/index.html",
                            labeled(handbook, home, title(handbook, home), screen)));
            Offline offline = new Offline(kept, assets.placed());
            worker.ifPresent(script -> {
                files.put(handbook.unit() + "/" + WORKER, offline.worker(script));
                files.put(handbook.unit() + "/" + BUNDLE, offline.bundle());
            });
        }
        files.put(handbook.unit() + "/" + MANIFEST, Manifest.of(manifest, handbook, assets));
        pages.forEach((path, bytes) -> files.put(handbook.unit() + "/" + path, bytes));
        return files;
    }

    /** Rounded up, since it is paid for: {@code 3.2 MB}. */
    private static String size(Printed.File print, Catalog screen) {
        int tenths = (print.bytes() + 99_999) / 100_000;
        return tenths < 10
                ? screen.say("size.kilobytes", "count", (print.bytes() + 999) / 1000)
                : screen.say("size.megabytes", "figure", screen.digits(tenths / 10 + "." + tenths % 10));
    }

    /** The folder of the short addresses of a coach, below the public root. */
    public static String shortAddresses(String unit) {
        return Content.Label.SHORT + "/" + unit.toUpperCase(Locale.ROOT) + "/";
    }

    /** What a label on a door leads to, by an address that is short enough for its code; and what staff tell over the phone. */
    private Map<String, byte[]> shortAddresses(Handbook handbook, Catalog screen) {
        Map<String, byte[]> files = new TreeMap<>();
        handbook.walk()
                .filter(Content.Label.class::isInstance)
                .map(Content.Label.class::cast)
                .forEach(label -> {
                    String path =
                            label.address().substring(label.address().indexOf("/" + Content.Label.SHORT + "/") + 1);
                    NodeId home =
                            handbook.addresses().of(label.thing().target()).orElseThrow();
                    files.put(
                            path + "/index.html",
                            labeled(handbook, home, label.thing().plain(), screen));
                });
        handbook.sendable()
                .forEach(it -> handbook.addresses()
                        .of(it.link().target())
                        .ifPresent(home -> files.put(
                                shortAddresses(handbook.unit()) + it.code() + "/index.html",
                                labeled(handbook, home, it.link().plain(), screen))));
        return files;
    }

    private byte[] labeled(Handbook handbook, NodeId home, String title, Catalog screen) {
        return led(
                screen,
                false,
                "../../../",
                title,
                Optional.of("../../../" + handbook.unit() + "/" + MANIFEST),
                "../../../" + handbook.unit() + "/" + href(home));
    }

    /** At an address of the coach that it had before. */
    private byte[] ledOn(Handbook handbook, String old, NodeId home, Catalog screen) {
        String up = "../".repeat((int) old.chars().filter(c -> c == '/').count());
        return led(
                screen,
                handbook.reader().equals(Optional.of(Audience.STAFF)),
                up + "../",
                title(handbook, home),
                Optional.of(up + MANIFEST),
                up + href(home));
    }

    private byte[] led(
            Catalog screen, boolean staff, String root, String title, Optional<String> installed, String href) {
        View view = looks(words.of(screen))
                .on(root)
                .with("language", screen.language())
                .with("title", title)
                .with("installed", installed.isPresent())
                .with("manifest", installed.orElse(""))
                .with("staff-copy", staff)
                .with("href", href);
        return bytes(led.fill(view.names(), complaints::add).text());
    }

    /** From the folder of the coach. */
    private static String href(NodeId home) {
        return file(NodeId.of(home.page())) + (home.within().isEmpty() ? "" : "#" + home.within());
    }

    private static String title(Handbook handbook, NodeId home) {
        Node node = handbook.find(home).orElseThrow();
        return node instanceof Section section
                ? section.title()
                : ((Page) handbook.find(NodeId.of(home.page())).orElseThrow()).title();
    }

    /** @param shown gets the small drawings that are on it, by their names */
    private byte[] page(
            Handbook handbook,
            Media media,
            Page each,
            List<ContentView.Print> prints,
            OldAddresses old,
            Map<String, Sketch> shown) {
        Catalog screen = catalogs.of(handbook.language());
        PageView view = new PageView(handbook, each, screen, looks(words.of(screen)), media, prints, old);
        View names = view.view().with("spoken", ScriptWords.file(catalogs, handbook.language()));
        byte[] bytes = markup(page.fill(names.names(), complaints::add).text());
        shown.putAll(view.shown());
        return bytes;
    }

    private byte[] drawn(Sketch sketch) {
        return markup(drawing.fill(
                        DrawingView.of(sketch.drawing(), sketch.title(), "d", symbols, of -> Optional.empty())
                                .names(),
                        complaints::add)
                .text());
    }

    /** Films with what is said and seen in them when, by their paths in the folder of their coach. */
    private static Map<String, byte[]> films(Handbook handbook, Media media) {
        Map<String, byte[]> files = new TreeMap<>();
        handbook.pages().stream()
                .flatMap(Page::walk)
                .filter(Content.Film.class::isInstance)
                .map(Content.Film.class::cast)
                .forEach(film -> {
                    Media.Footage footage = Objects.requireNonNull(media.films().get(film.film()), film.film());
                    files.put(FILMS + film.file(), footage.film());
                    footage.captions()
                            .map(said -> FilmTracks.withoutNotes(new String(said, StandardCharsets.UTF_8)))
                            .ifPresent(said -> files.put(FILMS + FilmTracks.captions(film), bytes(said)));
                    files.put(FILMS + FilmTracks.chapters(film), bytes(FilmTracks.of(film)));
                });
        return files;
    }

    /** The page of a path in the folder of its coach. */
    public static Optional<Page> page(Handbook handbook, String path) {
        return handbook.pages().stream()
                .filter(page -> file(page.id()).equals(path))
                .findFirst();
    }

    /**
     * One file alone, made when somebody asks for it; none that keeps the handbook on a phone.
     *
     * @param path in the folder of the coach
     */
    public Optional<byte[]> file(Handbook handbook, Media media, String path) {
        if (path.equals(SEARCH)) {
            return Optional.of(SearchIndex.of(handbook));
        }
        if (path.equals(MANIFEST)) {
            return Optional.of(Manifest.of(manifest, handbook, assets));
        }
        if (path.startsWith(PHOTOS)) {
            return media.photographs().entrySet().stream()
                    .flatMap(each -> each.getValue().sizes().entrySet().stream()
                            .filter(size -> path.equals(PHOTOS + each.getValue().file(each.getKey(), size.getKey())))
                            .map(Map.Entry::getValue))
                    .findFirst();
        }
        if (path.startsWith(FILMS)) {
            return Optional.ofNullable(films(handbook, media).get(path));
        }
        if (path.endsWith(".js")) {
            return Optional.ofNullable(FormFigures.of(handbook).get(path));
        }
        if (path.startsWith(DRAWINGS)) {
            return handbook.sketches()
                    .filter(sketch -> path.equals(DRAWINGS + sketch.name() + ".svg"))
                    .findFirst()
                    .map(this::drawn);
        }
        return page(handbook, path)
                .map(page -> page(handbook, media, page, List.of(), OldAddresses.NONE, new TreeMap<>()));
    }

    /** At the foot of each page. */
    public static String edition(Revision revision, Catalog screen) {
        return screen.say(
                revision.asIssued() ? "edition" : "edition.after",
                "edition",
                revision.edition(),
                "day",
                screen.day(revision.day()));
    }

    /** A coach in the list of the fleet, as its handbook has it. */
    public static Entry entry(Handbook handbook) {
        return entry(handbook.unit(), handbook.cover());
    }

    public static Entry entry(String unit, Handbook.Cover cover) {
        return new Entry(
                unit,
                cover.name(),
                cover.number(),
                cover.kind(),
                cover.photo().map(photo -> unit + "/" + photo(photo.id())).orElse(""),
                cover.photo().map(Photo::alt).orElse(""));
    }

    /** Where the largest size of a photo is, in the folder of its coach. */
    public static String photo(String id) {
        return PHOTOS + id + ".jpg";
    }

    /** Where a page is in the folder of its coach; browsers ask for `index.html` where none is named. */
    public static String file(NodeId page) {
        return (page.equals(PageKind.HOME.node()) ? "index" : page.page()) + ".html";
    }

    @Override
    public Optional<Kept> kept(String unit, Function<String, Optional<byte[]>> own) {
        return own.apply(unit + "/index.html")
                .flatMap(home -> own.apply(unit + "/" + MANIFEST)
                        .map(written -> new Kept(Manifest.read(unit, written), Assets.folder(home))));
    }

    private PageView.Looks looks(View words) {
        return new PageView.Looks(words, symbols, assets, means.fleet().findable());
    }

    @Override
    public Map<String, byte[]> shared(Whole all) {
        Catalog screen = catalogs.of(means.fleet().languages());
        Map<String, byte[]> files = new TreeMap<>(assets.placed());
        View view = looks(words.of(screen))
                .on("")
                .with("language", screen.language())
                .with("title", means.fleet().name())
                .with(
                        "coaches",
                        all.coaches().stream()
                                .map(coach -> new View()
                                        .with("href", coach.unit() + "/index.html")
                                        .with("words", coach.name())
                                        .with("numbered", !coach.number().isEmpty())
                                        .with("number", coach.number())
                                        .with("kind", coach.kind())
                                        .with("pictured", !coach.picture().isEmpty())
                                        .with("picture", coach.picture())
                                        .with("shows", coach.shows()))
                                .toList());
        files.put(
                INDEX,
                bytes(all.today()
                        .map(day -> today.fill(
                                forStaff(view, day, all.overviews(), screen).names(), complaints::add))
                        .orElseGet(() -> fleet.fill(view.names(), complaints::add))
                        .text()));
        all.overviews().forEach(it -> files.putAll(overview(it, all.coaches())));
        files.put(DeskCard.FILE, bytes(DeskCard.of(means.fleet())));
        if (all.isForStaff()) {
            files.put(LinkTable.SCHEMA, LinkTable.schema());
        } else {
            files.put(NOT_FOUND, notFound(screen));
        }
        Map<String, byte[]> old = old(all, screen);
        files.put(
                Headers.FILE,
                Headers.of(
                        means.fleet().basePath(),
                        files.keySet().stream()
                                .filter(path -> path.endsWith(".html"))
                                .toList(),
                        all.coaches().stream().map(Entry::unit).toList()));
        files.putAll(old);
        return files;
    }

    /** What staff see on the first page besides the coaches. */
    private View forStaff(View view, Today day, List<Overview> overviews, Catalog screen) {
        return view.with("own", Assets.of(theme.staffAssets()).folder())
                .with("spoken", ScriptWords.file(catalogs, screen.language()))
                .with("today", TodayView.of(day))
                .with(
                        "overviews",
                        overviews.stream()
                                .map(it -> new View().with("href", file(it)).with("words", it.title()))
                                .toList());
    }

    /** At addresses of coaches that have another id by now, or have left. */
    private Map<String, byte[]> old(Whole all, Catalog screen) {
        Map<String, byte[]> files = new TreeMap<>();
        Map<String, String> names = new HashMap<>();
        all.coaches().forEach(coach -> names.put(coach.unit(), coach.name()));
        all.led().forEach((old, now) -> {
            String unit = now.startsWith(Content.Label.SHORT + "/")
                    ? now.split("/")[1].toLowerCase(Locale.ROOT)
                    : now.substring(0, now.indexOf('/'));
            files.put(
                    place(old),
                    ledFrom(
                            all.isForStaff(),
                            old,
                            screen,
                            names.getOrDefault(unit, unit),
                            Optional.of(unit),
                            place(now)));
        });
        for (Gone gone : all.left()) {
            boolean said = !gone.text().isEmpty();
            String here = gone.unit() + "/" + INDEX;
            if (said) {
                files.put(here, gone(gone, screen, names));
            }
            Optional<String> instead = Optional.of(gone.instead()).filter(it -> !it.isEmpty());
            for (String old : gone.addresses()) {
                if (!said || !place(old).equals(here)) {
                    files.put(
                            place(old),
                            ledFrom(
                                    all.isForStaff(),
                                    old,
                                    screen,
                                    gone.name(),
                                    said ? Optional.empty() : instead,
                                    said
                                            ? here
                                            : instead.map(it -> it + "/" + INDEX)
                                                    .orElse(INDEX)));
                }
            }
        }
        return files;
    }

    /** The file of an address below the root: {@code knot/do/level}, {@code L/KNOT/L4}. */
    private static String place(String address) {
        if (address.startsWith(Content.Label.SHORT + "/")) {
            return address + "/" + INDEX;
        }
        int slash = address.indexOf('/');
        return address.substring(0, slash + 1) + file(NodeId.of(address.substring(slash + 1)));
    }

    /** From an address below the root to a file there. */
    private byte[] ledFrom(
            boolean staff, String old, Catalog screen, String title, Optional<String> unit, String file) {
        String up = "../".repeat((int) place(old).chars().filter(c -> c == '/').count());
        return led(screen, staff, up, title, unit.map(it -> up + it + "/" + MANIFEST), up + file);
    }

    /** What became of a coach. */
    private byte[] gone(Gone gone, Catalog screen, Map<String, String> names) {
        View view = looks(words.of(screen))
                .on("../")
                .with("language", screen.language())
                .with("name", gone.name())
                .with("text", gone.text())
                .with("instead", !gone.instead().isEmpty())
                .with("href", "../" + gone.instead() + "/" + INDEX)
                .with("other", names.getOrDefault(gone.instead(), gone.instead()))
                .with("title", means.fleet().name())
                .with("home", "../" + INDEX);
        return bytes(left.fill(view.names(), complaints::add).text());
    }

    /** It stands at any address, so that its links begin at that of the host. */
    private byte[] notFound(Catalog screen) {
        String base = means.fleet().basePath();
        View view = looks(words.of(screen))
                .on(base)
                .with("language", screen.language())
                .with("title", means.fleet().name())
                .with("root", base)
                .with("home", base + INDEX);
        return bytes(notFound.fill(view.names(), complaints::add).text());
    }

    /** Of the staff's copy, beside the list of coaches. */
    private static String file(Overview all) {
        return all.id() + ".html";
    }

    /** A page on which staff see all coaches, and what only such pages need. */
    private Map<String, byte[]> overview(Overview all, List<Entry> coaches) {
        Assets own = Assets.of(theme.staffAssets());
        Map<String, byte[]> files = new TreeMap<>(own.placed());
        Catalog screen = catalogs.of(List.of(all.language()));
        View view = OverviewView.of(
                looks(words.of(screen)).on("").with("own", own.folder()),
                all,
                screen,
                coaches.stream().map(Entry::unit).toList());
        files.put(file(all), bytes(overview.fill(view.names(), complaints::add).text()));
        return files;
    }

    /** Without the lines that parts of a template left empty: a twentieth of what a phone loads. */
    private static byte[] markup(String text) {
        StringBuilder full = new StringBuilder(text.length());
        int from = 0;
        for (int end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', from)) {
            if (from == 0 || !text.substring(from, end).isBlank()) {
                full.append(text, from, end + 1);
            }
            from = end + 1;
        }
        return bytes(full.append(text, from, text.length()).toString());
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
