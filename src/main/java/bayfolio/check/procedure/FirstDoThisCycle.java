package bayfolio.check.procedure;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.procedure.Procedure;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Flags procedures that each send to the other, in the opening or the first step, before anything
 * is done.
 */
public final class FirstDoThisCycle implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Map<String, List<Inline.Link>> first = new HashMap<>();
        coach.procedures().forEach(procedure -> first.put(procedure.id(), first(procedure)));
        return coach.procedures().stream()
                .flatMap(procedure -> first.getOrDefault(procedure.id(), List.of()).stream()
                        .filter(link -> leads(target(link), procedure.id(), first))
                        .map(link -> Finding.error(
                                        "first-do-this-cycle",
                                        link.at(),
                                        "procedure `"
                                                + procedure.id()
                                                + "` begins with procedure `"
                                                + target(link)
                                                + "`, which begins with `"
                                                + procedure.id()
                                                + "` again")
                                .mend("Take one of the references out, or move it behind the first step.")));
    }

    private static List<Inline.Link> first(Procedure procedure) {
        return Stream.concat(
                        procedure.opening().stream(), procedure.steps().limit(1).flatMap(step -> step.text().stream()))
                .flatMap(Block::links)
                .filter(link -> link.target() instanceof Target.OfProcedure)
                .toList();
    }

    private static String target(Inline.Link link) {
        return ((Target.OfProcedure) link.target()).id();
    }

    /** Whether one procedure begins, by however many others, with another. */
    private static boolean leads(String from, String to, Map<String, List<Inline.Link>> first) {
        Set<String> seen = new HashSet<>();
        Deque<String> open = new ArrayDeque<>(List.of(from));
        while (!open.isEmpty()) {
            String id = open.pop();
            if (id.equals(to)) {
                return true;
            }
            if (seen.add(id)) {
                first.getOrDefault(id, List.of()).forEach(link -> open.push(target(link)));
            }
        }
        return false;
    }
}
