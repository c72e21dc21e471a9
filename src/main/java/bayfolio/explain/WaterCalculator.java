package bayfolio.explain;

import bayfolio.catalog.Catalog;
import bayfolio.fact.Type;
import bayfolio.measure.Rounding;
import bayfolio.measure.Symbol;
import bayfolio.model.Coach;
import bayfolio.reckon.Question;
import bayfolio.reckon.water.WaterTanks;
import bayfolio.reckon.water.WaterUse;
import bayfolio.reckon.water.WaterUseProfile;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How long the tanks last, for people and a way of living that the reader chooses. */
final class WaterCalculator implements Calculator {
    private static final String PEOPLE = "people";
    private static final String LIVING = "living";
    private static final String SHOWERS = "showers";

    private static final List<String> MESSAGES = List.of("result", "what");

    private final WaterUse use;
    private final Voice voice;

    private WaterCalculator(WaterUse use, Voice voice) {
        this.use = use;
        this.voice = voice;
    }

    static Optional<Calculator> of(Coach coach, Catalog words) {
        Voice voice = new Voice(words, Question.WATER_DAYS, coach.unit().region());
        return WaterUse.of(coach).map(use -> new WaterCalculator(use, voice));
    }

    @Override
    public Question question() {
        return Question.WATER_DAYS;
    }

    @Override
    public List<Field> fields() {
        List<Field> fields = new ArrayList<>();
        fields.add(new Field(
                PEOPLE, voice.say("field.people"), new Kind.Number(Math.min(2, use.berths()), 1, use.berths(), 1)));
        fields.add(new Field(
                LIVING,
                voice.say("field.living"),
                new Kind.Choice(
                        WaterUseProfile.ALL.stream()
                                .map(way -> voice.say("field.way", "way", way.name()))
                                .toList(),
                        1)));
        if (use.shower()) {
            fields.add(new Field(SHOWERS, voice.say("field.showers"), new Kind.Number(1, 0, 3, 0.5)));
        }
        return List.copyOf(fields);
    }

    @Override
    public Map<String, Object> figures() {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put(
                "ways",
                WaterUseProfile.ALL.stream()
                        .map(way -> {
                            WaterUseProfile.Day none = use.day(way.with(0));
                            Map<String, Object> each = new LinkedHashMap<>();
                            each.put(
                                    "shower",
                                    way.shower().value()
                                            / 60
                                            * WaterUse.liters(use.perMinute()).value());
                            each.put("fresh", none.fresh().value());
                            each.put("gray", none.gray().value());
                            each.put("toilet", none.toilet().value());
                            return each;
                        })
                        .toList());
        List<Map<String, Object>> tanks = new ArrayList<>();
        tank("fresh", use.fresh(), WaterUse.End.EMPTY, tanks);
        tank("gray", use.gray(), WaterUse.End.FULL, tanks);
        tank("toilet", use.toilet(), WaterUse.End.FULL, tanks);
        figures.put("tanks", List.copyOf(tanks));
        figures.put("words", voice.scripted(MESSAGES, Symbol.DAY));
        return figures;
    }

    private void tank(String use, WaterTanks tanks, WaterUse.End end, List<Map<String, Object>> all) {
        if (!tanks.none()) {
            Map<String, Object> each = new LinkedHashMap<>();
            each.put("use", use);
            each.put("name", voice.words().and(tanks.names()));
            each.put("count", tanks.tanks().size());
            each.put("end", Type.word(end));
            each.put("usable", tanks.usable().value());
            all.add(each);
        }
    }

    @Override
    public Result result(Chosen choice) {
        double showers = use.shower() ? choice.number(SHOWERS) : 0;
        WaterUseProfile living = WaterUseProfile.ALL.get(choice.place(LIVING)).with(showers);
        List<WaterUse.Lasting> lasting = use.lasting(living, (int) choice.number(PEOPLE));
        WaterUse.Lasting first = lasting.stream()
                .min(Comparator.comparingDouble(WaterUse.Lasting::days))
                .orElseThrow();
        return new Result(
                voice.say(
                        "result",
                        "tanks",
                        first.tanks().names(),
                        "count",
                        first.tanks().tanks().size(),
                        "end",
                        WaterDaysExplanation.end(first),
                        "days",
                        Rounding.DOWN.days(first.time())),
                lasting.stream()
                        .map(each -> List.of(
                                WaterDaysExplanation.what(each, voice), voice.amount(Rounding.DOWN.days(each.time()))))
                        .toList());
    }
}
