package bayfolio.model;

import bayfolio.fact.Type;
import bayfolio.fact.UnreadException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** A unit where it works: with what its fleet and every site add to it. Looks things up by id and by role. */
public final class Coach {
    private final Fleet fleet;
    private final Unit unit;
    private final List<Thing> things;
    private final List<Thing> walked;
    private final Features features;
    private final Map<Name, Thing> byId;
    private final Map<Name, List<Thing>> byRole;

    /** Ids that two things of a kind have; which of them is meant nobody knows. */
    private final Set<Name> twice;

    private record Name(String kind, String idOrRole) {}

    public Coach(Fleet fleet, Unit unit) {
        this.fleet = fleet;
        this.unit = unit;
        this.things = Stream.concat(unit.things(), fleet.siteThings()).toList();
        this.features = unit.features();
        this.byId = new LinkedHashMap<>();
        this.byRole = new LinkedHashMap<>();
        this.twice = new HashSet<>();
        for (Thing thing : things) {
            if (byId.putIfAbsent(new Name(thing.kind(), thing.id()), thing) != null) {
                twice.add(new Name(thing.kind(), thing.id()));
            }
        }
        this.walked = walked(unit, things);
        for (Thing thing : walked) {
            thing.facts().ifRead(thing.identity().roles()).stream()
                    .flatMap(roles -> roles.value().stream())
                    .forEach(role -> byRole.computeIfAbsent(
                                    new Name(thing.kind(), role.value()), it -> new ArrayList<>())
                            .add(thing));
        }
    }

    private Coach(Fleet fleet, Coach same) {
        this.fleet = fleet;
        this.unit = same.unit;
        this.things = same.things;
        this.features = same.features;
        this.byId = same.byId;
        this.byRole = same.byRole;
        this.twice = same.twice;
        this.walked = same.walked;
    }

    /** Where it could not be read in which order they are met, in that of the description. */
    private static List<Thing> walked(Unit unit, List<Thing> things) {
        try {
            return new WalkingOrder(unit).order(things);
        } catch (UnreadException nobodyKnows) {
            return things;
        }
    }

    public Fleet fleet() {
        return fleet;
    }

    public Unit unit() {
        return unit;
    }

    /** Where it is hired out; empty where that is not on the list of countries. */
    public Optional<Country> country() {
        return fleet.country(unit);
    }

    /** Where else it may be taken. */
    public List<Country> abroad() {
        return fleet.abroad(unit);
    }

    /** The same in a fleet of one. */
    public Coach alone() {
        return new Coach(fleet.alone(unit), this);
    }

    public Features features() {
        return features;
    }

    /** Whether it is known which ids things of a kind have, on the coach and at the site. */
    public boolean idsRead(String kind) {
        return unit.idsRead(kind) && fleet.siteRead(kind);
    }

    /** Everything that a reference may name: the coach's own things, then those of the site. */
    public Stream<Thing> things() {
        return things.stream();
    }

    /** The same in walking order. */
    public Stream<Thing> walked() {
        return walked.stream();
    }

    public Optional<Thing> thing(String kind, String id) {
        return Optional.ofNullable(byId.get(new Name(kind, id)));
    }

    /** The thing that a reference in the description names. */
    public Optional<Thing> referred(Type.Reference reference, String id) {
        return reference.kinds().stream()
                .flatMap(kind -> thing(kind, id).stream())
                .findFirst();
    }

    /** Whether two things of that kind have that id, which is told where it is written. */
    public boolean twice(String kind, String id) {
        return twice.contains(new Name(kind, id));
    }

    /** What a thing is for, as far as the list of roles knows it. */
    public Stream<Role> roles(Thing thing) {
        return thing.roles().stream().flatMap(role -> fleet.role(role).stream());
    }

    /** What a thing belongs to, by its first role that says so. */
    public Optional<CoachSystem> system(Thing thing) {
        return roles(thing)
                .flatMap(role -> role.facts().find(Role.SYSTEM).stream())
                .findFirst();
    }

    /** All that hold a role, in walking order, if that is known. */
    public List<Thing> holders(String kind, String role) {
        if (!rolesRead(kind)) {
            throw unread(kind, role);
        }
        List<Thing> holders = read(kind, role);
        // Asked of each again, so that whoever watches the facts learns what the answer hangs on.
        holders.forEach(Thing::roles);
        return holders;
    }

    /** All that hold a role, in walking order; the one name by which texts for several coaches speak of things. */
    public List<Thing> inRole(String kind, String role) {
        List<Thing> holders = read(kind, role);
        if (holders.isEmpty() && !rolesRead(kind)) {
            throw unread(kind, role);
        }
        return holders;
    }

    private static UnreadException unread(String kind, String role) {
        return new UnreadException("it could not be read which " + kind + " has the role " + role);
    }

    /** As far as it could be read. */
    private List<Thing> read(String kind, String role) {
        return List.copyOf(byRole.getOrDefault(new Name(kind, role), List.of()));
    }

    private boolean rolesRead(String kind) {
        return unit.rolesRead(kind) && fleet.siteRead(kind);
    }

    /**
     * What a reference in a text of its own names, if that is known: the thing of that id, or all holders of that role in walking order. A thing
     * that is called like a role which it shares with others stands for them all, so that none is left out in silence.
     */
    public List<Thing> named(String kind, String idOrRole) {
        List<Thing> holders = read(kind, idOrRole);
        if (holders.isEmpty() && thing(kind, idOrRole).isEmpty() && !(idsRead(kind) && rolesRead(kind))) {
            throw new UnreadException("it could not be read whether " + idOrRole + " is a " + kind);
        }
        return thing(kind, idOrRole)
                .filter(thing -> !holders.contains(thing))
                .map(List::of)
                .orElse(holders);
    }

    /** The compartment that a thing is in, if it is in one. */
    public Optional<Compartment> around(Thing thing) {
        return thing.spot()
                .flatMap(Spot::in)
                .flatMap(id -> thing(Compartment.SHAPE.name(), id))
                .map(Compartment.class::cast);
    }

    /** Languages of its handbook, the default first: its own, or those of the fleet. */
    public List<String> languages() {
        List<String> own = Fleet.languages(unit.facts(), Unit.LANGUAGES);
        return own.isEmpty() ? fleet.languages() : own;
    }
}
