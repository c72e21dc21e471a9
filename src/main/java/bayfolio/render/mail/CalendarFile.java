package bayfolio.render.mail;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.property.DateStart;
import biweekly.property.Uid;
import java.time.Duration;
import java.time.Instant;
import java.util.Date;
import java.util.List;

/**
 * Pickup and return for the calendar of a phone, in world time, so that no calendar has to know the clocks of the depot.
 *
 * @see <a href="https://www.rfc-editor.org/rfc/rfc5545">RFC 5545</a>
 */
public final class CalendarFile {
    public static final String KIND = "text/calendar";

    private CalendarFile() {}

    /**
     * @param id one of a kind, and the same whenever it is made anew, so that a calendar takes it for the same
     * @param address of the page that tells about it
     */
    public record Event(String id, String title, String where, String address, Instant begins, Duration lasts) {}

    /** @param made when it is said to be made */
    public static String of(List<Event> events, Instant made) {
        ICalendar calendar = new ICalendar();
        calendar.setProductId("-//Bayfolio//Bookings//EN");
        for (Event event : events) {
            VEvent entry = new VEvent();
            entry.setUid(new Uid(event.id()));
            entry.setDateTimeStamp(Date.from(made));
            entry.setDateStart(new DateStart(Date.from(event.begins()), true));
            entry.setDateEnd(Date.from(event.begins().plus(event.lasts())));
            entry.setSummary(event.title());
            if (!event.where().isEmpty()) {
                entry.setLocation(event.where());
            }
            entry.setUrl(event.address());
            calendar.addEvent(entry);
        }
        return Biweekly.write(calendar).go();
    }
}
