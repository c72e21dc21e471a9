package bayfolio.check.procedure;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.document.SentPage;
import bayfolio.finding.Finding;
import bayfolio.procedure.Head;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Flags two procedures of a coach whose short addresses are one, or one that is that of a label or of a page of the program. */
public final class SpokenTwice implements Rule {
    private static final Set<String> LABELED = Set.of("compartment", "switch");

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Map<String, String> taken = new HashMap<>();
        SentPage.ALL.forEach(page -> taken.put(page.id(), "the page `" + page.id() + "`"));
        coach.unit()
                .things()
                .filter(thing -> LABELED.contains(thing.kind()))
                .forEach(thing -> taken.put(thing.id(), "the label of " + thing.kind() + " `" + thing.id() + "`"));
        return coach.procedures().stream().filter(it -> it.form().hasSteps()).flatMap(procedure -> {
            String other = taken.putIfAbsent(procedure.head().spoken(), "procedure `" + procedure.id() + "`");
            return other == null
                    ? Stream.of()
                    : Stream.of(Finding.error(
                                    "spoken-twice",
                                    procedure.head().facts().at(Head.SPOKEN),
                                    "the short address of `" + procedure.id() + "` ends with `"
                                            + procedure.head().spoken() + "`, and so does that of " + other)
                            .mend("Give it a word of its own, one that is easy to say: `spoken: dump`."));
        });
    }
}
