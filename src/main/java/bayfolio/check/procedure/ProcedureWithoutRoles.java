package bayfolio.check.procedure;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.Kinds;
import bayfolio.procedure.Head;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.Script;
import bayfolio.prose.Target;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Flags a procedure that applies to a coach on which nothing holds any of the roles that it speaks
 * of.
 */
public final class ProcedureWithoutRoles implements Rule {
    private static final Pattern SECTION = Pattern.compile("\\{\\{([#^/])[^{}\n]*+}}");

    private static final Pattern NAMED = Pattern.compile("\\b([a-z]+)[:.]([a-z0-9]+(?:-[a-z0-9]+)*)");

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.procedures().stream().flatMap(procedure -> check(procedure, coach).stream());
    }

    private static Optional<Finding> check(Procedure procedure, CheckedCoach coach) {
        // Most name something that holds a role, which is seen sooner than all roles are found.
        boolean holds = procedure
                .links()
                .anyMatch(link -> link.target() instanceof Target.OfThing thing
                        && coach.coach()
                                .thing(thing.kind(), thing.id())
                                .filter(it -> !it.roles().isEmpty())
                                .isPresent());
        if (holds) {
            return Optional.empty();
        }
        Optional<Script> script = coach.library().named(coach.unit(), procedure.id());
        Set<String> roles = script.map(it -> roles(it, coach.coach().fleet())).orElse(Set.of());
        boolean none = !roles.isEmpty()
                && coach.coach()
                        .things()
                        .noneMatch(thing -> thing.roles().stream().anyMatch(roles::contains));
        return none
                ? Optional.of(Finding.error(
                                "procedure-without-roles",
                                procedure.head().facts().at(Head.WHEN),
                                "procedure `"
                                        + procedure.id()
                                        + "` applies, and this coach holds none of its roles: "
                                        + String.join(", ", roles))
                        .mend("Narrow `when`, or give things of the coach these roles."))
                : Optional.empty();
    }

    private static Set<String> roles(Script script, Fleet fleet) {
        Set<String> roles = new TreeSet<>();
        for (Named named : script.once("", (it, nothing) -> named(it))) {
            if (fleet.role(named.name)
                    .filter(role -> role.kind().equals(named.kind))
                    .isPresent()) {
                roles.add(named.name);
            }
        }
        return roles;
    }

    /** What a script names that may be a role. */
    private record Named(String kind, String name) {}

    private static Set<Named> named(Script script) {
        return NAMED.matcher(outsideSections(script.body()))
                .results()
                .map(match -> new Named(match.group(1), match.group(2)))
                .filter(named -> Kinds.named(named.kind).isPresent())
                .collect(Collectors.toUnmodifiableSet());
    }

    private static String outsideSections(String body) {
        StringBuilder outside = new StringBuilder();
        int depth = 0;
        int from = 0;
        Matcher tag = SECTION.matcher(body);
        while (tag.find()) {
            if (depth == 0) {
                outside.append(body, from, tag.start());
            }
            depth += tag.group(1).equals("/") ? -1 : 1;
            from = tag.end();
        }
        return outside.append(body.substring(from)).toString();
    }
}
