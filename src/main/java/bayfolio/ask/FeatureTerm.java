package bayfolio.ask;

import java.util.List;

/** What a coach has by its facts: {@code feature:generator}. */
record FeatureTerm(String feature) implements Term {
    @Override
    public List<Answer> on(AskedCoach coach) {
        return coach.coach().features().contains(feature)
                ? List.of(Answer.of(
                        coach.id(),
                        "feature:" + feature,
                        coach.words().say("yes"),
                        coach.coach()
                                .unit()
                                .equipment()
                                .at(coach.coach().unit(), feature)
                                .orElse(coach.coach().unit().facts().at())))
                : List.of();
    }
}
