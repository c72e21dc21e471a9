package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Kilograms;
import bayfolio.measure.Share;
import java.time.LocalDate;

/** What a coach weighed on a scale. */
public record Weighing(Facts facts) implements Described {
    private static final Shape.Draft<Weighing> DRAFT = Shape.draft("weighing", "A weighing of the coach.");
    public static final Key<LocalDate> ON = DRAFT.optional("on", Type.DAY, "When it was weighed.");
    public static final Key<Kilograms> TOTAL =
            DRAFT.required("total", Type.measured(Kilograms.SCALE), "All axles together.");
    public static final Key<Kilograms> FRONT =
            DRAFT.optional("front", Type.measured(Kilograms.SCALE), "The front axle.");
    public static final Key<Kilograms> REAR =
            DRAFT.optional("rear", Type.measured(Kilograms.SCALE), "The rear axle or axles.");
    public static final Key<Integer> PEOPLE =
            DRAFT.optional("people", Type.whole(0, 20), "How many people were on board.");
    public static final Key<Share> FRESH_WATER =
            DRAFT.optional("fresh-water", Type.measured(Share.SCALE), "How full the fresh tanks were.");
    public static final Key<Boolean> HEATER_FULL = DRAFT.optional(
            "heater-full",
            Type.YES_NO,
            "Whether the water heater or boiler was full; as the fresh tanks, empty or not, where left out.");
    public static final Key<String> STATE =
            DRAFT.required("state", Type.TEXT, "What was in the tanks and who was on board.");
    public static final Shape<Weighing> SHAPE = DRAFT.done(Weighing::new);
}
