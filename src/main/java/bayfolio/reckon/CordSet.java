package bayfolio.reckon;

import bayfolio.measure.Amps;
import bayfolio.measure.Meters;
import bayfolio.measure.SquareMillimeters;
import bayfolio.model.Cord;
import bayfolio.model.Item;
import bayfolio.model.Region;
import bayfolio.model.Unit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A cord of known length, the coach's own or one that makes it longer. */
record CordSet(String name, Meters length, SquareMillimeters stated, Conductor conductor) {
    static final String SHORE_CORD = "shore-cord";

    /** DIN VDE 0100-708, trade press: at most 25 m, at least 2.5 square millimeters at 16 A. */
    static final Meters LONGEST_IN_EUROPE = new Meters(25);

    /** NEC table 210.24: the thinnest copper for a breaker: 14, 12, 10, 8 and 6 AWG. */
    private static final List<Thinnest> AMERICA = List.of(
            new Thinnest(15, 2.0809),
            new Thinnest(20, 3.3088),
            new Thinnest(30, 5.2612),
            new Thinnest(40, 8.3656),
            new Thinnest(50, 13.3018));

    private static final double EUROPE_AMPS = 16;
    private static final double EUROPE_AREA = 2.5;

    private record Thinnest(double amps, double squareMillimeters) {}

    /** The coach's own, if its length and conductor are stated and a table has the conductor. */
    static Optional<CordSet> own(Unit unit) {
        return unit.facts()
                .find(Unit.CORD)
                .flatMap(cord -> cord.facts()
                        .find(Cord.LENGTH)
                        .flatMap(length ->
                                cord.facts().find(Cord.CONDUCTOR).flatMap(area -> of("Power cord", length, area))));
    }

    /** What a renter may make the power cord longer with: items with a length and a conductor, but for the cord itself. */
    static List<CordSet> extensions(Unit unit) {
        return lengthening(unit).flatMap(item -> of(item).stream()).toList();
    }

    /** Names of those that no table has a resistance for. */
    static List<String> unlisted(Unit unit) {
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
        return of(item.name(), item.facts().get(Item.LENGTH), item.facts().get(Item.CONDUCTOR));
    }

    private static Optional<CordSet> of(String name, Meters length, SquareMillimeters area) {
        return length.value() <= 0
                ? Optional.empty()
                : Conductor.of(area).map(conductor -> new CordSet(name, length, area, conductor));
    }

    Run.Stretch stretch() {
        return new Run.Stretch(length, conductor.warm());
    }

    /** Whether it is thick enough for the breaker of an outlet, as far as a rule was found that says so. */
    boolean carries(Amps breaker, Region region) {
        return switch (region) {
            case NORTH_AMERICA ->
                AMERICA.stream()
                        .filter(row -> breaker.value() <= row.amps())
                        .findFirst()
                        .filter(row -> atLeast(row.squareMillimeters()))
                        .isPresent();
            case EUROPE -> breaker.value() < EUROPE_AMPS || atLeast(EUROPE_AREA);
        };
    }

    /** A size written with fewer digits is still that size. */
    private boolean atLeast(double squareMillimeters) {
        return stated.value() * 1.005 >= squareMillimeters;
    }
}
