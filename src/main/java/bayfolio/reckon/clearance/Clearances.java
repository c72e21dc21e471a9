package bayfolio.reckon.clearance;

import bayfolio.fact.Key;
import bayfolio.fact.Type;
import bayfolio.measure.Amount;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Meters;
import bayfolio.model.Coach;
import bayfolio.model.Region;
import bayfolio.model.Size;
import bayfolio.model.Unit;
import bayfolio.reckon.Given;
import bayfolio.reckon.Missing;
import bayfolio.reckon.Published;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What a coach fits under, through and into. */
public record Clearances(Coach coach, Size size) {
    /** A rule of the road for a measure of the coach. */
    public record Limit(Published<Meters> most, Key<Meters> of) {
        /** Its name in the table: {@code europe.height}. */
        public String name() {
            return most.id().substring(most.id().indexOf('/') + 1);
        }
    }

    public static Optional<Clearances> of(Coach coach) {
        return lacking(coach).isEmpty()
                ? Optional.of(new Clearances(coach, coach.unit().size()))
                : Optional.empty();
    }

    public static List<Missing> lacking(Coach coach) {
        Optional<Size> size = coach.unit().facts().find(Unit.SIZE);
        return Stream.of(Size.HEIGHT, Size.WIDTH, Size.LENGTH)
                .filter(key -> size.flatMap(it -> it.facts().find(key)).isEmpty())
                .map(key -> new Missing("size-" + key.name()))
                .toList();
    }

    /** The lowest sign that the coach may be driven under, in both systems, each with the margin that goes with its signs. */
    public static Optional<Amount> lowestSign(Coach coach) {
        return coach.unit()
                .facts()
                .find(Unit.SIZE)
                .flatMap(size -> size.facts().find(Size.HEIGHT))
                .map(height -> sign(height, coach.unit().region().first()));
    }

    public static Amount sign(Meters height, MeasureSystem first) {
        return Amount.both(card(height, MeasureSystem.US), card(height, MeasureSystem.METRIC), first);
    }

    /** As signs of a system show it. */
    public static Amount card(Meters height, MeasureSystem signs) {
        return Clearance.card(Clearance.of(height, signs).lowestSign(signs), signs);
    }

    public Meters height() {
        return size.facts().get(Size.HEIGHT);
    }

    /** A measure of the coach, where it is stated. */
    public Optional<Given<Meters>> find(Key<Meters> key) {
        return size.facts().has(key) ? Optional.of(Given.stated(size.facts(), key)) : Optional.empty();
    }

    public List<Limit> limits() {
        return switch (coach.unit().region()) {
            case NORTH_AMERICA ->
                List.of(
                        limit(Region.NORTH_AMERICA, "wide-roads", Size.WIDTH),
                        limit(Region.NORTH_AMERICA, "narrow-roads", Size.WIDTH));
            case EUROPE ->
                List.of(
                        limit(Region.EUROPE, "height", Size.HEIGHT),
                        limit(Region.EUROPE, "width", Size.WIDTH),
                        limit(Region.EUROPE, "length", Size.LENGTH));
            case OCEANIA -> List.of(); // what its country says is told with the country
        };
    }

    private static Limit limit(Region region, String name, Key<Meters> of) {
        return new Limit(Clearance.TABLE.quantity(Type.word(region) + "." + name, Meters.SCALE), of);
    }

    /** By how much the coach is over a limit; below zero where it is within it. Compared before anything is rounded. */
    public Meters over(Limit limit) {
        return size.facts().get(limit.of()).minus(limit.most().value());
    }
}
