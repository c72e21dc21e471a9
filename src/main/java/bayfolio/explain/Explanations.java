package bayfolio.explain;

import bayfolio.catalog.Catalog;
import bayfolio.model.Coach;
import bayfolio.reckon.Missing;
import bayfolio.reckon.Question;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/** All that is worked out for a coach, in the words of a language. */
public final class Explanations {
    private static final Map<Question, BiFunction<Coach, Catalog, Explained>> ALL = new EnumMap<>(Question.class);

    static {
        ALL.put(Question.RUNS_TOGETHER, RunsTogetherExplanation::of);
        ALL.put(Question.A_NIGHT, ANightExplanation::of);
        ALL.put(Question.LEFT_STANDING, LeftStandingExplanation::of);
        ALL.put(Question.CHARGING_BACK, ChargingBackExplanation::of);
        ALL.put(Question.WATER_DAYS, WaterDaysExplanation::of);
        ALL.put(Question.LOADING, LoadingExplanation::of);
        ALL.put(Question.GAS_DAYS, GasDaysExplanation::of);
        ALL.put(Question.GENERATOR_HOURS, GeneratorHoursExplanation::of);
        ALL.put(Question.RANGE, RangeExplanation::of);
        ALL.put(Question.CORD_VOLTS, CordVoltsExplanation::of);
        ALL.put(Question.REACH, ReachExplanation::of);
        ALL.put(Question.CLEARANCE, ClearanceExplanation::of);
    }

    private static final List<BiFunction<Coach, Catalog, Optional<Calculator>>> CALCULATORS =
            List.of(TogetherCalculator::of, NightCalculator::of, WaterCalculator::of, LoadingCalculator::of);

    private Explanations() {}

    public static Explained of(Question question, Coach coach, Catalog words) {
        return Stream.of(ALL.get(question))
                .flatMap(Stream::ofNullable)
                .map(made -> made.apply(coach, words))
                .findFirst()
                .orElseThrow();
    }

    /** Every question, in their order. */
    public static List<Explained> of(Coach coach, Catalog words) {
        return Stream.of(Question.values())
                .map(question -> of(question, coach, words))
                .toList();
    }

    /** What a reader can vary. */
    public static List<Calculator> calculators(Coach coach, Catalog words) {
        return CALCULATORS.stream()
                .flatMap(each -> each.apply(coach, words).stream())
                .toList();
    }

    /** What a question lacks, in words. */
    public static List<String> lacking(List<Missing> facts, Catalog words) {
        return facts.stream().map(fact -> Voice.missing(fact, words)).toList();
    }
}
