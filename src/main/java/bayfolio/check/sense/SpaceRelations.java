package bayfolio.check.sense;

import static bayfolio.check.sense.Relation.error;
import static bayfolio.check.sense.Relation.note;
import static bayfolio.check.sense.Relation.warning;

import bayfolio.fact.Facts;
import bayfolio.measure.Meters;
import bayfolio.model.Access;
import bayfolio.model.Awning;
import bayfolio.model.Bed;
import bayfolio.model.Compartment;
import bayfolio.model.Door;
import bayfolio.model.DriveSide;
import bayfolio.model.Item;
import bayfolio.model.People;
import bayfolio.model.Side;
import bayfolio.model.Size;
import bayfolio.model.Slide;
import bayfolio.model.Spot;
import bayfolio.model.Step;
import bayfolio.model.Switch;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Facts of places, doors, beds and who may get where, that must agree. */
final class SpaceRelations {
    private static final Pattern NUMBER = Pattern.compile("^([LR])([0-9]+)\\b");
    private static final Pattern BY_WHEEL =
            Pattern.compile("\\b(behind|ahead of|in front of) the (rear|front) (?:wheels?|axle)\\b");
    private static final Pattern OVERHEAD = words("ceiling|roof|overhead");
    private static final Pattern BELOW = words("under the floor|underfloor|below the floor");
    private static final Pattern OUTSIDE = words("^(?:outside|in the (?:left|right|rear) wall|under the floor)");

    /** What is in one place; a slide-out, an awning or a step is above or below a room. */
    private static final Set<String> BUILT_IN =
            Set.of("switch", "gauge", "connection", "item", "appliance", "compartment", "bank", "tank", "door");

    /** Rooms and their furniture at the beginning of a place. */
    private static final Pattern INDOORS = words(
            "^(?:(?:in|on|at|inside|above|behind|beside) )?(?:the )?(?:galley|bath|hall|bedroom|lounge|dinette|dash|wardrobe|kitchen|ceiling|step well|bench|drawer)\\b");

    private static final Set<String> HANDLED = Set.of("switch", "gauge", "item");
    private static final Pattern FURNITURE = words(
            "\\b(?:seat|bench|drawer|wardrobe|shelf|cupboard|closet|aisle|dash|toilet|range hood|hob|galley|bath|hall|bedroom|lounge|bed key|fridge door|monitor panel|wall panel|control panel|entry door|sliding door)\\b");

    private static final Set<Side> LEFT_OR_INSIDE = EnumSet.of(Side.LEFT, Side.INSIDE);
    private static final Set<Side> RIGHT_OR_INSIDE = EnumSet.of(Side.RIGHT, Side.INSIDE);

    private static final Pattern ON_THE_LEFT = words("^(?:on the |outside,? )?left (?:side|wall)");
    private static final Pattern ON_THE_RIGHT = words("^(?:on the |outside,? )?right (?:side|wall)");
    private static final Pattern NAMED_LEFT = words("^(?!.*\\bright\\b).*\\bleft\\b");
    private static final Pattern NAMED_RIGHT = words("^(?!.*\\bleft\\b).*\\bright\\b");
    private static final Pattern NEXT_TO = words(
            "(?:inside|beside|next to|above|below|over|under|left of|right of|opposite|by|behind|ahead of) (?:the )?$");

    /** A bay goes on behind its frame, in meters. */
    private static final double BEYOND_ITS_DOOR = 0.3;

    /** What is beside something is no more than a few steps away, in meters. */
    private static final double STEPS_AWAY = 1.5;

    private static final Set<String> LIFE_SAVING = Set.of("fire-extinguisher", "first-aid-kit");

    static final List<Relation<?, ?>> ALL = List.of(
            error(
                    "outside-its-bay",
                    inBays(),
                    (thing, bay) -> within(thing, bay),
                    "{about} is said to be where {2}, which it is in, is not",
                    "Measure both from the front of the coach again."),
            note(
                    "locks-on-the-road",
                    slidesDriven(),
                    (slide, driving) -> slide.facts().get(Slide.TRAVEL_LOCKS) == driving.contains("lock"),
                    "`travel-locks` of {about} does not go with how its switch stands on the road: {2}",
                    "Mend the one that is wrong."),
            note(
                    "front-or-rear-by-its-name",
                    alongTheCoach(),
                    (thing, share) -> !(share < 0.45 && Subjects.called(thing, "rear"))
                            && !(share > 0.55 && Subjects.called(thing, "front")),
                    "{about} is named after the other end of the coach",
                    "Measure it from the front again, or call it otherwise."),
            note(
                    "too-near-the-front",
                    located(),
                    (thing, unit) ->
                            from(thing).map(it -> it >= foremost(thing, unit)).orElse(true),
                    "{about} is said to be nearer to the front of the coach than anything on its side can be",
                    "Measure it again, from the foremost point of the coach; if it is so, say under `accept` why."),
            note(
                    "drop-against-the-door",
                    Pairs.own(Door.SHAPE, Door.DROP)
                            .where((drop, door) ->
                                    door.spot().flatMap(Spot::side).isPresent())
                            .with((drop, records) -> drop.value()
                                    / records.coach()
                                            .unit()
                                            .size()
                                            .facts()
                                            .get(Size.HEIGHT)
                                            .value()),
                    (share, door) ->
                            door.spot().flatMap(Spot::side).equals(Optional.of(Side.ROOF)) ? share > 0.6 : share < 0.9,
                    "{about} is no such way above the ground as its `drop` says",
                    "Measure from its lower edge to the ground; from a hatch in the roof it is the height of the roof."),
            note(
                    "outside-and-in-a-room",
                    insideBays(),
                    (thing, bay) -> thing.spot()
                            .flatMap(Spot::side)
                            .map(side -> side == Side.INSIDE || side == Side.UNDERFLOOR)
                            .orElse(true),
                    "{about} is said to be on the outside of the coach, and in {2}, which is opened from inside",
                    "Mend the one that is wrong."),
            note(
                    "blocked-from-elsewhere",
                    Pairs.toEach(Compartment.SHAPE, Compartment.BLOCKED_BY, Slide.SHAPE),
                    (bay, slide) -> sidesOf(bay).isEmpty()
                            || slide.spot().flatMap(Spot::side).isEmpty()
                            || from(bay).isEmpty()
                            || from(slide).isEmpty()
                            || sidesOf(bay)
                                            .contains(slide.spot()
                                                    .flatMap(Spot::side)
                                                    .orElseThrow())
                                    && end(bay).orElseThrow() > from(slide).get() - STEPS_AWAY
                                    && from(bay).get() < end(slide).orElseThrow() + STEPS_AWAY,
                    "{about} is said to be blocked by {2}, which comes out elsewhere",
                    "Look what stands in front of it when all rooms are out."),
            note(
                    "where-none-ever-is",
                    located()
                            .where((thing, unit) ->
                                    thing.spot().flatMap(Spot::side).isPresent())
                            // Of two things of one id nobody knows which is meant.
                            .with((thing, records) ->
                                    Sides.never(thing) && !records.coach().twice(thing.kind(), thing.id())),
                    (never, unit) -> !never,
                    "{about} is said to be on a side where no such thing is",
                    "Look again which side it is on; if it is so, say under `accept` why."),
            note(
                    "number-left-out",
                    Pairs.onCoach(
                                    Compartment.SHAPE,
                                    Compartment.SHAPE.key("name").orElseThrow())
                            .given(Records::described),
                    (bay, coach) -> Labels.before(bay)
                            .map(before -> coach.unit().compartments().stream()
                                    .anyMatch(it -> Labels.all(it).contains(before)))
                            .orElse(true),
                    "{about} is numbered, and none of this coach has the number before it",
                    "A reader who counts the doors looks for it; describe it, or number the doors anew."),
            note(
                    "above-or-below-its-bay",
                    heightsInBays(),
                    SpaceRelations::atItsHeight,
                    "{about} is said to be higher or lower than {2}, which it is in",
                    "Measure both from the ground again."),
            error(
                    "above-the-roof",
                    located(),
                    (thing, unit) ->
                            top(thing) <= unit.size().facts().get(Size.HEIGHT).value() + 0.02,
                    "{about} reaches higher than the coach",
                    "Measure its lower edge from the ground and its size again."),
            warning(
                    "door-at-an-axle",
                    located().where((thing, unit) -> thing instanceof Compartment && low(thing)),
                    SpaceRelations::clearOfAxles,
                    "{about} is said to be where a wheel is",
                    "Measure it from the front of the coach again, and front overhang and wheelbase."),
            warning(
                    "words-against-distance",
                    located()
                            .where((thing, unit) ->
                                    thing.spot().flatMap(Spot::where).isPresent()),
                    SpaceRelations::onItsSideOfTheWheel,
                    "{about} is said to be on another side of a wheel than its distance from the front makes it",
                    "Look where it is, and measure it again."),
            note(
                    "side-against-words",
                    located().where((thing, unit) -> BUILT_IN.contains(thing.kind())),
                    SpaceRelations::onItsSide,
                    "{about} is told to be elsewhere than its `side` makes it, by its name or by `where`",
                    "Look again, and mend the one that is wrong."),
            note(
                    "letter-of-another-side",
                    lettered(),
                    (letter, side) -> letter.equals(side),
                    "the name of {about} begins with {1}, and those of its side with {2}",
                    "Look on which side it is, and read its label."),
            note(
                    "far-from-its-landmark",
                    landmarks(),
                    SpaceRelations::closeTo,
                    "{about} is said to be beside {2}, and their distances from the front are far apart",
                    "Measure both again."),
            warning(
                    "entry-door-toward-traffic",
                    Pairs.onCoach(Door.SHAPE, Door.ACCESS)
                            .where((door, coach) -> door.roles().contains("entry-door")),
                    (door, coach) -> door.spot()
                            .flatMap(Spot::side)
                            .filter(side -> side == Side.LEFT || side == Side.RIGHT)
                            .map(side -> (side == Side.RIGHT)
                                    == (coach.unit().facts().get(Unit.DRIVE_SIDE) == DriveSide.LEFT))
                            .orElse(true),
                    "{about} is on the side of the traffic",
                    "Left and right are seen from the driver's seat; look again."),
            error(
                    "step-apart-from-door",
                    steps(),
                    (step, door) -> sameSide(step, door) && beside(step, door),
                    "{about} is not below {2}",
                    "Look where both are."),
            warning(
                    "sill-against-drop",
                    Pairs.own(Door.SHAPE, Door.DROP)
                            .where((drop, door) ->
                                    door.spot().flatMap(Spot::height).isPresent()),
                    (drop, door) -> Math.abs(drop.value()
                                    - door.spot()
                                            .flatMap(Spot::height)
                                            .orElse(drop)
                                            .value())
                            <= 0.065,
                    "{about} has a drop of {1}, and its lower edge is at another height",
                    "Measure from the sill to the ground."),
            error(
                    "turn-of-two-slides",
                    Pairs.twoOf(Slide.SHAPE, Slide.ORDER),
                    (slide, other) ->
                            !slide.facts().get(Slide.ORDER).equals(other.facts().get(Slide.ORDER)),
                    "{about} has the same turn as {2}",
                    "Number the slide-outs as they go out, each once."),
            error(
                    "slides-in-one-wall",
                    Pairs.twoOf(Slide.SHAPE, Slide.SHAPE.key("from-front").orElseThrow()),
                    (slide, other) -> !overlap(slide, other),
                    "{about} and {2} are in one wall, and overlap",
                    "Measure both from the front of the coach again."),
            warning(
                    "awning-longer-than-the-wall",
                    Pairs.onCoach(Awning.SHAPE, Awning.KIND),
                    (awning, coach) -> end(awning).orElse(0.0)
                            <= coach.unit().size().facts().get(Size.LENGTH).value() + 0.02,
                    "{about} reaches beyond the end of the coach",
                    "Measure it again, and where it begins."),
            warning(
                    "awning-against-height",
                    Pairs.own(Awning.SHAPE, Awning.REACH),
                    (reach, awning) -> awning.spot()
                            .flatMap(Spot::height)
                            .map(height -> reach.value() <= 1.45 * height.value())
                            .orElse(true),
                    "{about} reaches out by {1}, which hardly goes with its height",
                    "Measure both again."),
            error(
                    "child-seats-against-belts",
                    Pairs.within(People.SHAPE, People.CHILD_SEATS, People.BELTED_SEATS),
                    (seats, belts) -> seats < belts,
                    "{1} child seats are said to fit, and there are {2} seats with belts, the driver's among them",
                    "Count the seats again."),
            note(
                    "more-beds-than-belts",
                    Pairs.within(People.SHAPE, People.SLEEPING_PLACES, People.BELTED_SEATS),
                    (beds, belts) -> beds <= belts + 2,
                    "{1} may sleep in the coach, and {2} may ride in it",
                    "Count again; if it is so, the handbook says it."),
            warning(
                    "bed-too-narrow",
                    Pairs.within(Bed.SHAPE, Bed.WIDTH, Bed.SLEEPS),
                    (width, sleeps) -> width.value() >= 0.5 * sleeps,
                    "a bed {1} wide is said to sleep {2}",
                    "Measure it again."),
            warning(
                    "bed-too-weak",
                    Pairs.within(Bed.SHAPE, Bed.LOAD_LIMIT, Bed.SLEEPS),
                    (limit, sleeps) -> limit.value() >= 74 * sleeps,
                    "a bed that carries {1} is said to sleep {2}: two adults are too heavy for it",
                    "Read its plate; 75 kg (165 lb) is reckoned for a person, Regulation (EU) No 1230/2012."),
            error(
                    "exit-that-nobody-may-use",
                    Pairs.own(Door.SHAPE, Door.ACCESS)
                            .where((access, door) -> door.roles().contains("emergency-exit")
                                    || door.facts().find(Door.EMERGENCY).orElse(false)),
                    (access, door) -> access == Access.FREE || access == Access.TASK,
                    "{about} is a way out in an emergency, and its access is {1}",
                    "Say `free`: whoever is inside must be able to use it."),
            error(
                    "switch-out-of-reach-in-an-emergency",
                    Pairs.own(Switch.SHAPE, Switch.ACCESS)
                            .where((access, it) ->
                                    it.facts().find(Switch.EMERGENCY).orElse(false)),
                    (access, it) -> access != Access.STAFF && access != Access.ON_CALL,
                    "{about} must be reached in an emergency, and its access is {1}",
                    "Say `free` or `task`."),
            error(
                    "bay-out-of-reach-in-an-emergency",
                    Pairs.own(Compartment.SHAPE, Compartment.ACCESS)
                            .where((access, it) ->
                                    it.facts().find(Compartment.EMERGENCY).orElse(false)),
                    (access, it) -> access != Access.STAFF && access != Access.ON_CALL,
                    "{about} must be reached in an emergency, and its access is {1}",
                    "Say `free` or `task`."),
            error(
                    "life-saver-for-staff",
                    Pairs.own(Item.SHAPE, Item.FOR).where((who, item) -> item.holdsOneOf(LIFE_SAVING)),
                    (who, item) -> who != Item.For.STAFF,
                    "{about} is said to be for staff, and saves the lives of renters",
                    "Say `emergency`."),
            error(
                    "life-saver-locked-away",
                    lifeSavers(),
                    (item, bay) -> bay.facts()
                            .find(Compartment.ACCESS)
                            .map(access -> access != Access.STAFF && access != Access.ON_CALL)
                            .orElse(true),
                    "{about} is in {2}, which renters may not open",
                    "Stow it where everybody reaches it."),
            warning(
                    "dangerous-bay-free-for-all",
                    Pairs.own(Compartment.SHAPE, Compartment.ACCESS)
                            .where((access, bay) -> bay.holdsOneOf(
                                    Set.of("generator-compartment", "hydronic-compartment", "engine-hatch"))),
                    (access, bay) -> access != Access.FREE,
                    "{about} holds hot or moving parts, and its access is {1}",
                    "Say `task`, `on-call` or `staff`."),
            warning(
                    "door-before-its-number",
                    numbered(),
                    (bay, next) -> bay.spot()
                                    .flatMap(Spot::fromFront)
                                    .map(Meters::value)
                                    .orElse(0.0)
                            <= next.spot()
                                            .flatMap(Spot::fromFront)
                                            .map(Meters::value)
                                            .orElse(99.0)
                                    + 0.025,
                    "{about} stands behind {2}, which has the higher number",
                    "Doors are numbered from the front; measure both again."));

    private SpaceRelations() {}

    /** The least distance from the front of what is on a side, in meters: before that is bumper, hood and dash. */
    private static double foremost(Thing thing, Unit unit) {
        boolean flat = unit.facts().get(Unit.BODY) == Unit.Body.BUS_STYLE;
        return switch (thing.spot().flatMap(Spot::side).orElse(Side.FRONT)) {
            case LEFT, RIGHT -> flat ? 0.45 : 0.75;
            case INSIDE -> flat ? 0.5 : 0.9;
            case UNDERFLOOR -> flat ? 0.8 : 1.1;
            case ROOF -> flat ? 0.6 : 1.2;
            case FRONT, REAR -> 0;
        };
    }

    private static Pairs<Thing, Compartment> insideBays() {
        return records -> located()
                .of(records)
                .map(Pairs.Pair::first)
                .flatMap(thing -> records.coach().around(thing.value()).stream()
                        .filter(bay -> bay.spot().flatMap(Spot::side).equals(Optional.of(Side.INSIDE)))
                        .map(bay -> Pairs.Pair.of(thing.value(), thing.at(), bay)));
    }

    private static List<Side> sidesOf(Compartment bay) {
        return Stream.concat(
                        bay.spot().flatMap(Spot::side).stream(), bay.facts().find(Compartment.SECOND_DOOR).stream())
                .toList();
    }

    private static Pattern words(String words) {
        return Pattern.compile("(?i)(?:" + words + ")");
    }

    /** Only what has a height, in a bay of which both edges are known. */
    private static Pairs<Thing, Compartment> heightsInBays() {
        return records -> records.coach()
                .unit()
                .things()
                .filter(thing -> thing.spot().flatMap(Spot::height).isPresent())
                .flatMap(thing -> records
                        .coach()
                        .around(thing)
                        .filter(bay -> bay.spot().flatMap(Spot::height).isPresent()
                                && bay.spot().flatMap(Spot::tall).isPresent())
                        .stream()
                        .map(bay -> Pairs.Pair.of(
                                thing,
                                thing.facts()
                                        .at(thing.spot().orElseThrow().keys().height()),
                                bay)));
    }

    private static boolean atItsHeight(Thing thing, Compartment bay) {
        double height = thing.spot().flatMap(Spot::height).orElseThrow().value();
        double floor = bay.spot().flatMap(Spot::height).orElseThrow().value();
        return height >= floor - BEYOND_ITS_DOOR && height <= top(bay) + BEYOND_ITS_DOOR;
    }

    private static boolean onItsSide(Thing thing, Unit unit) {
        Optional<Side> side = thing.spot().flatMap(Spot::side);
        String where = thing.spot().flatMap(Spot::where).orElse("");
        String words = thing.name() + " " + where;
        if (thing.kind().equals("door") || thing.kind().equals("compartment")) {
            boolean left = NAMED_LEFT.matcher(thing.name()).find();
            boolean right = NAMED_RIGHT.matcher(thing.name()).find();
            if (left && side.filter(it -> !LEFT_OR_INSIDE.contains(it)).isPresent()
                    || right && side.filter(it -> !RIGHT_OR_INSIDE.contains(it)).isPresent()) {
                return false;
            }
        }
        return side.map(it -> switch (it) {
                    case UNDERFLOOR -> !OVERHEAD.matcher(words).find();
                    case ROOF -> !BELOW.matcher(where).find();
                    case INSIDE -> !OUTSIDE.matcher(where).find();
                    case LEFT, RIGHT ->
                        !INDOORS.matcher(where).find()
                                && !opposite(it).matcher(where).find()
                                && !(HANDLED.contains(thing.kind())
                                        && FURNITURE.matcher(where).find());
                    case FRONT, REAR -> !INDOORS.matcher(where).find();
                })
                .orElse(true);
    }

    private static Pattern opposite(Side side) {
        return side == Side.LEFT ? ON_THE_RIGHT : ON_THE_LEFT;
    }

    private record Lettered(Compartment bay, String letter, Side side) {}

    /** The first letters of the names of bays, where most of the coach begin with one for each side. */
    private static Pairs<String, String> lettered() {
        return records -> {
            List<Lettered> all = records.of(Compartment.SHAPE)
                    .flatMap(bay -> bay.spot().flatMap(Spot::side).stream()
                            .flatMap(side -> Labels.of(bay).stream()
                                    .map(label -> new Lettered(bay, label.substring(0, 1), side))))
                    .toList();
            return all.stream()
                    .flatMap(each -> usual(each, all)
                            .map(letter -> new Pairs.Pair<>(
                                    Records.naming(each.bay),
                                    new Located<>(each.letter, each.bay.at()),
                                    new Located<>(letter, each.bay.at()))));
        };
    }

    /** The letter of all others on a side, if there are two and they agree; or else that it stands for another side. */
    private static Stream<String> usual(Lettered each, List<Lettered> all) {
        List<String> there = all.stream()
                .filter(other -> other != each && other.side == each.side)
                .map(Lettered::letter)
                .toList();
        if (there.size() > 1) {
            return Set.copyOf(there).size() == 1 ? Stream.of(there.get(0)) : Stream.of();
        }
        long elsewhere = all.stream()
                .filter(other -> other != each && other.letter.equals(each.letter) && other.side != each.side)
                .count();
        return elsewhere > 1 ? Stream.of("another letter") : Stream.of();
    }

    /** Things beside which another one is said to be, by the name that these have. */
    private static Pairs<Thing, Thing> landmarks() {
        return records -> {
            List<Thing> all = records.coach()
                    .unit()
                    .things()
                    .filter(thing -> from(thing).isPresent() && onTheOutside(thing))
                    .toList();
            return records.coach()
                    .unit()
                    .things()
                    .filter(thing -> from(thing).isPresent()
                            && thing.spot().flatMap(Spot::where).isPresent())
                    .flatMap(thing -> all.stream()
                            .filter(other -> other != thing
                                    && (beside(thing, other.name())
                                            || Labels.said(
                                                    where(thing), "below|above|beside|behind|ahead of|edge of", other)))
                            .map(other -> Pairs.Pair.of(thing, placed(thing), other)));
        };
    }

    private static String where(Thing thing) {
        return thing.spot().flatMap(Spot::where).orElseThrow();
    }

    private static boolean beside(Thing thing, String name) {
        String where = where(thing).toLowerCase(Locale.ROOT);
        int at = where.indexOf(name.toLowerCase(Locale.ROOT));
        return at > 0 && NEXT_TO.matcher(where.substring(0, at)).find();
    }

    private static boolean closeTo(Thing thing, Thing landmark) {
        return end(thing).orElseThrow() >= from(landmark).orElseThrow() - STEPS_AWAY
                && from(thing).orElseThrow() <= end(landmark).orElseThrow() + STEPS_AWAY;
    }

    private static Pairs<Thing, Compartment> inBays() {
        return records -> records.coach()
                .unit()
                .things()
                .filter(thing -> from(thing).isPresent())
                .flatMap(thing ->
                        records
                                .coach()
                                .around(thing)
                                .filter(bay -> onTheOutside(bay) && from(bay).isPresent())
                                .stream()
                                .map(bay -> Pairs.Pair.of(thing, placed(thing), bay)));
    }

    private static Pairs<Thing, Unit> located() {
        return records -> records.coach()
                .unit()
                .things()
                .filter(thing -> thing.spot().isPresent())
                .map(thing ->
                        Pairs.Pair.of(thing, placed(thing), records.coach().unit()));
    }

    /** Each slide-out with how its switches stand on the road. */
    private static Pairs<Slide, String> slidesDriven() {
        return records -> records.of(Slide.SHAPE)
                .filter(slide -> slide.facts().has(Slide.TRAVEL_LOCKS))
                .flatMap(slide -> slide.facts().all(Slide.CONTROLS).stream()
                        .flatMap(id -> records.named(Switch.SHAPE, id).stream())
                        .flatMap(it -> it.facts().located(Switch.DRIVING).stream())
                        .map(driving -> new Pairs.Pair<>(
                                Records.naming(slide),
                                new Located<>(slide, slide.facts().at(Slide.TRAVEL_LOCKS)),
                                driving)));
    }

    /** What is measured from the front along the coach, and how far back it is: 0 the front, 1 the rear. */
    private static Pairs<Thing, Double> alongTheCoach() {
        return records -> records.coach()
                .unit()
                .things()
                .filter(thing -> from(thing).isPresent()
                        && thing.spot()
                                .flatMap(Spot::side)
                                .filter(side -> side != Side.FRONT && side != Side.REAR)
                                .isPresent())
                .map(thing -> new Pairs.Pair<>(
                        Records.naming(thing),
                        new Located<>(thing, placed(thing)),
                        new Located<>(
                                from(thing).orElseThrow()
                                        / records.coach()
                                                .unit()
                                                .size()
                                                .facts()
                                                .get(Size.LENGTH)
                                                .value(),
                                thing.at())));
    }

    /** Told where its distance from the front is written. */
    private static Place placed(Thing thing) {
        return thing.facts()
                .shape()
                .key("from-front")
                .filter(thing.facts()::has)
                .map(thing.facts()::at)
                .orElse(thing.at());
    }

    private static Optional<Double> from(Thing thing) {
        return thing.spot().flatMap(Spot::fromFront).map(Meters::value);
    }

    private static Optional<Double> end(Thing thing) {
        return from(thing)
                .map(from -> from
                        + thing.spot().flatMap(Spot::width).map(Meters::value).orElse(0.0));
    }

    private static boolean onTheOutside(Thing thing) {
        return thing.spot()
                .flatMap(Spot::side)
                .filter(side -> side == Side.LEFT || side == Side.RIGHT)
                .isPresent();
    }

    private static boolean within(Thing thing, Compartment bay) {
        double begin = from(bay).orElseThrow() - 0.105;
        double end = end(bay).orElseThrow() + 0.105;
        return from(thing).orElseThrow() >= begin && end(thing).orElseThrow() <= end;
    }

    private static double top(Thing thing) {
        Optional<Spot> spot = thing.spot();
        return spot.flatMap(Spot::height).map(Meters::value).orElse(0.0)
                + spot.flatMap(Spot::tall).map(Meters::value).orElse(0.0);
    }

    private static boolean low(Thing thing) {
        return onTheOutside(thing)
                && thing.spot()
                        .flatMap(Spot::height)
                        .filter(height -> height.value() < 0.75)
                        .isPresent();
    }

    private static boolean clearOfAxles(Thing thing, Unit unit) {
        Facts size = unit.size().facts();
        if (from(thing).isEmpty() || !size.has(Size.FRONT_OVERHANG) || !size.has(Size.WHEELBASE)) {
            return true;
        }
        double front = size.get(Size.FRONT_OVERHANG).value();
        double rear = front + size.get(Size.WHEELBASE).value();
        return Stream.of(front, rear)
                .noneMatch(axle -> from(thing).get() < axle && end(thing).orElseThrow() > axle);
    }

    private static boolean onItsSideOfTheWheel(Thing thing, Unit unit) {
        Facts size = unit.size().facts();
        Matcher words = BY_WHEEL.matcher(thing.spot().flatMap(Spot::where).orElseThrow());
        if (!words.find()
                || from(thing).isEmpty()
                || !size.has(Size.FRONT_OVERHANG)
                || !size.has(Size.WHEELBASE)
                || !onTheOutside(thing)) {
            return true;
        }
        double axle = size.get(Size.FRONT_OVERHANG).value()
                + (words.group(2).equals("rear") ? size.get(Size.WHEELBASE).value() : 0);
        return words.group(1).equals("behind")
                ? end(thing).orElseThrow() >= axle - 0.2
                : from(thing).get() <= axle + 0.2;
    }

    private static Pairs<Step, Door> steps() {
        return records -> records.of(Step.SHAPE)
                .filter(step -> step.roles().contains("entry-step"))
                .flatMap(step -> records.of(Door.SHAPE)
                        .filter(door -> door.roles().contains("entry-door"))
                        .limit(1)
                        .map(door -> Pairs.Pair.of(step, step.at(), door)));
    }

    private static boolean sameSide(Thing one, Thing other) {
        return one.spot()
                .flatMap(Spot::side)
                .flatMap(side -> other.spot().flatMap(Spot::side).map(side::equals))
                .orElse(true);
    }

    private static boolean beside(Thing step, Thing door) {
        return from(step).isEmpty()
                || from(door).isEmpty()
                || end(step).orElseThrow() >= from(door).get() - 0.1
                        && from(step).get() <= end(door).orElseThrow() + 0.1;
    }

    private static boolean overlap(Slide one, Slide other) {
        return sameSide(one, other)
                && from(one).isPresent()
                && from(other).isPresent()
                && from(one).get() < end(other).orElseThrow() - 0.01
                && from(other).get() < end(one).orElseThrow() - 0.01;
    }

    private static Pairs<Item, Compartment> lifeSavers() {
        return records -> records.of(Item.SHAPE)
                .filter(item -> item.holdsOneOf(LIFE_SAVING))
                .flatMap(item -> records.coach().around(item).stream().map(bay -> Pairs.Pair.of(item, item.at(), bay)));
    }

    /** Bays whose names begin with a letter of their side and a number, each with the next. */
    private static Pairs<Compartment, Compartment> numbered() {
        return records -> records.of(Compartment.SHAPE)
                .flatMap(bay -> number(bay).stream()
                        .flatMap(number -> records.of(Compartment.SHAPE)
                                .filter(next -> number(next).equals(Optional.of(next(number))))
                                .map(next -> Pairs.Pair.of(bay, bay.at(), next))));
    }

    private static Optional<String> number(Compartment bay) {
        Matcher number = NUMBER.matcher(bay.name());
        return number.find() ? Optional.of(number.group()) : Optional.empty();
    }

    private static String next(String number) {
        return number.charAt(0) + Integer.toString(Integer.parseInt(number.substring(1)) + 1);
    }
}
