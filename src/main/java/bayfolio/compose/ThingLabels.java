package bayfolio.compose;

import bayfolio.document.Content;
import bayfolio.document.Stamp;
import bayfolio.fact.Key;
import bayfolio.fact.Type;
import bayfolio.model.Access;
import bayfolio.model.Compartment;
import bayfolio.model.Switch;
import bayfolio.model.Thing;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What is stuck on each door and beside each switch, with the short address of its page. */
final class ThingLabels {
    /** What one must know before a door is opened; what hurts comes first. */
    private static final List<Key<String>> BEFORE_A_DOOR = List.of(
            Compartment.DANGER,
            Compartment.NEVER_STORE,
            Compartment.KEEP_CLEAR,
            Compartment.CLEARANCE,
            Compartment.WHEN,
            Compartment.SHUT_LOOK,
            Compartment.ACCESS_REASON);

    private static final List<Key<String>> BEFORE_A_SWITCH =
            List.of(Switch.WRONG_USE, Switch.NEEDS, Switch.WORK, Switch.ACCESS_REASON);

    private final CoachView view;
    private final Map<String, Integer> codes = new HashMap<>();

    ThingLabels(CoachView view) {
        this.view = view;
        view.things(Compartment.SHAPE.name())
                .forEach(door -> DoorCode.all(door.name()).forEach(code -> codes.merge(code, 1, Integer::sum)));
    }

    /** Of a bay that goes right through there is one for each of its doors; of what is at a site there is none. */
    List<Content> of(Stamp section, Thing thing) {
        if (thing instanceof Switch && view.coach().fleet().siteThings().noneMatch(thing::equals)) {
            return List.of(label(
                    section.child("label"), thing, "", thing.name(), warnings(thing, BEFORE_A_SWITCH), thing.id()));
        }
        if (!(thing instanceof Compartment)) {
            return List.of();
        }
        List<String> all = DoorCode.all(thing.name());
        return (all.isEmpty() ? List.of("") : all)
                .stream()
                        .map(code -> label(
                                section.child("label" + (all.size() > 1 ? "-" + code.toLowerCase(Locale.ROOT) : "")),
                                thing,
                                code,
                                DoorCode.without(thing.name()),
                                warnings(thing, BEFORE_A_DOOR),
                                codes.getOrDefault(code, 0) == 1 ? code : thing.id()))
                        .toList();
    }

    private Content label(Stamp stamp, Thing thing, String code, String name, List<String> warnings, String address) {
        Access access = thing.facts().find("access", Access.class).orElse(Access.FREE);
        return new Content.Label(
                stamp.in(view.language(thing)),
                CoachView.link(thing),
                code,
                name,
                warnings,
                "access-" + Type.word(access),
                view.word("label.access-" + Type.word(access)),
                ShortAddress.of(view.coach(), address));
    }

    private List<String> warnings(Thing thing, List<Key<String>> keys) {
        FactRows rows = new FactRows(view);
        // That nothing is known of a danger is no warning.
        String nothing = view.word("label.nothing");
        return keys.stream()
                .filter(key -> thing.facts()
                        .find(key)
                        .filter(it -> !it.startsWith(nothing))
                        .isPresent())
                .map(key -> view.words()
                        .say(
                                "label.warning",
                                "about",
                                rows.label(thing.facts().shape(), key),
                                "words",
                                rows.plain(thing, key)))
                .toList();
    }
}
