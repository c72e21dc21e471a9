package bayfolio.check.sense;

import static bayfolio.check.sense.ElectricRelations.between;
import static bayfolio.check.sense.Relation.error;
import static bayfolio.check.sense.Relation.note;
import static bayfolio.check.sense.Relation.warning;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.measure.Kilograms;
import bayfolio.measure.Quantity;
import bayfolio.model.Connection;
import bayfolio.model.Engine;
import bayfolio.model.Hire;
import bayfolio.model.Item;
import bayfolio.model.Note;
import bayfolio.model.People;
import bayfolio.model.Region;
import bayfolio.model.Service;
import bayfolio.model.Size;
import bayfolio.model.Switch;
import bayfolio.model.Tires;
import bayfolio.model.Unit;
import bayfolio.model.Weighing;
import bayfolio.model.Weights;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Facts of size, weight, tires and towing that must agree. */
final class RoadRelations {
    private static final Pattern LOAD_RANGE = Pattern.compile("(?i)load range ([C-J])\\b");

    /** The pressure at which a tire of a load range carries its load, in kPa: published tables of load and pressure. */
    private static final Map<String, Double> RANGE_PRESSURE =
            Map.of("C", 345.0, "D", 448.0, "E", 552.0, "F", 655.0, "G", 758.0, "H", 827.0, "J", 896.0);

    /** In kg: load index 156, above which no coach has tires; ETRTO standards manual, table of load indices. */
    private static final double STRONGEST_TIRE = 4000;

    /** A night that everybody allows who hires out in winter, in °C; common practice, no source. */
    private static final double COLD = -3;

    /** A night that nobody allows who does not hire out in winter, in °C; common practice, no source. */
    private static final double WINTRY = -6;

    /** In kg: the lightest rear axle that vans have with wheels in pairs; common practice, no source. */
    private static final double LIGHTEST_TWINS = 2300;

    /** Countries outside Europe where coaches as Europe builds them are hired; their car licenses go further. Common practice. */
    private static final Set<String> HEAVIER_CARS = Set.of("au", "nz");

    private static final Pattern EXHAUST_BRAKE = Pattern.compile("(?i)exhaust[ -]brake|engine[ -]brake|retarder");

    private static final Pattern SPARE_WHEEL =
            Pattern.compile("(?i)\\bspare (?:wheel|tire|tyre)|\\b(?:full|real) wheel\\b");

    private static final Pattern LOAD_INDEX = Pattern.compile("\\b(1[0-4][0-9]|9[0-9])/(1[0-4][0-9]|9[0-9])\\b");

    /** Common practice, no source. */
    private static final Pattern OFTEN = Pattern.compile(
            "(?i)\\b(?:oil|filter|extinguisher|alarm|clean|burner|damp|leak|check|test|pressure|inspection)");

    private static final int TWO_YEARS = 800;

    /** In meters; a coach that is hired out drives more. Common practice, no source. */
    private static final double LEAST_A_YEAR = 2_000_000;

    static final List<Relation<?, ?>> ALL = List.of(
            warning(
                    "front-share-of-the-weight",
                    Pairs.within(Weighing.SHAPE, Weighing.FRONT, Weighing.TOTAL),
                    (front, total) -> between(front.value() / total.value(), 0.28, 0.58),
                    "the front axle was weighed at {1} of {2}, which is hardly ever so",
                    "Change front and rear about, if they were."),
            warning(
                    "payload-below-the-legal-least",
                    Pairs.onCoach(Weights.SHAPE, Weights.PAYLOAD)
                            .where((weights, coach) -> coach.unit().region() == Region.EUROPE),
                    (weights, coach) -> weights.facts().get(Weights.PAYLOAD).value()
                            >= 10
                                    * (coach.unit()
                                                    .facts()
                                                    .find(Unit.PEOPLE)
                                                    .flatMap(it -> it.facts().find(People.BELTED_SEATS))
                                                    .orElse(0)
                                            + coach.unit()
                                                    .size()
                                                    .facts()
                                                    .get(Size.LENGTH)
                                                    .value()),
                    "the payload is below the least that a motor caravan must have",
                    "Regulation (EU) No 1230/2012: 10 kg for each seat and each meter of length."),
            error(
                    "trailer-against-combination",
                    Pairs.own(Weights.SHAPE, Weights.TOW_WEIGHT)
                            .where((tow, weights) -> weights.facts().has(Weights.GROSS_COMBINATION)),
                    (tow, weights) -> tow.value()
                            <= weights.facts().get(Weights.GROSS_COMBINATION).value()
                                    - weights.facts().get(Weights.GROSS).value()
                                    + 5,
                    "a trailer of {1} is allowed, and coach and trailer together may not weigh so much",
                    "Read the plate: no more than the limit of both less that of the coach."),
            warning(
                    "weight-on-the-ball",
                    Pairs.within(Weights.SHAPE, Weights.NOSE_WEIGHT, Weights.TOW_WEIGHT)
                            .where((nose, tow) -> tow.value() > 0),
                    (nose, tow) -> between(nose.value() / tow.value(), 0.03, 0.16),
                    "a trailer of {2} may press on the hitch with {1}, which is an unlikely share",
                    "Read the plate of the hitch."),
            error(
                    "towing-without-a-hitch",
                    Pairs.onCoach(Hire.SHAPE, Hire.TOWING)
                            .where((hire, coach) -> hire.facts().get(Hire.TOWING)),
                    (hire, coach) -> coach.unit().holds("tow-hitch")
                            && coach.unit()
                                    .facts()
                                    .find(Unit.WEIGHTS)
                                    .filter(it -> it.facts().has(Weights.TOW_WEIGHT))
                                    .isPresent(),
                    "towing is allowed, and there is no hitch or no weight of what may be towed",
                    "Describe the hitch and its weights, or say `towing: no`."),
            error(
                    "plate-of-the-hitch",
                    Pairs.records(Connection.SHAPE, Connection.LABEL, Weights.SHAPE, Weights.TOW_WEIGHT)
                            .where((hitch, weights) -> hitch.roles().contains("tow-hitch")),
                    (hitch, weights) -> figures(hitch.facts().get(Connection.LABEL))
                            .map(it -> weights.facts().get(Weights.TOW_WEIGHT).value() <= it.value() * 1.01)
                            .orElse(true),
                    "more may be towed than the plate of the hitch says",
                    "The smaller of the two goes."),
            error(
                    "tire-above-its-load-range",
                    Pairs.own(Tires.SHAPE, Tires.FRONT_PRESSURE),
                    (pressure, tires) -> pressure.value() <= most(tires),
                    "the front tires are to be filled to {1}, more than their load range takes",
                    "Read the placard and the wall of the tire."),
            error(
                    "rear-tire-above-its-load-range",
                    Pairs.own(Tires.SHAPE, Tires.REAR_PRESSURE),
                    (pressure, tires) -> pressure.value() <= most(tires),
                    "the rear tires are to be filled to {1}, more than their load range takes",
                    "Read the placard and the wall of the tire."),
            warning(
                    "tires-do-not-carry-the-front-axle",
                    Pairs.records(Tires.SHAPE, Tires.FRONT_PRESSURE, Weights.SHAPE, Weights.FRONT_AXLE),
                    (tires, weights) -> carry(tires, Tires.FRONT_PRESSURE, 2, false).stream()
                            .allMatch(load -> load
                                    >= 0.99
                                            * weights.facts()
                                                    .get(Weights.FRONT_AXLE)
                                                    .value()),
                    "at this pressure the front tires do not carry what the axle may",
                    "Read the placard of the coach, and the table of loads of the tire."),
            warning(
                    "tires-do-not-carry-the-rear-axle",
                    Pairs.records(Tires.SHAPE, Tires.REAR_PRESSURE, Weights.SHAPE, Weights.REAR_AXLE),
                    (tires, weights) -> carry(
                                    tires,
                                    Tires.REAR_PRESSURE,
                                    tires.facts().find(Tires.DUAL_REAR).orElse(false) ? 4 : 2,
                                    tires.facts().find(Tires.DUAL_REAR).orElse(false))
                            .stream()
                            .allMatch(load -> load
                                    >= 0.99
                                            * weights.facts()
                                                    .get(Weights.REAR_AXLE)
                                                    .value()),
                    "at this pressure the rear tires do not carry what the axle may",
                    "Read the placard of the coach, and the table of loads of the tire."),
            warning(
                    "rear-overhang-against-wheelbase",
                    Pairs.within(Size.SHAPE, Size.REAR_OVERHANG, Size.WHEELBASE),
                    (overhang, wheelbase) -> overhang.value() / wheelbase.value() <= 0.68,
                    "a rear overhang of {1} does not go with a wheelbase of {2}",
                    "Measure both again."),
            warning(
                    "front-overhang-against-wheelbase",
                    Pairs.within(Size.SHAPE, Size.FRONT_OVERHANG, Size.WHEELBASE),
                    (overhang, wheelbase) -> between(overhang.value() / wheelbase.value(), 0.15, 0.4),
                    "a front overhang of {1} does not go with a wheelbase of {2}",
                    "Measure both again."),
            warning(
                    "turning-circle-against-wheelbase",
                    Pairs.own(Size.SHAPE, Size.TURNING_CIRCLE).where((circle, size) -> Turning.known(size.facts())),
                    (circle, size) -> between(Turning.wheelAngle(size.facts()), 27, 50),
                    "a turning circle of {1} does not go with the wheelbase and overhang of this coach",
                    "Measure it between walls, from wall to wall."),
            warning(
                    "tail-swing-against-turning-circle",
                    Pairs.own(Size.SHAPE, Size.TAIL_SWING)
                            .where((swing, size) ->
                                    size.facts().has(Size.TURNING_CIRCLE) && Turning.known(size.facts())),
                    (swing, size) -> between(
                            swing.value(),
                            0.7 * Turning.tailSwing(size.facts()) - 0.05,
                            1.4 * Turning.tailSwing(size.facts()) + 0.05),
                    "a tail swing of {1} does not go with the overhangs and turning circle of this coach",
                    "Measure it along a line, in the tightest turn."),
            warning(
                    "mirrors-against-width",
                    Pairs.within(Size.SHAPE, Size.WIDTH_MIRRORS, Size.WIDTH),
                    (mirrors, width) -> between(mirrors.value() - width.value(), 0.2, 0.95),
                    "the coach is {1} wide over its mirrors and {2} without, which hardly go together",
                    "Measure both again."),
            warning(
                    "antenna-against-height",
                    Pairs.within(Size.SHAPE, Size.HEIGHT_ANTENNA_UP, Size.HEIGHT),
                    (raised, height) -> between(raised.value() - height.value(), 0.15, 1.9),
                    "the coach is {1} high with its antenna up and {2} with it down, which hardly go together",
                    "Measure both again."),
            error(
                    "single-tires-do-not-carry",
                    Pairs.records(Tires.SHAPE, Tires.DUAL_REAR, Weights.SHAPE, Weights.REAR_AXLE)
                            .where((tires, weights) -> !tires.facts().get(Tires.DUAL_REAR)),
                    (tires, weights) -> weights.facts().get(Weights.REAR_AXLE).value() <= 2 * STRONGEST_TIRE,
                    "the rear wheels are said to be single, and no two tires carry what the rear axle may",
                    "Look: wheels in pairs are `dual-rear: yes`."),
            note(
                    "twins-on-a-light-axle",
                    Pairs.records(Tires.SHAPE, Tires.DUAL_REAR, Weights.SHAPE, Weights.REAR_AXLE)
                            .where((tires, weights) -> tires.facts().get(Tires.DUAL_REAR)),
                    (tires, weights) -> weights.facts().get(Weights.REAR_AXLE).value() >= LIGHTEST_TWINS,
                    "the rear wheels are said to be in pairs, on an axle that two tires carry",
                    "Look: single wheels are `dual-rear: no`."),
            note(
                    "camera-or-not",
                    Pairs.own(Engine.SHAPE, Engine.REAR_CAMERA),
                    (camera, engine) -> camera == engine.facts().has(Engine.CAMERA_SHOWS),
                    "`rear-camera` is {1}, which does not go with whether `camera-shows` is told",
                    "Tell what it shows, and what it does not; or mend the answer."),
            note(
                    "air-brakes-or-not",
                    Pairs.own(Engine.SHAPE, Engine.AIR_BRAKES),
                    (air, engine) -> air == engine.facts().has(Engine.AIR_PRESSURE),
                    "`air-brakes` is {1}, which does not go with whether `air-pressure` is told",
                    "Air brakes have a gauge with a least pressure; state it, or mend the answer."),
            note(
                    "exhaust-brake-or-not",
                    Pairs.onCoach(Engine.SHAPE, Engine.EXHAUST_BRAKE),
                    (engine, coach) -> engine.facts().get(Engine.EXHAUST_BRAKE)
                            == coach.unit().switches().stream()
                                    .anyMatch(it -> EXHAUST_BRAKE
                                            .matcher(it.id() + " " + it.name())
                                            .find()),
                    "`exhaust-brake` does not go with whether a switch for it is described",
                    "Describe its switch, or mend the answer."),
            note(
                    "spare-wheel-or-not",
                    Pairs.onCoach(Tires.SHAPE, Tires.SPARE)
                            .where((tires, coach) -> !coach.unit().draft()),
                    (tires, coach) -> tires.facts().get(Tires.SPARE)
                            == coach.unit()
                                    .things()
                                    .anyMatch(thing -> SPARE_WHEEL
                                            .matcher(thing.name() + " "
                                                    + thing.facts()
                                                            .find(Item.NOTE)
                                                            .orElse(""))
                                            .find()),
                    "`spare` does not go with whether a spare wheel is described",
                    "Describe where it is, or mend the answer."),
            warning(
                    "winter-against-lowest-night",
                    Pairs.own(Hire.SHAPE, Hire.WINTER)
                            .where((winter, hire) -> hire.facts().has(Hire.LOWEST_NIGHT)),
                    (winter, hire) -> winter
                            ? hire.facts().get(Hire.LOWEST_NIGHT).value() <= COLD
                            : hire.facts().get(Hire.LOWEST_NIGHT).value() > WINTRY,
                    "`winter` is {1}, which does not go with the coldest night that is allowed",
                    "A coach for winter is hired out for nights below freezing."),
            warning(
                    "odometer-runs-back",
                    odometers(),
                    (service, later) ->
                            service.facts().get(Service.LAST_ODOMETER).value()
                                    <= later.facts().get(Service.LAST_ODOMETER).value() + 1,
                    "a work was done at more by the odometer than one that was done on a later day",
                    "Read the sheet of the work again."),
            note(
                    "so-seldom",
                    Pairs.own(Service.SHAPE, Service.EVERY_DAYS)
                            .where((days, service) -> OFTEN.matcher(
                                            service.facts().get(Service.WHAT))
                                    .find()),
                    (days, service) -> days <= TWO_YEARS,
                    "such work is said to come round every {1} days, where it mostly does each year",
                    "Read the plan again; if it is so, say under `accept` why."),
            note(
                    "hardly-driven",
                    Pairs.onCoach(Service.SHAPE, Service.LAST_ODOMETER)
                            .where((service, coach) -> service.facts().has(Service.LAST)
                                    && coach.unit().facts().has(Unit.MODEL_YEAR)),
                    (service, coach) ->
                            service.facts().get(Service.LAST_ODOMETER).value()
                                    >= LEAST_A_YEAR
                                            * (service.facts().get(Service.LAST).getYear()
                                                    - coach.unit().facts().get(Unit.MODEL_YEAR)),
                    "by the odometer at this work, the coach was driven for less than 2,000 km a year",
                    "Read the sheet of the work again."),
            note(
                    "after-hours-or-not",
                    Pairs.onCoach(Hire.SHAPE, Hire.AFTER_HOURS_PICKUP)
                            .where((hire, coach) -> !hire.facts().get(Hire.AFTER_HOURS_PICKUP)),
                    (hire, coach) -> coach.unit().switches().stream()
                            .flatMap(it -> it.facts().find(Switch.AT_PICKUP).stream())
                            .noneMatch(state -> state.contains("after hours")),
                    "nobody collects this coach after hours, it is said, and switches tell how they stand then",
                    "Mend the answer, or the states at pickup."),
            note(
                    "license-for-the-weight",
                    Pairs.onCoach(Weights.SHAPE, Weights.GROSS)
                            .where((weights, coach) -> coach.unit().region() == Region.EUROPE
                                    && coach.country()
                                            .filter(it -> HEAVIER_CARS.contains(it.id()))
                                            .isEmpty()
                                    && weights.facts().get(Weights.GROSS).value() > 3500),
                    (weights, coach) -> coach.unit().facts().all(Unit.NOTES).stream()
                            .anyMatch(
                                    it -> it.facts().find(Note.TEXT).orElse("").contains("licen")),
                    "above 3,500 kg another license is needed in Europe, and no note says so",
                    "Say in a note which license the driver needs."));

    private RoadRelations() {}

    /** Each work with each that was done on a later day. */
    private static Pairs<Service, Service> odometers() {
        return records -> {
            List<Service> done = records.of(Service.SHAPE)
                    .filter(it -> it.facts().has(Service.LAST) && it.facts().has(Service.LAST_ODOMETER))
                    .toList();
            return done.stream()
                    .flatMap(service -> done.stream()
                            .filter(later -> later.facts()
                                    .get(Service.LAST)
                                    .isAfter(service.facts().get(Service.LAST)))
                            .map(later -> Pairs.Pair.of(service, service.facts().at(Service.LAST_ODOMETER), later)));
        };
    }

    private static Optional<Kilograms> figures(String plate) {
        Matcher figure = Pattern.compile("(?i)([0-9][0-9,.]*) ?(lb|kg)\\b").matcher(plate);
        double most = 0;
        while (figure.find()) {
            double value = Double.parseDouble(figure.group(1).replace(",", ""));
            most = Math.max(most, figure.group(2).equalsIgnoreCase("lb") ? value * 0.45359237 : value);
        }
        return most > 0 ? Optional.of(new Kilograms(most)) : Optional.empty();
    }

    private static double most(Tires tires) {
        return RANGE_PRESSURE.getOrDefault(range(tires.facts().find(Tires.SIZE).orElse("")), Double.MAX_VALUE) * 1.005;
    }

    /** What so many tires carry at their pressure, in kg; nothing where the size does not tell. */
    private static Optional<Double> carry(Tires tires, Key<? extends Quantity> at, int count, boolean twins) {
        Facts facts = tires.facts();
        String size = facts.find(Tires.SIZE).orElse("");
        Matcher index = LOAD_INDEX.matcher(size);
        if (!index.find()) {
            return Optional.empty();
        }
        boolean camping = size.contains("CP");
        double reference = camping ? 550 : RANGE_PRESSURE.getOrDefault(range(size), Double.NaN);
        double full = 45 * Math.pow(10, Integer.parseInt(index.group(twins ? 2 : 1)) / 80.0);
        double share = Math.min(1, facts.get(at).value() / reference);
        double load = count * full * Math.pow(share, camping ? 0.8 : 0.7);
        return Double.isNaN(load) ? Optional.empty() : Optional.of(load);
    }

    private static String range(String size) {
        Matcher range = LOAD_RANGE.matcher(size);
        return range.find() ? range.group(1).toUpperCase(Locale.ROOT) : "";
    }
}
