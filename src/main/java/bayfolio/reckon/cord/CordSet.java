package bayfolio.reckon.cord;

import bayfolio.measure.Amount;
import bayfolio.measure.Amps;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Meters;
import bayfolio.measure.SquareMillimeters;
import bayfolio.model.Cord;
import bayfolio.model.Item;
import bayfolio.model.Region;
import bayfolio.model.Unit;
import bayfolio.reckon.Given;
import bayfolio.reckon.Table;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A cord of known length, the coach's own or one that makes it longer.
 *
 * @param name of the item; absent for the coach's own
 */
public record CordSet(
        Optional<String> name, Given<Meters> length, Given<SquareMillimeters> stated, Conductor conductor) {
    public static final String SHORE_CORD = "shore-cord";

    static final Table TABLE = Table.read("cord");

    /** DIN VDE 0100-708, trade press. */
    public static final Meters LONGEST_IN_EUROPE =
            TABLE.quantity("longest.europe", Meters.SCALE).value();

    /** NEC table 210.24: the thinnest copper for a breaker. */
    private static final List<Thinnest> AMERICA =
            Stream.of(15, 20, 30, 40, 50).map(CordSet::thinnest).toList();

    private static final double EUROPE_AMPS = 16;
    private static final SquareMillimeters EUROPE_AREA =
            TABLE.quantity("thinnest.europe", SquareMillimeters.SCALE).value();

    private record Thinnest(double amps, SquareMillimeters area) {}

    private static Thinnest thinnest(int amps) {
        return new Thinnest(
                amps, Conductor.read(TABLE.text("thinnest." + amps).value()).area());
    }

    /** The coach's own, if its length and conductor are stated and a table has the conductor. */
    public static Optional<CordSet> own(Unit unit) {
        return unit.facts()
                .find(Unit.CORD)
                .filter(cord -> cord.facts().has(Cord.LENGTH) && cord.facts().has(Cord.CONDUCTOR))
                .flatMap(cord -> of(
                        Optional.empty(),
                        Given.stated(cord.facts(), Cord.LENGTH),
                        Given.stated(cord.facts(), Cord.CONDUCTOR)));
    }

    /** What a renter may make the power cord longer with: items with a length and a conductor, but for the cord itself. */
    public static List<CordSet> extensions(Unit unit) {
        return lengthening(unit).flatMap(item -> of(item).stream()).toList();
    }

    /** Names of those that no table has a resistance for. */
    public static List<String> unlisted(Unit unit) {
        return lengthening(unit)
                .filter(item -> of(item).isEmpty())
                .map(Item::name)
                .toList();
    }

    private static Stream<Item> lengthening(Unit unit) {
        return unit.items().stream()
                .filter(item -> !item.forStaff())
                .filter(item -> !item.roles().contains(SHORE_CORD))
                .filter(item -> item.facts().has(Item.LENGTH) && item.facts().has(Item.CONDUCTOR));
    }

    private static Optional<CordSet> of(Item item) {
        return of(
                Optional.of(item.name()),
                Given.stated(item.facts(), Item.LENGTH),
                Given.stated(item.facts(), Item.CONDUCTOR));
    }

    private static Optional<CordSet> of(Optional<String> name, Given<Meters> length, Given<SquareMillimeters> area) {
        return length.value().value() <= 0
                ? Optional.empty()
                : Conductor.of(area.value()).map(conductor -> new CordSet(name, length, area, conductor));
    }

    public Run.Stretch stretch() {
        return new Run.Stretch(length.value(), conductor.warm());
    }

    /** Whether a table has its very size; else the next smaller one was taken. */
    public boolean listed() {
        return conductor.is(stated.value());
    }

    /** As the table has it, or as it is stated where no table has it. */
    public Amount size(MeasureSystem first) {
        return listed() ? conductor.size() : stated.value().amount(first);
    }

    /** Whether it is thick enough for the breaker of an outlet, as far as a rule was found that says so. */
    public boolean carries(Amps breaker, Region region) {
        return switch (region) {
            case NORTH_AMERICA ->
                AMERICA.stream()
                        .filter(row -> breaker.value() <= row.amps())
                        .findFirst()
                        .filter(row -> atLeast(row.area()))
                        .isPresent();
            case EUROPE -> breaker.value() < EUROPE_AMPS || atLeast(EUROPE_AREA);
            case OCEANIA -> true;
        };
    }

    /** A size written with fewer digits is still that size. */
    private boolean atLeast(SquareMillimeters area) {
        return stated.value().value() * 1.005 >= area.value();
    }
}
