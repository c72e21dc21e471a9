package bayfolio.procedure;

import bayfolio.fact.Shape;
import bayfolio.model.Switch;
import bayfolio.model.Thing;
import bayfolio.model.Wording;
import bayfolio.model.Zone;
import bayfolio.template.Names;
import bayfolio.template.Value;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/**
 * A thing under the names of its keys, its {@code place} in words, and of a switch whether it heats or cools a room.
 *
 * @param staff see {@link RecordNames}
 */
record ThingNames(Wording wording, Thing thing, boolean staff) implements Names {
    /** Where it is, put together from side, compartment and words. */
    static final String PLACE = "place";

    private static final String HEATS = "heats";
    private static final List<String> ZONE = List.of(HEATS, "cools");

    @Override
    public Value find(String name) {
        if (thing instanceof Switch control && ZONE.contains(name)) {
            Zone zone = new Zone(wording.coach(), control);
            return new Value.Flag(name.equals(HEATS) ? zone.heats() : zone.cools());
        }
        return name.equals(PLACE) ? place() : name.equals("id") ? id() : facts().find(name);
    }

    /** With the mark that this one is meant, whatever the roles of that name. */
    private Value id() {
        return new Value.Text(References.EXACTLY + thing.id());
    }

    @Override
    public Collection<String> known() {
        List<String> names = new ArrayList<>(facts().known());
        names.addAll(derived(thing.facts().shape()));
        return names;
    }

    /** Names that are no keys. */
    static List<String> derived(Shape<?> kind) {
        return kind == Switch.SHAPE
                ? Stream.concat(Stream.of(PLACE), ZONE.stream()).toList()
                : List.of(PLACE);
    }

    private Value place() {
        String place = wording.place(thing);
        return place.isEmpty()
                ? new Value.Absent(
                        "the description does not say where " + thing.name() + " is", "State `side` or `where`.")
                : new Value.Text(place);
    }

    private RecordNames facts() {
        return new RecordNames(wording, thing.facts(), thing.name(), staff);
    }
}
