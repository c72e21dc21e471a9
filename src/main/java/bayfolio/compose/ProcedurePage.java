package bayfolio.compose;

import bayfolio.fact.Type;
import bayfolio.handbook.Content;
import bayfolio.handbook.Copy;
import bayfolio.handbook.Page;
import bayfolio.handbook.Section;
import bayfolio.model.Access;
import bayfolio.model.Reach;
import bayfolio.model.Thing;
import bayfolio.procedure.Form;
import bayfolio.procedure.Head;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.Stage;
import bayfolio.procedure.Who;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * One procedure: steps, how to tell that it worked, what to do if not, and the things that it uses.
 */
final class ProcedurePage {
    private final Draft draft;

    ProcedurePage(Draft draft) {
        this.draft = draft;
    }

    Stream<Page> pages() {
        return draft.procedures().stream().map(this::page);
    }

    private Page page(Procedure procedure) {
        boolean urgent = procedure.head().stage() == Stage.EMERGENCY;
        List<Content> opening = new ArrayList<>();
        if (!urgent) {
            marks(procedure).map(this::mark).forEach(opening::add);
        }
        if (draft.copy() == Copy.STAFF && procedure.head().facts().has(Head.SOURCES)) {
            opening.add(sources(procedure));
        }
        procedure.opening().forEach(block -> opening.add(new Content.Text(block)));
        List<Section> sections = new ArrayList<>();
        sections.add(Section.of("steps", draft.word("steps"), List.of(new Content.Steps(procedure.parts()))));
        for (Procedure.Ending ending : procedure.endings()) {
            String id = ending.title().toLowerCase(Locale.ROOT).replace(' ', '-');
            sections.add(Section.of(id, draft.word(id), texts(ending.text())));
        }
        if (!urgent) {
            procedure.head().facts().all(Head.WORKS_OUT).stream()
                    .flatMap(question -> draft.workedOut().section(question).stream())
                    .forEach(sections::add);
            things(procedure).ifPresent(sections::add);
        }
        return new Page(
                new Target.OfProcedure(procedure.id()),
                folder(procedure.form()) + "/" + procedure.id() + ".html",
                procedure.head().title(),
                opening,
                sections,
                urgent);
    }

    /** Who may do it; alone only where nothing in it takes a second person or a call to us. */
    private Stream<String> marks(Procedure procedure) {
        boolean renter = procedure.head().who() == Who.RENTER;
        boolean helper = needsHelper(procedure) || renter && goesOnWith(procedure, ProcedurePage::needsHelper);
        boolean calls = renter
                && (procedure
                                .links()
                                .map(Inline.Link::target)
                                .anyMatch(Reach.all(Access.ON_CALL, draft.coach())::contains)
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
        return draft.procedures().stream()
                .anyMatch(it -> targets.contains(new Target.OfProcedure(it.id())) && so.test(it));
    }

    private Content mark(String who) {
        return new Content.Mark("who-" + who, draft.word("who." + who));
    }

    /** What backs it, for staff to look up. */
    private Content sources(Procedure procedure) {
        List<List<Inline>> titles = procedure.head().facts().all(Head.SOURCES).stream()
                .flatMap(id -> draft.coach().fleet().source(id).stream())
                .map(source -> List.<Inline>of(new Inline.Text(source.title()
                        + source.status()
                                .map(status -> " (" + Type.word(status) + ")")
                                .orElse(""))))
                .toList();
        String label = new FactRows(draft).label(Head.SHAPE, Head.SOURCES);
        return new Content.FactTable(List.of(new Content.FactTable.Row(label, titles)));
    }

    private static String folder(Form form) {
        return form == Form.TROUBLE ? "trouble" : "do";
    }

    private static List<Content> texts(List<Block> blocks) {
        return blocks.stream().<Content>map(Content.Text::new).toList();
    }

    private Optional<Section> things(Procedure procedure) {
        List<Content.LinkList.Entry> entries = procedure
                .links()
                .map(link -> link.target())
                .filter(Target.OfThing.class::isInstance)
                .map(Target.OfThing.class::cast)
                .distinct()
                .flatMap(target -> draft.coach().thing(target.kind(), target.id()).stream())
                .map((Thing thing) -> new Content.LinkList.Entry(
                        Draft.link(thing), draft.wording().place(thing)))
                .toList();
        return entries.isEmpty()
                ? Optional.empty()
                : Optional.of(Section.of(
                        "things", draft.word("things"), List.of(new Content.LinkList(Optional.empty(), entries))));
    }
}
