package bayfolio.procedure;

import bayfolio.finding.Article;
import bayfolio.model.Role;
import bayfolio.model.Thing;
import bayfolio.model.Wording;
import bayfolio.template.Names;
import bayfolio.template.Value;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/**
 * All things of one kind under their roles, {@code tank.gray}, and under their ids.
 *
 * @param staff see {@link RecordNames}
 * @param own whether ids are names, as in texts of this coach alone
 */
record KindNames(Wording wording, String kind, boolean staff, boolean own) implements Names {
    @Override
    public Value find(String idOrRole) {
        List<Thing> named =
                own ? wording.coach().named(kind, idOrRole) : wording.coach().inRole(kind, idOrRole);
        if (!staff && named.stream().anyMatch(Thing::forStaff)) {
            return Withheld.thing(kind, idOrRole);
        }
        if (!named.isEmpty()
                && (staff || own || !named.stream().allMatch(wording.coach().unit()::worksWhatIsOutOfBounds))) {
            return new Value.Many(
                    idOrRole,
                    named.stream()
                            .<Value>map(thing -> new Value.Inner(new ThingNames(wording, thing, staff)))
                            .toList());
        }
        return wording.coach()
                        .fleet()
                        .role(idOrRole)
                        .filter(role -> role.kind().equals(kind))
                        .isPresent()
                ? new Value.Absent(
                        "no " + kind + " of this coach has the role `" + idOrRole + "`",
                        "Give "
                                + Article.a(kind)
                                + " the role, or guard the text with {{#"
                                + kind
                                + "."
                                + idOrRole
                                + "}}.")
                : new Value.Unknown();
    }

    @Override
    public Collection<String> known() {
        return Stream.concat(
                        wording.coach()
                                .things()
                                .filter(thing -> own && thing.kind().equals(kind) && (staff || !thing.forStaff()))
                                .map(Thing::id),
                        wording.coach().fleet().roles().stream()
                                .filter(role -> role.kind().equals(kind))
                                .map(Role::id))
                .toList();
    }
}
