package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.util.List;
import java.util.Optional;

/**
 * A kind of equipment: when a coach has it, what it takes and gives, how it is set up and taken down, how it has to stand
 * in each situation, and what belongs to it. A file of its own in {@code units/shared/equipment}, below whose head stand
 * its steps on the pages that are put together of what a coach has.
 */
public record Equipment(Facts facts) implements Described {
    /** What a thing takes to work. */
    public enum Takes {
        GAS,
        DIESEL,
        GASOLINE,
        BUTANE,
        SPIRIT,
        AC,
        DC,
        ENGINE,
        HAND,
        SUN,
        AIR,
        WATER,
        OIL
    }

    /** What a thing gives. */
    public enum Gives {
        GAS,
        FUEL,
        AC,
        DC,
        HEAT,
        COLD,
        WATER,
        HOT_WATER,
        WASTE,
        EXHAUST,
        AIR,
        LIGHT
    }

    /** What can be burnt. */
    public enum Burns {
        GAS,
        DIESEL,
        GASOLINE,
        BUTANE,
        SPIRIT
    }

    private static final Shape.Draft<Equipment> DRAFT =
            Shape.draft("equipment", "A kind of equipment, and how it is set up, undone and made safe.");
    public static final Key<String> ID =
            DRAFT.required("id", Type.ID, "Its name, which is that of the file, and a word for conditions.");
    public static final Key<String> NAME = DRAFT.required("name", Type.NAME, "What writers call such a thing.");
    public static final Key<String> MEANING =
            DRAFT.required("meaning", Type.TEXT, "What it is, in one line without a full stop.");
    public static final Key<CoachSystem> SYSTEM =
            DRAFT.required("system", Type.choice(CoachSystem.class), "What it belongs to.");
    public static final Key<String> THERE_WHEN = DRAFT.required(
            "there-when",
            Type.TEXT,
            "When a coach has it: facts in square brackets behind what they are of, joined with `and`, `or`, `not`.");
    public static final Key<List<Located<GivenFeature>>> FEATURES = DRAFT.optional(
            "features",
            Type.list(Type.nested(GivenFeature.SHAPE)),
            "Further words for conditions. Several kinds may give the same; any of them is enough.");
    public static final Key<List<Located<Takes>>> TAKES =
            DRAFT.optional("takes", Type.list(Type.choice(Takes.class)), "What it takes to work.");
    public static final Key<List<Located<Gives>>> GIVES =
            DRAFT.optional("gives", Type.list(Type.choice(Gives.class)), "What it gives.");
    public static final Key<List<Located<Burns>>> BURNS = DRAFT.optional(
            "burns", Type.list(Type.choice(Burns.class)), "What it burns; it must have a shut-off and an alarm then.");
    public static final Key<String> TURN = DRAFT.optional(
            "turn", Type.ID, "Its turn when a coach is set up at a site; several kinds may share one, such as `plug`.");
    public static final Key<Standpoint> STANDS = DRAFT.optional(
            "stands", Type.choice(Standpoint.class), "Where one stands for it: inside, outside, at the driver's seat.");
    public static final Key<List<Located<String>>> SET_UP_BY =
            DRAFT.optional("set-up-by", Type.list(Type.ID), "Procedures that set it up, one for each coach.");
    public static final Key<List<Located<String>>> UNDONE_BY =
            DRAFT.optional("undone-by", Type.list(Type.ID), "Procedures that take that back, one for each coach.");
    public static final Key<List<Located<String>>> USED_BY = DRAFT.optional(
            "used-by",
            Type.list(Type.ID),
            "Procedures in which it is used and left safe with the last step, so that nothing is left to undo.");
    public static final Key<Boolean> NEEDS_NO_SETTING_UP =
            DRAFT.optional("needs-no-setting-up", Type.YES_NO, "Whether nobody sets it up and nobody takes it down.");
    public static final Key<List<Located<After>>> SET_UP_AFTER =
            DRAFT.optional("set-up-after", Type.list(Type.nested(After.SHAPE)), "What is set up before it.");
    public static final Key<List<Located<After>>> UNDONE_AFTER = DRAFT.optional(
            "undone-after",
            Type.list(Type.nested(After.SHAPE)),
            "What is taken back before it, when camp is broken and in every other situation.");
    public static final Key<List<Located<String>>> CAN_BE = DRAFT.optional(
            "can-be", Type.list(Type.ID), "The states that it can take, the one in which it rests first.");
    public static final Key<StatesOf> STATES =
            DRAFT.optional("states", Type.nested(StatesOf.SHAPE), "How it has to stand in each situation.");
    public static final Key<List<Located<String>>> TROUBLE =
            DRAFT.optional("trouble", Type.list(Type.ID), "Trouble guides for when it does not do what it should.");
    public static final Key<Boolean> NEEDS_NO_GUIDE = DRAFT.optional(
            "needs-no-guide",
            Type.YES_NO,
            "Whether nothing fails in it that a guide could help with; reporting the fault is all there is to do.");
    public static final Key<List<Located<String>>> STAFF_WORK =
            DRAFT.optional("staff-work", Type.list(Type.ID), "Procedures of staff that belong to it.");
    public static final Key<List<Located<String>>> SHUT_OFF = DRAFT.optional(
            "shut-off", Type.list(Type.anyRole()), "Roles of what shuts it off; one of them must be there.");
    public static final Key<List<Located<String>>> ALARM = DRAFT.optional(
            "alarm", Type.list(Type.anyRole()), "Roles of the alarms that watch it; all of them must be there.");
    public static final Key<List<Located<String>>> ROLES = DRAFT.optional(
            "roles", Type.list(Type.anyRole()), "Roles that nothing has but what belongs to such a thing.");
    public static final Key<List<Located<String>>> WORKED_BY = DRAFT.optional(
            "worked-by",
            Type.list(Type.anyRole()),
            "Roles of what works it; one of them must be there, or nobody could be told how.");
    public static final Key<List<Located<MustTell>>> MUST_TELL = DRAFT.optional(
            "must-tell", Type.list(Type.nested(MustTell.SHAPE)), "Facts that a coach with it must state.");
    public static final Key<DeviceFacts> APPLIANCE = DRAFT.optional(
            "appliance", Type.nested(DeviceFacts.SHAPE), "What holds of it as one of the `appliances` of a coach.");
    public static final Key<List<Located<String>>> SOURCES =
            DRAFT.optional("sources", Type.list(Type.ID), "What backs it, by the list of sources.");
    public static final Shape<Equipment> SHAPE = DRAFT.done(Equipment::new);

    public String id() {
        return facts.get(ID);
    }

    public String name() {
        return facts.get(NAME);
    }

    /** How it has to stand in a situation; empty where nothing is said of it. */
    public Optional<String> in(Situation situation) {
        return facts.find(STATES).flatMap(states -> states.in(situation));
    }

    /** The state in which it is when nobody uses it. */
    public Optional<String> resting() {
        return facts.all(CAN_BE).stream().findFirst();
    }

    public Optional<String> turn() {
        return facts.find(TURN);
    }

    /** Whether one of these is a name for it: its own, or its turn. */
    public boolean isOneOf(List<String> turnsAndKinds) {
        return turnsAndKinds.contains(id())
                || turn().filter(turnsAndKinds::contains).isPresent();
    }
}
