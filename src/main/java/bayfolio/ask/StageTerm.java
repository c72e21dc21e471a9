package bayfolio.ask;

import bayfolio.procedure.Stage;
import java.util.List;

/** All procedures, guides and questions of a part of the trip that are for a coach: {@code stage:emergency}. */
record StageTerm(Stage stage) implements Term {
    @Override
    public List<Answer> on(AskedCoach coach) {
        return coach.library().all(coach.coach().unit()).stream()
                .filter(script -> script.head().stage() == stage)
                .map(script -> ScriptTerm.answer(coach, script))
                .toList();
    }
}
