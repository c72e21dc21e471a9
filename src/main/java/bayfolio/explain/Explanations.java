package bayfolio.explain;

import bayfolio.catalog.Catalog;
import bayfolio.model.Coach;
import bayfolio.reckon.Missing;
import bayfolio.reckon.Question;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/** All that is worked out for a coach, in the words of a language. */
public final class Explanations {
    private static final List<BiFunction<Coach, Catalog, Optional<Calculator>>> CALCULATORS =
            List.of(TogetherCalculator::of, NightCalculator::of, WaterCalculator::of, LoadingCalculator::of);

    private Explanations() {}

    public static Explained of(Question question, Coach coach, Catalog words) {
        return switch (question) {
            case RUNS_TOGETHER -> RunsTogetherExplanation.of(coach, words);
            case A_NIGHT -> ANightExplanation.of(coach, words);
            case LEFT_STANDING -> LeftStandingExplanation.of(coach, words);
            case CHARGING_BACK -> ChargingBackExplanation.of(coach, words);
            case WATER_DAYS -> WaterDaysExplanation.of(coach, words);
            case LOADING -> LoadingExplanation.of(coach, words);
            case GAS_DAYS -> GasDaysExplanation.of(coach, words);
            case GENERATOR_HOURS -> GeneratorHoursExplanation.of(coach, words);
            case RANGE -> RangeExplanation.of(coach, words);
            case CORD_VOLTS -> CordVoltsExplanation.of(coach, words);
            case REACH -> ReachExplanation.of(coach, words);
            case CLEARANCE -> ClearanceExplanation.of(coach, words);
        };
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
