package bayfolio.bookings;

import bayfolio.source.Place;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * A hire of one coach. Whose it is, it does not say.
 *
 * @param id its number, as the file has it
 * @param coach the id of a coach of the fleet
 * @param pickup in local time, as {@code back} is
 * @param people at least 1; empty where it is not said
 * @param supply what power there will be, in the file's words; may be empty
 * @param language that the renter reads, such as {@code de}; empty where it is not said
 * @param trip where it goes, in the file's words; may be empty
 * @param edition the number of the edition that was sent; empty where none was
 * @param at its row
 */
public record Booking(
        String id,
        String coach,
        LocalDateTime pickup,
        LocalDateTime back,
        OptionalInt people,
        String supply,
        Optional<String> language,
        String trip,
        OptionalInt edition,
        Place at) {
    /** That the renter reads, the best first: what the booking says goes before what the coach has. */
    public List<String> languages(List<String> ofCoach) {
        return Stream.concat(language.stream(), ofCoach.stream()).toList();
    }
}
