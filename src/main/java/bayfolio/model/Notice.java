package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What is wrong meanwhile, or to be done: it stands first wherever what it is about is used, and goes by itself. */
public record Notice(Facts facts) implements Described {
    /** Who reads it. */
    public enum For {
        RENTERS,
        STAFF
    }

    private static final Shape.Draft<Notice> DRAFT =
            Shape.draft("notice", "What is wrong meanwhile, or to be done, until it is mended.");
    public static final Key<String> ID = DRAFT.required("id", Type.ID, "Its name, which stays: `oven-out-of-use`.");
    public static final Key<String> TEXT = DRAFT.required(
            "text",
            Type.TEXT,
            "What is so, and what to do instead: `Oven out of use until it is mended: use the hob.`");
    public static final Key<LocalDate> SINCE = DRAFT.required(
            "since",
            Type.DAY,
            "The day on which it was put up. It stands from then on: what is only to come says so in its text.",
            Range.of("model-year - 2 years", "as-of")
                    .because("not after the as-of day, not before the coach was built"));
    public static final Key<LocalDate> UNTIL = DRAFT.optional(
            "until",
            Type.DAY,
            "The last day on which it stands; until somebody takes it out, where this is left out.",
            Range.of("model-year - 2 years", "as-of + 5 years")
                    .usual("model-year - 2 years", "as-of + 1 years")
                    .because("what stays for years is no notice but a fact"));
    public static final Key<For> FOR =
            DRAFT.optional("for", Type.choice(For.class), "Who reads it: renters and staff where this is left out.");
    public static final Key<List<Located<String>>> ABOUT = DRAFT.optional(
            "about", Type.list(Note.ANY_THING), "The things that it is about, by their ids; what is in them is not.");
    public static final Key<List<Located<String>>> ROLES = DRAFT.optional(
            "roles", Type.list(Type.anyRole()), "The same by what they are for, on whatever coach: `[oven]`.");
    public static final Key<List<Located<String>>> PROCEDURES = DRAFT.optional(
            "procedures", Type.list(Type.ID), "Procedures and trouble guides that it is about, by their ids.");
    public static final Key<List<Located<String>>> STAGES = DRAFT.optional(
            "stages",
            Type.list(Type.ID),
            "Parts of the trip that it is about: `[return]`. One that names nothing is about the coach as a whole.");
    public static final Key<Recall> RECALL = DRAFT.optional(
            "recall", Type.nested(Recall.SHAPE), "The coaches that it is about, to be ticked off one by one.");
    public static final Shape<Notice> SHAPE = DRAFT.done(Notice::new);

    public String id() {
        return facts.get(ID);
    }

    @Override
    public boolean forStaff() {
        return facts.find(FOR).filter(For.STAFF::equals).isPresent();
    }

    public Optional<Recall> recall() {
        return facts.find(RECALL);
    }

    /** Whether it is about a coach as a whole. */
    public boolean general() {
        return List.of(ABOUT, ROLES, PROCEDURES, STAGES).stream()
                .allMatch(key -> facts.all(key).isEmpty());
    }

    /** Whether its last day is over; never where no day is known. */
    public boolean runOut(Optional<LocalDate> asOf) {
        Optional<LocalDate> until = facts.find(UNTIL);
        return until.isPresent() && asOf.filter(until.get()::isBefore).isPresent();
    }

    /** Whether a coach is not spared by a list that does not name it, or on which it is ticked off. */
    public boolean concerns(String unit) {
        return recall().map(recall -> recall.open().contains(unit)).orElse(true);
    }

    /** The things of a coach that it is about, in walking order. */
    public List<Thing> things(Coach coach) {
        List<String> ids = facts.all(ABOUT);
        List<String> roles = facts.all(ROLES);
        return coach.walked()
                .filter(thing ->
                        ids.contains(thing.id()) || thing.roles().stream().anyMatch(roles::contains))
                .toList();
    }
}
