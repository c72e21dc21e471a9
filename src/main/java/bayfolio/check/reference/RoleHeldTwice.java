package bayfolio.check.reference;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Role;
import bayfolio.model.Thing;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a role of which a coach has one only, and that two of its things hold. */
public final class RoleHeldTwice implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Map<String, Thing> first = new HashMap<>();
        List<Finding> findings = new ArrayList<>();
        coach.unit().things().forEach(thing -> {
            for (Located<String> role :
                    thing.facts().find(thing.identity().roles()).orElse(List.of())) {
                Optional<Thing> before = Optional.ofNullable(first.putIfAbsent(role.value(), thing));
                if (single(role.value(), thing, coach)) {
                    before.filter(it -> it != thing && it.kind().equals(thing.kind()))
                            .ifPresent(it -> findings.add(finding(role, thing, it)));
                }
            }
        });
        return findings.stream();
    }

    private static boolean single(String role, Thing thing, CheckedCoach coach) {
        return coach.coach()
                .fleet()
                .role(role)
                .filter(it -> it.kind().equals(thing.kind()))
                .flatMap(it -> it.facts().find(Role.SEVERAL))
                .filter(Role.Several.NO::equals)
                .isPresent();
    }

    private static Finding finding(Located<String> role, Thing thing, Thing before) {
        return Finding.warning(
                        "role-held-twice",
                        role.at(),
                        thing.kind() + " `" + thing.id() + "` holds the role `" + role.value() + "`, and so does `"
                                + before.id() + "`")
                .mend("Leave it to one of them; a coach has one such thing only.");
    }
}
