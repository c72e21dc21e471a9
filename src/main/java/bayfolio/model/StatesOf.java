package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How a kind of equipment has to stand in each situation: a state, {@code any}, or the fact of a coach that says it. */
public record StatesOf(Facts facts) implements Described {
    /** States that a thing can take. */
    public static final List<String> STATES =
            List.of("on", "off", "shut", "open", "in", "out", "stowed", "locked", "up", "down");

    /** What stands instead: it does not matter, it must not be in use, there is no such thing, people of the place say. */
    public static final List<String> OTHERS = List.of("any", "never", "none", "as-told");

    private static final String AS = "as ";

    private static final Type<String> STATE = new Type.Text(
            "state",
            "^(" + String.join("|", STATES) + "|" + String.join("|", OTHERS) + "|as [a-z][a-z0-9.-]*)$",
            "a state such as `off`, or `any`, `never`, `none`, `as-told`, or `as` and the name of a fact");

    private static final Shape.Draft<StatesOf> DRAFT =
            Shape.draft("states", "How a kind of equipment has to stand in each situation.");
    private static final Map<Situation, Key<String>> KEYS = new EnumMap<>(Situation.class);

    static {
        for (Situation situation : Situation.WITH_STATE) {
            KEYS.put(situation, DRAFT.optional(situation.word(), STATE, meaning(situation)));
        }
    }

    public static final Shape<StatesOf> SHAPE = DRAFT.done(StatesOf::new);

    private static String meaning(Situation situation) {
        return switch (situation) {
            case DRIVING -> "On the road.";
            case CARRIED -> "While the coach itself is carried, on a recovery truck.";
            case REFUELING -> "At a fuel station.";
            case FERRY -> "On a ferry, or in a tunnel that has a rule.";
            case ASLEEP -> "While everybody on board sleeps.";
            case UNATTENDED -> "While nobody is in the coach.";
            case WIND -> "In strong wind and storms.";
            case FROST -> "When it freezes and somebody lives in it.";
            case PICKUP -> "When a renter takes over.";
            case RETURN -> "When a renter gives it back.";
            case STANDING -> "While it stands in the yard for weeks.";
            case SETTING_UP, BREAKING_CAMP, BEFORE_RETURN, WINTER ->
                throw new IllegalArgumentException(situation + " is work and no state");
        };
    }

    public static Key<String> key(Situation situation) {
        return java.util.Objects.requireNonNull(KEYS.get(situation));
    }

    public Optional<String> in(Situation situation) {
        return facts.find(key(situation));
    }

    /** The fact of a coach that says how it has to stand then, if that is what the file says. */
    public Optional<String> factFor(Situation situation) {
        return in(situation).filter(it -> it.startsWith(AS)).map(it -> it.substring(AS.length()));
    }
}
