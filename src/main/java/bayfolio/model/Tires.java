package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Kilopascals;
import bayfolio.measure.Meters;

/** Tires of a coach. */
public record Tires(Facts facts) implements Described {
    private static final Range PRESSURE = Range.of("200 kPa", "930 kPa")
            .in("bus-style", "350 kPa", "930 kPa")
            .in("cab-over", "250 kPa", "860 kPa")
            .in("low-profile|van", "200 kPa", "700 kPa")
            .usual("bus-style", "480 kPa", "875 kPa")
            .usual("cab-over", "340 kPa", "700 kPa")
            .usual("low-profile|van", "290 kPa", "575 kPa")
            .because("load range C 50, D 65, E 80 psi; G 110, H 120 psi; camping tires 5.5 bar at a single rear axle")
            .source("published tables of load and pressure");
    private static final Shape.Draft<Tires> DRAFT = Shape.draft("tires", "Tires and wheels.");
    public static final Key<String> SIZE = DRAFT.required("size", Type.TEXT, "Size on the tire wall.");
    public static final Key<Kilopascals> FRONT_PRESSURE =
            DRAFT.optional("front-pressure", Type.measured(Kilopascals.SCALE), "Cold pressure, front.", PRESSURE);
    public static final Key<Kilopascals> REAR_PRESSURE =
            DRAFT.optional("rear-pressure", Type.measured(Kilopascals.SCALE), "Cold pressure, rear.", PRESSURE);
    public static final Key<Kilopascals> TAG_PRESSURE = DRAFT.optional(
            "tag-pressure", Type.measured(Kilopascals.SCALE), "Cold pressure, on the tag axle.", PRESSURE);
    public static final Key<String> AGE_CODE =
            DRAFT.optional("age-code", Type.PLATE, "Week and year of the oldest tire, from its wall.");
    public static final Key<Boolean> DUAL_REAR =
            DRAFT.optional("dual-rear", Type.YES_NO, "Whether the rear wheels are twins.");
    public static final Key<Boolean> TAG_AXLE =
            DRAFT.optional("tag-axle", Type.YES_NO, "Whether a third axle behind the driven one carries weight, too.");
    public static final Key<Boolean> SPARE = DRAFT.optional("spare", Type.YES_NO, "Whether a spare wheel is on board.");
    public static final Key<Meters> RETORQUE = DRAFT.optional(
            "retorque",
            Type.measured(Meters.SCALE),
            "Distance after which wheel nuts are checked again.",
            Range.of("15 km", "500 km")
                    .usual("40 km", "170 km")
                    .because("owner manuals: 50 and 100 miles")
                    .source("manuals of coaches"));
    public static final Shape<Tires> SHAPE = DRAFT.ofEachCoach(AGE_CODE).done(Tires::new);
}
