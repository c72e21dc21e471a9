package bayfolio.check.orphan;

import bayfolio.check.CheckedCoach;
import bayfolio.fact.FactVisitor;
import bayfolio.fact.Type;
import bayfolio.fact.UnreadException;
import bayfolio.model.Thing;
import bayfolio.prose.Target;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What of a coach something speaks of.
 *
 * @param byProcedures kind and id of the things that procedures link to
 * @param byFacts ids that other facts refer to
 */
record Mentioned(Set<String> byProcedures, Set<String> byFacts) {
    static Mentioned on(CheckedCoach coach) {
        if (!coach.unit().facts().whole()) {
            throw new UnreadException("what could not be read may name it");
        }
        Set<String> procedures = new HashSet<>();
        coach.procedures().stream().flatMap(procedure -> procedure.links()).forEach(link -> {
            if (link.target() instanceof Target.OfThing thing) {
                procedures.add(thing.kind() + ":" + thing.id());
            }
        });
        Set<String> facts = new HashSet<>();
        FactVisitor.of(coach.unit().facts(), (type, value) -> {
            if (type instanceof Type.Reference) {
                facts.add(value.value().toString());
            }
        });
        return new Mentioned(procedures, facts);
    }

    boolean linked(Thing thing) {
        return byProcedures.contains(thing.kind() + ":" + thing.id());
    }

    /** Whether a procedure links to it or another fact names it. */
    boolean spoken(Thing thing) {
        return linked(thing) || byFacts.contains(thing.id());
    }

    static Stream<Thing> inside(Thing compartment, CheckedCoach coach) {
        return coach.unit()
                .things()
                .filter(thing -> thing.spot()
                        .flatMap(spot -> spot.in())
                        .filter(compartment.id()::equals)
                        .isPresent());
    }
}
