package bayfolio.ask;

import bayfolio.model.Role;
import bayfolio.model.Thing;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.List;

/** All that hold a role, whatever kind of thing that is: {@code role:black-dump-valve}. */
record RoleTerm(Role role) implements Term {
    @Override
    public List<Answer> on(AskedCoach coach) {
        return coach.coach().holders(role.kind(), role.id()).stream()
                .map(thing -> Answer.of(coach.id(), thing.kind() + "." + thing.id(), thing.name(), at(thing)))
                .toList();
    }

    /** Where it is given the role. */
    private Place at(Thing thing) {
        return thing.facts().ifRead(thing.identity().roles()).stream()
                .flatMap(roles -> roles.value().stream())
                .filter(held -> held.value().equals(role.id()))
                .map(Located::at)
                .findFirst()
                .orElse(thing.at());
    }
}
