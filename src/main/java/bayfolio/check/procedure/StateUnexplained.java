package bayfolio.check.procedure;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.procedure.Procedure;
import bayfolio.prose.Block;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;

/** Flags a switch that a procedure wants in a state of which the description says not how it comes there or looks. */
public final class StateUnexplained implements Rule {
    /** @param key that the description leaves out */
    private record Gap(String kind, String id, String key) {}

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Map<Gap, Finding> first = new LinkedHashMap<>();
        coach.procedures()
                .forEach(procedure -> procedure
                        .handled()
                        .filter(handled -> !handled.unsaid().isEmpty())
                        .forEach(handled -> handled.unsaid()
                                .forEach(key -> first.computeIfAbsent(
                                        new Gap(
                                                handled.target().kind(),
                                                handled.target().id(),
                                                key),
                                        gap -> finding(procedure, handled, gap, coach)))));
        return first.values().stream();
    }

    private static Finding finding(Procedure procedure, Block.Handled handled, Gap gap, CheckedCoach coach) {
        return Finding.warning(
                        "state-unexplained",
                        coach.coach().thing(gap.kind(), gap.id()).orElseThrow().at(),
                        "%s `%s` wants switch `%s` %s, and the description has no `%s`"
                                .formatted(
                                        procedure.form().called(),
                                        procedure.id(),
                                        gap.id(),
                                        handled.state(),
                                        gap.key()))
                .mend("Go and look: state `" + gap.key() + "`, which stands there below the step.");
    }
}
