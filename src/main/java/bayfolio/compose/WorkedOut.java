package bayfolio.compose;

import bayfolio.handbook.Content;
import bayfolio.handbook.Copy;
import bayfolio.handbook.Page;
import bayfolio.handbook.Section;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import bayfolio.reckon.Calculator;
import bayfolio.reckon.Grid;
import bayfolio.reckon.Input;
import bayfolio.reckon.Question;
import bayfolio.reckon.Reckoned;
import bayfolio.reckon.Reckonings;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is worked out for the coach: a sentence and a table, what was taken for granted below it, the working folded. What
 * cannot be worked out is left away; staff read which facts are missing.
 */
final class WorkedOut {
    private final Draft draft;
    private final Map<Question, Reckoned> reckoned = new EnumMap<>(Question.class);
    private final Map<Question, Calculator> calculators = new EnumMap<>(Question.class);

    WorkedOut(Draft draft) {
        this.draft = draft;
        Reckonings.of(draft.coach()).forEach(each -> reckoned.put(each.question(), each));
        Reckonings.calculators(draft.coach()).forEach(each -> calculators.put(each.question(), each));
    }

    /** All of it. */
    Page page() {
        List<Section> sections = reckoned.keySet().stream()
                .flatMap(question -> section(question).stream().map(section -> atHome(section, question)))
                .toList();
        Content.LinkList contents = new Content.LinkList(
                Optional.of(draft.word("on-this-page")),
                sections.stream()
                        .map(section -> new Content.LinkList.Entry(
                                draft.link(section.home().orElseThrow(), section.title()), ""))
                        .toList());
        return new Page(
                new Target.OfPage("worked-out"),
                "worked-out.html",
                draft.word("page.worked-out"),
                List.of(draft.paragraph("page.worked-out.note"), contents),
                sections);
    }

    private static Section atHome(Section section, Question question) {
        return new Section(
                section.anchor(),
                Optional.of(new Target.OfReckoning(question.id())),
                section.title(),
                section.level(),
                section.contents());
    }

    /** The answer to one question, for a page on which it is needed. */
    Optional<Section> section(Question question) {
        Optional<Reckoned> answer = Optional.ofNullable(reckoned.get(question));
        return answer.flatMap(each -> each instanceof Reckoned.Reckoning reckoning
                ? Optional.of(section(reckoning))
                : lacking((Reckoned.Lacking) each));
    }

    private Optional<Section> lacking(Reckoned.Lacking lacking) {
        if (draft.copy() != Copy.STAFF || lacking.facts().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Section.of(
                lacking.question().id(),
                lacking.asked(),
                List.of(draft.paragraph("worked-out.lacking"), bullets(lacking.facts()))));
    }

    private Section section(Reckoned.Reckoning reckoning) {
        List<Content> contents = new ArrayList<>();
        contents.add(new Content.Text(new Block.Paragraph(List.of(new Inline.Strong(text(reckoning.answer()))))));
        List<Grid> grids = reckoning.grids();
        grids.stream().limit(1).map(this::table).forEach(contents::add);
        grids.stream()
                .skip(1)
                .map(grid -> new Content.Fold(grid.title(), List.of(table(grid))))
                .forEach(contents::add);
        Optional.ofNullable(calculators.get(reckoning.question()))
                .ifPresent(calculator -> contents.add(new Content.Form(draft.word("worked-out.try"), calculator)));
        contents.add(paragraph(draft.word("worked-out.assumed")));
        contents.add(bullets(reckoning.assumed()));
        contents.add(paragraph(reckoning.howWrong() + " " + draft.word("worked-out.planning-aid")));
        contents.add(new Content.Fold(draft.word("worked-out.working"), working(reckoning)));
        return Section.of(reckoning.question().id(), reckoning.asked(), contents);
    }

    private List<Content> working(Reckoned.Reckoning reckoning) {
        List<Content> contents = new ArrayList<>();
        contents.add(table(new Grid(
                "",
                Stream.of("figure", "value", "origin")
                        .map(column -> draft.word("worked-out." + column))
                        .toList(),
                reckoning.inputs().stream()
                        .map(input -> List.of(input.name(), input.value(), origin(input.origin())))
                        .toList())));
        contents.add(paragraph(reckoning.formula()));
        contents.add(bullets(reckoning.steps()));
        contents.add(paragraph(draft.word("worked-out.source") + " " + reckoning.source()));
        return contents;
    }

    private String origin(Input.Origin origin) {
        if (origin instanceof Input.Origin.Usual usual) {
            return draft.word("worked-out.usual") + " " + usual.source();
        }
        if (origin instanceof Input.Origin.Unverified unverified) {
            String planned = draft.word("worked-out.unverified");
            return draft.copy() == Copy.STAFF ? planned + ": " + unverified.doubt() : planned;
        }
        return draft.word("worked-out.described");
    }

    private Content table(Grid grid) {
        return new Content.Text(new Block.Table(
                grid.head().stream().map(WorkedOut::text).toList(),
                grid.rows().stream()
                        .map(row -> row.stream().map(WorkedOut::text).toList())
                        .toList()));
    }

    private static Content bullets(List<String> lines) {
        return new Content.Text(
                new Block.Bullets(lines.stream().map(WorkedOut::text).toList()));
    }

    private static Content paragraph(String words) {
        return new Content.Text(new Block.Paragraph(text(words)));
    }

    private static List<Inline> text(String words) {
        return List.of(new Inline.Text(words));
    }
}
