package bayfolio.compose;

import bayfolio.catalog.Catalog;
import bayfolio.check.CheckedCoach;
import bayfolio.document.Audience;
import bayfolio.document.Handbook;
import bayfolio.document.Node;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Sketch;
import bayfolio.document.Stamp;
import bayfolio.model.Unit;
import bayfolio.model.Wording;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Makes the handbook of a coach that the check found nothing wrong with: once, for all its readers. */
public final class Composer {
    private Composer() {}

    public static Handbook compose(CheckedCoach coach) {
        CoachView view = new CoachView(coach);
        Map<Target, List<Sketch>> sketches = new Sketches(view).all();
        List<Page> pages = Stream.of(
                        Stream.of(new HomePage(view).page()),
                        new SituationPages(view).pages(),
                        new ThingPages(view, sketches.keySet()).pages(),
                        new CountryPages(view).pages(),
                        new WorkedOutPages(view).pages(),
                        new StagePages(view).pages(),
                        new ProcedurePage(view).pages(),
                        Stream.of(new WordsPage(view).page(), new TroublePage(view).page()),
                        new TakenOutPages(view).pages(),
                        new StaffSheets(view).pages())
                .flatMap(each -> each)
                .collect(Collectors.toCollection(ArrayList::new));
        pages.addAll(new CardPages(view, List.copyOf(pages)).pages().toList());
        pages.add(new LinkDesk(view, List.copyOf(pages)).page());
        pages.addAll(new IndexPage(view, List.copyOf(pages)).pages().toList());
        return new Handbook(
                coach.unit().id(),
                cover(coach.unit(), coach.words()),
                coach.words().language(),
                parts(new Notices(view).on(noticed(explained(pages, coach), view))),
                sketches,
                new TakenOutPages(view).formerly(pages));
    }

    /** What tells a coach from others; where no picture was chosen, the first that everybody may see stands for it. */
    public static Handbook.Cover cover(Unit unit, Catalog words) {
        return new Handbook.Cover(
                unit.name(),
                unit.facts().find(Unit.NUMBER).orElse(""),
                unit.facts()
                        .find(Unit.BODY)
                        .map(body -> words.say(Wording.key(body)))
                        .orElse(""),
                unit.photos().stream()
                        .filter(photo -> !photo.forStaff())
                        .max(Comparator.comparing(photo -> unit.facts()
                                .find(Unit.COVER)
                                .filter(photo.id()::equals)
                                .isPresent())));
    }

    /** Parts and pages in the order of the table of kinds; pages of one kind as they were composed. */
    private static List<Handbook.Part> parts(List<Page> pages) {
        Map<String, List<Page>> parts = new LinkedHashMap<>();
        for (PageKind kind : PageKind.values()) {
            parts.computeIfAbsent(kind.part(), it -> new ArrayList<>())
                    .addAll(pages.stream().filter(page -> page.kind() == kind).toList());
        }
        return parts.entrySet().stream()
                .map(part -> new Handbook.Part(part.getKey(), part.getValue()))
                .toList();
    }

    /** A reader who meets another language is told that it is no mistake. */
    private static List<Page> noticed(List<Page> pages, CoachView view) {
        return pages.stream()
                .map(page -> {
                    boolean told = page.opening().stream()
                            .anyMatch(it -> it.id().equals(page.id().child("foreign")));
                    List<Audience> foreign = told
                            ? List.of()
                            : page.walk()
                                    .map(Node::stamp)
                                    .filter(it -> view.foreign(it.language()))
                                    .map(Stamp::audience)
                                    .toList();
                    return foreign.isEmpty()
                            ? page
                            : page.opened(view.notice(
                                    page,
                                    Audience.staffIf(foreign.stream().noneMatch(it -> it.includes(Audience.RENTERS)))));
                })
                .toList();
    }

    /** The glossary itself explains each word where it stands. */
    private static List<Page> explained(List<Page> pages, CheckedCoach coach) {
        FirstUse firstUse = new FirstUse(coach.told().fleet().words());
        return pages.stream()
                .map(page -> page.kind() == PageKind.WORDS ? page : firstUse.linked(page))
                .toList();
    }
}
