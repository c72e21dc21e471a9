package bayfolio.compose;

import bayfolio.handbook.Content;
import bayfolio.handbook.Page;
import bayfolio.handbook.Section;
import bayfolio.model.Note;
import bayfolio.model.Thing;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Pages that are the home of things: each kind of thing lives on exactly one of them. */
final class ThingsPage {
    private final Draft draft;

    ThingsPage(Draft draft) {
        this.draft = draft;
    }

    Stream<Page> pages() {
        return Stream.of(
                page("walk-round", List.of("compartment", "tray")),
                page("switches", List.of("switch", "gauge")),
                page("connections", List.of("connection")),
                page("doors-and-slides", List.of("door", "step", "slide", "awning")),
                numbers(),
                page("on-board", List.of("appliance", "item", "photo")));
    }

    private Page page(String id, List<String> kinds) {
        List<Section> sections =
                kinds.stream().flatMap(kind -> things(kind, kinds.size() > 1)).toList();
        return new Page(
                new Target.OfPage(id),
                id + ".html",
                draft.word("page." + id),
                List.of(opening(id), contents(sections)),
                sections);
    }

    private Page numbers() {
        List<Section> sections = new ArrayList<>(new NumberSections(draft).sections());
        Stream.of("supply", "adapter", "circuit", "load", "bank", "tank")
                .flatMap(kind -> things(kind, true))
                .forEach(sections::add);
        List<Note> notes = draft.notesAboutNothing();
        if (!notes.isEmpty()) {
            sections.add(Section.of(
                    "notes",
                    draft.word("notes"),
                    notes.stream()
                            .map(note -> text(note.facts().get(Note.TEXT)))
                            .toList()));
        }
        return new Page(
                new Target.OfPage("numbers"),
                "numbers.html",
                draft.word("page.numbers"),
                List.of(opening("numbers"), contents(sections)),
                sections);
    }

    private Stream<Section> things(String kind, boolean heading) {
        List<Thing> things = draft.things(kind);
        if (things.isEmpty()) {
            return Stream.of();
        }
        ThingSection section = new ThingSection(draft);
        Stream<Section> each = things.stream().map(section::of);
        return heading
                ? Stream.concat(
                        Stream.of(Section.of("kind-" + kind, draft.word("kind." + kind), List.of())),
                        each.map(ThingsPage::deeper))
                : each;
    }

    private static Section deeper(Section section) {
        return new Section(section.anchor(), section.home(), section.title(), 3, section.contents());
    }

    private Content opening(String id) {
        return text(draft.word("page." + id + ".note"));
    }

    /** What is on the page, in its order. */
    private Content contents(List<Section> sections) {
        return new Content.LinkList(
                java.util.Optional.of(draft.word("on-this-page")),
                sections.stream()
                        .filter(section -> section.home().isPresent())
                        .map(section -> new Content.LinkList.Entry(
                                draft.link(section.home().orElseThrow(), section.title()), ""))
                        .toList());
    }

    private static Content text(String words) {
        return new Content.Text(new Block.Paragraph(List.of(new Inline.Text(words))));
    }
}
