package bayfolio.reckon;

import bayfolio.model.Coach;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** All that is worked out for a coach. */
public final class Reckonings {
    private static final Map<Question, Function<Coach, Reckoned>> ANSWERS = answers();

    private static final List<Function<Coach, Optional<Calculator>>> CALCULATORS =
            List.of(TogetherCalculator::of, NightCalculator::of, WaterCalculator::of, LoadingCalculator::of);

    private Reckonings() {}

    private static Map<Question, Function<Coach, Reckoned>> answers() {
        Map<Question, Function<Coach, Reckoned>> answers = new EnumMap<>(Question.class);
        answers.put(Question.RUNS_TOGETHER, RunsTogether::of);
        answers.put(Question.A_NIGHT, ANight::of);
        answers.put(Question.LEFT_STANDING, LeftStanding::of);
        answers.put(Question.CHARGING_BACK, ChargingBack::of);
        answers.put(Question.WATER_DAYS, WaterDays::of);
        answers.put(Question.LOADING, Loading::of);
        answers.put(Question.GAS_DAYS, GasDays::of);
        answers.put(Question.GENERATOR_HOURS, GeneratorHours::of);
        answers.put(Question.RANGE, DrivingRange::of);
        answers.put(Question.CORD_VOLTS, CordVolts::of);
        answers.put(Question.REACH, Reach::of);
        answers.put(Question.CLEARANCE, UnderAndThrough::of);
        return answers;
    }

    /** An answer to every question, or what is missing for one, in the order of the questions. */
    public static List<Reckoned> of(Coach coach) {
        List<Reckoned> all = new ArrayList<>();
        ANSWERS.values().forEach(answer -> all.add(answer.apply(coach)));
        return List.copyOf(all);
    }

    /** What a reader can vary. */
    public static List<Calculator> calculators(Coach coach) {
        return CALCULATORS.stream().flatMap(each -> each.apply(coach).stream()).toList();
    }
}
