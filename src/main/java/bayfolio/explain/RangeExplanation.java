package bayfolio.explain;

import bayfolio.catalog.Catalog;
import bayfolio.measure.Amount;
import bayfolio.measure.Liters;
import bayfolio.measure.Meters;
import bayfolio.measure.Rounding;
import bayfolio.measure.Symbol;
import bayfolio.model.Coach;
import bayfolio.reckon.Given;
import bayfolio.reckon.Question;
import bayfolio.reckon.fuel.DrivingRange;
import bayfolio.reckon.fuel.FuelTank;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How far a tank of fuel goes. */
final class RangeExplanation {
    /** What is a whole ten may lie a hair below it. */
    private static final double HAIR = 1e-6;

    private final DrivingRange range;
    private final Voice voice;

    private RangeExplanation(DrivingRange range, Voice voice) {
        this.range = range;
        this.voice = voice;
    }

    static Explained of(Coach coach, Catalog words) {
        Voice voice = new Voice(words, Question.RANGE, coach.unit().region());
        return DrivingRange.of(coach)
                .map(range -> new RangeExplanation(range, voice).explanation())
                .orElseGet(() -> voice.lacking(DrivingRange.lacking(coach)));
    }

    private Explained explanation() {
        String level = voice.amount(Rounding.NEAREST.print(range.reserve().value()));
        Liters usable = range.usable();
        Liters aboveReserve = range.aboveReserve();
        Liters last = usable.minus(aboveReserve);
        Amount empty = tens(range.distance(usable));
        Amount above = tens(range.distance(aboveReserve));
        Amount consumption = range.consumption().value().both(voice.first());
        return new Explained.Explanation(
                Question.RANGE,
                voice.asked(),
                voice.say(
                        "answer",
                        "tanks",
                        range.tanks().stream().map(FuelTank::name).toList(),
                        "distance",
                        above,
                        "level",
                        level),
                List.of(new Grid(
                        "",
                        voice.heads("fuel", "amount", "goes"),
                        List.of(
                                row("row.above", level, aboveReserve, above),
                                row("row.last", level, last, tens(range.distance(last))),
                                row("row.all", level, usable, empty)))),
                inputs(),
                voice.say("formula"),
                List.of(
                        voice.say("step.usable", "usable", fuel(usable), "level", level, "above", fuel(aboveReserve)),
                        voice.say("step.all", "fuel", fuel(usable), "use", consumption, "distance", empty),
                        voice.say(
                                "step.above",
                                "level",
                                level,
                                "fuel",
                                fuel(aboveReserve),
                                "use",
                                consumption,
                                "distance",
                                above)),
                assumed(),
                voice.say("source"),
                voice.say("error"),
                Optional.empty());
    }

    private List<String> row(String key, String level, Liters fuel, Amount distance) {
        return List.of(voice.say(key, "level", level), voice.amount(fuel(fuel)), voice.amount(distance));
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        for (FuelTank tank : range.tanks()) {
            inputs.add(voice.input("capacity", tank.capacity().map(it -> it.both(voice.first())), "name", tank.name()));
            inputs.add(voice.input("usable", tank.usable().map(Rounding.NEAREST::print), "name", tank.name()));
        }
        inputs.add(voice.input("consumption", range.consumption().map(it -> it.both(voice.first()))));
        Given<Amount> reserve = range.reserve().map(Rounding.NEAREST::print);
        inputs.add(voice.input(reserve.isStated() ? "reserve-generator" : "reserve", reserve));
        return inputs;
    }

    private List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        assumed.add(voice.say("assumed.road"));
        if (range.shared()) {
            assumed.add(voice.say("assumed.generator-off"));
        }
        assumed.add(voice.say("assumed.rest"));
        return assumed;
    }

    private Amount fuel(Liters fuel) {
        return Rounding.NEAREST.print(fuel, voice.first());
    }

    /** To ten of each, down: fuel consumption is not known to a mile. */
    private Amount tens(Meters distance) {
        return Amount.both(
                tens(distance.miles(), Symbol.MILE), tens(distance.value() / 1000, Symbol.KILOMETER), voice.first());
    }

    private static Amount tens(double distance, Symbol unit) {
        return Rounding.DOWN.print(10 * Math.floor(distance / 10 + HAIR), 0, unit);
    }
}
