package bayfolio.check.access;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
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
        Access own = fact(thing.facts(), "access", Access.class).orElse(Access.FREE);
        Optional<Access> around = coach.around(thing).map(it -> it.access());
        boolean emergency =
                fact(thing.facts(), "emergency", Boolean.class).orElse(false)
                        || coach.around(thing).filter(it -> it.emergency()).isPresent();
        return new Reach(around.filter(it -> it.compareTo(own) > 0).orElse(own), emergency);
    }

    /** Things of several kinds have these keys, each in a declaration of its own. */
    private static <T> Optional<T> fact(Facts facts, String name, Class<T> type) {
        return facts.shape()
                .key(name)
                .flatMap(key -> value(facts, key))
                .filter(type::isInstance)
                .map(type::cast);
    }

    private static <V> Optional<V> value(Facts facts, Key<V> key) {
        return facts.find(key);
    }

    String word() {
        return Type.word(access);
    }
}
