package bayfolio.reckon.weight;

import bayfolio.fact.Facts;
import bayfolio.measure.Kilograms;
import bayfolio.measure.Meters;
import bayfolio.model.Size;
import bayfolio.model.Unit;
import java.util.Optional;

/**
 * Two axles that share a load by moments: statics, no source needed. Several rear axles count as one.
 *
 * @param wheelbase from front to rear axle, more than zero
 * @param overhang from the foremost point back to the front axle
 */
public record Axles(Meters wheelbase, Meters overhang) {
    /** What each axle carries of something; less than zero where a load takes weight off. */
    public record Carried(Kilograms front, Kilograms rear) {
        static final Carried NOTHING = new Carried(new Kilograms(0), new Kilograms(0));

        Carried plus(Carried other) {
            return new Carried(front.plus(other.front), rear.plus(other.rear));
        }

        Carried minus(Carried other) {
            return new Carried(front.minus(other.front), rear.minus(other.rear));
        }

        Carried times(double share) {
            return new Carried(new Kilograms(share * front.value()), new Kilograms(share * rear.value()));
        }
    }

    /** Nothing where the description does not tell where the axles are. */
    public static Optional<Axles> of(Unit unit) {
        Facts size = unit.size().facts();
        return size.find(Size.WHEELBASE)
                .filter(base -> base.value() > 0)
                .flatMap(base -> size.find(Size.FRONT_OVERHANG).map(overhang -> new Axles(base, overhang)));
    }

    /**
     * The share of a load that the rear axle carries; above 1 behind the rear axle.
     *
     * @param middle behind the foremost point
     */
    public double rear(Meters middle) {
        return (middle.value() - overhang.value()) / wheelbase.value();
    }

    public Carried carried(Kilograms weight, Meters middle) {
        Kilograms rear = new Kilograms(weight.value() * rear(middle));
        return new Carried(weight.minus(rear), rear);
    }
}
