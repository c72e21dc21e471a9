package bayfolio.reckon;

import bayfolio.model.Coach;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How long the tanks last, for people and a way of living that the reader chooses. */
public final class WaterCalculator implements Calculator {
    private static final String PEOPLE = "people";
    private static final String LIVING = "living";
    private static final String SHOWERS = "showers";

    private final WaterUse use;

    private WaterCalculator(WaterUse use) {
        this.use = use;
    }

    public static Optional<Calculator> of(Coach coach) {
        return WaterUse.of(coach).map(WaterCalculator::new);
    }

    @Override
    public Question question() {
        return Question.WATER_DAYS;
    }

    @Override
    public List<Field> fields() {
        List<Field> fields = new ArrayList<>();
        fields.add(new Field(PEOPLE, "People", new Kind.Number(Math.min(2, use.berths()), 1, use.berths(), 1)));
        fields.add(new Field(
                LIVING,
                "Way of living",
                new Kind.Choice(
                        WaterUse.WAYS.stream().map(WaterUseProfile::name).toList(), 1)));
        if (use.shower()) {
            fields.add(new Field(SHOWERS, "Showers a day for each", new Kind.Number(1, 0, 3, 0.5)));
        }
        return List.copyOf(fields);
    }

    @Override
    public Map<String, Object> figures() {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put(
                "ways",
                WaterUse.WAYS.stream()
                        .map(way -> {
                            WaterUseProfile.Day none = use.day(way.with(0));
                            Map<String, Object> each = new LinkedHashMap<>();
                            each.put(
                                    "shower",
                                    way.shower().value() / 60 * use.perMinute().value());
                            each.put("fresh", none.fresh().value());
                            each.put("gray", none.gray().value());
                            each.put("toilet", none.toilet().value());
                            return each;
                        })
                        .toList());
        List<Map<String, Object>> tanks = new ArrayList<>();
        tank("fresh", use.fresh(), "empty", tanks);
        tank("gray", use.gray(), "full", tanks);
        tank("toilet", use.toilet(), "full", tanks);
        figures.put("tanks", List.copyOf(tanks));
        return figures;
    }

    private static void tank(String use, WaterTanks tanks, String end, List<Map<String, Object>> all) {
        if (!tanks.none()) {
            Map<String, Object> each = new LinkedHashMap<>();
            each.put("use", use);
            each.put("name", tanks.names());
            each.put("verb", tanks.verb());
            each.put("end", end);
            each.put("usable", tanks.usable().value());
            all.add(each);
        }
    }

    @Override
    public Result result(Chosen choice) {
        double showers = use.shower() ? choice.number(SHOWERS) : 0;
        WaterUseProfile living = WaterUse.WAYS.get(choice.place(LIVING)).with(showers);
        List<WaterUse.Lasting> lasting = use.lasting(living, (int) choice.number(PEOPLE));
        WaterUse.Lasting first = lasting.stream()
                .min(Comparator.comparingDouble(WaterUse.Lasting::days))
                .orElseThrow();
        return new Result(
                first.names() + " " + first.tanks().verb() + " " + first.end() + " first, after " + first.shown() + ".",
                lasting.stream().map(each -> List.of(each.what(), each.shown())).toList());
    }
}
