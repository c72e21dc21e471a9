package bayfolio.render.web;

import bayfolio.catalog.Catalog;
import bayfolio.catalog.Catalogs;
import bayfolio.document.Audience;
import bayfolio.document.Handbook;
import bayfolio.document.NodeId;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.render.Output;
import bayfolio.render.theme.Theme;
import bayfolio.source.SourceFile;
import bayfolio.template.Names;
import bayfolio.template.Template;
import bayfolio.template.TemplateProblem;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/** Handbooks through a theme into files of a web site: a page of HTML for each page. */
public final class WebSite implements Output {
    /** In the folder of a coach: it keeps that, and no other one. */
    static final String WORKER = "worker.js";

    private final Theme theme;
    private final Catalogs catalogs;
    private final List<TemplateProblem> complaints = new ArrayList<>();
    /** Words by language, the same on every page. */
    private final Map<String, View> words = new ConcurrentHashMap<>();

    private final Map<String, byte[]> assets;
    private final Optional<String> worker;
    private final Map<String, String> symbols;
    private final Template page;
    private final Template fleet;

    public WebSite(Theme theme, Catalogs catalogs) {
        this.theme = theme;
        this.catalogs = catalogs;
        this.assets = theme.assets();
        this.worker = theme.worker();
        this.symbols = theme.symbols();
        this.page = template("page");
        this.fleet = template("fleet");
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
    public Map<String, byte[]> files(Handbook handbook) {
        Map<String, byte[]> files = new TreeMap<>();
        Map<String, byte[]> pages = new TreeMap<>();
        Catalog screen = catalogs.of(handbook.language());
        View words = words(screen);
        for (Page each : handbook.pages()) {
            Names names =
                    new PageView(handbook, each, screen, words, symbols).view().names();
            pages.put(file(each.id()), bytes(page.fill(names, complaints::add).text()));
        }
        if (!handbook.reader().equals(Optional.of(Audience.STAFF))) {
            worker.ifPresent(script ->
                    files.put(handbook.unit() + "/" + WORKER, Offline.worker(script, handbook, pages, assets)));
        }
        pages.forEach((path, bytes) -> files.put(handbook.unit() + "/" + path, bytes));
        return files;
    }

    /** Where a page is in the folder of its coach; browsers ask for `index.html` where none is named. */
    static String file(NodeId page) {
        return (page.equals(PageKind.HOME.node()) ? "index" : page.page()) + ".html";
    }

    @Override
    public Map<String, byte[]> shared(String fleetName, List<String> languages, List<Entry> coaches) {
        Catalog screen = catalogs.of(languages);
        Map<String, byte[]> files = new TreeMap<>();
        assets.forEach((path, bytes) -> files.put("assets/" + path, bytes));
        View view = new View()
                .with("language", screen.language())
                .with("title", fleetName)
                .with("root", "")
                .with("word", words(screen))
                .with(
                        "coaches",
                        coaches.stream()
                                .map(coach -> new View()
                                        .with("href", coach.unit() + "/index.html")
                                        .with("words", coach.name()))
                                .toList());
        files.put("index.html", bytes(fleet.fill(view.names(), complaints::add).text()));
        return files;
    }

    private View words(Catalog screen) {
        return words.computeIfAbsent(screen.language(), it -> branch(screen.plain(), ""));
    }

    /** Words by their keys; dots in a key are steps of the name. */
    private static View branch(Map<String, String> words, String prefix) {
        View view = new View();
        Map<String, Boolean> names = new LinkedHashMap<>();
        for (String key : words.keySet()) {
            if (key.startsWith(prefix)) {
                String rest = key.substring(prefix.length());
                int dot = rest.indexOf('.');
                names.merge(dot < 0 ? rest : rest.substring(0, dot), dot >= 0, (a, b) -> a && b);
            }
        }
        names.forEach((name, inner) -> {
            if (inner) {
                view.with(name, branch(words, prefix + name + "."));
            } else {
                view.with(name, String.valueOf(words.get(prefix + name)));
            }
        });
        return view;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
