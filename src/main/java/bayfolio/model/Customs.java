package bayfolio.model;

import bayfolio.fact.UnreadException;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the coaches of a fleet have in common: which roles something of each holds. Counted once, so that a coach need not be held
 * against each other one.
 */
public final class Customs {
    static final Customs NONE = new Customs();

    /** Fewer coaches tell no custom. */
    private static final int SISTERS = 2;

    private static final int OTHERS = 3;

    private final Group all = new Group();
    private final Map<Unit.Body, Group> byBody = new EnumMap<>(Unit.Body.class);

    /** Some coaches, and how many of them hold each role. */
    private static final class Group {
        private final Map<String, Integer> holders = new HashMap<>();
        private int coaches;

        void add(Unit unit, List<Role> roles) {
            coaches++;
            for (Role role : roles) {
                if (holds(unit, role)) {
                    holders.merge(role.id(), 1, Integer::sum);
                }
            }
        }

        /** Whether at least so many others hold it, and all of them; the one in question is one of the coaches and does not. */
        boolean allOthersHold(Role role, int least) {
            return coaches > least && holders.getOrDefault(role.id(), 0) == coaches - 1;
        }
    }

    private Customs() {}

    /** @param fleet of which all coaches could be read, or what could not be may be without it, too */
    static Customs of(Fleet fleet) {
        if (!fleet.coachesRead()) {
            return NONE;
        }
        Customs customs = new Customs();
        fleet.units().stream().filter(unit -> !unit.draft()).forEach(unit -> {
            customs.all.add(unit, fleet.roles());
            body(unit)
                    .ifPresent(body -> customs.byBody
                            .computeIfAbsent(body, it -> new Group())
                            .add(unit, fleet.roles()));
        });
        return customs;
    }

    private static Optional<Unit.Body> body(Unit unit) {
        return unit.facts().find(Unit.BODY);
    }

    /** Where that is not known, it is no custom. */
    private static boolean holds(Unit unit, Role role) {
        try {
            return unit.holds(role.id());
        } catch (UnreadException nobodyKnows) {
            return false;
        }
    }

    /**
     * Those of some roles that nothing of a coach holds, while all others of its body have them, or all others of the fleet.
     *
     * @param unit no draft
     */
    public List<String> missing(Unit unit, List<Role> roles) {
        Group sisters = body(unit).map(byBody::get).orElseGet(Group::new);
        return roles.stream()
                .filter(role -> sisters.allOthersHold(role, SISTERS) || all.allOthersHold(role, OTHERS))
                .map(Role::id)
                .filter(role -> !unit.holds(role))
                .toList();
    }
}
