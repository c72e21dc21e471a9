package bayfolio.ask;

import bayfolio.model.Feature;
import java.util.List;

/** What a coach has by its facts: {@code feature:generator}. */
record FeatureTerm(Feature feature) implements Term {
    @Override
    public List<Answer> on(AskedCoach coach) {
        return coach.coach().features().contains(feature)
                ? List.of(Answer.of(
                        coach.id(),
                        "feature:" + feature.word(),
                        coach.words().say("yes"),
                        feature.at(coach.coach().unit())
                                .orElse(coach.coach().unit().facts().at())))
                : List.of();
    }
}
