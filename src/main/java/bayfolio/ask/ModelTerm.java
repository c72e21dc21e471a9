package bayfolio.ask;

import bayfolio.model.Unit;
import java.util.List;

/** All coaches of a model: {@code model:tern-28}. */
record ModelTerm(String model) implements Term {
    @Override
    public List<Answer> on(AskedCoach coach) {
        return coach.coach().unit().facts().located(Unit.MODEL).stream()
                .filter(named -> named.value().equals(model))
                .map(named -> Answer.of(coach.id(), "model:" + model, named.value(), named.at()))
                .toList();
    }
}
