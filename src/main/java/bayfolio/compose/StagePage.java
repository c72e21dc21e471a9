package bayfolio.compose;

import bayfolio.handbook.Content;
import bayfolio.handbook.Page;
import bayfolio.handbook.Section;
import bayfolio.procedure.Form;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.Stage;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A part of the trip: what to read in it, in order, and the questions that come up. */
final class StagePage {
    private final Draft draft;

    StagePage(Draft draft) {
        this.draft = draft;
    }

    /** Stages in which there is something to do with this coach, or to say of it, in the order of the trip. */
    static List<Stage> used(Draft draft) {
        return Arrays.stream(Stage.values())
                .filter(stage -> draft.about(stage).isPresent()
                        || of(draft, stage).findAny().isPresent())
                .toList();
    }

    private static Stream<Procedure> of(Draft draft, Stage stage) {
        return draft.procedures(Form.PROCEDURE)
                .filter(procedure -> procedure.head().stage() == stage);
    }

    Stream<Page> pages() {
        return used(draft).stream().map(this::page);
    }

    private Page page(Stage stage) {
        Optional<Procedure> about = draft.about(stage);
        List<Content> opening = new ArrayList<>();
        about.ifPresent(it -> it.opening().forEach(block -> opening.add(new Content.Text(block))));
        if (stage == Stage.SOMETHING_WRONG) {
            opening.add(new Content.LinkList(
                    Optional.empty(),
                    List.of(new Content.LinkList.Entry(
                            draft.link(new Target.OfPage("trouble"), draft.word("home.trouble")),
                            draft.word("page.trouble.note")))));
        }
        List<Section> sections = new ArrayList<>();
        if (of(draft, stage).findAny().isPresent()) {
            sections.add(Section.of("read", draft.word("stage-read"), List.of(procedures(stage))));
        }
        int number = 1;
        for (Procedure.Ending question : about.map(Procedure::endings).orElse(List.of())) {
            sections.add(Section.of(
                    "question-" + number++,
                    question.title(),
                    question.text().stream().<Content>map(Content.Text::new).toList()));
        }
        return new Page(
                new Target.OfStage(stage.word()),
                "stage/" + stage.word() + ".html",
                draft.word("stage." + stage.word()),
                opening,
                sections);
    }

    /** All procedures of the coach, stage by stage. */
    Page all() {
        return new Page(
                new Target.OfPage("procedures"),
                "procedures.html",
                draft.word("page.procedures"),
                List.of(),
                used(draft).stream()
                        .filter(stage -> of(draft, stage).findAny().isPresent())
                        .map(stage -> Section.of(
                                "stage-" + stage.word(),
                                draft.word("stage." + stage.word()),
                                List.of(procedures(stage))))
                        .toList());
    }

    private Content procedures(Stage stage) {
        return new Content.LinkList(
                Optional.empty(),
                inOrder(draft, stage)
                        .map(procedure -> new Content.LinkList.Entry(Draft.link(procedure), opening(procedure)))
                        .toList());
    }

    /** In the order in which the questions of the stage name them; those that it does not name come after, by title. */
    static Stream<Procedure> inOrder(Draft draft, Stage stage) {
        List<Target> named = draft.about(stage)
                .map(about -> List.copyOf(new LinkedHashSet<>(
                        about.links().map(Inline.Link::target).toList())))
                .orElse(List.of());
        Comparator<Procedure> asNamed = Comparator.comparing(procedure -> {
            int at = named.indexOf(new Target.OfProcedure(procedure.id()));
            return at < 0 ? named.size() : at;
        });
        return of(draft, stage).sorted(asNamed);
    }

    /** The first paragraph, which says where to stand and why. */
    private static String opening(Procedure procedure) {
        return procedure.opening().stream()
                .filter(Block.Paragraph.class::isInstance)
                .map(block -> Inline.plain(((Block.Paragraph) block).text()))
                .findFirst()
                .orElse("");
    }
}
