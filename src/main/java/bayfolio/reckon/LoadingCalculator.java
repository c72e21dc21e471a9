package bayfolio.reckon;

import bayfolio.measure.Kilograms;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Rounding;
import bayfolio.model.Coach;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is left to load, for people, things and water that the reader chooses; in the measures of the coach. */
public final class LoadingCalculator implements Calculator {
    private static final String PEOPLE = "people";
    private static final String EACH = "each";
    private static final String CARGO = "cargo";
    private static final String FRESH = "fresh";

    private final PayloadLimits carrying;
    private final String unit;
    private final double perKilogram;

    private LoadingCalculator(PayloadLimits carrying) {
        boolean pounds = carrying.unit().region().first() == MeasureSystem.US;
        this.carrying = carrying;
        this.unit = pounds ? "lb" : "kg";
        this.perKilogram = pounds ? new Kilograms(1).pounds() : 1;
    }

    public static Optional<Calculator> of(Coach coach) {
        return PayloadLimits.of(coach).map(LoadingCalculator::new);
    }

    @Override
    public Question question() {
        return Question.LOADING;
    }

    @Override
    public List<Field> fields() {
        double each = Math.rint(Person.weight(carrying.unit().region()).value() * perKilogram);
        double most = Math.rint(new Kilograms(2000).value() * perKilogram / 100) * 100;
        List<Field> fields = new ArrayList<>();
        fields.add(new Field(PEOPLE, "People", new Kind.Number(Math.min(2, carrying.belts()), 1, carrying.belts(), 1)));
        fields.add(new Field(
                EACH, "Weight of one, on average, in " + unit, new Kind.Number(each, 0, Math.rint(4 * each), 1)));
        fields.add(new Field(CARGO, "Things, in " + unit, new Kind.Number(0, 0, most, 1)));
        if (!WaterTanks.fresh(carrying.unit()).none()) {
            fields.add(new Field(
                    FRESH,
                    "Fresh water",
                    new Kind.Choice(
                            Loading.WATER.stream().map(Loading.Level::name).toList(), 2)));
        }
        return List.copyOf(fields);
    }

    @Override
    public Map<String, Object> figures() {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("unit", unit);
        figures.put("perKilogram", perKilogram);
        figures.put("frontSeats", (double) WeightLimit.FRONT_SEATS);
        figures.put("hair", WeightLimit.HAIR);
        figures.put("noShare", WeightLimit.NO_SHARE);
        figures.put("levels", Loading.WATER.stream().map(Loading.Level::share).toList());
        figures.put(
                "limits",
                carrying.limits().stream().map(LoadingCalculator::limit).toList());
        return figures;
    }

    private static Map<String, Object> limit(WeightLimit limit) {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("name", limit.name());
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
        double fresh = WaterTanks.fresh(carrying.unit()).none()
                ? 0
                : Loading.WATER.get(choice.place(FRESH)).share();
        PayloadLimits.First first = carrying.first(people, each, fresh, cargo);
        return new Result(
                first.exceeded()
                        ? "Too heavy by " + more(first.more()) + ": "
                                + first.limit().name() + "."
                        : "Left to load: " + less(first.more()) + ". The first limit is the "
                                + first.limit().name() + ".",
                carrying.limits().stream()
                        .map(limit -> List.of(limit.name(), told(limit.left(people, each, fresh, cargo))))
                        .toList());
    }

    private String told(Kilograms left) {
        return WeightLimit.exceeded(left) ? more(left) + " too much" : less(left) + " left";
    }

    /** A hair below zero is shown as nothing. */
    private String less(Kilograms left) {
        return Rounding.DOWN.print(Math.max(0, left.value() * perKilogram), 0) + " " + unit;
    }

    private String more(Kilograms left) {
        return Rounding.UP.print(-left.value() * perKilogram, 0) + " " + unit;
    }
}
