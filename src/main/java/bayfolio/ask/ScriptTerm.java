package bayfolio.ask;

import bayfolio.procedure.Form;
import bayfolio.procedure.Head;
import bayfolio.procedure.Script;
import java.util.List;

/** A procedure or trouble guide that is for a coach: {@code procedure:dump-tanks-gravity}. */
record ScriptTerm(Form form, String id) implements Term {
    @Override
    public List<Answer> on(AskedCoach coach) {
        return coach.library().named(coach.coach().unit(), id).stream()
                .filter(script -> script.form() == form)
                .map(script -> answer(coach, script))
                .toList();
    }

    static Answer answer(AskedCoach coach, Script script) {
        return Answer.of(
                coach.id(),
                script.form().scheme() + ":" + script.id(),
                script.head().title(),
                script.head().facts().at(Head.TITLE));
    }
}
