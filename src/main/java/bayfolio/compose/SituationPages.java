package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.From;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.fact.Type;
import bayfolio.procedure.Form;
import bayfolio.procedure.Head;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.Stage;
import bayfolio.procedure.Symptom;
import bayfolio.prose.Target;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What comes first where one stands: at the coach in the dark, at a campsite; and what does not work, by what one notices. */
final class SituationPages {
    private final CoachView view;

    SituationPages(CoachView view) {
        this.view = view;
    }

    Stream<Page> pages() {
        return Stream.concat(
                Stream.of(Whereabouts.values())
                        .filter(it -> !stages(it).isEmpty())
                        .map(this::page),
                Stream.of(Symptom.values()).filter(it -> guides(it).size() > 1).map(this::page));
    }

    /** Of a renter's trip, those in which there is something to do with this coach. */
    private List<Stage> stages(Whereabouts situation) {
        return situation.stages().stream()
                .filter(StagePages.used(view)::contains)
                .filter(stage -> StagePages.audience(view, stage) != Audience.STAFF)
                .toList();
    }

    private List<Procedure> guides(Symptom symptom) {
        return view.procedures(Form.TROUBLE)
                .filter(guide -> guide.head().facts().find(Head.SYMPTOM).equals(Optional.of(symptom)))
                .toList();
    }

    /** A tile for each situation. */
    List<Content.Tiles.Tile> situations(Stamp tiles) {
        return Stream.of(Whereabouts.values())
                .filter(it -> !stages(it).isEmpty())
                .map(it -> new Content.Tiles.Tile(
                        tiles.child(Type.word(it)),
                        view.link(target(PageKind.SITUATION, it), view.word("situation." + Type.word(it))),
                        view.word("situation." + Type.word(it) + ".note"),
                        Type.word(it)))
                .toList();
    }

    /** A tile for each symptom that a guide knows: it leads to the guide, or to a choice of several. */
    List<Content.Tiles.Tile> symptoms(Stamp tiles) {
        return Stream.of(Symptom.values())
                .flatMap(symptom -> {
                    List<Procedure> guides = guides(symptom);
                    return guides.isEmpty()
                            ? Stream.of()
                            : Stream.of(new Content.Tiles.Tile(
                                    tiles.child(Type.word(symptom)),
                                    view.link(
                                            guides.size() == 1
                                                    ? new Target.OfProcedure(
                                                            guides.get(0).id())
                                                    : target(PageKind.SYMPTOM, symptom),
                                            view.word("symptom." + Type.word(symptom))),
                                    "",
                                    "no-" + Type.word(symptom)));
                })
                .toList();
    }

    /** Of a page that stands for no thing and no text. */
    private static Target target(PageKind kind, Enum<?> page) {
        return new Target.OfPage(kind.id() + "-" + Type.word(page));
    }

    private Page page(Whereabouts situation) {
        Stamp page = view.stamp(PageKind.SITUATION.node(Type.word(situation)), Audience.EVERYBODY, From.PROGRAM);
        List<Section> sections = stages(situation).stream()
                .flatMap(stage -> view
                        .links(
                                page.child("stage-" + stage.word()),
                                "stage." + stage.word(),
                                list -> StagePages.toRead(view, stage)
                                        .map(procedure -> view.entry(
                                                list,
                                                procedure,
                                                view.words().say("minutes", "minutes", Minutes.of(procedure)))))
                        .stream())
                .toList();
        return new Page(
                page,
                PageKind.SITUATION,
                target(PageKind.SITUATION, situation),
                view.word("situation." + Type.word(situation)),
                List.of(view.paragraph(page.child("note"), "situation." + Type.word(situation) + ".note")),
                sections,
                false);
    }

    private Page page(Symptom symptom) {
        Stamp page = view.stamp(PageKind.SYMPTOM.node(Type.word(symptom)), Audience.EVERYBODY, From.PROGRAM);
        Stamp list = page.child("list");
        return new Page(
                page,
                PageKind.SYMPTOM,
                target(PageKind.SYMPTOM, symptom),
                view.word("symptom." + Type.word(symptom)),
                List.of(
                        view.paragraph(page.child("note"), "symptom.note"),
                        new Content.LinkList(
                                list,
                                Optional.empty(),
                                guides(symptom).stream()
                                        .map(guide -> view.entry(list, guide, StagePages.opening(guide)))
                                        .toList())),
                List.of(),
                false);
    }
}
