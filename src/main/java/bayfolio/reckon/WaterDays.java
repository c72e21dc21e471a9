package bayfolio.reckon;

import bayfolio.fact.Key;
import bayfolio.measure.Liters;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Rounding;
import bayfolio.model.Coach;
import bayfolio.model.Tank;
import bayfolio.model.Unit;
import bayfolio.model.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** For how many days the water lasts, and the room for waste. */
public final class WaterDays {
    private static final String ASKED = "How long does the water last?";

    private final WaterUse use;
    private final Unit unit;
    private final MeasureSystem system;

    private WaterDays(WaterUse use, Unit unit) {
        this.use = use;
        this.unit = unit;
        this.system = unit.region().first();
    }

    public static Reckoned of(Coach coach) {
        return WaterUse.of(coach)
                .<Reckoned>map(use -> new WaterDays(use, coach.unit()).reckoning())
                .orElseGet(() -> new Reckoned.Lacking(Question.WATER_DAYS, ASKED, WaterUse.lacking(coach.unit())));
    }

    private Reckoned reckoning() {
        return new Reckoned.Reckoning(
                Question.WATER_DAYS,
                ASKED,
                answer(),
                Stream.concat(Stream.of(first()), WaterUse.WAYS.stream().flatMap(this::grids))
                        .toList(),
                inputs(),
                "Days = what can be used of the tank / (people × liters a person and day).",
                steps(),
                assumed(),
                "Our own model. For comparison: the Sphere handbook gives 7.5 to 15 L a person and day as basic need.",
                "Habits differ most: a long shower may take a day away. Whole days are rounded down.");
    }

    private String answer() {
        String few = use.berths() > 2 ? promise(2) + " " : "";
        return few + promise(use.berths());
    }

    private String promise(int people) {
        WaterUse.Lasting first = use.first(WaterUseProfile.USUAL, people);
        return "With " + people(people) + ": " + first.whole() + ", then " + first.names() + " "
                + first.tanks().verb() + " " + first.end() + ".";
    }

    static String people(int count) {
        return count + (count == 1 ? " person" : " people");
    }

    private IntStream counts() {
        return IntStream.rangeClosed(1, use.berths());
    }

    private Grid first() {
        List<String> head = new ArrayList<>(List.of("People"));
        WaterUse.WAYS.forEach(way -> head.add("Living " + words(way)));
        return new Grid(
                "",
                head,
                counts().mapToObj(people -> Stream.concat(
                                        Stream.of(String.valueOf(people)),
                                        WaterUse.WAYS.stream().map(way -> {
                                            WaterUse.Lasting first = use.first(way, people);
                                            return first.shown() + ": " + first.what();
                                        }))
                                .toList())
                        .toList());
    }

    private static String words(WaterUseProfile way) {
        return way == WaterUseProfile.USUAL ? "as usual" : way.name();
    }

    private Stream<Grid> grids(WaterUseProfile way) {
        List<String> head = new ArrayList<>(List.of("People"));
        use.lasting(way, 1).forEach(lasting -> head.add(lasting.what()));
        Grid days = new Grid(
                "Each tank, living " + words(way),
                head,
                counts().mapToObj(people -> Stream.concat(
                                        Stream.of(String.valueOf(people)),
                                        use.lasting(way, people).stream().map(WaterUse.Lasting::shown))
                                .toList())
                        .toList());
        return Stream.of(days);
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        Stream.of(use.fresh(), use.gray(), use.toilet())
                .flatMap(tanks -> tanks.tanks().stream())
                .forEach(tank -> {
                    inputs.add(Input.described(tank.name() + ", what it holds", WaterTanks.stated(tank)));
                    inputs.add(
                            tank.facts().has(Tank.USABLE)
                                    ? Input.described(
                                            tank.name() + ", what can be used",
                                            tank.facts().written(Tank.USABLE).orElseThrow())
                                    : Input.usual(tank.name() + ", what can be used", "100 %", "all of it is taken"));
                });
        if (use.shower()) {
            inputs.add(Input.described("shower, each minute", stated(Water.SHOWER_PER_MINUTE)));
        }
        if (!use.toilet().none()) {
            inputs.add(
                    use.flushStated()
                            ? Input.described("one flush", stated(Water.TOILET_PER_FLUSH))
                            : Input.usual("one flush", more(use.perFlush()), "common practice, no source"));
            inputs.add(Input.usual(
                    "from the body, a person and day",
                    more(WaterUseProfile.BODY),
                    "feces, the median of a review of 2015; urine, between 1 and 2 L by medical pages"));
        }
        for (WaterUseProfile way : WaterUse.WAYS) {
            String name = "each person and day, " + words(way);
            inputs.add(
                    way == WaterUseProfile.GENEROUS
                            ? Input.unverified(name, habits(way), way.source())
                            : Input.usual(name, habits(way), way.source()));
        }
        return inputs;
    }

    private String habits(WaterUseProfile way) {
        List<String> parts = new ArrayList<>(List.of(
                "drinking and cooking " + more(way.drink()),
                "dishes " + more(way.dishes()),
                "washing " + more(way.wash())));
        if (use.shower()) {
            parts.add(
                    way.showers() > 0
                            ? "shower " + Rounding.UP.print(way.shower().value() / 60, 0) + " minutes"
                            : "no shower");
        }
        if (!use.toilet().none()) {
            parts.add(way.flushes() + " flushes");
        }
        return String.join(", ", parts);
    }

    private List<String> steps() {
        List<String> steps = new ArrayList<>();
        for (WaterUseProfile way : WaterUse.WAYS) {
            steps.add("Each person and day, " + words(way) + ": "
                    + use.lasting(way, 1).stream()
                            .map(lasting -> lasting.names() + " " + more(lasting.each()))
                            .collect(Collectors.joining(", "))
                    + ".");
        }
        use.lasting(WaterUseProfile.USUAL, use.berths())
                .forEach(lasting -> steps.add(lasting.names() + " with " + people(use.berths()) + ": "
                        + less(lasting.tanks().usable()) + " / (" + use.berths() + " × " + more(lasting.each())
                        + ") = " + lasting.shown() + "."));
        return steps;
    }

    private List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        assumed.add("You start with " + use.fresh().names() + " full and the others empty.");
        assumed.add("The first sentence is for people who live as usual.");
        assumed.add("No hose is connected. Nothing is drained on the way.");
        assumed.add("Water for drinking and cooking goes down no drain.");
        assumed.add(
                use.shower()
                        ? "A shower lasts 2 minutes as usual, 5 if you are generous. The sparing wash at the basin."
                        : "No shower is counted, as none is described.");
        assumed.add("Water in the heater is not counted.");
        return assumed;
    }

    private String stated(Key<Liters> key) {
        return unit.facts().get(Unit.WATER).facts().written(key).orElseThrow();
    }

    private String less(Liters volume) {
        return Rounding.DOWN.print(volume, system);
    }

    private String more(Liters volume) {
        return Rounding.UP.print(volume, system);
    }
}
