package bayfolio.check.sense;

import static bayfolio.check.sense.Relation.note;
import static bayfolio.check.sense.Relation.warning;

import bayfolio.measure.Amps;
import bayfolio.model.Circuit;
import bayfolio.model.Inverter;
import bayfolio.model.Item;
import bayfolio.model.Load;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How long things run, by what they are called, and what hangs on a circuit. Common practice, no source: a kettle never
 * runs for three hours, an alarm is never off.
 */
final class LoadRelations {
    /** What runs for minutes, whenever somebody switches it on. */
    private static final String BRIEF =
            "microwave kettle coffee toaster hair dryer vacuum blender pump step slide jack awning"
                    + " reel motor usb hood macerator toilet";

    private static final Set<String> SHORT = Subjects.words(BRIEF + " lock keypad");

    private static final Set<String> LONG =
            Subjects.words("air conditioner fridge refrigerator charger converter furnace heater"
                    + " heat element tv television light lamp fan alarm detector panel meter inverter");

    private static final Set<String> UNASKED =
            Subjects.words("alarm detector panel meter charger converter electronics clock");

    private static final Set<String> ASKED =
            Subjects.words(BRIEF + " conditioner tv television light lamp furnace heater element fan");

    /** Boards and the like are named after what they steer, and run otherwise. */
    private static final Set<String> UNSURE = Set.of("board", "idle", "mat");

    /** Devices that a text of a circuit names and that draw power by themselves. */
    private static final Set<String> DEVICES = Subjects.words(
            "conditioner microwave fridge charger converter television furnace panel hood alarm step jack reel hob macerator");

    /** Things on board that the breaker of the outlets feels. */
    private static final Set<String> PLUGGED_IN = Subjects.words("kettle toaster dryer blender");

    /** What moves something and stops, or is pressed for a moment. */
    private static final Set<String> IN_SECONDS =
            Subjects.words("step slide jack bed awning reel toilet macerator lock keypad lift motor hood grinder");

    private static final double TEN_MINUTES = 600;

    private static final double HOUR = 3_600;

    /** What runs for hours of an evening or a night; common practice, no source. */
    private static final Set<String> FOR_HOURS =
            Subjects.words("fridge refrigerator light lamp tv television heater furnace");

    /** What runs for minutes at a time; common practice, no source. */
    private static final Set<String> FOR_MINUTES =
            Subjects.words("pump microwave hood kettle coffee toaster dryer blender toilet");

    /** Up to so many volts are those of batteries. */
    private static final double LOW_VOLTS = 60;

    /** A fuse so small is chosen for the wire, whatever hangs on it. */
    private static final double SMALL_FUSE = 15;

    /** Breakers are at most so many times what hangs on them; common practice, no source. */
    private static final double MOST_ABOVE = 9;

    static final List<Relation<?, ?>> ALL = List.of(
            note(
                    "runs-otherwise",
                    Pairs.own(Load.SHAPE, Load.CONTINUOUS),
                    (continuous, load) -> !(continuous ? only(load, SHORT, LONG) : only(load, LONG, SHORT)),
                    "`continuous` of {about} is {1}: such things run otherwise, by its name",
                    "`yes` is what may run three hours or longer; if it is so, say under `accept` why."),
            note(
                    "on-unasked-or-not",
                    Pairs.own(Load.SHAPE, Load.ALWAYS_ON),
                    (always, load) -> !(always
                            ? only(load, ASKED, UNASKED)
                            : !load.facts().has(Load.A_NIGHT) && only(load, UNASKED, ASKED)),
                    "`always-on` of {about} is {1}: such things are otherwise, by its name",
                    "`yes` is what runs without anybody switching it on; if it is so, say under `accept` why."),
            note(
                    "plugged-in-without-load",
                    Pairs.onCoach(Item.SHAPE, Item.SHAPE.key("name").orElseThrow())
                            .where((item, coach) -> !Collections.disjoint(Subjects.all(item.name()), PLUGGED_IN))
                            .given(Records::described),
                    (item, coach) -> coach.unit().loads().stream()
                            .anyMatch(load -> words(load).containsAll(Subjects.all(item.name()))),
                    "{about} is plugged in, and no load of this coach has its name",
                    "Tell its watts under `loads`: it is the one that trips the breaker."),
            note(
                    "inverter-without-idle-load",
                    Pairs.onCoach(Inverter.SHAPE, Inverter.RATING).given(Records::described),
                    (inverter, coach) -> coach.unit().loads().stream()
                            .anyMatch(load -> words(load).contains("inverter")),
                    "an inverter draws from the battery while nothing runs on it, and no load tells how much",
                    "Measure it with everything off, and add it to `loads` as running on low voltage."),
            note(
                    "never-off-and-brief",
                    Pairs.own(Load.SHAPE, Load.CONTINUOUS)
                            .where((continuous, load) ->
                                    load.facts().find(Load.ALWAYS_ON).orElse(false)),
                    (continuous, load) -> continuous,
                    "{about} is always on, and `continuous`, which is what runs for three hours or longer, is no",
                    "Mend one of the two answers."),
            note(
                    "so-short-a-night",
                    Pairs.own(Load.SHAPE, Load.A_NIGHT),
                    (night, load) -> night.value() >= leastOfANight(load) && night.value() <= mostOfANight(load),
                    "{about} runs for {1} of a whole night, which few such things do",
                    "Read the figure and its unit again."),
            note(
                    "night-without-inverter",
                    Pairs.own(Load.SHAPE, Load.A_NIGHT)
                            .where((night, load) -> load.facts()
                                    .find(Load.VOLTS)
                                    .filter(volts -> volts.value() > LOW_VOLTS)
                                    .isPresent()),
                    (night, load) -> load.facts().find(Load.ON_INVERTER).orElse(true),
                    "a night on the battery has {1} of {about}, and `on-inverter` says that the battery never runs it",
                    "Mend `on-inverter`, or leave `a-night` out."),
            note(
                    "not-on-the-inverter-of-its-circuit",
                    Pairs.toOne(Load.SHAPE, Load.CIRCUIT, Circuit.SHAPE)
                            .where((load, circuit) -> load.facts().has(Load.ON_INVERTER)
                                    && circuit.facts().find(Circuit.BY_INVERTER).orElse(false)),
                    (load, circuit) -> load.facts().get(Load.ON_INVERTER)
                            || Subjects.of(circuit.facts().find(Circuit.SERVES).orElse("outlet"))
                                    .contains("outlet"),
                    "{2} is fed by the inverter, and {about}, which is wired to it, is said never to run on it",
                    "Mend `on-inverter`, or name its circuit."),
            note(
                    "circuit-without-load",
                    loaded(),
                    (circuit, loads) -> !loads.isEmpty(),
                    "no load hangs on {about}",
                    "Name under `loads` what draws from it; or say under `accept` that nothing does."),
            note(
                    "served-without-load",
                    loaded(),
                    (circuit, loads) ->
                            loads.isEmpty() || unloaded(circuit, loads).isEmpty(),
                    "{about} is said to serve something of which no load is told",
                    "Name it under `loads`, or mend `serves`."),
            warning(
                    "breaker-far-above-its-loads",
                    loaded(),
                    (circuit, loads) -> loads.isEmpty()
                            || circuit.carries(Circuit.Current.AC)
                            || circuit.facts().get(Circuit.BREAKER).value()
                                    <= Math.max(SMALL_FUSE, MOST_ABOVE * amps(loads)),
                    "the breaker of {about} is far above all that hangs on it",
                    "Read the figure on it again: it guards the wire."));

    private LoadRelations() {}

    private static double leastOfANight(Load load) {
        Set<String> words = Subjects.naming(load);
        boolean brief = !Collections.disjoint(words, IN_SECONDS);
        boolean hours = !Collections.disjoint(words, FOR_HOURS) && Collections.disjoint(words, UNSURE);
        return brief ? 0 : hours ? HOUR : TEN_MINUTES;
    }

    private static double mostOfANight(Load load) {
        return Collections.disjoint(Subjects.naming(load), FOR_MINUTES) ? 24 * HOUR : HOUR;
    }

    /** Whether its name has words of the one list, and none of the other. */
    private static boolean only(Load load, Set<String> these, Set<String> those) {
        Set<String> words = words(load);
        return !Collections.disjoint(words, these)
                && Collections.disjoint(words, those)
                && Collections.disjoint(words, UNSURE);
    }

    /** Each circuit with what hangs on it, or through which others are fed, if all can be read. */
    private static Pairs<Circuit, List<Load>> loaded() {
        return records -> {
            List<Load> loads = records.of(Load.SHAPE).toList();
            Set<String> feeds = records.of(Circuit.SHAPE)
                    .flatMap(circuit -> circuit.facts().find(Circuit.FED_THROUGH).stream())
                    .collect(Collectors.toSet());
            int told = records.coach()
                    .unit()
                    .facts()
                    .find(Unit.LOADS)
                    .map(List::size)
                    .orElse(0);
            return loads.isEmpty() || loads.size() < told
                    ? Stream.of()
                    : records.of(Circuit.SHAPE)
                            .filter(circuit -> circuit.facts().has(Circuit.BREAKER)
                                    && !feeds.contains(circuit.id())
                                    && !Subjects.of(circuit.facts()
                                                    .find(Circuit.SERVES)
                                                    .orElse(""))
                                            .contains("inverter"))
                            .map(circuit -> new Pairs.Pair<>(
                                    Records.naming(circuit),
                                    new Located<>(circuit, circuit.at()),
                                    new Located<>(
                                            records.referring(Load.SHAPE, Load.CIRCUIT, circuit)
                                                    .toList(),
                                            circuit.at())));
        };
    }

    /** Devices that a circuit is said to serve, and that none of its loads is named after. */
    private static Set<String> unloaded(Circuit circuit, List<Load> loads) {
        Set<String> served = Subjects.of(circuit.facts().find(Circuit.SERVES).orElse("")).stream()
                .filter(DEVICES::contains)
                .collect(Collectors.toSet());
        loads.forEach(load -> served.removeAll(words(load)));
        return served;
    }

    private static double amps(List<Load> loads) {
        return loads.stream()
                .mapToDouble(
                        load -> load.facts().find(Load.AMPS).map(Amps::value).orElse(0.0))
                .sum();
    }

    private static Set<String> words(Load it) {
        Set<String> words = new HashSet<>(Subjects.naming(it));
        it.facts().find(Load.APPLIANCE).ifPresent(id -> words.addAll(Subjects.of(id)));
        // A heat pump is none of the pumps that run for minutes.
        if (words.contains("heat")) {
            words.remove("pump");
        }
        return words;
    }
}
