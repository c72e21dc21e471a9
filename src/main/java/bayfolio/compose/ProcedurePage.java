package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.fact.Type;
import bayfolio.model.Access;
import bayfolio.model.Reach;
import bayfolio.procedure.Form;
import bayfolio.procedure.Head;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.Stage;
import bayfolio.procedure.Step;
import bayfolio.procedure.Who;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Signal;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One procedure: steps, how to tell that it worked, what to do if not, and the things that it uses.
 */
final class ProcedurePage {
    private static final Pattern COUNTER = Pattern.compile("-[0-9]+$");

    private final CoachView view;

    ProcedurePage(CoachView view) {
        this.view = view;
    }

    Stream<Page> pages() {
        return view.procedures().stream().map(this::page);
    }

    private Page page(Procedure procedure) {
        PageKind kind = procedure.form() == Form.TROUBLE ? PageKind.GUIDE : PageKind.PROCEDURE;
        Stamp page = view.stamp(kind.node(procedure.id()), CoachView.audience(procedure), CoachView.from(procedure));
        boolean urgent = procedure.head().stage() == Stage.EMERGENCY;
        List<Content> opening = new ArrayList<>();
        if (!urgent) {
            marks(procedure).map(who -> mark(page, who)).forEach(opening::add);
        }
        if (procedure.head().facts().has(Head.SOURCES)) {
            opening.add(sources(page.child("sources").seenBy(Audience.STAFF), procedure));
        }
        if (!procedure.opening().isEmpty()) {
            opening.add(new Content.Text(page.child("opening"), procedure.opening()));
        }
        List<Section> sections = new ArrayList<>();
        Stamp steps = page.child("steps");
        sections.add(Section.of(steps, view.word("steps"), List.of(steps(steps.child("list"), page, procedure))));
        for (Procedure.Ending ending : procedure.endings()) {
            String id = ending.title().toLowerCase(Locale.ROOT).replace(' ', '-');
            Stamp section = page.child(id);
            sections.add(Section.of(
                    section, view.word(id), List.of(new Content.Text(section.child("text"), ending.text()))));
        }
        if (!urgent) {
            procedure.head().facts().all(Head.ANSWERS).stream()
                    .flatMap(question -> view.workedOut().quoted(page, question).stream())
                    .forEach(sections::add);
            things(page.child("things"), procedure).ifPresent(sections::add);
        }
        return new Page(
                page,
                kind,
                new Target.OfProcedure(procedure.id()),
                procedure.head().title(),
                opening,
                sections,
                urgent);
    }

    /** A step is named after the page, since links lead to it. */
    private static Content steps(Stamp list, Stamp page, Procedure procedure) {
        Map<Step, String> names = names(procedure);
        return new Content.Steps(
                list,
                procedure.parts().stream()
                        .map(part -> new Content.Steps.Part(
                                list.child("from-" + first(part, procedure, names)),
                                part.title(),
                                part.steps().stream()
                                        .map(step -> step(page.child("step-" + names.get(step)), step))
                                        .toList()))
                        .toList());
    }

    /** A part is named after the words of its first step, and after its thing only where another one begins so, too. */
    private static String first(Procedure.Part part, Procedure procedure, Map<Step, String> names) {
        Step first = part.steps().get(0);
        String words = words(first);
        boolean alone = procedure.parts().stream()
                        .filter(other -> words(other.steps().get(0)).equals(words))
                        .count()
                == 1;
        return alone ? words : Objects.requireNonNull(names.get(first));
    }

    private static String words(Step step) {
        return COUNTER.matcher(step.id()).replaceFirst("");
    }

    /** A step that a text repeats for each of several things is named after its thing, and not after its turn. */
    private static Map<Step, String> names(Procedure procedure) {
        Map<Step, String> names = new IdentityHashMap<>();
        Map<String, List<Step>> alike = procedure
                .steps()
                .collect(Collectors.groupingBy(ProcedurePage::words, LinkedHashMap::new, Collectors.toList()));
        alike.forEach((name, steps) -> {
            List<String> own = steps.stream()
                    .map(step -> name + thing(step).map(id -> "-" + id).orElse(""))
                    .toList();
            boolean apart = steps.size() > 1 && Set.copyOf(own).size() == own.size();
            for (int i = 0; i < own.size(); i++) {
                names.put(steps.get(i), apart ? own.get(i) : steps.get(i).id());
            }
        });
        return names;
    }

    /** The first that it is about. */
    private static Optional<String> thing(Step step) {
        return step.text().stream()
                .flatMap(Block::links)
                .map(Inline.Link::target)
                .filter(Target.OfThing.class::isInstance)
                .map(target -> ((Target.OfThing) target).id())
                .findFirst();
    }

    private static Content.Steps.Step step(Stamp stamp, Step step) {
        Map<Signal, Integer> told = new EnumMap<>(Signal.class);
        ActAndPlaces parts = new ActAndPlaces(stamp, step.text());
        return new Content.Steps.Step(
                stamp,
                step.hazards().stream()
                        .map(hazard -> new Content.Steps.Hazard(
                                stamp.child(Type.word(hazard.signal())
                                        + (told.merge(hazard.signal(), 1, Integer::sum) == 1
                                                ? ""
                                                : "-" + told.get(hazard.signal()))),
                                hazard.signal(),
                                hazard.text()))
                        .toList(),
                parts.act(),
                parts.any(),
                parts.where(),
                parts.known(),
                parts.more());
    }

    /** Who may do it; alone only where nothing in it takes a second person or a call to us. */
    private Stream<String> marks(Procedure procedure) {
        boolean renter = procedure.head().who() == Who.RENTER;
        boolean helper = needsHelper(procedure) || renter && goesOnWith(procedure, ProcedurePage::needsHelper);
        boolean calls = renter
                && (procedure
                                .links()
                                .map(Inline.Link::target)
                                .anyMatch(Reach.all(Access.ON_CALL, view.coach())::contains)
                        || goesOnWith(procedure, it -> it.head().who() == Who.ON_CALL));
        return Stream.of(
                        renter && (helper || calls)
                                ? ""
                                : Type.word(procedure.head().who()),
                        helper ? "helper" : "",
                        calls ? "calls" : "")
                .filter(mark -> !mark.isEmpty());
    }

    private static boolean needsHelper(Procedure procedure) {
        return procedure.head().facts().find(Head.HELPER).orElse(false);
    }

    /** Whether a step goes on with another procedure that is so. */
    private boolean goesOnWith(Procedure procedure, Predicate<Procedure> so) {
        Set<Target> targets = new HashSet<>();
        procedure
                .steps()
                .forEach(step -> step.text().forEach(block -> block.links(link -> targets.add(link.target()))));
        return view.procedures().stream()
                .anyMatch(it -> targets.contains(new Target.OfProcedure(it.id())) && so.test(it));
    }

    private Content mark(Stamp page, String who) {
        return new Content.Mark(page.child("who-" + who), "who-" + who, view.word("who." + who));
    }

    /** What backs it, for staff to look up. */
    private Content sources(Stamp table, Procedure procedure) {
        List<Content.FactTable.Line> titles = procedure.head().facts().all(Head.SOURCES).stream()
                .flatMap(id -> view.coach().fleet().source(id).stream())
                .map(source -> new Content.FactTable.Line(
                        Audience.EVERYBODY,
                        List.of(new Inline.Text(source.title()
                                + source.status()
                                        .map(status -> " (" + Type.word(status) + ")")
                                        .orElse("")))))
                .toList();
        String label = new FactRows(view).label(Head.SHAPE, Head.SOURCES);
        return new Content.FactTable(table, List.of(new Content.FactTable.Row(table.child("titles"), label, titles)));
    }

    private Optional<Section> things(Stamp section, Procedure procedure) {
        Stamp list = section.child("list");
        List<Content.LinkList.Entry> entries = procedure
                .links()
                .map(link -> link.target())
                .filter(Target.OfThing.class::isInstance)
                .map(Target.OfThing.class::cast)
                .distinct()
                .flatMap(target -> view.coach().thing(target.kind(), target.id()).stream())
                .map(thing -> CoachView.entry(list, thing, view.wording().place(thing)))
                .toList();
        return entries.isEmpty()
                ? Optional.empty()
                : Optional.of(Section.of(
                        section, view.word("things"), List.of(new Content.LinkList(list, Optional.empty(), entries))));
    }
}
