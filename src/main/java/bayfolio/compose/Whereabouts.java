package bayfolio.compose;

import bayfolio.procedure.Stage;
import java.util.List;

/** Where a reader stands with the handbook in his hand, and which parts of the trip that is. */
enum Whereabouts {
    DARK(Stage.PICKUP_AFTER_HOURS),
    CAMPSITE(Stage.ARRIVING_SETUP, Stage.LIVING, Stage.OVERNIGHT_NO_HOOKUP, Stage.DUMP_STATION, Stage.BREAKING_CAMP),
    ROAD(Stage.FIRST_DRIVE, Stage.REFUELING),
    AT_HOME(Stage.BEFORE_BOOKING, Stage.BEFORE_PICKUP, Stage.PICKUP_STAFFED),
    GIVING_BACK(Stage.RETURN);

    private final List<Stage> stages;

    Whereabouts(Stage... stages) {
        this.stages = List.of(stages);
    }

    /** In the order in which they come up there. */
    List<Stage> stages() {
        return stages;
    }
}
