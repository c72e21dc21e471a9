package bayfolio.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A unit where it works: with what its fleet and every site add to it. */
public record Coach(Fleet fleet, Unit unit) {

    /** Everything that a reference may name: the coach's own things, then those of the site. */
    public Stream<Thing> things() {
        return Stream.concat(unit.things(), fleet.siteThings());
    }

    public Optional<Thing> thing(String kind, String id) {
        return things().filter(thing -> thing.kind().equals(kind) && thing.id().equals(id))
                .findFirst();
    }

    /** All that hold a role, in walking order. */
    public List<Thing> holders(String kind, String role) {
        return new Walk(unit)
                .order(
                        things().filter(
                                        thing ->
                                                thing.kind().equals(kind)
                                                        && thing.roles().contains(role))
                                .toList());
    }

    /**
     * What a reference names: the thing of that id, or all holders of that role in walking order.
     */
    public List<Thing> named(String kind, String idOrRole) {
        return thing(kind, idOrRole).map(List::of).orElseGet(() -> holders(kind, idOrRole));
    }

    /** The compartment that a thing is in, if it is in one. */
    public Optional<Compartment> around(Thing thing) {
        return thing.spot()
                .flatMap(Spot::in)
                .flatMap(
                        id ->
                                unit.compartments().stream()
                                        .filter(compartment -> compartment.id().equals(id))
                                        .findFirst());
    }
}
