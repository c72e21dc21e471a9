package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.util.List;

/** What a thing is for, in a word that all coaches share; shared procedures speak of roles only. */
public record Role(Facts facts) implements Described {
    /** Whether one coach may have more than one. */
    public enum Several {
        NO,
        SOMETIMES,
        YES
    }

    private static final Shape.Draft<Role> DRAFT = Shape.draft("role", "What a thing is for.");
    public static final Key<String> ID = DRAFT.required("id", Type.ID, "The word, in American spelling.");
    public static final Key<List<Located<String>>> FORMERLY = DRAFT.optional(
            "formerly", Type.list(Type.ID), "Words that it was before; whoever still writes one is told the new one.");
    public static final Key<String> KIND = DRAFT.required("kind", Type.ID, "The kind of thing that can hold it.");
    public static final Key<CoachSystem> SYSTEM =
            DRAFT.optional("system", Type.choice(CoachSystem.class), "What such a thing belongs to.");
    public static final Key<String> MEANING = DRAFT.required("meaning", Type.TEXT, "What such a thing does.");
    public static final Key<String> USUAL_PLACE = DRAFT.optional("usual-place", Type.PLACE, "Where it usually is.");
    public static final Key<List<Located<String>>> ALSO =
            DRAFT.optional("also", Type.list(Type.TEXT), "Other words by which renters look for such a thing.");
    public static final Key<Several> SEVERAL =
            DRAFT.optional("several", Type.choice(Several.class), "Whether one coach may have more than one.");
    public static final Key<Boolean> OFF_COACH = DRAFT.optional(
            "off-coach", Type.YES_NO, "Whether it stands at the site and is described once for the fleet.");
    public static final Key<List<Located<String>>> AT_PICKUP = DRAFT.optional(
            "at-pickup",
            Type.list(Type.TEXT),
            "Words by one of which its state begins when a renter takes over, on any coach; another one is asked about.");
    public static final Key<List<Located<String>>> STORED =
            DRAFT.optional("stored", Type.list(Type.TEXT), "The same while the coach stands unused.");
    public static final Key<List<Located<String>>> RETURNED =
            DRAFT.optional("returned", Type.list(Type.TEXT), "The same when a renter gives it back.");
    public static final Key<List<Located<String>>> DRIVING =
            DRAFT.optional("driving", Type.list(Type.TEXT), "The same on the road.");
    public static final Key<Boolean> EMERGENCY = DRAFT.optional(
            "emergency", Type.YES_NO, "Whether everybody must be able to reach it in an emergency, on any coach.");
    public static final Key<List<Located<Switch.Make>>> MADE_AS = DRAFT.optional(
            "made-as",
            Type.list(Type.choice(Switch.Make.class)),
            "How such a switch is made on any coach; another make is asked about.");
    public static final Key<List<Located<Access>>> ACCESS = DRAFT.optional(
            "access",
            Type.list(Type.choice(Access.class)),
            "Who may open or work such a thing on any coach; another access is asked about.");
    public static final Key<Item.For> USED_BY = DRAFT.optional(
            "used-by",
            Type.choice(Item.For.class),
            "Who such an item is for on any coach; somebody else is asked about.");
    public static final Shape<Role> SHAPE = DRAFT.done(Role::new);

    public String id() {
        return facts.get(ID);
    }

    /** What a word is now that one of these was before. */
    public static List<String> formerly(String word, List<Role> roles) {
        return roles.stream()
                .filter(role -> role.facts().ifRead(FORMERLY).stream()
                        .flatMap(names -> names.value().stream())
                        .anyMatch(name -> name.value().equals(word)))
                .map(Role::id)
                .toList();
    }

    public String kind() {
        return facts.get(KIND);
    }
}
