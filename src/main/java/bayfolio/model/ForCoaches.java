package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Kilograms;
import bayfolio.measure.Meters;
import java.util.Optional;
import java.util.stream.Stream;

/** The keys by which a rule holds for some coaches only: for heavy ones, light ones, long ones. */
public record ForCoaches(Key<Kilograms> above, Key<Kilograms> upTo, Key<Boolean> empty, Key<Meters> longerThan) {

    public Stream<Key<?>> all() {
        return Stream.of(above, upTo, empty, longerThan);
    }

    static ForCoaches declare(Shape.Draft<?> draft) {
        return new ForCoaches(
                draft.optional(
                        "above",
                        Type.measured(Kilograms.SCALE),
                        "It holds for coaches whose highest allowed weight is more than this."),
                draft.optional(
                        "up-to",
                        Type.measured(Kilograms.SCALE),
                        "It holds for coaches whose highest allowed weight is no more than this."),
                draft.optional("empty", Type.YES_NO, "Whether these are weights of the empty coach instead."),
                draft.optional(
                        "longer-than", Type.measured(Meters.SCALE), "It holds for coaches that are longer than this."));
    }

    /** Whether a rule holds for a coach; empty where its weight is not stated. */
    Optional<Boolean> holds(Facts rule, Unit unit) {
        if (rule.find(longerThan)
                .filter(least -> unit.size().facts().get(Size.LENGTH).value() <= least.value())
                .isPresent()) {
            return Optional.of(false);
        }
        if (Stream.of(above, upTo).noneMatch(rule::has)) {
            return Optional.of(true);
        }
        return weight(rule, unit)
                .map(weight -> rule.find(above)
                                .filter(limit -> weight.value() <= limit.value())
                                .isEmpty()
                        && rule.find(upTo)
                                .filter(limit -> weight.value() > limit.value())
                                .isEmpty());
    }

    /** What a coach weighs empty nobody states; it is no more than it weighed with its own gear, nor than it may weigh. */
    private Optional<Kilograms> weight(Facts rule, Unit unit) {
        Optional<Weights> weights = unit.facts().find(Unit.WEIGHTS);
        Optional<Kilograms> weighed = weights.filter(it -> rule.find(empty).orElse(false))
                .flatMap(it -> it.facts().find(Weights.AS_WEIGHED))
                .map(it -> it.facts().get(Weighing.TOTAL));
        return weighed.or(() -> weights.map(it -> it.facts().get(Weights.GROSS)));
    }
}
