package bayfolio.rename;

import bayfolio.fact.UnreadException;
import bayfolio.model.Coach;
import bayfolio.model.Thing;
import java.util.List;

/** What a name in a text means on a coach, as far as that is known. */
final class Meaning {
    private Meaning() {}

    /** All that hold a role; none where that could not be read. */
    static List<Thing> holders(Coach coach, String kind, String role) {
        try {
            return coach.inRole(kind, role);
        } catch (UnreadException nobodyKnows) {
            return List.of();
        }
    }

    /** All that are meant; none where that could not be read. */
    static List<Thing> named(Coach coach, boolean own, String kind, String name) {
        try {
            return own ? coach.named(kind, name) : coach.inRole(kind, name);
        } catch (UnreadException nobodyKnows) {
            return List.of();
        }
    }
}
