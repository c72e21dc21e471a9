package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Celsius;
import bayfolio.source.Located;
import java.util.List;

/** What the hire allows. */
public record Hire(Facts facts) implements Described {
    private static final Shape.Draft<Hire> DRAFT = Shape.draft("hire", "What the hire allows.");
    public static final Key<Boolean> AFTER_HOURS_PICKUP =
            DRAFT.optional("after-hours-pickup", Type.YES_NO, "Whether it is handed over with nobody there.");
    public static final Key<String> HANDOVER_TAKES =
            DRAFT.optional("handover-takes", Type.TEXT, "How long the handover with staff takes: `90 minutes`.");
    public static final Key<Boolean> TOWING = DRAFT.optional("towing", Type.YES_NO, "Whether towing is allowed.");
    public static final Key<Boolean> WINTER =
            DRAFT.optional("winter", Type.YES_NO, "Whether it is hired out in winter.");
    public static final Key<List<Located<String>>> ABROAD = DRAFT.optional(
            "abroad",
            Type.list(Type.ID),
            "Other countries that it may be taken to, by the names of their files in `units/shared/countries`: `[de, it]`. The handbook has a page for each.");
    public static final Key<Celsius> LOWEST_NIGHT = DRAFT.optional(
            "lowest-night",
            Type.measured(Celsius.SCALE),
            "The coldest night that its water stands.",
            Range.of("-40 °C", "10 °C").usual("-25 °C", "5 °C").because("below 0 needs heated tanks or a frost rule"));
    public static final Key<String> RETURN_LEVELS =
            DRAFT.optional("return-levels", Type.TEXT, "What must be full and what empty at return.");
    public static final Key<String> RETURN_IN_FROST = DRAFT.optional(
            "return-in-frost",
            Type.TEXT,
            "How heating, water and plug are left when it comes back with nobody there and it may freeze.");
    public static final Key<String> DAYS_BEFORE_CHASSIS_OFF = DRAFT.optional(
            "days-before-chassis-off", Type.TEXT, "How long it may stand before the chassis battery is switched off.");
    public static final Key<String> BATTERY_ON_SHORE = DRAFT.optional(
            "shore-with-house-switch-off", Type.TEXT, "What happens on shore power with the house battery switch off.");
    public static final Shape<Hire> SHAPE = DRAFT.done(Hire::new);
}
