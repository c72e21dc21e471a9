package bayfolio.procedure;

import bayfolio.model.Coach;
import bayfolio.model.Thing;
import bayfolio.model.Wording;
import bayfolio.template.Names;
import bayfolio.template.Value;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * A thing under the names of its keys, and its {@code place} in words.
 *
 * @param staff see {@link RecordNames}
 */
record ThingNames(Coach coach, Thing thing, boolean staff) implements Names {
    /** Where it is, put together from side, compartment and words. */
    static final String PLACE = "place";

    @Override
    public Value find(String name) {
        return name.equals(PLACE) ? place() : name.equals("id") ? id() : facts().find(name);
    }

    /** Where it is also a role of others, a mark says that this one alone is meant. */
    private Value id() {
        boolean shared = coach.named(thing.kind(), thing.id()).size() > 1;
        return new Value.Text((shared ? References.EXACTLY : "") + thing.id());
    }

    @Override
    public Collection<String> known() {
        List<String> names = new ArrayList<>(facts().known());
        names.add(PLACE);
        return names;
    }

    private Value place() {
        String place = new Wording(coach).place(thing);
        return place.isEmpty()
                ? new Value.Absent(
                        "the description does not say where " + thing.name() + " is", "State `side` or `where`.")
                : new Value.Text(place);
    }

    private RecordNames facts() {
        return new RecordNames(coach, thing.facts(), thing.name(), staff);
    }
}
