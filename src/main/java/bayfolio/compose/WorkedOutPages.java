package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.From;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import bayfolio.reckon.Grid;
import bayfolio.reckon.Input;
import bayfolio.reckon.Reckoned;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is worked out for the coach, a page for each question: a sentence and a table, what was taken for granted below
 * it, the working folded. What cannot be worked out is for staff, who read which facts are missing.
 */
final class WorkedOutPages {
    private final CoachView view;

    WorkedOutPages(CoachView view) {
        this.view = view;
    }

    Stream<Page> pages() {
        return Stream.concat(Stream.of(all()), view.workedOut().answers().map(this::page));
    }

    /** All questions, each with its answer; addresses that once led to a section of this page lead on. */
    private Page all() {
        Stamp page = view.stamp(PageKind.WORKED_OUT);
        Stamp questions = page.child("questions");
        Stamp list = questions.child("list");
        Content contents = new Content.LinkList(
                list,
                Optional.empty(),
                view.workedOut().answers().map(answer -> entry(list, answer)).toList());
        return new Page(
                page,
                PageKind.WORKED_OUT,
                PageKind.WORKED_OUT.target(),
                view.word("page.worked-out"),
                List.of(view.paragraph(page.child("note"), "page.worked-out.note")),
                List.of(Section.of(questions, view.word("worked-out.questions"), List.of(contents))),
                false);
    }

    private Content.LinkList.Entry entry(Stamp list, Reckoned answer) {
        String id = answer.question().id();
        return new Content.LinkList.Entry(
                list.child(id).seenBy(WorkedOut.audience(answer)),
                view.link(new Target.OfReckoning(id), WorkedOut.asked(answer)),
                answer instanceof Reckoned.Reckoning reckoning ? reckoning.answer() : "",
                Optional.of(id));
    }

    private Page page(Reckoned answer) {
        String id = answer.question().id();
        Stamp page = view.stamp(PageKind.QUESTION.node(id), WorkedOut.audience(answer), From.PROGRAM);
        return new Page(
                page,
                PageKind.QUESTION,
                new Target.OfReckoning(id),
                WorkedOut.asked(answer),
                answer instanceof Reckoned.Reckoning reckoning
                        ? contents(page, reckoning)
                        : lacking(page, (Reckoned.Lacking) answer),
                List.of(),
                false);
    }

    private List<Content> lacking(Stamp page, Reckoned.Lacking lacking) {
        return List.of(
                view.paragraph(page.child("lacking"), "worked-out.lacking"),
                bullets(page.child("facts"), lacking.facts()));
    }

    private List<Content> contents(Stamp page, Reckoned.Reckoning reckoning) {
        List<Content> contents = new ArrayList<>();
        contents.add(Content.Text.of(page.child("answer"), new Inline.Strong(text(reckoning.answer()))));
        List<Grid> grids = reckoning.grids();
        int number = 1;
        for (Grid grid : grids) {
            Stamp table = page.child("table-" + number);
            contents.add(
                    number++ == 1
                            ? table(table, grid)
                            : new Content.Fold(table, grid.title(), List.of(table(table.child("table"), grid))));
        }
        view.workedOut()
                .calculator(reckoning.question())
                .ifPresent(calculator ->
                        contents.add(new Content.Form(page.child("form"), view.word("worked-out.try"), calculator)));
        contents.add(view.paragraph(page.child("assumed"), "worked-out.assumed"));
        contents.add(bullets(page.child("assumptions"), reckoning.assumed()));
        contents.add(Content.Text.of(
                page.child("planning-aid"),
                new Inline.Text(reckoning.howWrong() + " " + view.word("worked-out.planning-aid"))));
        Stamp working = page.child("working");
        contents.add(new Content.Fold(working, view.word("worked-out.working"), working(working, reckoning)));
        return contents;
    }

    private List<Content> working(Stamp working, Reckoned.Reckoning reckoning) {
        List<Content> contents = new ArrayList<>();
        boolean doubts = reckoning.inputs().stream().anyMatch(it -> it.origin() instanceof Input.Origin.Unverified);
        if (doubts) {
            contents.add(inputs(working.child("figures").seenBy(Audience.RENTERS), reckoning, false));
        }
        contents.add(inputs(
                doubts ? working.child("figures-and-doubts").seenBy(Audience.STAFF) : working.child("figures"),
                reckoning,
                doubts));
        contents.add(Content.Text.of(working.child("formula"), new Inline.Text(reckoning.formula())));
        contents.add(bullets(working.child("steps"), reckoning.steps()));
        contents.add(Content.Text.of(
                working.child("source"), new Inline.Text(view.word("worked-out.source") + " " + reckoning.source())));
        return contents;
    }

    private Content inputs(Stamp stamp, Reckoned.Reckoning reckoning, boolean doubts) {
        return table(
                stamp,
                new Grid(
                        "",
                        Stream.of("figure", "value", "origin")
                                .map(column -> view.word("worked-out." + column))
                                .toList(),
                        reckoning.inputs().stream()
                                .map(input -> List.of(input.name(), input.value(), origin(input.origin(), doubts)))
                                .toList()));
    }

    private String origin(Input.Origin origin, boolean doubts) {
        if (origin instanceof Input.Origin.Usual usual) {
            return view.word("worked-out.usual") + " " + usual.source();
        }
        if (origin instanceof Input.Origin.Unverified unverified) {
            String planned = view.word("worked-out.unverified");
            return doubts ? planned + ": " + unverified.doubt() : planned;
        }
        return view.word("worked-out.described");
    }

    private static Content table(Stamp stamp, Grid grid) {
        return new Content.Text(
                stamp,
                List.of(new Block.Table(
                        grid.head().stream().map(WorkedOutPages::text).toList(),
                        grid.rows().stream()
                                .map(row ->
                                        row.stream().map(WorkedOutPages::text).toList())
                                .toList())));
    }

    private static Content bullets(Stamp stamp, List<String> lines) {
        return new Content.Text(
                stamp,
                List.of(new Block.Bullets(
                        lines.stream().map(WorkedOutPages::text).toList())));
    }

    private static List<Inline> text(String words) {
        return List.of(new Inline.Text(words));
    }
}
