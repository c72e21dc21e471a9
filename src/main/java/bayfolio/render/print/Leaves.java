package bayfolio.render.print;

import bayfolio.document.AddressBook;
import bayfolio.document.Content;
import bayfolio.document.Handbook;
import bayfolio.document.NodeId;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What of a handbook stands in its book, chapter by chapter. A phone leads on by lists of links; on paper the contents and
 * the index do. What a phone alone can do stays there: films, forms that reckon, small drawings of each state. What is worked
 * out is printed with what it takes for granted; its working is folded up on the phone, and stays there.
 */
final class Leaves {

    private final Handbook handbook;
    private final List<Chapter> chapters = new ArrayList<>();
    private final Set<NodeId> printed = new HashSet<>();

    /**
     * @param page that opens it
     * @param pages that follow, each under a heading of its own
     * @param listed whether the contents name them
     */
    record Chapter(Page page, List<Page> pages, boolean listed) {}

    private Leaves(Handbook handbook) {
        this.handbook = handbook;
    }

    static Leaves of(Handbook handbook) {
        Leaves leaves = new Leaves(handbook);
        leaves.trip();
        leaves.chapter(PageKind.TROUBLE_LIST, List.of(), true, PageKind.GUIDE);
        leaves.chapter(PageKind.WALK_ROUND, leaves.sides(), true, PageKind.COMPARTMENT, PageKind.TRAY);
        leaves.chapter(PageKind.SWITCHES, List.of(), false, PageKind.SWITCH, PageKind.GAUGE);
        leaves.chapter(PageKind.CONNECTIONS, List.of(), false, PageKind.CONNECTION);
        leaves.chapter(PageKind.DOORS_AND_SLIDES, List.of(), true);
        leaves.chapter(PageKind.NUMBERS, List.of(), true, PageKind.COUNTRY);
        leaves.chapter(PageKind.WORKED_OUT, List.of(), true, PageKind.QUESTION);
        leaves.chapter(PageKind.ON_BOARD, List.of(), true);
        leaves.chapter(PageKind.WORDS, List.of(), false);
        leaves.chapters.forEach(leaves::note);
        return leaves;
    }

    List<Chapter> chapters() {
        return chapters;
    }

    /** Names with the pages of this book, from A to Z. */
    List<Content.LinkList.Entry> index() {
        return handbook.pages().stream()
                .filter(page -> page.kind() == PageKind.LETTER)
                .flatMap(page -> page.opening().stream())
                .filter(Content.LinkList.class::isInstance)
                .flatMap(list -> ((Content.LinkList) list).entries().stream())
                .filter(entry -> place(entry.link().target()).isPresent())
                .toList();
    }

    /** Where in this book is what a link leads to: there, or on the page or the chapter that it belongs to. */
    Optional<NodeId> place(Target target) {
        AddressBook addresses = handbook.addresses();
        return addresses.of(target).flatMap(home -> {
            NodeId page = NodeId.of(home.page());
            return Stream.of(home, page)
                    .filter(printed::contains)
                    .findFirst()
                    .or(() -> handbook.find(page).flatMap(it -> instead(((Page) it).kind())));
        });
    }

    /** A page that leads on, by what it leads to. */
    private Optional<NodeId> instead(PageKind kind) {
        return switch (kind) {
            case HOME -> Optional.of(PageKind.NIGHT_CARD.node());
            case PROCEDURES -> Optional.of(chapters.get(0).page().id());
            case SYMPTOM -> Optional.of(PageKind.TROUBLE_LIST.node());
            case INDEX, LETTER -> Optional.of(PageKind.INDEX.node());
            default -> Optional.empty();
        };
    }

    /** The trip, stage by stage, each with what there is to do in it; in danger first. */
    private void trip() {
        Set<Page> done = new HashSet<>();
        only(PageKind.PROCEDURES).ifPresent(all -> {
            List<Section> stages = new ArrayList<>(all.sections());
            stages.sort((one, other) -> Boolean.compare(urgent(other), urgent(one)));
            for (Section stage : stages) {
                List<Page> pages = listed(stage).filter(done::add).toList();
                // Its name is that of the stage, after the word for what it is.
                Target home = new Target.OfStage(stage.anchor().substring("stage-".length()));
                Page about = (Page) handbook.find(handbook.addresses().of(home).orElseThrow())
                        .orElseThrow();
                chapters.add(new Chapter(with(about, kept(about.opening()), List.of()), printed(pages), true));
            }
        });
    }

    private boolean urgent(Section stage) {
        return listed(stage).anyMatch(Page::urgent);
    }

    /** The pages that a section lists, each with those that go on with it. */
    private Stream<Page> listed(Section section) {
        return section.contents().stream()
                .filter(Content.LinkList.class::isInstance)
                .flatMap(list -> ((Content.LinkList) list).entries().stream())
                .map(entry -> Objects.requireNonNull(handbook.addresses()
                        .of(entry.link().target())
                        .orElseThrow()
                        .page()))
                .flatMap(address -> handbook.pages().stream()
                        .filter(page -> page.address().equals(address)
                                || page.address().startsWith(address + PageKind.GOES_ON)));
    }

    private void chapter(PageKind kind, List<Section> more, boolean listed, PageKind... pages) {
        only(kind).ifPresent(page -> {
            List<Page> inside = Stream.of(pages)
                    .flatMap(each -> handbook.pages().stream().filter(it -> it.kind() == each))
                    .toList();
            Page shown = printed(page);
            chapters.add(new Chapter(
                    with(
                            shown,
                            shown.opening(),
                            Stream.concat(shown.sections().stream(), more.stream())
                                    .toList()),
                    printed(inside),
                    listed));
        });
    }

    private Optional<Page> only(PageKind kind) {
        return handbook.pages().stream().filter(page -> page.kind() == kind).findFirst();
    }

    /** The sides of the coach, as the first page has them. */
    private List<Section> sides() {
        return only(PageKind.HOME).stream()
                .flatMap(page -> page.sections().stream())
                .filter(section -> section.contents().stream().anyMatch(Content.Drawn.class::isInstance))
                .map(section -> new Section(
                        section.stamp(),
                        section.home(),
                        section.title(),
                        section.level(),
                        section.contents().stream()
                                // Nothing is tapped on paper.
                                .filter(content -> !content.id().within().endsWith(".tap"))
                                .toList()))
                .toList();
    }

    private void note(Chapter chapter) {
        Stream.concat(Stream.of(chapter.page()), chapter.pages().stream()).forEach(page -> {
            printed.add(page.id());
            page.sections().forEach(section -> printed.add(section.id()));
        });
    }

    static Page with(Page page, List<Content> opening, List<Section> sections) {
        return new Page(page.stamp(), page.kind(), page.home(), page.title(), opening, sections, page.urgent());
    }

    /** Whether it goes on with the page before it: nobody leafs back to see that. */
    static boolean goesOn(Page page) {
        return page.address().contains(PageKind.GOES_ON);
    }

    private static List<Page> printed(List<Page> pages) {
        return pages.stream().map(Leaves::printed).toList();
    }

    private static Page printed(Page page) {
        List<Section> sections = new ArrayList<>();
        for (Section section : page.sections()) {
            List<Content> contents = kept(section.contents());
            if (!contents.isEmpty() || section.contents().isEmpty()) {
                sections.add(new Section(section.stamp(), section.home(), section.title(), section.level(), contents));
            }
        }
        return with(page, goesOn(page) ? notices(page) : kept(page.opening()), sections);
    }

    /** What is to be known first, which stands on the page that opens no book. */
    static List<Content> notices(Page page) {
        return page.opening().stream().filter(Content.Notice.class::isInstance).toList();
    }

    private static List<Content> kept(List<Content> contents) {
        return contents.stream()
                .filter(content -> !(content instanceof Content.Fold
                        || content instanceof Content.Form
                        || content instanceof Content.Film
                        || content instanceof Content.Sketched
                        || content instanceof Content.Tiles
                        || content instanceof Content.LinkList))
                .toList();
    }
}
