package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import java.util.Optional;

/** What a coach had, and what became of it: its old address stays, on labels, in mails and in bookmarks. */
public record TakenOut(Facts facts) implements Described {
    private static final Type<String> REFERENCE = new Type.Text(
            "reference",
            "^[a-z]+:[a-z0-9]+(-[a-z0-9]+)*$",
            "a kind and an id with a colon between, such as `switch:pump-switch`");

    private static final Shape.Draft<TakenOut> DRAFT = Shape.draft(
            "taken-out", "Something that a coach had, or a procedure that it needed, and what became of it.");
    public static final Key<String> WAS = DRAFT.required(
            "was",
            REFERENCE,
            "What it was, by its kind and its old id: `switch:pump-switch`, `procedure:start-generator`.");
    public static final Key<String> NAME = DRAFT.required("name", Type.NAME, "What it was called.");
    public static final Key<String> TEXT = DRAFT.optional(
            "text", Type.TEXT, "What became of it: its old page says so. Left out, `instead` leads on at once.");
    public static final Key<String> INSTEAD = DRAFT.optional(
            "instead",
            REFERENCE,
            "What readers are led to: a thing of this coach by kind and id, or a procedure for it.");
    public static final Key<Boolean> STAFF_ONLY =
            DRAFT.optional("staff-only", Type.YES_NO, "Whether only staff had that page.");
    public static final Shape<TakenOut> SHAPE = DRAFT.done(TakenOut::new);

    @Override
    public boolean forStaff() {
        return facts.find(STAFF_ONLY).orElse(false);
    }

    /** The kind of what it was. */
    public String kind() {
        return kind(facts.get(WAS));
    }

    /** The id that it had. */
    public String id() {
        return id(facts.get(WAS));
    }

    public Optional<String> text() {
        return facts.find(TEXT);
    }

    public Optional<String> instead() {
        return facts.find(INSTEAD);
    }

    /** Of a reference. */
    public static String kind(String reference) {
        return reference.substring(0, reference.indexOf(':'));
    }

    /** Of a reference. */
    public static String id(String reference) {
        return reference.substring(reference.indexOf(':') + 1);
    }
}
