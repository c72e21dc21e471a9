package bayfolio.compose;

import bayfolio.handbook.Content;
import bayfolio.handbook.Page;
import bayfolio.handbook.Section;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.Stage;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** A part of the trip: what there is to do in it. */
final class StagePage {
    private final Draft draft;

    StagePage(Draft draft) {
        this.draft = draft;
    }

    /** Stages in which this coach has something to do, in the order of the trip. */
    static List<Stage> used(Draft draft) {
        return Arrays.stream(Stage.values())
                .filter(stage -> of(draft, stage).findAny().isPresent())
                .toList();
    }

    private static Stream<Procedure> of(Draft draft, Stage stage) {
        return draft.procedures().stream().filter(procedure -> procedure.head().stage() == stage);
    }

    Stream<Page> pages() {
        return used(draft).stream()
                .map(stage -> new Page(
                        new Target.OfStage(stage.word()),
                        "stage/" + stage.word() + ".html",
                        draft.word("stage." + stage.word()),
                        List.of(procedures(stage)),
                        List.of()));
    }

    /** All procedures of the coach, stage by stage. */
    Page all() {
        return new Page(
                new Target.OfPage("procedures"),
                "procedures.html",
                draft.word("page.procedures"),
                List.of(),
                used(draft).stream()
                        .map(stage -> Section.of(
                                "stage-" + stage.word(),
                                draft.word("stage." + stage.word()),
                                List.of(procedures(stage))))
                        .toList());
    }

    private Content procedures(Stage stage) {
        return new Content.LinkList(
                java.util.Optional.empty(),
                of(draft, stage)
                        .map(procedure -> new Content.LinkList.Entry(Draft.link(procedure), opening(procedure)))
                        .toList());
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
