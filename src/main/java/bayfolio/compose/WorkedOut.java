package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.PageKind;
import bayfolio.document.Section;
import bayfolio.document.Stamp;
import bayfolio.reckon.Calculator;
import bayfolio.reckon.Question;
import bayfolio.reckon.Reckoned;
import bayfolio.reckon.Reckonings;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What came of each question for the coach; those that are about nothing on it are left away. */
final class WorkedOut {
    private final Map<Question, Reckoned> answers = new EnumMap<>(Question.class);
    private final Map<Question, Calculator> calculators = new EnumMap<>(Question.class);

    WorkedOut(CoachView view) {
        Reckonings.of(view.coach()).forEach(each -> {
            if (!(each instanceof Reckoned.Lacking lacking && lacking.facts().isEmpty())) {
                answers.put(each.question(), each);
            }
        });
        Reckonings.calculators(view.coach()).forEach(each -> calculators.put(each.question(), each));
    }

    Stream<Reckoned> answers() {
        return answers.values().stream();
    }

    Optional<Calculator> calculator(Question question) {
        return Optional.ofNullable(calculators.get(question));
    }

    /** Renters are not told what the description lacks. */
    static Audience audience(Reckoned answer) {
        return Audience.staffIf(answer instanceof Reckoned.Lacking);
    }

    static String asked(Reckoned answer) {
        return answer instanceof Reckoned.Reckoning reckoning ? reckoning.asked() : ((Reckoned.Lacking) answer).asked();
    }

    /** The answer to a question on a page where it is needed; it lives on its own. */
    Optional<Section> quoted(Stamp page, Question question) {
        return Optional.ofNullable(answers.get(question)).map(answer -> {
            Stamp section = page.child(question.id()).seenBy(audience(answer));
            return Section.of(
                    section,
                    asked(answer),
                    List.of(new Content.Quote(section.child("quote"), PageKind.QUESTION.node(question.id()))));
        });
    }
}
