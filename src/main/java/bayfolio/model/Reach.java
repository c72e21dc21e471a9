package bayfolio.model;

import bayfolio.fact.Type;
import bayfolio.prose.Target;
import bayfolio.source.Place;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Who can come at a thing: by its own access and by that of the compartment that it is in, the
 * stricter of the two.
 *
 * @param at where the one that decides is stated
 */
public record Reach(Access access, boolean emergency, Place at) {
    public static Reach of(Thing thing, Coach coach) {
        Access own = thing.facts().find("access", Access.class).orElse(Access.FREE);
        Optional<Compartment> stricter =
                coach.around(thing).filter(it -> it.access().compareTo(own) > 0);
        boolean emergency = thing.facts().find("emergency", Boolean.class).orElse(false)
                || coach.around(thing).filter(it -> it.emergency()).isPresent();
        return new Reach(
                stricter.map(Compartment::access).orElse(own),
                emergency,
                stricter.map(it -> it.facts().at(Compartment.ACCESS)).orElseGet(() -> stated(thing)));
    }

    private static Place stated(Thing thing) {
        return thing.facts()
                .shape()
                .key("access")
                .filter(thing.facts()::has)
                .map(thing.facts()::at)
                .orElseGet(thing::at);
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
