package bayfolio.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bayfolio.Folders;
import bayfolio.fact.FactVisitor;
import bayfolio.fact.Key;
import bayfolio.measure.Kilograms;
import bayfolio.measure.Kilopascals;
import bayfolio.measure.Meters;
import bayfolio.read.FleetReader;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The invented coaches could be built: a technician who reads them finds nothing to laugh at. Each test names its source;
 * VERIFIED was seen in a published page.
 */
class DemoFleetFactsTest {
    /**
     * Kilograms of a load index. VERIFIED: to 118 published load index tables, 149 and 154 a truck tire catalog (295/80R22.5);
     * 134 and 136 by the formula of the index, to the steps of the standard.
     */
    private static final Map<Integer, Integer> LOAD_INDEX =
            Map.of(112, 1120, 114, 1180, 115, 1215, 116, 1250, 118, 1320, 134, 2120, 136, 2240, 149, 3250, 154, 3750);

    /**
     * Pressure at which a tire carries the load of its index. VERIFIED: E 80 psi and J 900 kPa in catalogs. Common practice,
     * no source: H 120 psi; a camping tire (CP) at most 575 kPa, where a lower figure would let it carry more.
     */
    private static final Map<String, Kilopascals> REFERENCE = Map.of(
            "load range E",
            psi(80),
            "load range H",
            psi(120),
            "load range J",
            new Kilopascals(900),
            " CP ",
            new Kilopascals(575));

    /** How many single tires and how many of twins carry the rear axle or axles: the tag axle has one tire a side. */
    private static final Map<String, List<Integer>> REAR_TIRES = Map.of(
            "dunlin", List.of(0, 4),
            "whimbrel", List.of(0, 4),
            "phalarope", List.of(2, 4),
            "bay-24", List.of(0, 4),
            "turnstone", List.of(2, 0),
            "redpoll", List.of(2, 0));

    static Stream<Named<Unit>> coaches() throws Exception {
        return FleetReader.read(Folders.at(Path.of(""))).fleet().units().stream()
                .map(unit -> Named.of(unit.id(), unit));
    }

    /** VERIFIED, load and pressure table of an older coach manual, LT235/85R16: 3,042 lb at 80 psi. */
    @ParameterizedTest
    @CsvSource({"40,1870", "50,2205", "60,2485", "65,2623", "70,2765", "75,2905"})
    void tireCarriesLessAtLessPressureAsPublished(int psi, int published) {
        assertThat(carried(3042, psi(psi), psi(80), 0.7)).isCloseTo(published, within(0.01 * published));
    }

    /** VERIFIED: the index is logarithmic, 80 steps for ten times the load; the steps of the table lie within 2 %. */
    @Test
    void loadIndexesFollowTheirFormula() {
        LOAD_INDEX.forEach((index, kilograms) ->
                assertThat(kilograms * 1.0).isCloseTo(45 * Math.pow(10, index / 80.0), within(0.02 * kilograms)));
    }

    /** VERIFIED (49 CFR 571.120): the tires of an axle carry what its limit is, here at the cold pressure that is stated. */
    @ParameterizedTest
    @MethodSource("coaches")
    void tiresCarryTheirAxlesAtTheStatedPressure(Unit coach) {
        Tires tires = coach.facts().get(Unit.TIRES);
        Weights weights = coach.facts().get(Unit.WEIGHTS);
        String size = tires.facts().get(Tires.SIZE);
        Matcher index = Pattern.compile("\\b(\\d{3})/(\\d{3})\\b").matcher(size);
        assertThat(index.find()).as(size).isTrue();
        double single = of(LOAD_INDEX, Integer.valueOf(index.group(1)));
        double twin = of(LOAD_INDEX, Integer.valueOf(index.group(2)));
        Kilopascals reference = REFERENCE.entrySet().stream()
                .filter(kind -> size.contains(kind.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow();
        double exponent = size.contains(" CP ") ? 0.8 : 0.7;
        Kilopascals front = tires.facts().get(Tires.FRONT_PRESSURE);
        Kilopascals rear = tires.facts().get(Tires.REAR_PRESSURE);
        List<Integer> behind = of(REAR_TIRES, coach.model().orElse(coach.id()));

        assertThat(List.of(front, rear))
                .allSatisfy(pressure -> assertThat(pressure.value()).isLessThanOrEqualTo(reference.value()));
        assertThat(2 * carried(single, front, reference, exponent))
                .as("front")
                .isGreaterThanOrEqualTo(weights.facts().get(Weights.FRONT_AXLE).value());
        assertThat(carried(behind.get(0) * single + behind.get(1) * twin, rear, reference, exponent))
                .as("rear")
                .isGreaterThanOrEqualTo(weights.facts().get(Weights.REAR_AXLE).value());
    }

    /** VERIFIED, owners' pages that quote the European tire standard of 2003: camping tires at a single rear axle want 5.5 bar. */
    @ParameterizedTest
    @MethodSource("coaches")
    void campingTiresBehindHaveTheirPressure(Unit coach) {
        Tires tires = coach.facts().get(Unit.TIRES);
        if (tires.facts().get(Tires.SIZE).contains(" CP ")) {
            assertThat(tires.facts().get(Tires.REAR_PRESSURE).value()).isCloseTo(550, within(1.0));
        }
    }

    /** Geometry: all wheels roll about one point on the line of the rear axle. The front wheels turn as far as such wheels do. */
    @ParameterizedTest
    @MethodSource("coaches")
    void tailSwingsAsFarAsTheTurningCircleSays(Unit coach) {
        double ahead = size(coach, Size.WHEELBASE) + size(coach, Size.FRONT_OVERHANG);
        double behind = size(coach, Size.REAR_OVERHANG);
        double flank = Math.sqrt(Math.pow(size(coach, Size.TURNING_CIRCLE) / 2, 2) - ahead * ahead);
        double swing = Math.hypot(flank, behind) - flank;
        double angle = Math.toDegrees(Math.atan(size(coach, Size.WHEELBASE) / (flank - size(coach, Size.WIDTH) / 2)));

        assertThat(size(coach, Size.TAIL_SWING)).isCloseTo(swing, within(Math.max(0.1 * swing, 4 * 0.0254)));
        assertThat(angle).isBetween(27.0, 50.0);
    }

    /** The scale: axles and total, and what may still be loaded. Europe counts the driver and some water as aboard, North America nobody. */
    @ParameterizedTest
    @MethodSource("coaches")
    void weighingFitsTheLimits(Unit coach) {
        Weights weights = coach.facts().get(Unit.WEIGHTS);
        Weighing scale = weights.facts().get(Weights.AS_WEIGHED);
        double total = kilograms(scale.facts().get(Weighing.TOTAL));
        double front = kilograms(scale.facts().get(Weighing.FRONT));
        double rear = kilograms(scale.facts().get(Weighing.REAR));
        double rest = kilograms(weights.facts().get(Weights.GROSS)) - total;

        assertThat(front + rear).isCloseTo(total, within(1.0));
        assertThat(front / total).isBetween(0.28, 0.58);
        assertThat(front).isLessThan(kilograms(weights.facts().get(Weights.FRONT_AXLE)));
        assertThat(rear).isLessThan(kilograms(weights.facts().get(Weights.REAR_AXLE)));
        assertThat(rest - kilograms(weights.facts().get(Weights.PAYLOAD)))
                .isBetween(
                        coach.region() == Region.EUROPE ? 75.0 : -1.0, coach.region() == Region.EUROPE ? 110.0 : 1.0);
    }

    /** VERIFIED: 75 kg a person, as in European masses of motorhomes. */
    @ParameterizedTest
    @MethodSource("coaches")
    void bedsCarryTheAdultsWhoSleepInThem(Unit coach) {
        assertThat(coach.facts().get(Unit.PEOPLE).facts().all(People.BEDS))
                .isNotEmpty()
                .allSatisfy(bed -> assertThat(kilograms(bed.facts().get(Bed.LOAD_LIMIT)))
                        .as(bed.facts().get(Bed.WHERE))
                        .isGreaterThanOrEqualTo(75.0 * bed.facts().get(Bed.SLEEPS)));
    }

    /** Common practice, no source: makers of child seats allow none on a seat that faces sideways. */
    @ParameterizedTest
    @MethodSource("coaches")
    void childSeatsAreWhereSeatsFaceForward(Unit coach) {
        assertThat(coach.facts().get(Unit.PEOPLE).facts().get(People.CHILD_SEAT_PLACES))
                .containsPattern("forward-facing|faces forward");
    }

    /** Common practice, no source: a starter takes hundreds of amperes, past every fuse. */
    @ParameterizedTest
    @MethodSource("coaches")
    void noFuseIsInTheWayOfTheStarter(Unit coach) {
        assertThat(coach.banks())
                .filteredOn(bank -> bank.roles().contains("chassis-bank"))
                .hasSize(1)
                .noneMatch(bank -> bank.facts().has(Bank.FUSE));
    }

    /** VERIFIED: water freezes at 0 °C; what stands in a tank that nothing warms does, too. */
    @ParameterizedTest
    @MethodSource("coaches")
    void tanksAreWarmedWhereWaterStandsInFrost(Unit coach) {
        boolean frost =
                coach.facts().get(Unit.HIRE).facts().get(Hire.LOWEST_NIGHT).value() < 0;
        Set<Tank.Contents> water =
                Set.of(Tank.Contents.FRESH, Tank.Contents.GRAY, Tank.Contents.BLACK, Tank.Contents.CASSETTE);

        assertThat(coach.tanks())
                .filteredOn(tank -> frost && water.contains(tank.contents()))
                .allSatisfy(tank ->
                        assertThat(tank.facts().find(Tank.HEATED)).as(tank.id()).contains(true));
    }

    /** Common practice, no source: a tank hangs beside the line of the rear axle, and no two are in one place. */
    @ParameterizedTest
    @MethodSource("coaches")
    void tanksUnderTheFloorHaveRoom(Unit coach) {
        double axle = size(coach, Size.FRONT_OVERHANG) + size(coach, Size.WHEELBASE);
        List<double[]> tanks = coach.tanks().stream()
                .flatMap(tank -> tank.spot().stream())
                .filter(spot -> spot.side().equals(Optional.of(Side.UNDERFLOOR)))
                .map(DemoFleetFactsTest::alongTheCoach)
                .sorted((one, other) -> Double.compare(one[0], other[0]))
                .toList();

        assertThat(tanks).hasSizeGreaterThan(1).noneMatch(tank -> tank[0] < axle && axle < tank[1]);
        for (int i = 1; i < tanks.size(); i++) {
            assertThat(tanks.get(i)[0]).isGreaterThanOrEqualTo(tanks.get(i - 1)[1]);
        }
    }

    /** Common practice, no source: what brings a stuck room in again is not behind a door that the room blocks. */
    @ParameterizedTest
    @MethodSource("coaches")
    void whatFreesASlideOutIsNotBehindIt(Unit coach) {
        Set<String> blocked = coach.compartments().stream()
                .filter(bay -> bay.facts().all(Compartment.BLOCKED_BY).stream().anyMatch(isSlideOf(coach)))
                .map(Thing::id)
                .collect(Collectors.toSet());
        Set<String> lines = coach.circuits().stream()
                .map(Thing::id)
                .filter(id -> id.contains("slide"))
                .collect(Collectors.toSet());
        Stream<Thing> needed = Stream.concat(
                coach.switches().stream()
                        .filter(it -> it.facts().all(Switch.FEEDS).stream().anyMatch(lines::contains)),
                coach.items().stream()
                        .filter(it ->
                                it.roles().contains("override-crank") || it.id().contains("slide-block")));

        assertThat(needed.map(thing -> thing.spot().flatMap(Spot::in)).flatMap(Optional::stream))
                .doesNotContainAnyElementsOf(blocked.isEmpty() ? Set.of("none") : blocked);
    }

    /** Geometry: heights are from the ground, so what hangs over a door stands higher than its top; so does the awning. */
    @ParameterizedTest
    @MethodSource("coaches")
    void whatIsAboveTheEntryDoorIsHigher(Unit coach) {
        Spot door = coach.doors().stream()
                .filter(it -> it.roles().contains("entry-door"))
                .findFirst()
                .flatMap(Thing::spot)
                .orElseThrow();
        double top =
                door.height().orElseThrow().value() + door.tall().orElseThrow().value();

        assertThat(Stream.concat(
                        coach.awnings().stream(),
                        coach.things()
                                .filter(thing -> thing.spot().flatMap(Spot::where).stream()
                                        .anyMatch(words ->
                                                words.matches("(|.*, )(over|above) the (entry|sliding) door.*")))))
                .isNotEmpty()
                .allSatisfy(thing -> assertThat(thing.spot().flatMap(Spot::height).stream())
                        .as(thing.id())
                        .allMatch(height -> height.value() > top));
    }

    /** Days: nothing was done before the coach was built, and no alarm ends before its last check or later than makers let it. */
    @ParameterizedTest
    @MethodSource("coaches")
    void daysAreInOrder(Unit coach) {
        int year = coach.facts().get(Unit.MODEL_YEAR);
        List<LocalDate> ends = coach.things()
                .filter(Gauge.class::isInstance)
                .flatMap(gauge -> gauge.facts().find(Gauge.REPLACE_BY).stream())
                .toList();
        List<LocalDate> due = coach.facts().all(Unit.SERVICES).stream()
                .flatMap(service -> service.facts().find(Service.DUE).stream())
                .toList();
        List<LocalDate> done = new ArrayList<>();
        FactVisitor.of(coach.facts(), (type, value) -> {
            if (value.value() instanceof LocalDate day && !ends.contains(day) && !due.contains(day)) {
                done.add(day);
            }
        });
        LocalDate newest = done.stream().max(LocalDate::compareTo).orElseThrow();
        Matcher age = Pattern.compile("\\b(\\d\\d)(\\d\\d)\\b(?!.*\\b\\d{4}\\b)")
                .matcher(coach.facts().get(Unit.TIRES).facts().get(Tires.AGE_CODE));

        assertThat(done).isNotEmpty().allMatch(day -> day.getYear() >= year - 1);
        assertThat(ends).isNotEmpty().allMatch(day -> day.isAfter(newest) && day.isBefore(newest.plusYears(11)));
        assertThat(age.find()).isTrue();
        assertThat(Integer.parseInt(age.group(1))).isBetween(1, 53);
        assertThat(2000 + Integer.parseInt(age.group(2))).isBetween(year - 1, newest.getYear());
    }

    /** Definition: an appliance runs on the kind of current that its loads take. */
    @ParameterizedTest
    @MethodSource("coaches")
    void appliancesRunOnWhatFeedsThem(Unit coach) {
        Map<String, Circuit> circuits =
                coach.circuits().stream().collect(Collectors.toMap(Thing::id, circuit -> circuit));
        Map<String, Appliance> appliances =
                coach.appliances().stream().collect(Collectors.toMap(Thing::id, appliance -> appliance));

        assertThat(coach.loads())
                .filteredOn(load -> load.facts().has(Load.APPLIANCE))
                .isNotEmpty()
                .allSatisfy(load -> assertThat(of(appliances, load.facts().get(Load.APPLIANCE))
                                .facts()
                                .all(Appliance.ENERGY))
                        .as(load.id())
                        .extracting(Enum::name)
                        .contains(of(circuits, load.facts().get(Load.CIRCUIT))
                                .facts()
                                .get(Circuit.CURRENT)
                                .name()));
    }

    /** Definition: what is said to charge while the coach is driven, or from the sun, is named by the batteries that it charges. */
    @ParameterizedTest
    @MethodSource("coaches")
    void houseBatteriesNameAllThatChargesThem(Unit coach) {
        Set<String> chargers = coach.appliances().stream()
                .filter(it ->
                        it.facts().get(Appliance.WHAT).charges() || it.id().contains("solar"))
                .map(Thing::id)
                .collect(Collectors.toSet());
        List<String> named = coach.banks().stream()
                .filter(bank -> bank.roles().contains("house-bank"))
                .flatMap(bank -> bank.facts().all(Bank.CHARGED_BY).stream())
                .toList();

        assertThat(named).containsAll(chargers);
        assertThat(coach.appliances())
                .filteredOn(it -> named.contains(it.id()))
                .anyMatch(it -> it.facts().all(Appliance.ENERGY).contains(Appliance.Energy.ENGINE));
        assertThat(named.stream().anyMatch(id -> id.contains("solar")))
                .isEqualTo(coach.facts().has(Unit.SOLAR));
    }

    /** Common practice, no source: who stands at either of two openings that are easily mixed up is warned. */
    @ParameterizedTest
    @MethodSource("coaches")
    void openingsWarnOfEachOther(Unit coach) {
        Map<String, Connection> connections =
                coach.connections().stream().collect(Collectors.toMap(Thing::id, connection -> connection));

        connections.forEach((id, connection) -> assertThat(connection.facts().all(Connection.NOT_TO_CONFUSE))
                .allSatisfy(other -> assertThat(of(connections, other).facts().all(Connection.NOT_TO_CONFUSE))
                        .as(other)
                        .contains(id)));
    }

    private static double carried(double atReference, Kilopascals pressure, Kilopascals reference, double exponent) {
        return atReference * Math.pow(pressure.value() / reference.value(), exponent);
    }

    private static <K, V> V of(Map<K, V> map, K key) {
        return Objects.requireNonNull(map.get(key), key::toString);
    }

    private static Kilopascals psi(double psi) {
        return new Kilopascals(psi * 0.45359237 * 9.80665 / 0.0254 / 0.0254 / 1000);
    }

    private static double size(Unit coach, Key<Meters> key) {
        return coach.size().facts().get(key).value();
    }

    private static double kilograms(Kilograms weight) {
        return weight.value();
    }

    private static double[] alongTheCoach(Spot spot) {
        double start = spot.fromFront().orElseThrow().value();
        return new double[] {start, start + spot.width().orElseThrow().value()};
    }

    private static Predicate<String> isSlideOf(Unit coach) {
        return id -> coach.slides().stream().anyMatch(slide -> slide.id().equals(id));
    }
}
