package bayfolio.ask;

import bayfolio.procedure.Stated;
import java.util.List;

/** A dotted name, which holds where the coach states it: {@code tank.gray.capacity}. */
record FactTerm(String name) implements Term {
    @Override
    public List<Answer> on(AskedCoach coach) {
        return Stated.under(name, coach.coach(), coach.library(), coach.words()).stream()
                .map(stated -> Answer.of(coach.id(), stated))
                .toList();
    }
}
