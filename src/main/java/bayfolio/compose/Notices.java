package bayfolio.compose;

import bayfolio.catalog.Catalog;
import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.From;
import bayfolio.document.Node;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.model.Notice;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Puts notices where they count: first on the page of what they are about, on each page that has to do with it, and in each
 * step that it is used in. All of them stand where a trip and a hire begin: on the first page, on the cards, on the sheets.
 * Pages are composed before, so that whatever names the thing is found, whoever made it.
 */
final class Notices {
    /** What is done or worked out there; others only list what there is. */
    private static final Set<PageKind> USING =
            EnumSet.of(PageKind.PROCEDURE, PageKind.GUIDE, PageKind.STAGE, PageKind.QUESTION);

    /** Where one begins, and reads what is about the coach as a whole. */
    private static final Set<PageKind> BEGINNINGS = EnumSet.of(PageKind.HOME, PageKind.SITUATION, PageKind.STAGE);

    private static final Set<PageKind> CARDS =
            EnumSet.of(PageKind.NIGHT_CARD, PageKind.PHONE_CARD, PageKind.QUICK_CARD);

    /** It is full of what counts in danger: on it stands what is so of what it names, and nothing else. */
    private static final PageKind FULL = PageKind.NIGHT_CARD;

    /** By which staff hand a coach over; on the others only looks are drawn and photographed. */
    private static final Set<PageKind> SHEETS =
            EnumSet.of(PageKind.CONDITION, PageKind.INVENTORY, PageKind.READY, PageKind.SERVICE);

    /** So many letters of all notices leave a card its one side; where there are more, it tells how many there are. */
    private static final int ROOM_ON_CARD = 240;

    private static final String NAME = "meanwhile";

    private final CoachView view;
    private final List<Meant> all;

    /**
     * A notice and what it is about.
     *
     * @param used what has to do with it has, too: things and procedures
     * @param whole parts of the trip, and all that is done in them
     */
    private record Meant(Notice notice, Set<Target> used, Set<Target> whole) {}

    Notices(CoachView view) {
        this.view = view;
        this.all = view.coach().fleet().notices(view.unit()).stream()
                .map(notice -> new Meant(notice, used(notice).collect(Collectors.toSet()), whole(notice)))
                .toList();
    }

    private Stream<Target> used(Notice notice) {
        return Stream.concat(
                notice.things(view.coach()).stream().map(CoachView::target),
                notice.facts().all(Notice.PROCEDURES).stream().map(Target.OfProcedure::new));
    }

    private Set<Target> whole(Notice notice) {
        List<String> stages = notice.facts().all(Notice.STAGES);
        Set<Target> whole = new HashSet<>();
        stages.forEach(stage -> whole.add(new Target.OfStage(stage)));
        view.procedures().stream()
                .filter(procedure -> stages.contains(procedure.head().stage().word()))
                .forEach(procedure -> whole.add(new Target.OfProcedure(procedure.id())));
        return whole;
    }

    /** The pages with the notices on them; the same pages where there are none. */
    List<Page> on(List<Page> pages) {
        if (all.isEmpty()) {
            return pages;
        }
        Map<Target, Inline.Link> homes = new HashMap<>();
        Map<Target, Audience> readers = new HashMap<>();
        for (Page page : pages) {
            homes.put(page.home(), view.link(page.home(), page.title()));
            readers.put(page.home(), page.stamp().audience());
            page.sections()
                    .forEach(section -> section.home().ifPresent(home -> {
                        homes.put(home, view.link(home, section.title()));
                        readers.put(home, section.stamp().audience());
                    }));
        }
        return pages.stream()
                .map(page -> new OnePage(page, homes, readers).noticed())
                .toList();
    }

    /**
     * A page that gets its notices.
     *
     * @param homes links to all that has a home
     * @param readers who reads of it
     */
    private final class OnePage {
        private final Page page;
        private final Map<Target, Inline.Link> homes;
        private final Map<Target, Audience> readers;

        OnePage(Page page, Map<Target, Inline.Link> homes, Map<Target, Audience> readers) {
            this.page = page;
            this.homes = homes;
            this.readers = readers;
        }

        Page noticed() {
            List<Content> first = CARDS.contains(page.kind()) ? onCard() : List.copyOf(onPage());
            return new Page(
                    page.stamp(),
                    page.kind(),
                    page.home(),
                    page.title(),
                    Stream.concat(first.stream(), page.opening().stream()).toList(),
                    page.sections().stream().map(this::noticed).toList(),
                    page.urgent());
        }

        private List<Content.Notice> onPage() {
            return all.stream()
                    .flatMap(meant -> reader(meant).stream()
                            .map(reader -> content(page.stamp().seenBy(reader), meant, listsAll())))
                    .toList();
        }

        /** Whether all notices stand on it, and each says what it is about. */
        private boolean listsAll() {
            return page.kind() == PageKind.HOME || SHEETS.contains(page.kind());
        }

        /** Who reads a notice on this page; empty where it is not on it. */
        private Optional<Audience> reader(Meant meant) {
            boolean here = listsAll()
                    || meant.notice().general() && BEGINNINGS.contains(page.kind())
                    || isAbout(meant, page.home());
            return here
                    ? Optional.of(Audience.EVERYBODY)
                    : USING.contains(page.kind()) ? readerOf(meant, page) : Optional.empty();
        }

        private Section noticed(Section section) {
            List<Content> contents = section.contents().stream()
                    .map(content ->
                            content instanceof Content.Steps steps && page.kind() != FULL ? noticed(steps) : content)
                    .toList();
            Stream<Content> first = all.stream()
                    .filter(meant -> section.home().stream().anyMatch(home -> isAbout(meant, home)))
                    .filter(meant -> !isAbout(meant, page.home()))
                    .map(meant -> content(section.stamp(), meant, false));
            return new Section(
                    section.stamp(),
                    section.home(),
                    section.title(),
                    section.level(),
                    Stream.concat(first, contents.stream()).toList());
        }

        private Content noticed(Content.Steps steps) {
            return new Content.Steps(
                    steps.stamp(),
                    steps.ticked(),
                    steps.parts().stream()
                            .map(part -> new Content.Steps.Part(
                                    part.stamp(),
                                    part.title(),
                                    part.steps().stream()
                                            .map(step -> step.with(all.stream()
                                                    .flatMap(meant -> readerOf(meant, step).stream()
                                                            .map(reader -> content(
                                                                    step.stamp().seenBy(reader), meant, false)))
                                                    .toList()))
                                            .toList()))
                            .toList());
        }

        /** The words alone, for renters, or how many there are. */
        private List<Content> onCard() {
            List<Content.Notice> told = all.stream()
                    .filter(meant -> !meant.notice().forStaff())
                    .filter(meant -> page.kind() != FULL
                            || readerOf(meant, page)
                                    .filter(Audience.EVERYBODY::equals)
                                    .isPresent())
                    .map(meant -> content(page.stamp(), meant, false))
                    .map(it -> new Content.Notice(it.stamp(), it.label(), it.text(), "", List.of()))
                    .toList();
            return told.stream().mapToInt(it -> it.text().length()).sum() <= ROOM_ON_CARD
                    ? List.copyOf(told)
                    : List.of(new Content.Notice(
                            page.stamp().child(NAME),
                            view.word("notice"),
                            view.words().say("notice.on-card", "count", told.size()),
                            "",
                            List.of()));
        }

        private Content.Notice content(Stamp where, Meant meant, boolean linked) {
            Notice notice = meant.notice();
            return new Content.Notice(
                    where.child(NAME)
                            .child(notice.id())
                            .from(From.fact(notice, Notice.TEXT))
                            .seenBy(CoachView.audience(notice))
                            .in(view.language(
                                    notice.facts().located(Notice.TEXT).orElseThrow())),
                    view.word(notice.forStaff() ? "notice.for-staff" : "notice"),
                    notice.facts().get(Notice.TEXT),
                    days(notice, view.words()),
                    linked ? links(meant) : List.of());
        }

        /** What renters never hear of, no notice of theirs leads to. */
        private List<Inline.Link> links(Meant meant) {
            Notice notice = meant.notice();
            return Stream.concat(
                            used(notice),
                            notice.facts().all(Notice.STAGES).stream().map(Target.OfStage::new))
                    .filter(target -> homes.containsKey(target)
                            && (notice.forStaff() || readers.get(target) == Audience.EVERYBODY))
                    .map(target -> Objects.requireNonNull(homes.get(target)))
                    .toList();
        }
    }

    /** Who reads of what a notice is about in a part of a handbook; empty where nobody does. */
    private static Optional<Audience> readerOf(Meant meant, Node part) {
        List<Audience> readers = part.walk()
                .filter(node -> node.links().anyMatch(link -> isUsed(meant, link.target(), node)))
                .map(node -> node.stamp().audience())
                .toList();
        return readers.isEmpty()
                ? Optional.empty()
                : Optional.of(Audience.staffIf(readers.stream().noneMatch(it -> it.includes(Audience.RENTERS))));
    }

    /** Many texts lead to a procedure; it is used where a step goes on with it. */
    private static boolean isUsed(Meant meant, Target target, Node by) {
        return isOf(meant.used(), target) && (target instanceof Target.OfThing || by instanceof Content.Steps.Where);
    }

    private static boolean isAbout(Meant meant, Target home) {
        return isOf(meant.used(), home) || isOf(meant.whole(), home);
    }

    /** All pages of a procedure are of it. */
    private static boolean isOf(Set<Target> targets, Target target) {
        return targets.contains(
                target instanceof Target.OfPart part ? new Target.OfProcedure(part.procedure()) : target);
    }

    /** Since when and until when it stands. */
    static String days(Notice notice, Catalog words) {
        String since = words.day(notice.facts().get(Notice.SINCE));
        return notice.facts()
                .find(Notice.UNTIL)
                .map(day -> words.say("notice.until", "since", since, "until", words.day(day)))
                .orElseGet(() -> words.say("notice.since", "since", since));
    }
}
