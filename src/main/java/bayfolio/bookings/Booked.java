package bayfolio.bookings;

import java.util.List;

/**
 * What a file of bookings says.
 *
 * @param whole whether all of it could be read; where not, there may be more bookings than these
 */
public record Booked(List<Booking> bookings, boolean whole) {
    public Booked {
        bookings = List.copyOf(bookings);
    }
}
