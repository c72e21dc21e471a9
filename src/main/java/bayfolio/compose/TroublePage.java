package bayfolio.compose;

import bayfolio.fact.Type;
import bayfolio.handbook.Content;
import bayfolio.handbook.Page;
import bayfolio.handbook.Section;
import bayfolio.procedure.Form;
import bayfolio.procedure.Head;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.Topic;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every symptom that a guide of this coach knows, by what it is about; then whom to call. */
final class TroublePage {
    private final Draft draft;

    TroublePage(Draft draft) {
        this.draft = draft;
    }

    Page page() {
        List<Section> sections = new ArrayList<>();
        for (Topic topic : Topic.values()) {
            section(Type.word(topic), Optional.of(topic)).ifPresent(sections::add);
        }
        section("other", Optional.empty()).ifPresent(sections::add);
        sections.add(Section.of("call", draft.word("home.call"), List.of(new Phones(draft).content())));
        return new Page(
                new Target.OfPage("trouble"),
                "trouble.html",
                draft.word("page.trouble"),
                List.of(draft.paragraph("page.trouble.note")),
                sections);
    }

    private Optional<Section> section(String id, Optional<Topic> topic) {
        List<Content.LinkList.Entry> entries = draft.procedures(Form.TROUBLE)
                .filter(guide -> guide.head().facts().find(Head.ABOUT).equals(topic))
                .map((Procedure guide) -> new Content.LinkList.Entry(Draft.link(guide), ""))
                .toList();
        return entries.isEmpty()
                ? Optional.empty()
                : Optional.of(Section.of(
                        id, draft.word("about." + id), List.of(new Content.LinkList(Optional.empty(), entries))));
    }
}
