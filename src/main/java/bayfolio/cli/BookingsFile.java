package bayfolio.cli;

import bayfolio.bookings.Booked;
import bayfolio.bookings.Booking;
import bayfolio.bookings.Bookings;
import bayfolio.bookings.Column;
import bayfolio.edition.Editions;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.source.Hidden;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** The file of bookings that a call names. */
record BookingsFile(Path path, CommandLine call) {
    /** To be asked before anything is read, which may take long. */
    void refuseMissing() {
        if (!Files.exists(path) || Files.isDirectory(path)) {
            throw new ParameterException(call, "There is no file `" + Hidden.visible(path.toString()) + "`.");
        }
    }

    /** From which on bookings are to come. */
    LocalDate day(Fleet fleet) {
        return fleet.asOf()
                .orElseThrow(() ->
                        new ParameterException(call, "No file of the fleet speaks of a day; give one with --as-of."));
    }

    /**
     * All its bookings, the next pickup first.
     *
     * @param needed columns that must be there, beside number, coach, pickup and return
     */
    Booked read(Fleet fleet, Set<Column> needed, Consumer<Finding> findings) throws IOException {
        List<Booking> bookings = new ArrayList<>();
        List<Finding> told = new ArrayList<>();
        Bookings.read(path, fleet.coaches(), needed, bookings::add, told::add);
        told.forEach(findings);
        bookings.sort(Comparator.comparing(Booking::pickup).thenComparing(Booking::id));
        return new Booked(bookings, told.isEmpty());
    }

    /** Of a booking for which an edition was sent that was never issued. */
    static Finding noSuchEdition(Booking booking, Editions editions) {
        return Bookings.unreadable(
                        booking.at(),
                        "there is no edition " + booking.edition().orElseThrow() + " of `" + booking.coach() + "`")
                .mend(
                        editions.last() == 0
                                ? "None was issued yet; leave it empty."
                                : "Its last one is " + editions.last() + "; write the one that was sent.");
    }
}
