package bayfolio.explain;

import bayfolio.catalog.Catalog;
import bayfolio.fact.Type;
import bayfolio.measure.Amount;
import bayfolio.measure.Kilograms;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Rounding;
import bayfolio.measure.Symbol;
import bayfolio.model.Coach;
import bayfolio.reckon.Question;
import bayfolio.reckon.water.WaterTanks;
import bayfolio.reckon.weight.Loading;
import bayfolio.reckon.weight.PayloadLimits;
import bayfolio.reckon.weight.Person;
import bayfolio.reckon.weight.WeightLimit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What is left to load, for people, things and water that the reader chooses; in the measures of the coach. */
final class LoadingCalculator implements Calculator {
    private static final String PEOPLE = "people";
    private static final String EACH = "each";
    private static final String CARGO = "cargo";
    private static final String FRESH = "fresh";

    private static final List<String> MESSAGES =
            List.of("result.too-heavy", "result.left", "result.row.left", "too-much");

    private final PayloadLimits carrying;
    private final Voice voice;
    private final Symbol unit;
    private final double perKilogram;

    private LoadingCalculator(PayloadLimits carrying, Voice voice) {
        boolean pounds = carrying.unit().region().first() == MeasureSystem.US;
        this.carrying = carrying;
        this.voice = voice;
        this.unit = pounds ? Symbol.POUND : Symbol.KILOGRAM;
        this.perKilogram = pounds ? new Kilograms(1).pounds() : 1;
    }

    static Optional<Calculator> of(Coach coach, Catalog words) {
        Voice voice = new Voice(words, Question.LOADING, coach.unit().region());
        return PayloadLimits.of(coach).map(carrying -> new LoadingCalculator(carrying, voice));
    }

    @Override
    public Question question() {
        return Question.LOADING;
    }

    @Override
    public List<Field> fields() {
        double each = Math.rint(Person.weight(carrying.unit().region()).value() * perKilogram);
        double most = Math.rint(new Kilograms(2000).value() * perKilogram / 100) * 100;
        String in = voice.say("unit", "unit", Type.word(unit));
        List<Field> fields = new ArrayList<>();
        fields.add(new Field(
                PEOPLE,
                voice.say("field.people"),
                new Kind.Number(Math.min(2, carrying.belts()), 1, carrying.belts(), 1)));
        fields.add(
                new Field(EACH, voice.say("field.each", "unit", in), new Kind.Number(each, 0, Math.rint(4 * each), 1)));
        fields.add(new Field(CARGO, voice.say("field.cargo", "unit", in), new Kind.Number(0, 0, most, 1)));
        if (!WaterTanks.fresh(carrying.unit()).none()) {
            fields.add(new Field(
                    FRESH,
                    voice.say("field.fresh"),
                    new Kind.Choice(
                            Stream.of(Loading.Level.values())
                                    .map(level -> voice.say("level", "level", Type.word(level)))
                                    .toList(),
                            2)));
        }
        return List.copyOf(fields);
    }

    @Override
    public Map<String, Object> figures() {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("unit", Type.word(unit));
        figures.put("perKilogram", perKilogram);
        figures.put("frontSeats", (double) WeightLimit.FRONT_SEATS);
        figures.put("hair", WeightLimit.HAIR);
        figures.put("noShare", WeightLimit.NO_SHARE);
        figures.put(
                "levels",
                Stream.of(Loading.Level.values()).map(Loading.Level::share).toList());
        figures.put("limits", carrying.limits().stream().map(this::limit).toList());
        figures.put("words", voice.scripted(MESSAGES, unit));
        return figures;
    }

    private Map<String, Object> limit(WeightLimit limit) {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("name", LoadingExplanation.limit(limit.kind(), voice));
        figures.put("room", limit.room().value());
        figures.put("inFront", limit.inFront());
        figures.put("inHouse", limit.inHouse());
        figures.put("water", limit.water().value());
        figures.put("cargo", limit.cargo());
        return figures;
    }

    @Override
    public Result result(Chosen choice) {
        int people = (int) choice.number(PEOPLE);
        Kilograms each = new Kilograms(choice.number(EACH) / perKilogram);
        Kilograms cargo = new Kilograms(choice.number(CARGO) / perKilogram);
        double fresh =
                WaterTanks.fresh(carrying.unit()).none() ? 0 : Loading.Level.values()[choice.place(FRESH)].share();
        PayloadLimits.First first = carrying.first(people, each, fresh, cargo);
        return new Result(
                first.exceeded()
                        ? voice.say("result.too-heavy", "over", more(first.more()), "limit", name(first.limit()))
                        : voice.say("result.left", "left", less(first.more()), "limit", name(first.limit())),
                carrying.limits().stream()
                        .map(limit -> List.of(name(limit), told(limit.left(people, each, fresh, cargo))))
                        .toList());
    }

    private String name(WeightLimit limit) {
        return LoadingExplanation.limit(limit.kind(), voice);
    }

    private String told(Kilograms left) {
        return WeightLimit.exceeded(left)
                ? voice.say("too-much", "over", more(left))
                : voice.say("result.row.left", "left", less(left));
    }

    /** A hair below zero is shown as nothing. */
    private Amount less(Kilograms left) {
        return Rounding.DOWN.print(Math.max(0, left.value() * perKilogram), 0, unit);
    }

    private Amount more(Kilograms left) {
        return Rounding.UP.print(-left.value() * perKilogram, 0, unit);
    }
}
