package bayfolio.compose;

import bayfolio.fact.Type;
import bayfolio.handbook.Content;
import bayfolio.handbook.Page;
import bayfolio.handbook.Section;
import bayfolio.model.Thing;
import bayfolio.procedure.Procedure;
import bayfolio.prose.Block;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
        String who = Type.word(procedure.head().who());
        List<Content> opening = new ArrayList<>();
        opening.add(new Content.Mark("who-" + who, draft.word("who." + who)));
        procedure.opening().forEach(block -> opening.add(new Content.Text(block)));
        List<Section> sections = new ArrayList<>();
        sections.add(Section.of("steps", draft.word("steps"), List.of(new Content.Steps(procedure.parts()))));
        sections.add(Section.of("done-when", draft.word("done-when"), texts(procedure.doneWhen())));
        sections.add(Section.of("if-not", draft.word("if-not"), texts(procedure.ifNot())));
        things(procedure).ifPresent(sections::add);
        return new Page(
                new Target.OfProcedure(procedure.id()),
                "do/" + procedure.id() + ".html",
                procedure.head().title(),
                opening,
                sections);
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
