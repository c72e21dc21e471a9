package bayfolio.bookings;

import java.util.Locale;

/** What a file of bookings says of each; a column is known by its name in the first line. */
public enum Column {
    BOOKING,
    COACH,
    PICKUP,
    RETURN,
    PEOPLE,
    SUPPLY,
    LANGUAGE,
    TRIP,
    EDITION_SENT;

    /** As the first line has it: {@code edition sent}. */
    public String title() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
