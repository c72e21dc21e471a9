package bayfolio.check.access;

import bayfolio.fact.Type;
import bayfolio.model.Access;
import bayfolio.model.Coach;
import bayfolio.model.Thing;
import java.util.Optional;

/**
 * Who can come at a thing: by its own access and by that of the compartment that it is in, the
 * stricter of the two.
 */
record Reach(Access access, boolean emergency) {
    static Reach of(Thing thing, Coach coach) {
        Access own = thing.facts().find("access", Access.class).orElse(Access.FREE);
        Optional<Access> around = coach.around(thing).map(it -> it.access());
        boolean emergency = thing.facts().find("emergency", Boolean.class).orElse(false)
                || coach.around(thing).filter(it -> it.emergency()).isPresent();
        return new Reach(around.filter(it -> it.compareTo(own) > 0).orElse(own), emergency);
    }

    String word() {
        return Type.word(access);
    }
}
