package bayfolio.explain;

import bayfolio.catalog.Catalog;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Type;
import bayfolio.measure.Amount;
import bayfolio.measure.Kilograms;
import bayfolio.measure.Quantity;
import bayfolio.measure.Rounding;
import bayfolio.measure.Symbol;
import bayfolio.model.Coach;
import bayfolio.model.People;
import bayfolio.model.Region;
import bayfolio.model.Size;
import bayfolio.model.Tank;
import bayfolio.model.Unit;
import bayfolio.model.Weighing;
import bayfolio.model.Weights;
import bayfolio.reckon.Given;
import bayfolio.reckon.Origin;
import bayfolio.reckon.Question;
import bayfolio.reckon.water.WaterTanks;
import bayfolio.reckon.water.WaterWeight;
import bayfolio.reckon.weight.Loading;
import bayfolio.reckon.weight.MinimumPayload;
import bayfolio.reckon.weight.PayloadLimits;
import bayfolio.reckon.weight.Person;
import bayfolio.reckon.weight.WeightLimit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What a coach may still carry, and which limit comes first. */
final class LoadingExplanation {
    private final Loading loading;
    private final PayloadLimits carrying;
    private final Voice voice;
    private final boolean water;

    private LoadingExplanation(Loading loading, Voice voice) {
        this.loading = loading;
        this.carrying = loading.carrying();
        this.voice = voice;
        this.water = loading.hasWater();
    }

    static Explained of(Coach coach, Catalog words) {
        Voice voice = new Voice(words, Question.LOADING, coach.unit().region());
        return Loading.of(coach)
                .map(loading -> new LoadingExplanation(loading, voice).explanation())
                .orElseGet(() -> voice.lacking(Loading.lacking(coach)));
    }

    private boolean european() {
        return voice.region() == Region.EUROPE;
    }

    private Explained explanation() {
        int few = Math.min(2, carrying.belts());
        return new Explained.Explanation(
                Question.LOADING,
                voice.asked(),
                carrying.belts() > few ? promise(few) + " " + promise(carrying.belts()) : promise(few),
                List.of(left(), states()),
                inputs(),
                voice.say("formula"),
                steps(),
                assumed(),
                voice.regional("source"),
                voice.say("error"),
                Optional.of(new Plot.Bars(bars())));
    }

    /** The heaviest state that the description speaks of, against each limit. */
    private List<Bar> bars() {
        Optional<Loading.State> heaviest = loading.states().stream()
                .max(Comparator.comparingDouble(state -> state.all().value()));
        List<Bar> bars = new ArrayList<>();
        heaviest.ifPresent(state -> {
            bar(WeightLimit.Kind.GROSS, Weights.GROSS, state.all()).ifPresent(bars::add);
            if (carrying.axles().isPresent()) {
                bar(
                                WeightLimit.Kind.FRONT_AXLE,
                                Weights.FRONT_AXLE,
                                state.axles().front())
                        .ifPresent(bars::add);
                bar(WeightLimit.Kind.REAR_AXLE, Weights.REAR_AXLE, state.axles().rear())
                        .ifPresent(bars::add);
            }
        });
        return bars;
    }

    private Optional<Bar> bar(WeightLimit.Kind kind, Key<Kilograms> key, Kilograms carried) {
        return carrying.weights()
                .find(key)
                .map(most -> Bar.upTo(
                        limit(kind),
                        voice.say(
                                "bar",
                                "carried",
                                more(carried),
                                "limit",
                                carrying.weights().written(key).orElseThrow()),
                        carried.value(),
                        most.value()));
    }

    static String limit(WeightLimit.Kind kind, Voice voice) {
        return voice.say("limit." + Type.word(kind));
    }

    private String limit(WeightLimit.Kind kind) {
        return limit(kind, voice);
    }

    private String promise(int people) {
        PayloadLimits.First first = carrying.first(people, water ? 1 : 0);
        String with = voice.say(water ? "with.water" : "with", "people", people);
        return first.exceeded()
                ? voice.say(
                        "promise.too-heavy",
                        "with",
                        with,
                        "over",
                        over(first.more()),
                        "limit",
                        limit(first.limit().kind()))
                : voice.say("promise", "with", with, "left", less(first.more()));
    }

    private Grid left() {
        List<String> head = new ArrayList<>(List.of(voice.say("head.people")));
        loading.levels()
                .forEach(level -> head.add(
                        water ? voice.say("head.left-water", "level", Type.word(level)) : voice.say("head.left")));
        return new Grid(
                "",
                head,
                IntStream.rangeClosed(1, carrying.belts())
                        .mapToObj(people -> Stream.concat(
                                        Stream.of(String.valueOf(people)),
                                        loading.levels().stream()
                                                .map(level -> told(carrying.first(people, level.share()))))
                                .toList())
                        .toList());
    }

    private String told(PayloadLimits.First first) {
        String limit = limit(first.limit().kind());
        return first.exceeded()
                ? voice.say("cell.too-much", "over", over(first.more()), "limit", limit)
                : voice.say("cell", "left", less(first.more()), "limit", limit);
    }

    private Grid states() {
        boolean axles = carrying.axles().isPresent();
        List<List<String>> rows = new ArrayList<>();
        for (Loading.State state : loading.states()) {
            List<String> row = new ArrayList<>(
                    List.of(voice.say("water." + Type.word(state.water())), shown(state, state.all(), Weighing.TOTAL)));
            if (axles) {
                row.add(shown(state, state.axles().front(), Weighing.FRONT));
                row.add(shown(state, state.axles().rear(), Weighing.REAR));
            }
            row.add(verdict(loading.least(state)));
            rows.add(row);
        }
        return new Grid(
                voice.say("table.states"),
                axles
                        ? voice.heads("every-seat", "all", "front-axle", "rear-axle", "so")
                        : voice.heads("every-seat", "all", "so"),
                rows);
    }

    private String shown(Loading.State state, Kilograms weight, Key<Kilograms> key) {
        return voice.amount(
                state.water() == Loading.Water.AS_WEIGHED
                        ? carrying.weighing().written(key).orElseThrow()
                        : more(weight));
    }

    private String verdict(Loading.Least least) {
        String limit = limit(least.limit());
        if (least.exceeded()) {
            return voice.say("cell.too-much", "over", over(least.left()), "limit", limit);
        }
        return voice.say(least.close() ? "verdict.close" : "verdict", "left", less(least.left()), "limit", limit);
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        described("gross", carrying.weights(), Weights.GROSS, inputs);
        described("front-axle", carrying.weights(), Weights.FRONT_AXLE, inputs);
        described("rear-axle", carrying.weights(), Weights.REAR_AXLE, inputs);
        described("payload", carrying.weights(), Weights.PAYLOAD, inputs);
        described("weighed", carrying.weighing(), Weighing.TOTAL, inputs);
        described("weighed-front", carrying.weighing(), Weighing.FRONT, inputs);
        described("weighed-rear", carrying.weighing(), Weighing.REAR, inputs);
        inputs.add(voice.input(
                "weighed-people",
                String.valueOf(carrying.weighing().get(Weighing.PEOPLE)),
                new Origin.Stated(carrying.weighing(), Weighing.PEOPLE)));
        described("weighed-water", carrying.weighing(), Weighing.FRESH_WATER, inputs);
        inputs.add(voice.input(
                "belts",
                String.valueOf(carrying.belts()),
                new Origin.Stated(carrying.unit().facts().get(Unit.PEOPLE).facts(), People.BELTED_SEATS)));
        if (water) {
            WaterTanks.fresh(carrying.unit())
                    .tanks()
                    .forEach(tank -> inputs.add(voice.input(
                            "tank",
                            voice.times(
                                    WaterTanks.count(tank),
                                    tank.facts().written(Tank.CAPACITY).orElseThrow()),
                            new Origin.Stated(tank.facts(), Tank.CAPACITY),
                            "name",
                            tank.name())));
            inputs.add(voice.input(
                    "water-weight",
                    Given.usual(WaterWeight.KILOGRAMS_PER_LITER)
                            .map(it -> Rounding.NEAREST.print(it, 0, Symbol.KILOGRAM))));
        }
        inputs.add(voice.input(
                "person",
                Given.usual(Person.usual(voice.region())).map(it -> Rounding.NEAREST.print(it, voice.first()))));
        if (carrying.axles().isPresent()) {
            Facts size = carrying.unit().size().facts();
            described("wheelbase", size, Size.WHEELBASE, inputs);
            described("front-overhang", size, Size.FRONT_OVERHANG, inputs);
        }
        return inputs;
    }

    private <Q extends Quantity> void described(String name, Facts facts, Key<Q> key, List<Input> inputs) {
        facts.written(key)
                .ifPresent(
                        written -> inputs.add(voice.input(name, voice.amount(written), new Origin.Stated(facts, key))));
    }

    private List<String> steps() {
        List<String> steps = new ArrayList<>();
        Kilograms capacity = carrying.capacity();
        Kilograms person = Person.weight(voice.region());
        steps.add(voice.say("step.bare", "weight", bare()));
        steps.add(voice.regional(
                "step.capacity",
                "gross",
                carrying.weights().written(Weights.GROSS).orElseThrow(),
                "bare",
                bare(),
                "person",
                more(person),
                "capacity",
                stated(carrying.weights(), Weights.PAYLOAD, capacity).orElseGet(() -> less(capacity))));
        Kilograms seats = Person.weight(loading.counted(), voice.region());
        steps.add(voice.regional(
                "step.seats",
                "count",
                loading.counted(),
                "person",
                Rounding.NEAREST.print(person, voice.first()),
                "seats",
                more(seats),
                "within",
                String.valueOf(!WeightLimit.exceeded(loading.payload().minus(seats))),
                "payload",
                carrying.weights().written(Weights.PAYLOAD).orElseGet(() -> less(capacity))));
        if (european()) {
            Kilograms rule = MinimumPayload.of(
                    carrying.belts(), carrying.unit().size().facts().get(Size.LENGTH));
            steps.add(voice.say(
                    "step.rule",
                    "rule",
                    more(rule),
                    "enough",
                    String.valueOf(!WeightLimit.exceeded(loading.payload().minus(rule)))));
        }
        if (water) {
            steps.add(voice.say(
                    "step.water",
                    "weight",
                    more(WaterWeight.of(WaterTanks.fresh(carrying.unit()).capacity()))));
        }
        carrying.limits()
                .forEach(limit -> steps.add(voice.say(
                        water ? "step.left.water" : "step.left",
                        "limit",
                        limit(limit.kind()),
                        "left",
                        signed(limit.left(carrying.belts(), person, water ? 1 : 0, new Kilograms(0))))));
        return steps;
    }

    private Amount bare() {
        return stated(carrying.weighing(), Weighing.TOTAL, carrying.bare()).orElseGet(() -> more(carrying.bare()));
    }

    /** As the description puts it, where that is the same. */
    private static Optional<Amount> stated(Facts facts, Key<Kilograms> key, Kilograms same) {
        return facts.find(key)
                .filter(fact -> Math.abs(fact.value() - same.value()) < WeightLimit.HAIR)
                .flatMap(fact -> facts.written(key));
    }

    private String signed(Kilograms left) {
        return WeightLimit.exceeded(left) ? voice.say("too-much", "over", over(left)) : voice.amount(less(left));
    }

    private List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        assumed.add(voice.say(
                "assumed.person", "weight", Rounding.NEAREST.print(Person.weight(voice.region()), voice.first())));
        assumed.add(voice.say("assumed.fuel"));
        Kilograms inHeater = PayloadLimits.inHeater(carrying.unit());
        if (inHeater.value() > 0) {
            assumed.add(voice.say(
                    "assumed.heater", "names", PayloadLimits.heaterNames(carrying.unit()), "weight", more(inHeater)));
        }
        assumed.add(voice.say("assumed.waste"));
        if (carrying.axles().isPresent()) {
            assumed.add(voice.say("assumed.seats"));
            assumed.add(voice.say("assumed.bays"));
            if (water) {
                assumed.add(voice.say("assumed.used-water"));
            }
        } else {
            assumed.add(voice.say(
                    "assumed.no-axles",
                    "missing",
                    voice.words()
                            .row(carrying.missing().stream()
                                    .map(fact -> Voice.missing(fact, voice.words()))
                                    .toList())));
        }
        return assumed;
    }

    /** A hair below zero is nothing. */
    private Amount less(Kilograms weight) {
        return Rounding.DOWN.print(new Kilograms(Math.max(0, weight.value())), voice.first());
    }

    private Amount more(Kilograms weight) {
        return Rounding.UP.print(weight, voice.first());
    }

    private Amount over(Kilograms left) {
        return Rounding.UP.print(new Kilograms(-left.value()), voice.first());
    }
}
