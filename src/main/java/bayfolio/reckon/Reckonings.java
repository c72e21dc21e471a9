package bayfolio.reckon;

import bayfolio.model.Coach;
import bayfolio.reckon.battery.ANight;
import bayfolio.reckon.battery.ChargingBack;
import bayfolio.reckon.battery.LeftStanding;
import bayfolio.reckon.clearance.Clearances;
import bayfolio.reckon.cord.CordVolts;
import bayfolio.reckon.fuel.DrivingRange;
import bayfolio.reckon.fuel.GeneratorHours;
import bayfolio.reckon.gas.GasDays;
import bayfolio.reckon.power.RunsTogether;
import bayfolio.reckon.reach.Reach;
import bayfolio.reckon.water.WaterUse;
import bayfolio.reckon.weight.Loading;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** All that can be worked out for a coach. */
public final class Reckonings {
    private Reckonings() {}

    /** Questions that the coach gives rise to and that have no answer, with the facts that would make one possible. */
    public static Map<Question, List<Missing>> lacking(Coach coach) {
        Map<Question, List<Missing>> lacking = new EnumMap<>(Question.class);
        for (Question question : Question.values()) {
            List<Missing> facts = lacking(question, coach);
            if (!facts.isEmpty()) {
                lacking.put(question, facts);
            }
        }
        return lacking;
    }

    /** Facts that would make an answer possible; none where there is one, or where the coach does not give rise to the question. */
    public static List<Missing> lacking(Question question, Coach coach) {
        return switch (question) {
            case RUNS_TOGETHER -> RunsTogether.lacking(coach);
            case A_NIGHT -> ANight.lacking(coach);
            case LEFT_STANDING -> LeftStanding.lacking(coach);
            case CHARGING_BACK -> ChargingBack.lacking(coach);
            case WATER_DAYS -> WaterUse.lacking(coach.unit());
            case LOADING -> Loading.lacking(coach);
            case GAS_DAYS -> GasDays.lacking(coach);
            case GENERATOR_HOURS -> GeneratorHours.lacking(coach);
            case RANGE -> DrivingRange.lacking(coach);
            case CORD_VOLTS -> CordVolts.lacking(coach);
            case REACH -> Reach.lacking(coach);
            case CLEARANCE -> Clearances.lacking(coach);
        };
    }
}
