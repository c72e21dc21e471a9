package bayfolio.check.electric;

import bayfolio.check.Case;
import bayfolio.check.Rule;
import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.measure.AmpHours;
import bayfolio.measure.Amps;
import bayfolio.measure.Kilograms;
import bayfolio.measure.KilometersPerHour;
import bayfolio.measure.Kilopascals;
import bayfolio.measure.Liters;
import bayfolio.measure.LitersPer100Kilometers;
import bayfolio.measure.LitersPerHour;
import bayfolio.measure.Quantity;
import bayfolio.measure.SquareMillimeters;
import bayfolio.measure.Volts;
import bayfolio.measure.WattHours;
import bayfolio.measure.Watts;
import bayfolio.model.Awning;
import bayfolio.model.Bank;
import bayfolio.model.Bed;
import bayfolio.model.Charger;
import bayfolio.model.Compartment;
import bayfolio.model.Cord;
import bayfolio.model.Generator;
import bayfolio.model.Inverter;
import bayfolio.model.Item;
import bayfolio.model.Region;
import bayfolio.model.Service;
import bayfolio.model.Size;
import bayfolio.model.Slide;
import bayfolio.model.Tank;
import bayfolio.model.Thing;
import bayfolio.model.Tray;
import bayfolio.model.Weights;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Flags a figure of zero where only more than that makes sense: a tank that holds nothing, a
 * breaker of no amps. Distances, times and temperatures may be zero, and so may what is not allowed
 * at all, such as a trailer.
 */
public final class ImpossibleFigure implements Rule {
    /** Kinds of which nothing is as good as missing. */
    private static final Set<Class<? extends Quantity>> POSITIVE = Set.of(
            Volts.class,
            Amps.class,
            Watts.class,
            AmpHours.class,
            WattHours.class,
            Liters.class,
            LitersPerHour.class,
            LitersPer100Kilometers.class,
            Kilograms.class,
            Kilopascals.class,
            KilometersPerHour.class,
            SquareMillimeters.class);

    /** Keys of other kinds of which nothing is as good as missing. */
    private static final Set<Key<?>> POSITIVE_KEYS = Set.of(
            Size.LENGTH,
            Size.WIDTH,
            Size.WIDTH_MIRRORS,
            Size.HEIGHT,
            Size.HEIGHT_ANTENNA_UP,
            Size.WHEELBASE,
            Size.TURNING_CIRCLE,
            Cord.LENGTH,
            Item.LENGTH,
            Bed.LENGTH,
            Bed.WIDTH,
            Slide.DEPTH,
            Awning.REACH,
            Tank.USABLE,
            Bank.USABLE,
            Bank.RATED_OVER,
            Inverter.EFFICIENCY,
            Charger.EFFICIENCY,
            Generator.ALTITUDE_STEP,
            Service.EVERY_DISTANCE,
            Service.EVERY_HOURS);

    /** Keys by which nothing is said to be allowed, drawn or left out. */
    private static final Set<Key<?>> MAY_BE_NOTHING = Set.of(
            Weights.TOW_WEIGHT, Weights.NOSE_WEIGHT, Inverter.IDLE_DRAW, Compartment.LOAD_LIMIT, Tray.LOAD_LIMIT);

    @Override
    public Stream<Finding> check(Case coach) {
        List<Finding> findings = new ArrayList<>();
        check(coach.unit(), coach.unit().region(), findings);
        return findings.stream();
    }

    private static void check(Described record, Region region, List<Finding> findings) {
        record.facts().each((key, value) -> check(record, key, value, region, findings));
    }

    private static void check(Described record, Key<?> key, Located<?> value, Region region, List<Finding> findings) {
        if (value.value() instanceof Described inner) {
            check(inner, region, findings);
        } else if (value.value() instanceof List<?> list) {
            list.forEach(each -> check(record, key, (Located<?>) each, region, findings));
        } else if (value.value() instanceof Quantity quantity && quantity.value() <= 0 && mustBeMore(key, quantity)) {
            findings.add(finding(record, key, quantity, value.at(), region));
        }
    }

    private static boolean mustBeMore(Key<?> key, Quantity quantity) {
        return POSITIVE_KEYS.contains(key) || POSITIVE.contains(quantity.getClass()) && !MAY_BE_NOTHING.contains(key);
    }

    private static Finding finding(Described record, Key<?> key, Quantity quantity, Place at, Region region) {
        String of = record instanceof Thing thing
                        && thing.facts().has(thing.identity().id())
                ? thing.kind() + " `" + thing.id() + "`"
                : "the " + record.facts().shape().name();
        return Finding.error(
                        "impossible-figure",
                        at,
                        "%s has %s for `%s`, which cannot be".formatted(of, quantity.in(region.first()), key.name()))
                .mend("Measure it or read the plate, or leave the key out.");
    }
}
