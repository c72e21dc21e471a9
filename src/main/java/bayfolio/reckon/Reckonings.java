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
import java.util.function.Function;

/** All that can be worked out for a coach. */
public final class Reckonings {
    private static final Map<Question, Function<Coach, List<Missing>>> LACKING = new EnumMap<>(Question.class);

    static {
        LACKING.put(Question.RUNS_TOGETHER, RunsTogether::lacking);
        LACKING.put(Question.A_NIGHT, ANight::lacking);
        LACKING.put(Question.LEFT_STANDING, LeftStanding::lacking);
        LACKING.put(Question.CHARGING_BACK, ChargingBack::lacking);
        LACKING.put(Question.WATER_DAYS, coach -> WaterUse.lacking(coach.unit()));
        LACKING.put(Question.LOADING, Loading::lacking);
        LACKING.put(Question.GAS_DAYS, GasDays::lacking);
        LACKING.put(Question.GENERATOR_HOURS, GeneratorHours::lacking);
        LACKING.put(Question.RANGE, DrivingRange::lacking);
        LACKING.put(Question.CORD_VOLTS, CordVolts::lacking);
        LACKING.put(Question.REACH, Reach::lacking);
        LACKING.put(Question.CLEARANCE, Clearances::lacking);
    }

    private Reckonings() {}

    /** Questions that the coach gives rise to and that have no answer, with the facts that would make one possible. */
    public static Map<Question, List<Missing>> lacking(Coach coach) {
        Map<Question, List<Missing>> lacking = new EnumMap<>(Question.class);
        LACKING.forEach((question, of) -> {
            List<Missing> facts = of.apply(coach);
            if (!facts.isEmpty()) {
                lacking.put(question, facts);
            }
        });
        return lacking;
    }
}
