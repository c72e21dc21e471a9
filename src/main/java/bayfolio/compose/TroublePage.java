package bayfolio.compose;

import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.fact.Type;
import bayfolio.procedure.Form;
import bayfolio.procedure.Head;
import bayfolio.procedure.Topic;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every symptom that a guide of this coach knows, by what it is about; then whom to call. */
final class TroublePage {
    private final CoachView view;
    private final Stamp stamp;

    TroublePage(CoachView view) {
        this.view = view;
        this.stamp = view.stamp(PageKind.TROUBLE_LIST);
    }

    Page page() {
        List<Section> sections = new ArrayList<>();
        for (Topic topic : Topic.values()) {
            section(Type.word(topic), Optional.of(topic)).ifPresent(sections::add);
        }
        section("other", Optional.empty()).ifPresent(sections::add);
        Stamp call = stamp.child("call");
        sections.add(Section.of(call, view.word("home.call"), List.of(new Phones(view).content(call.child("list")))));
        return new Page(
                stamp,
                PageKind.TROUBLE_LIST,
                PageKind.TROUBLE_LIST.target(),
                view.word("page.trouble"),
                List.of(view.paragraph(stamp.child("note"), "page.trouble.note")),
                sections,
                false);
    }

    private Optional<Section> section(String id, Optional<Topic> topic) {
        return view.links(
                stamp.child(id),
                "about." + id,
                list -> view.procedures(Form.TROUBLE)
                        .filter(guide -> guide.head().facts().find(Head.ABOUT).equals(topic))
                        .map(guide -> view.entry(list, guide, "")));
    }
}
