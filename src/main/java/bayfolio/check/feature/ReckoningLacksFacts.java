package bayfolio.check.feature;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.explain.Explanations;
import bayfolio.finding.Finding;
import bayfolio.model.Unit;
import bayfolio.reckon.Question;
import bayfolio.reckon.Reckonings;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Tells which facts would answer a question of renters that the handbook must leave out now. */
public final class ReckoningLacksFacts implements Rule {
    private static final Map<Question, String> TOLD = Map.ofEntries(
            Map.entry(Question.RUNS_TOGETHER, "what can run at the same time"),
            Map.entry(Question.A_NIGHT, "whether the batteries last a night"),
            Map.entry(Question.LEFT_STANDING, "how long the coach can stand unplugged"),
            Map.entry(Question.CHARGING_BACK, "how long charging takes after a night"),
            Map.entry(Question.WATER_DAYS, "how long the water lasts"),
            Map.entry(Question.LOADING, "how much may be loaded"),
            Map.entry(Question.GAS_DAYS, "how long the gas lasts"),
            Map.entry(Question.GENERATOR_HOURS, "how long the generator runs"),
            Map.entry(Question.RANGE, "how far a tank of fuel goes"),
            Map.entry(Question.CORD_VOLTS, "what is left of the voltage at the end of the cord"),
            Map.entry(Question.REACH, "whether cord and hoses reach"),
            Map.entry(Question.CLEARANCE, "what the coach fits under and through"));

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        // What could not be read is told as that.
        return coach.unit().draft() || !coach.unit().facts().whole()
                ? Stream.empty()
                : Reckonings.lacking(coach.coach()).entrySet().stream()
                        .map(lacking -> finding(
                                lacking.getKey(),
                                Explanations.lacking(lacking.getValue(), coach.words()),
                                coach.unit()));
    }

    private static Finding finding(Question question, List<String> facts, Unit unit) {
        return Finding.note(
                        "reckoning-lacks-facts",
                        unit.facts().at(Unit.ID),
                        "the handbook does not tell " + TOLD.get(question) + ", since the description does not say: "
                                + String.join("; ", facts))
                .mend("State it where it is known; nothing is made up in its place.");
    }
}
