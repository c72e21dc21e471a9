package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import java.time.LocalDate;
import java.util.Optional;

/** A coach on the list of a recall. */
public record Recalled(Facts facts) implements Described {
    /** Whose work it is; a choice, so that no person's name gets into a file. */
    public enum By {
        MECHANIC,
        ELECTRICIAN,
        GAS_FITTER,
        BODY_SHOP,
        DEALER,
        YARD,
        DESK
    }

    private static final Shape.Draft<Recalled> DRAFT = Shape.draft("recalled", "A coach on the list of a recall.");
    public static final Key<String> COACH = DRAFT.required("coach", Type.ID, "Its id.");
    public static final Key<LocalDate> DONE_ON = DRAFT.optional(
            "done-on",
            Type.DAY,
            "The day on which it was done there; the notice is gone from this coach then.",
            Range.of("model-year - 2 years", "as-of").because("not after the as-of day"));
    public static final Key<By> DONE_BY =
            DRAFT.optional("done-by", Type.choice(By.class), "Who did it, by their work and never by name.");
    public static final Shape<Recalled> SHAPE = DRAFT.done(Recalled::new);

    public String coach() {
        return facts.get(COACH);
    }

    public Optional<LocalDate> doneOn() {
        return facts.find(DONE_ON);
    }

    public Optional<By> doneBy() {
        return facts.find(DONE_BY);
    }
}
