package bayfolio.check.procedure;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.model.Setup;
import bayfolio.model.Whose;
import bayfolio.procedure.Form;
import bayfolio.procedure.Head;
import bayfolio.procedure.Script;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Flags what a renter is told to set up at a site, and on this coach never told to take back. */
public final class SetUpNeverUndone implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        List<Script> scripts = coach.library().all(coach.unit()).stream()
                .filter(script -> script.head().who().forRenters())
                .toList();
        Set<String> undone = scripts.stream()
                .flatMap(script -> script.head().facts().all(Head.REVERSES).stream())
                .collect(Collectors.toSet());
        // A name that is none is told where it stands; which one was meant nobody knows.
        if (!undone.stream().allMatch(id -> coach.library().knows(Form.PROCEDURE, id, Whose.ALL))) {
            return Stream.empty();
        }
        return scripts.stream()
                .filter(script -> script.head().facts().has(Head.SETS_UP) && !undone.contains(script.id()))
                .map(SetUpNeverUndone::finding);
    }

    private static Finding finding(Script script) {
        Setup.Turn turn = script.head().facts().get(Head.SETS_UP);
        return Finding.error(
                        "set-up-never-undone",
                        script.head().facts().at(Head.SETS_UP),
                        "procedure `" + script.id() + "` sets up `" + Type.word(turn)
                                + "`, and none for renters of this coach takes that back")
                .mend("Name it under `reverses` of a procedure that applies to this coach.");
    }
}
