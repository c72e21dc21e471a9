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
    private static final Map<Question, Answer> ANSWERS = answers();

    /**
     * @param lacking which facts would make a result possible, at once; a result takes longer
     */
    private record Answer(Function<Coach, Reckoned> of, Function<Coach, List<String>> lacking) {}

    private static final List<Function<Coach, Optional<Calculator>>> CALCULATORS =
            List.of(TogetherCalculator::of, NightCalculator::of, WaterCalculator::of, LoadingCalculator::of);

    private Reckonings() {}

    private static Map<Question, Answer> answers() {
        Map<Question, Answer> answers = new EnumMap<>(Question.class);
        answers.put(Question.RUNS_TOGETHER, new Answer(RunsTogether::of, RunsTogether::lacking));
        answers.put(Question.A_NIGHT, new Answer(ANight::of, Night::lacking));
        answers.put(Question.LEFT_STANDING, new Answer(LeftStanding::of, LeftStanding::lacking));
        answers.put(Question.CHARGING_BACK, new Answer(ChargingBack::of, ChargingBack::lacking));
        answers.put(Question.WATER_DAYS, new Answer(WaterDays::of, coach -> WaterUse.lacking(coach.unit())));
        answers.put(Question.LOADING, new Answer(Loading::of, coach -> PayloadLimits.lacking(coach.unit())));
        answers.put(Question.GAS_DAYS, new Answer(GasDays::of, GasDays::lacking));
        answers.put(Question.GENERATOR_HOURS, new Answer(GeneratorHours::of, GeneratorHours::lacking));
        answers.put(Question.RANGE, new Answer(DrivingRange::of, DrivingRange::lacking));
        answers.put(Question.CORD_VOLTS, new Answer(CordVolts::of, CordVolts::lacking));
        answers.put(Question.REACH, new Answer(Reach::of, Reach::lacking));
        answers.put(Question.CLEARANCE, new Answer(Clearances::of, Clearances::lacking));
        return answers;
    }

    /** Questions that the coach gives rise to and that have no answer, with the facts that would make one possible. */
    public static Map<Question, List<String>> lacking(Coach coach) {
        Map<Question, List<String>> lacking = new EnumMap<>(Question.class);
        ANSWERS.forEach((question, answer) -> {
            List<String> facts = answer.lacking().apply(coach);
            if (!facts.isEmpty()) {
                lacking.put(question, facts);
            }
        });
        return lacking;
    }

    /** An answer to every question, or what is missing for one, in the order of the questions. */
    public static List<Reckoned> of(Coach coach) {
        List<Reckoned> all = new ArrayList<>();
        ANSWERS.values().forEach(answer -> all.add(answer.of().apply(coach)));
        return List.copyOf(all);
    }

    /** What a reader can vary. */
    public static List<Calculator> calculators(Coach coach) {
        return CALCULATORS.stream().flatMap(each -> each.apply(coach).stream()).toList();
    }
}
