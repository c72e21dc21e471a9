package bayfolio.mail;

import bayfolio.bookings.Booking;
import bayfolio.document.Message;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** A message to the renter of a booking, and the day on which it is sent. */
public record Due(Message message, LocalDate day) {
    private static final int WEEK = 7;

    /**
     * All there are for a booking, in their order.
     *
     * @param today when the confirmation of a booking is sent of which nothing was sent yet
     */
    public static List<Due> of(Booking booking, Depot depot, LocalDate today) {
        LocalDate pickup = booking.pickup().toLocalDate();
        List<Due> all = new ArrayList<>();
        if (booking.edition().isEmpty() && !today.isAfter(pickup)) {
            all.add(new Due(Message.CONFIRMATION, today));
        }
        all.add(new Due(Message.WEEK_BEFORE, pickup.minusDays(WEEK)));
        all.add(new Due(Message.DAY_BEFORE, pickup.minusDays(1)));
        if (depot.isDeserted(booking.pickup())) {
            all.add(new Due(Message.AFTER_HOURS, pickup));
        }
        all.add(new Due(Message.DAY_BEFORE_RETURN, booking.back().toLocalDate().minusDays(1)));
        return all;
    }

    /**
     * Whether it is sent today; who books late gets at once what others had before.
     *
     * @param since the day after the one on which messages were written last
     */
    boolean isSent(Booking booking, LocalDate since, LocalDate today) {
        boolean late = booking.edition().isEmpty()
                && message.compareTo(Message.DAY_BEFORE_RETURN) < 0
                && !today.isAfter(booking.pickup().toLocalDate());
        return !day.isAfter(today) && (late || !day.isBefore(since));
    }
}
