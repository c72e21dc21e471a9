package bayfolio.render.web;

import bayfolio.catalog.Catalog;
import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.Handbook;
import bayfolio.document.NodeId;
import bayfolio.document.OldAddresses;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Sketch;
import bayfolio.procedure.Stage;
import bayfolio.prose.Target;
import bayfolio.reckon.Question;
import bayfolio.render.Media;
import bayfolio.render.html.ContentView;
import bayfolio.render.html.View;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** One page of a handbook as names for its template. Every address comes from the address book. */
final class PageView {
    private final Handbook handbook;
    private final Page page;
    private final Catalog screen;
    private final Looks looks;
    private final ContentView contents;
    private final List<ContentView.Print> prints;
    private final OldAddresses old;

    /** All contents, those of quoted pages too. */
    private final List<Content> all;

    /** Those that a reader may vary on it. */
    private final List<Question> questions;

    private final List<Content.Steps> steps;

    /**
     * What is the same on every page.
     *
     * @param symbols the path of each, by name
     * @param findable whether search engines may list the pages
     */
    record Looks(View words, Map<String, String> symbols, Assets assets, boolean findable) {
        /** @param root the way there from the page */
        View on(String root) {
            return new View()
                    .with("word", words)
                    .with("assets", root + assets.folder())
                    .with("findable", findable);
        }
    }

    PageView(
            Handbook handbook,
            Page page,
            Catalog screen,
            Looks looks,
            Media media,
            List<ContentView.Print> prints,
            OldAddresses old) {
        this.old = old;
        this.prints = prints;
        this.looks = looks;
        this.handbook = handbook;
        this.page = page;
        this.screen = screen;
        this.contents = new ContentView(handbook, page, screen, looks.symbols(), media, new OnThisSite());
        this.all = page.walk()
                .flatMap(node -> node instanceof Content.Quote quote
                        ? ContentView.quoted(handbook, quote).walk()
                        : Stream.of(node))
                .filter(Content.class::isInstance)
                .map(Content.class::cast)
                .toList();
        this.questions = of(Content.Form.class)
                .map(form -> form.calculator().question())
                .distinct()
                .toList();
        this.steps = of(Content.Steps.class).toList();
    }

    View view() {
        String file = WebSite.file(page.id());
        List<String> extras = extras();
        return contents.inLanguage(looks.on(up(file) + "../"), page.stamp())
                .with("language", handbook.language())
                .with("title", page.title())
                .with("coach", handbook.name())
                .with("is-home", page.kind() == PageKind.HOME)
                .with("urgent", page.urgent())
                .with("paced", extras.contains("steps"))
                .with(
                        "stepped",
                        steps.stream()
                                        .flatMap(it -> it.parts().stream())
                                        .mapToInt(part -> part.steps().size())
                                        .sum()
                                > 1)
                .with(
                        "counted",
                        page.kind() == PageKind.SITUATION || steps.stream().anyMatch(Content.Steps::ticked))
                .with("searched", page.kind() == PageKind.INDEX)
                .with(
                        "figures",
                        questions.stream()
                                .map(question -> new View().with("src", up(file) + FormFigures.file(question)))
                                .toList())
                .with("scripts", files(extras, ".js"))
                .with("styles", files(extras, ".css"))
                .with("staff-copy", handbook.reader().equals(Optional.of(Audience.STAFF)))
                .with("kind", page.kind().id())
                .with("home", href(PageKind.HOME.target()))
                .with("navigation", navigation())
                .with("bar", bar())
                .with("worker", up(file) + WebSite.WORKER)
                .with("manifest", up(file) + WebSite.MANIFEST)
                .with("issued", handbook.revision().isPresent())
                .with("edition", edition())
                .with("since", since())
                .with("first", contents.first())
                .with("opening", contents.opening())
                .with("old", old(page.id()))
                .with("sections", contents.sections(this::old));
    }

    private String edition() {
        return handbook.revision().map(it -> WebSite.edition(it, screen)).orElse("");
    }

    /** Where one reads what has changed. */
    private String since() {
        return handbook.revision().isPresent() ? href(PageKind.WHAT_CHANGED.target()) : "";
    }

    /** Places that are gone, which still lead here. */
    private List<View> old(NodeId head) {
        return old.at(head).stream()
                .map(anchor -> new View().with("anchor", anchor))
                .toList();
    }

    private <C extends Content> Stream<C> of(Class<C> kind) {
        return all.stream().filter(kind::isInstance).map(kind::cast);
    }

    private boolean has(Class<? extends Content> kind) {
        return of(kind).findAny().isPresent();
    }

    /** Whether one goes through it: in danger, and on a card, everything is seen at once. */
    private boolean paced() {
        return !page.urgent()
                && !page.kind().part().equals(PageKind.NIGHT_CARD.part())
                && (page.kind() == PageKind.SITUATION || !steps.isEmpty());
    }

    /** What only some pages need, each after what it needs itself: names of scripts and styles. */
    private List<String> extras() {
        List<String> extras = new ArrayList<>();
        if (!steps.isEmpty()) {
            extras.add("acts");
        }
        if (has(Content.Notice.class)) {
            extras.add("meanwhile");
        }
        if (page.urgent()) {
            extras.add("urgent");
        }
        if (has(Content.Tiles.class)) {
            extras.add("tiles");
        }
        if (has(Content.Picture.class)) {
            extras.add("pictures");
        }
        if (has(Content.Film.class)) {
            extras.add("film");
        }
        if (has(Content.Drawn.class)) {
            extras.add("drawn");
        }
        if (has(Content.Sketched.class) || paced()) {
            extras.add("sketches");
        }
        if (!questions.isEmpty()) {
            extras.addAll(List.of("shown", "said"));
            questions.forEach(question -> extras.add(question.id()));
            extras.add("forms");
        }
        if (paced()) {
            extras.add("steps");
        }
        if (has(Content.Sendable.class)) {
            extras.add("links");
        }
        if (page.kind() == PageKind.INDEX) {
            extras.addAll(List.of("minisearch", "search"));
        }
        return extras;
    }

    /** Those of the extras that there is a file for. */
    private List<View> files(List<String> extras, String ending) {
        return extras.stream()
                .filter(name -> looks.assets().has(name + ending))
                .map(name -> new View().with("file", name + ending))
                .toList();
    }

    /** What must be at the thumb on every page: help in danger, our phones, and where something is. */
    private List<View> bar() {
        Target emergency = new Target.OfStage(Stage.EMERGENCY.word());
        List<View> bar = new ArrayList<>();
        if (handbook.addresses().of(emergency).isPresent()) {
            bar.add(button("help", href(emergency)));
        }
        bar.add(button("call", href(PageKind.HOME.target()) + "#call"));
        bar.add(button("search", href(PageKind.INDEX.target())));
        return bar;
    }

    private View button(String name, String href) {
        return new View()
                .with("name", name)
                .with("href", href)
                .with("words", screen.say("bar." + name))
                .with("path", looks.symbols().getOrDefault(name, ""));
    }

    private List<View> navigation() {
        return PageKind.IN_MENUS.stream()
                .map(id -> {
                    Target target = new Target.OfPage(id);
                    return new View()
                            .with("words", screen.say("page." + id))
                            .with("href", href(target))
                            .with("here", target.equals(page.home()));
                })
                .toList();
    }

    private String href(Target target) {
        if (target instanceof Target.OfPhone phone) {
            return phone.dialed();
        }
        NodeId home = handbook.addresses()
                .of(target)
                .orElseThrow(() -> new IllegalStateException("a handbook was composed with a link to " + target));
        String anchor = home.within().isEmpty() ? "" : "#" + home.within();
        return home.page().equals(page.address()) && !anchor.isEmpty()
                ? anchor
                : up(WebSite.file(page.id())) + WebSite.file(NodeId.of(home.page())) + anchor;
    }

    /** From a file up to the folder of its coach. */
    private static String up(String file) {
        return "../".repeat((int) file.chars().filter(c -> c == '/').count());
    }

    /** The small drawings that it shows, by their names. */
    Map<String, Sketch> shown() {
        return contents.shown();
    }

    private final class OnThisSite implements ContentView.Ways {
        private final String folder = up(WebSite.file(page.id()));

        @Override
        public String to(Target target) {
            return href(target);
        }

        @Override
        public String drawing(Sketch sketch) {
            return folder + WebSite.DRAWINGS + sketch.name() + ".svg";
        }

        @Override
        public String photo(String file) {
            return folder + WebSite.PHOTOS + file;
        }

        @Override
        public String film(String file) {
            return folder + WebSite.FILMS + file;
        }

        @Override
        public List<ContentView.Print> prints() {
            return prints;
        }
    }
}
