package bayfolio.check.reference;

import bayfolio.check.Case;
import bayfolio.check.Rule;
import bayfolio.fact.Type;
import bayfolio.fact.Walkthrough;
import bayfolio.finding.Article;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Role;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a role that is not on the list of roles, or is one of another kind of thing. */
public final class UnknownRole implements Rule {
    @Override
    public Stream<Finding> check(Case coach) {
        List<Finding> findings = new ArrayList<>();
        Walkthrough.of(coach.unit().facts(), (type, value) -> {
            if (type instanceof Type.Role role) {
                check(role.kind(), value, coach.coach().fleet().roles()).ifPresent(findings::add);
            }
        });
        Walkthrough.of(coach.coach().fleet().facts().facts(), (type, value) -> {
            if (type instanceof Type.Role role) {
                check(role.kind(), value, coach.coach().fleet().roles()).ifPresent(findings::add);
            }
        });
        return findings.stream();
    }

    private static Optional<Finding> check(String kind, Located<?> value, List<Role> roles) {
        String id = value.value().toString();
        Optional<Role> role = roles.stream().filter(it -> it.id().equals(id)).findFirst();
        if (role.isPresent()) {
            return role.filter(it -> !it.kind().equals(kind))
                    .map(it -> Finding.error(
                                    "wrong-kind",
                                    value.at(),
                                    "the role `"
                                            + id
                                            + "` is one of "
                                            + Article.a(it.kind())
                                            + ", not of "
                                            + Article.a(kind))
                            .mend("Give it to " + Article.a(it.kind()) + "."));
        }
        return Optional.of(Finding.error("unknown-role", value.at(), "there is no role `" + id + "`")
                .near(NearNames.to(
                        id,
                        roles.stream()
                                .filter(it -> it.kind().equals(kind))
                                .map(Role::id)
                                .toList()))
                .mend("Roles are listed in `units/shared/roles.yaml`."));
    }
}
