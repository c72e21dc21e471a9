package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.From;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.procedure.Form;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.Stage;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A part of the trip: what to read in it, in order, and the questions that come up. */
final class StagePages {
    private final CoachView view;

    StagePages(CoachView view) {
        this.view = view;
    }

    /** Stages in which there is something to do with this coach, or to say of it, in the order of the trip. */
    static List<Stage> used(CoachView view) {
        return Arrays.stream(Stage.values())
                .filter(stage -> view.about(stage).isPresent()
                        || of(view, stage).findAny().isPresent())
                .toList();
    }

    /** Staff, where nothing in it is for renters. */
    static Audience audience(CoachView view, Stage stage) {
        return Audience.staffIf(Stream.concat(view.about(stage).stream(), of(view, stage))
                .allMatch(procedure -> CoachView.audience(procedure) == Audience.STAFF));
    }

    private static Stream<Procedure> of(CoachView view, Stage stage) {
        return view.procedures(Form.PROCEDURE)
                .filter(procedure -> procedure.head().stage() == stage);
    }

    Stream<Page> pages() {
        return Stream.concat(Stream.of(all()), used(view).stream().map(this::page));
    }

    private Page page(Stage stage) {
        Stamp page = view.stamp(PageKind.STAGE.node(stage.word()), audience(view, stage), From.PROGRAM);
        List<Content> opening = new ArrayList<>();
        List<Section> sections = new ArrayList<>();
        if (of(view, stage).findAny().isPresent()) {
            Stamp read = page.child("read");
            sections.add(Section.of(read, view.word("stage-read"), List.of(procedures(read.child("list"), stage))));
        }
        view.about(stage).ifPresent(about -> {
            Stamp text = page.from(CoachView.from(about))
                    .seenBy(CoachView.audience(about))
                    .in(about.head().language());
            if (!about.opening().isEmpty()) {
                opening.add(new Content.Text(text.child("opening"), about.opening()));
            }
            int number = 1;
            for (Procedure.Ending question : about.endings()) {
                Stamp section = text.child("question-" + number++);
                sections.add(Section.of(
                        section,
                        question.title(),
                        List.of(new Content.Text(section.child("answer"), question.text()))));
            }
        });
        if (stage == Stage.SOMETHING_WRONG) {
            Stamp list = page.child("symptoms");
            opening.add(new Content.LinkList(list, Optional.empty(), List.of(HomePage.troubleEntry(view, list))));
        }
        return new Page(
                page,
                PageKind.STAGE,
                new Target.OfStage(stage.word()),
                view.word("stage." + stage.word()),
                opening,
                sections,
                false);
    }

    /** All procedures of the coach, stage by stage. */
    private Page all() {
        Stamp page = view.stamp(PageKind.PROCEDURES);
        return new Page(
                page,
                PageKind.PROCEDURES,
                PageKind.PROCEDURES.target(),
                view.word("page.procedures"),
                List.of(),
                used(view).stream()
                        .filter(stage -> of(view, stage).findAny().isPresent())
                        .map(stage -> {
                            Stamp section = page.child("stage-" + stage.word());
                            return Section.of(
                                    section,
                                    view.word("stage." + stage.word()),
                                    List.of(procedures(section.child("list"), stage)));
                        })
                        .toList(),
                false);
    }

    private Content procedures(Stamp list, Stage stage) {
        return new Content.LinkList(
                list,
                Optional.empty(),
                inOrder(view, stage)
                        .map(procedure -> view.entry(list, procedure, opening(procedure)))
                        .toList());
    }

    /** In the order in which the questions of the stage name them; those that it does not name come after, by title. */
    static Stream<Procedure> inOrder(CoachView view, Stage stage) {
        List<Target> named = view.about(stage)
                .filter(about -> CoachView.audience(about) == Audience.EVERYBODY)
                .map(about -> List.copyOf(new LinkedHashSet<>(
                        about.links().map(Inline.Link::target).toList())))
                .orElse(List.of());
        Comparator<Procedure> asNamed = Comparator.comparing(procedure -> {
            int at = named.indexOf(new Target.OfProcedure(procedure.id()));
            return at < 0 ? named.size() : at;
        });
        return of(view, stage).sorted(asNamed);
    }

    /** What renters read in a stage: all that its questions name, of whatever stage, and then the rest of it. */
    static Stream<Procedure> toRead(CoachView view, Stage stage) {
        Set<Target> named = view.about(stage).stream()
                .filter(about -> CoachView.audience(about) == Audience.EVERYBODY)
                .flatMap(Procedure::links)
                .map(Inline.Link::target)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        Map<Target, Procedure> all = new LinkedHashMap<>();
        view.procedures(Form.PROCEDURE).forEach(it -> all.put(new Target.OfProcedure(it.id()), it));
        return Stream.concat(
                        named.stream().flatMap(it -> Optional.ofNullable(all.get(it)).stream()), inOrder(view, stage))
                .filter(procedure -> CoachView.audience(procedure) != Audience.STAFF)
                .distinct();
    }

    /** The first paragraph, which says where to stand and why. */
    static String opening(Procedure procedure) {
        return procedure.opening().stream()
                .filter(Block.Paragraph.class::isInstance)
                .map(block -> Inline.plain(((Block.Paragraph) block).text()))
                .findFirst()
                .orElse("");
    }
}
