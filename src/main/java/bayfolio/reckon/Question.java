package bayfolio.reckon;

import java.util.Locale;

/** What is worked out for each coach, in the order of the page that has all of it. */
public enum Question {
    RUNS_TOGETHER,
    A_NIGHT,
    LEFT_STANDING,
    CHARGING_BACK,
    WATER_DAYS,
    LOADING,
    GAS_DAYS,
    GENERATOR_HOURS,
    RANGE,
    CORD_VOLTS,
    REACH,
    CLEARANCE;

    /** Its name in files and addresses: {@code runs-together}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
