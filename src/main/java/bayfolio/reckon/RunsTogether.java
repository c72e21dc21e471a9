package bayfolio.reckon;

import bayfolio.fact.Facts;
import bayfolio.measure.Amps;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Rounding;
import bayfolio.model.Charger;
import bayfolio.model.Circuit;
import bayfolio.model.Coach;
import bayfolio.model.Load;
import bayfolio.model.Region;
import bayfolio.model.Supply;
import bayfolio.model.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What runs together on each supply of a coach, and what never does. */
public final class RunsTogether {
    private static final String ASKED = "What can run at the same time?";

    private static final List<String> COUNTS =
            List.of("none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine");

    private final Coach coach;
    private final List<LoadSharing> ways;

    private RunsTogether(Coach coach) {
        this.coach = coach;
        this.ways = LoadSharing.all(coach);
    }

    public static Reckoned of(Coach coach) {
        RunsTogether result = new RunsTogether(coach);
        return result.ways.isEmpty()
                ? new Reckoned.Lacking(Question.RUNS_TOGETHER, ASKED, lacking(coach))
                : result.reckoning();
    }

    static List<String> lacking(Coach coach) {
        boolean supplies = !coach.unit().supplies().isEmpty();
        boolean loads = Draw.all(coach.unit())
                .anyMatch(draw -> draw.circuit().facts().get(Circuit.CURRENT) == Circuit.Current.AC);
        if (supplies == loads) {
            return List.of();
        }
        return List.of(loads ? "the supplies of the coach" : "the loads, with the amps or watts from their plates");
    }

    private Reckoned reckoning() {
        boolean american = coach.unit().region() == Region.NORTH_AMERICA;
        return new Reckoned.Reckoning(
                Question.RUNS_TOGETHER,
                ASKED,
                answer(),
                Stream.concat(
                                Stream.of(fitting()),
                                Stream.concat(
                                        ways.stream().flatMap(way -> never(way).stream()),
                                        Stream.of(dead(), order(), starting()).flatMap(Optional::stream)))
                        .toList(),
                inputs(),
                american
                        ? "On each leg: 1.25 × amps of what runs for hours + amps of the rest ≤ amps of the supply."
                        : "Amps of all that is on, added up ≤ amps of the supply.",
                ways.stream().map(this::step).toList(),
                assumed(american),
                american
                        ? "NEC 210.19(A) and 210.20(A) for the 1.25; an adapter that joins the legs makes one sum of both."
                        : "Watts divided by volts are amps; no factor for hours is used in Europe.",
                "Plates are the most that a thing draws; most days it draws less. A worn outlet may give less than its figure.");
    }

    private List<String> assumed(boolean american) {
        List<String> assumed = new ArrayList<>();
        assumed.add("What runs without being switched on is counted in: "
                + namesOr(ways.get(0).always(), "nothing") + ".");
        List<Draw> usual = usual(ways.get(0));
        assumed.add("Usually on: " + namesOr(usual, "nothing more") + ".");
        chargerLimit()
                .filter(limit -> ways.stream().anyMatch(way -> way.feed().small()))
                .ifPresent(limit -> assumed.add("On a smaller outlet the charger is set to " + limit + " first."));
        if (american) {
            assumed.add("What may run for three hours or more counts a quarter more than it draws.");
        }
        if (ways.stream().anyMatch(LoadSharing::manyThings)) {
            assumed.add("With so many things, no set of more than " + COUNTS.get(LoadSharing.FEW) + " is looked for.");
        }
        if (ways.stream()
                .anyMatch(way -> !Starting.all(way).isEmpty() && way.feed().source() != Supply.Source.SHORE)) {
            assumed.add(
                    "A motor starts while nothing more runs than is told. What runs on the other leg takes nothing from it.");
        }
        assumed.add("Nothing else is plugged in. What you bring counts, too: watts divided by volts are amps.");
        return assumed;
    }

    private Optional<String> chargerLimit() {
        return LoadSharing.limit(coach)
                .flatMap(limit -> coach.unit().facts().find(Unit.CHARGER))
                .flatMap(charger -> charger.facts().find(Charger.LIMIT))
                .map(limit -> limit.in(MeasureSystem.METRIC));
    }

    private String answer() {
        boolean cooled = ways.stream().anyMatch(way -> !air(way.switched()).isEmpty());
        return ways.stream()
                .map(way -> cooled ? count(cooling(way)) + " on " + a(way.feed()) : free(way) + " on " + a(way.feed()))
                .collect(Collectors.joining(
                        ", ", cooled ? "Air conditioners at once: " : "Free beside the usual things: ", "."));
    }

    /** The air conditioners that run with all that is usually on, as many as can be. */
    private static List<Draw> coolers(LoadSharing way) {
        List<Draw> usual = usual(way);
        return way.fits(usual) ? way.most(air(way.switched()), usual) : List.of();
    }

    private static int cooling(LoadSharing way) {
        return coolers(way).size();
    }

    private Grid fitting() {
        boolean cooled = ways.stream().anyMatch(way -> !air(way.switched()).isEmpty());
        List<String> head = cooled
                ? List.of("Power from", "Gives", "Air conditioners at once", "Still free then")
                : List.of("Power from", "Gives", "Free with the usual things on");
        return new Grid(
                "",
                head,
                ways.stream()
                        .map(way -> cooled
                                ? List.of(way.feed().name(), gives(way.feed()), count(cooling(way)), free(way))
                                : List.of(way.feed().name(), gives(way.feed()), free(way)))
                        .toList());
    }

    /** What each leg still carries with the usual things and as many air conditioners as fit. */
    private static String free(LoadSharing way) {
        List<Draw> on =
                Stream.concat(usual(way).stream(), coolers(way).stream()).toList();
        if (!way.fits(on)) {
            return "nothing";
        }
        List<LoadSharing.Conductor> legs = legs(way);
        return legs.stream()
                .map(leg -> (legs.size() > 1 ? leg.name().toLowerCase(Locale.ROOT) + ": " : "")
                        + Rounding.DOWN.print(new Amps(
                                leg.limit().value() - way.carried(leg, on).value())))
                .collect(Collectors.joining(", "));
    }

    private static List<LoadSharing.Conductor> legs(LoadSharing way) {
        return way.conductors().subList(0, way.feed().legs() == SupplyOption.Legs.TWO ? 2 : 1);
    }

    private static String gives(SupplyOption feed) {
        String amps = feed.perLeg().in(MeasureSystem.METRIC);
        return switch (feed.legs()) {
            case TWO -> "2 × " + amps;
            case JOINED -> amps + (feed.source() == Supply.Source.SHORE ? " for both legs" : "");
            case FIRST_ONLY -> amps + ", and leg 2 is dead";
            case ONE -> amps;
        };
    }

    private static String volts(SupplyOption feed) {
        return gives(feed) + ", " + feed.volts().in(MeasureSystem.METRIC);
    }

    private Optional<Grid> never(LoadSharing way) {
        List<List<Draw>> never = way.never();
        if (never.isEmpty()) {
            return Optional.empty();
        }
        if (never.get(0).isEmpty()) {
            return Optional.of(new Grid(
                    "Never together on " + a(way.feed()),
                    List.of("These", "Why"),
                    List.of(List.of("anything", "what is always on is too much already"))));
        }
        Map<String, String> rows = new LinkedHashMap<>();
        never.forEach(set -> rows.putIfAbsent(phrase(set, way), why(set, way)));
        return Optional.of(new Grid(
                "Never together on " + a(way.feed()),
                List.of("These", "Why"),
                rows.entrySet().stream()
                        .map(row -> List.of(row.getKey(), row.getValue()))
                        .toList()));
    }

    private String why(List<Draw> set, LoadSharing way) {
        return over(set, way)
                + way.chargerLow(coach)
                        .filter(low -> low.limits().fits(way.bits(set)))
                        .flatMap(low -> chargerLimit())
                        .map(limit -> ". It fits with the charger set to " + limit)
                        .orElse("");
    }

    private static String over(List<Draw> set, LoadSharing way) {
        return way.conductors().stream()
                .filter(it -> way.carried(it, set).value() > it.limit().value())
                .findFirst()
                .map(it -> "counts as " + Rounding.UP.print(way.carried(it, set)) + " with what is always on; "
                        + (it.name().equals(way.feed().name()) ? "the supply" : it.name()) + " carries "
                        + it.limit().in(MeasureSystem.METRIC))
                .orElseThrow();
    }

    /** Like things are grouped: any two of the three air conditioners. What stands alone is named first. */
    private static String phrase(List<Draw> set, LoadSharing way) {
        Map<List<Draw>, Long> groups = new LinkedHashMap<>();
        for (Draw draw : way.switched()) {
            if (set.contains(draw)) {
                List<Draw> alike = way.switched().stream()
                        .filter(other -> alike(draw, other, way))
                        .toList();
                groups.merge(alike, 1L, Long::sum);
            }
        }
        return groups.entrySet().stream()
                .sorted(Comparator.comparing(group -> group.getKey().size() > 1))
                .map(group -> phrase(group.getValue(), group.getKey(), way))
                .collect(Collectors.joining(" + "));
    }

    private static String phrase(long chosen, List<Draw> alike, LoadSharing way) {
        List<String> names = alike.stream().map(draw -> draw.load().name()).toList();
        if (names.size() == 1) {
            return names.get(0);
        }
        if (alike.equals(air(way.switched()))) {
            String air = COUNTS.get(alike.size()) + " air conditioners";
            return chosen == alike.size()
                    ? (chosen == 2 ? "both air conditioners" : "all " + air)
                    : (chosen == 1 ? "one" : "any " + COUNTS.get((int) chosen)) + " of the " + air;
        }
        return chosen == names.size()
                ? String.join(" + ", names)
                : chosen == 1
                        ? "either " + String.join(" or ", names)
                        : "any " + COUNTS.get((int) chosen) + " of " + joined(names);
    }

    /** Of one kind, and equally heavy wherever they draw. */
    private static boolean alike(Draw one, Draw other, LoadSharing way) {
        return one.equals(other)
                || !one.load().roles().isEmpty()
                        && one.load().roles().equals(other.load().roles())
                        && way.conductors().stream()
                                .allMatch(it -> it.draws()
                                        .get(way.switched().indexOf(one))
                                        .equals(it.draws().get(way.switched().indexOf(other))));
    }

    private Optional<Grid> dead() {
        List<List<String>> rows = ways.stream()
                .filter(way -> !way.dead().isEmpty() && way.feed().source() != Supply.Source.INVERTER)
                .map(way -> List.of(way.feed().name(), namesOr(way.dead(), "")))
                .toList();
        List<List<String>> fed = ways.stream()
                .filter(way -> way.feed().source() == Supply.Source.INVERTER)
                .map(way -> List.of(
                        way.feed().name(),
                        "everything but "
                                + namesOr(
                                        Stream.concat(way.always().stream(), way.switched().stream())
                                                .toList(),
                                        "")))
                .toList();
        List<List<String>> all = Stream.concat(rows.stream(), fed.stream()).toList();
        return all.isEmpty()
                ? Optional.empty()
                : Optional.of(new Grid("Does not run there at all", List.of("Power from", "Without power"), all));
    }

    /** Heat first, as it draws most and is missed least for a while; cooling last. */
    private Optional<Grid> order() {
        List<Draw> switched = new ArrayList<>(ways.get(0).switched());
        switched.removeAll(usual(ways.get(0)));
        switched.sort(Comparator.comparing(RunsTogether::isAir)
                .thenComparing(draw -> -draw.needs().value()));
        List<List<String>> rows = new ArrayList<>();
        for (Draw draw : switched) {
            rows.add(List.of(String.valueOf(rows.size() + 1), draw.load().name(), Rounding.UP.print(draw.needs())));
        }
        return rows.size() < 2
                ? Optional.empty()
                : Optional.of(new Grid("Switch off in this order", List.of("", "What", "Counts as"), rows));
    }

    private Optional<Grid> starting() {
        List<List<String>> rows = ways.stream()
                .filter(way -> way.feed().source() != Supply.Source.SHORE)
                .flatMap(way -> Starting.all(way).stream().map(start -> starting(start, way)))
                .toList();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Grid("Starting a motor", List.of("Power from", "What", "Takes for a moment", "So"), rows));
    }

    private static List<String> starting(Starting start, LoadSharing way) {
        SupplyOption feed = way.feed();
        String motor = start.motor().load().name();
        if (start.moment().isEmpty()) {
            return List.of(
                    feed.name(), motor, "", "never start it on " + feed.name() + ": it carries too little for it");
        }
        Amps moment = start.moment().get();
        String what = start.running().isEmpty() ? motor : motor + " beside " + namesOr(start.running(), "");
        return List.of(
                feed.name(),
                feed.legs() == SupplyOption.Legs.TWO ? what + ", leg " + start.leg() : what,
                Rounding.UP.print(moment),
                feed.surge()
                        .map(surge -> (Draw.over(moment, surge) ? "does not start" : "starts") + ": it gives "
                                + Rounding.DOWN.print(surge) + " for a moment")
                        .orElseGet(() -> unknown(start, feed)));
    }

    /** What a supply gives for a moment is not known: then the heaviest start comes first. */
    private static String unknown(Starting start, SupplyOption feed) {
        String carries = feed.name() + " carries " + Rounding.DOWN.print(feed.perLeg()) + " on and on";
        return switch (start.turn()) {
            case FIRST -> "start it first, before anything else; " + carries;
            case LATER -> "start it next, once those above run evenly; " + carries;
            case NOT_BESIDE -> "start it alone; it does not run beside those above";
        };
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        for (LoadSharing way : ways) {
            SupplyOption feed = way.feed();
            inputs.add(
                    feed.fact()
                            ? Input.described(feed.name(), volts(feed))
                            : Input.usual(
                                    feed.name(),
                                    volts(feed),
                                    coach.unit().region() == Region.EUROPE
                                            ? "posts for this plug are often fused lower; a motorhome magazine"
                                            : "an outlet for 20 A takes the plug for 15 A (NEMA 5-20R), a guide to outlets"));
        }
        LinkedHashSet<Draw> draws = new LinkedHashSet<>();
        ways.forEach(way -> Stream.of(way.always(), way.switched(), way.dead()).forEach(draws::addAll));
        Set<Load> seen = new HashSet<>();
        draws.forEach(draw -> inputs.add(Input.described(
                draw.load().name() + (seen.add(draw.load()) ? "" : ", set low"),
                stated(draw)
                        + (draw.continuous() ? ", may run for hours" : "")
                        + (draw.alwaysOn() ? ", always on" : ""))));
        if (coach.unit().region() == Region.NORTH_AMERICA) {
            inputs.add(Input.usual(
                    "factor for what runs for hours",
                    Rounding.NEAREST.print(Draw.CONTINUOUS_NORTH_AMERICA, 2),
                    "NEC 210.19(A) and 210.20(A)"));
        }
        return inputs;
    }

    /** As its plate says, or what it is set to. */
    private static String stated(Draw draw) {
        Facts facts = draw.load().facts();
        return facts.find(Load.AMPS).filter(draw.amps()::equals).isPresent()
                ? facts.written(Load.AMPS).orElseThrow()
                : Rounding.UP.print(draw.amps());
    }

    private String step(LoadSharing way) {
        List<Draw> on =
                Stream.concat(usual(way).stream(), coolers(way).stream()).toList();
        return way.feed().name() + ": "
                + legs(way).stream()
                        .map(leg -> (legs(way).size() > 1 ? leg.name() + ": " : "") + sum(leg, on, way) + " of "
                                + Rounding.DOWN.print(leg.limit()))
                        .collect(Collectors.joining("; "))
                + ".";
    }

    private static String sum(LoadSharing.Conductor leg, List<Draw> on, LoadSharing way) {
        String parts = on.stream()
                .filter(draw -> leg.draws().get(way.switched().indexOf(draw)).value() > 0)
                .map(draw -> " + " + draw.load().name() + " "
                        + Rounding.UP.print(leg.draws().get(way.switched().indexOf(draw))))
                .collect(Collectors.joining());
        return "always on " + Rounding.UP.print(leg.always()) + parts + " = " + Rounding.UP.print(way.carried(leg, on));
    }

    private static List<Draw> usual(LoadSharing way) {
        return way.switched().stream()
                .filter(draw -> draw.load().facts().find(Load.USUAL).orElse(false))
                .toList();
    }

    private static List<Draw> air(List<Draw> draws) {
        return draws.stream().filter(RunsTogether::isAir).toList();
    }

    private static boolean isAir(Draw draw) {
        return draw.load().roles().contains(Draw.AIR_CONDITIONER);
    }

    private static String count(int count) {
        return count < COUNTS.size() ? COUNTS.get(count) : String.valueOf(count);
    }

    /** In the middle of a sentence. */
    private static String a(SupplyOption feed) {
        return feed.fact() && feed.name().matches("[A-Z].*") ? feed.name() : article(feed.name());
    }

    /** Amps that begin with the sound of a vowel: 8, 11, 18. */
    private static String article(String name) {
        return (name.matches("(8|11|18).*") ? "an " : "a ") + name;
    }

    private static String namesOr(List<Draw> draws, String none) {
        return draws.isEmpty()
                ? none
                : joined(draws.stream().map(draw -> draw.load().name()).toList());
    }

    private static String joined(List<String> parts) {
        return parts.size() == 1
                ? parts.get(0)
                : String.join(", ", parts.subList(0, parts.size() - 1)) + " and " + parts.get(parts.size() - 1);
    }
}
