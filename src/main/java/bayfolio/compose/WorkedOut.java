package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.explain.Begin;
import bayfolio.explain.Calculator;
import bayfolio.explain.Explained;
import bayfolio.explain.Explanations;
import bayfolio.reckon.Question;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What came of each question for the coach; those that are about nothing on it are left away. */
final class WorkedOut {
    private final Map<Question, Explained> answers = new EnumMap<>(Question.class);
    private final Map<Question, Calculator> calculators = new EnumMap<>(Question.class);

    WorkedOut(CoachView view) {
        Explanations.of(view.coach(), view.words()).forEach(each -> {
            if (!(each instanceof Explained.Lacking lacking && lacking.facts().isEmpty())) {
                answers.put(each.question(), each);
            }
        });
        Explanations.calculators(view.coach(), view.words()).forEach(each -> calculators.put(each.question(), each));
    }

    Stream<Explained> answers() {
        return answers.values().stream();
    }

    Optional<Calculator> calculator(Question question) {
        return Optional.ofNullable(calculators.get(question));
    }

    /** Renters are not told what the description lacks. */
    static Audience audience(Explained answer) {
        return Audience.staffIf(answer instanceof Explained.Lacking);
    }

    /** The answer to a question on a page where it is needed; it lives on its own. */
    Optional<Section> quoted(Stamp page, Question question, Begin begin) {
        return Optional.ofNullable(answers.get(question)).map(answer -> {
            Stamp section = page.child(question.id()).seenBy(audience(answer));
            return Section.of(
                    section,
                    answer.asked(),
                    List.of(new Content.Quote(section.child("quote"), PageKind.QUESTION.node(question.id()), begin)));
        });
    }
}
