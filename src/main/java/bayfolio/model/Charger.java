package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Amps;
import bayfolio.measure.Share;

/** Charges the house battery from AC. */
public record Charger(Facts facts) implements Described {
    private static final Shape.Draft<Charger> DRAFT = Shape.draft("charger", "Charges the house battery from AC.");
    public static final Key<Amps> RATING =
            DRAFT.required("rating", Type.measured(Amps.SCALE), "Direct current it charges with.");
    public static final Key<Share> EFFICIENCY =
            DRAFT.optional("efficiency", Type.measured(Share.SCALE), "What comes out of what goes in.");
    public static final Key<Amps> LIMIT =
            DRAFT.optional("limit", Type.measured(Amps.SCALE), "The charging current to set on a small supply.");
    public static final Key<String> NOTE = DRAFT.optional("note", Type.TEXT, "What a renter must know of it.");
    public static final Shape<Charger> SHAPE = DRAFT.done(Charger::new);
}
