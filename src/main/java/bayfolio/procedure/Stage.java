package bayfolio.procedure;

import bayfolio.fact.Type;

/** A part of the trip, in the order of the trip. */
public enum Stage {
    BEFORE_BOOKING,
    BEFORE_PICKUP,
    PICKUP_STAFFED,
    PICKUP_AFTER_HOURS,
    FIRST_DRIVE,
    REFUELING,
    OVERNIGHT_NO_HOOKUP,
    ARRIVING_SETUP,
    LIVING,
    BREAKING_CAMP,
    DUMP_STATION,
    COLD_WEATHER,
    RETURN,
    SOMETHING_WRONG,
    EMERGENCY;

    public String word() {
        return Type.word(this);
    }
}
