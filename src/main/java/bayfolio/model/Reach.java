package bayfolio.model;

import bayfolio.fact.Type;
import bayfolio.prose.Target;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Who can come at a thing: by its own access and by that of the compartment that it is in, the
 * stricter of the two.
 */
public record Reach(Access access, boolean emergency) {
    public static Reach of(Thing thing, Coach coach) {
        Access own = thing.facts().find("access", Access.class).orElse(Access.FREE);
        Optional<Access> around = coach.around(thing).map(it -> it.access());
        boolean emergency = thing.facts().find("emergency", Boolean.class).orElse(false)
                || coach.around(thing).filter(it -> it.emergency()).isPresent();
        return new Reach(around.filter(it -> it.compareTo(own) > 0).orElse(own), emergency);
    }

    /**
     * Things that only those of an access come at, and that are not for an emergency. Of a kind whose ids could not be
     * told apart, none.
     */
    public static Set<Target> all(Access access, Coach coach) {
        return coach.things()
                .filter(thing -> coach.idsRead(thing.kind()))
                .filter(thing -> {
                    Reach reach = of(thing, coach);
                    return reach.access == access && !reach.emergency;
                })
                .map(thing -> new Target.OfThing(thing.kind(), thing.id()))
                .collect(Collectors.toUnmodifiableSet());
    }

    public String word() {
        return Type.word(access);
    }
}
