package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.From;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.drawing.Bars;
import bayfolio.drawing.Drawing;
import bayfolio.drawing.Hours;
import bayfolio.drawing.Mark;
import bayfolio.explain.Bar;
import bayfolio.explain.Course;
import bayfolio.explain.Explained;
import bayfolio.explain.Grid;
import bayfolio.explain.Plot;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import bayfolio.reckon.Origin;
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

    private Content.LinkList.Entry entry(Stamp list, Explained answer) {
        String id = answer.question().id();
        return new Content.LinkList.Entry(
                list.child(id).seenBy(WorkedOut.audience(answer)),
                view.link(new Target.OfReckoning(id), answer.asked()),
                answer instanceof Explained.Explanation explanation ? explanation.answer() : "",
                Optional.of(id));
    }

    private Page page(Explained answer) {
        String id = answer.question().id();
        Stamp page = view.stamp(PageKind.QUESTION.node(id), WorkedOut.audience(answer), From.PROGRAM);
        return new Page(
                page,
                PageKind.QUESTION,
                new Target.OfReckoning(id),
                answer.asked(),
                answer instanceof Explained.Explanation explanation
                        ? contents(page, explanation)
                        : lacking(page, (Explained.Lacking) answer),
                List.of(),
                false);
    }

    private List<Content> lacking(Stamp page, Explained.Lacking lacking) {
        return List.of(
                view.paragraph(page.child("lacking"), "worked-out.lacking"),
                bullets(page.child("facts"), lacking.facts()));
    }

    private List<Content> contents(Stamp page, Explained.Explanation explanation) {
        List<Content> contents = new ArrayList<>();
        contents.add(Content.Text.of(page.child("answer"), new Inline.Strong(text(explanation.answer()))));
        drawn(page.child("drawn"), explanation).ifPresent(contents::add);
        List<Grid> grids = explanation.grids();
        int number = 1;
        for (Grid grid : grids) {
            Stamp table = page.child("table-" + number);
            contents.add(
                    number++ == 1
                            ? table(table, grid)
                            : new Content.Fold(table, grid.title(), List.of(table(table.child("table"), grid))));
        }
        view.workedOut()
                .calculator(explanation.question())
                .ifPresent(calculator ->
                        contents.add(new Content.Form(page.child("form"), view.word("worked-out.try"), calculator)));
        contents.add(view.paragraph(page.child("assumed"), "worked-out.assumed"));
        contents.add(bullets(page.child("assumptions"), explanation.assumed()));
        contents.add(Content.Text.of(
                page.child("planning-aid"),
                new Inline.Text(view.words().say("worked-out.planning-aid", "error", explanation.howWrong()))));
        Stamp working = page.child("working");
        contents.add(new Content.Fold(working, view.word("worked-out.working"), working(working, explanation)));
        return contents;
    }

    private Optional<Content> drawn(Stamp stamp, Explained.Explanation explanation) {
        Optional<Drawing> drawing = explanation.plot().map(WorkedOutPages::drawing);
        return drawing.map(it -> new Content.Drawn(
                stamp, view.word("worked-out.drawn." + explanation.question().id()), it, List.of()));
    }

    private static Drawing drawing(Plot plot) {
        return plot instanceof Plot.Bars bars ? bars(bars.bars()) : course((Course) plot);
    }

    private static Drawing bars(List<Bar> bars) {
        return Bars.of(bars.stream()
                .map(bar -> new Bars.Bar(
                        bar.label(),
                        bar.shown(),
                        bar.value() / bar.whole(),
                        bar.limit() > 0 ? bar.limit() / bar.whole() : -1,
                        bar.exceeded()))
                .toList());
    }

    private static Drawing course(Course course) {
        return Hours.of(
                course.span(),
                course.unit(),
                course.limit(),
                course.lines().stream()
                        .map(line -> new Hours.Line(
                                line.label(),
                                line.points().stream()
                                        .map(point -> new Mark.Point(point.at(), point.share()))
                                        .toList()))
                        .toList());
    }

    private List<Content> working(Stamp working, Explained.Explanation explanation) {
        List<Content> contents = new ArrayList<>();
        boolean doubts = explanation.inputs().stream().anyMatch(it -> doubtful(it.origin()));
        if (doubts) {
            contents.add(inputs(working.child("figures").seenBy(Audience.RENTERS), explanation, false));
        }
        contents.add(inputs(
                doubts ? working.child("figures-and-doubts").seenBy(Audience.STAFF) : working.child("figures"),
                explanation,
                doubts));
        contents.add(Content.Text.of(working.child("formula"), new Inline.Text(explanation.formula())));
        contents.add(bullets(working.child("steps"), explanation.steps()));
        contents.add(Content.Text.of(
                working.child("source"),
                new Inline.Text(view.words().say("worked-out.source", "source", explanation.source()))));
        return contents;
    }

    private Content inputs(Stamp stamp, Explained.Explanation explanation, boolean doubts) {
        return table(
                stamp,
                new Grid(
                        "",
                        Stream.of("figure", "value", "origin")
                                .map(column -> view.word("worked-out." + column))
                                .toList(),
                        explanation.inputs().stream()
                                .map(input -> List.of(input.name(), input.value(), origin(input.origin(), doubts)))
                                .toList()));
    }

    private static boolean doubtful(Origin origin) {
        return origin instanceof Origin.Usual usual && usual.figure().unverified();
    }

    /** @param doubts whether the reader is told why a figure is taken for planning */
    private String origin(Origin origin, boolean doubts) {
        if (!(origin instanceof Origin.Usual usual)) {
            return view.word("worked-out.described");
        }
        String source = view.word("source." + usual.figure().told());
        return !doubtful(origin)
                ? view.words().say("worked-out.usual", "source", source)
                : doubts ? view.words().say("worked-out.doubt", "source", source) : view.word("worked-out.unverified");
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
