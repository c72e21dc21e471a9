package bayfolio.mail;

import bayfolio.bookings.Booking;
import bayfolio.bookings.Bookings;
import bayfolio.catalog.Catalogs;
import bayfolio.document.Message;
import bayfolio.document.SentWhen;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Hire;
import bayfolio.model.Unit;
import bayfolio.render.mail.DeskCard;
import bayfolio.render.mail.Letter;
import bayfolio.render.mail.LetterForm;
import bayfolio.render.mail.MailFile;
import java.io.IOException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Messages of one call, booking by booking: of each only what is being written is in mind, and of each coach its links.
 */
public final class MailRun {
    /** What is wanted with each message. */
    public interface Taker {
        void take(Booking booking, Due due, Letter letter, List<String> why) throws IOException;
    }

    /**
     * @param since the first day of which messages are written
     * @param today the last one
     * @param every whether all messages of each booking are written, whatever the day
     */
    public record Days(LocalDate since, LocalDate today, boolean every) {}

    private final Depot depot;
    private final Catalogs catalogs;
    private final Days days;
    private final Function<String, Optional<Desk>> desks;
    private final String card;
    private final Map<String, Optional<Desk>> known = new HashMap<>();
    private final Taker taker;
    private final Consumer<Finding> findings;
    private int written;
    private Optional<IOException> failed = Optional.empty();

    /**
     * @param desks by id of the coach; nothing for one in which the check found errors
     * @param findings about bookings
     */
    public MailRun(Depot depot, Catalogs catalogs, Days days, Desks desks, Taker taker, Consumer<Finding> findings) {
        this.depot = depot;
        this.card = DeskCard.of(depot.fleet());
        this.catalogs = catalogs;
        this.days = days;
        this.desks = desks::of;
        this.taker = taker;
        this.findings = findings;
    }

    /** Writes each message into a folder. */
    public static Taker into(MailFolder folder, LetterForm form) {
        return (booking, due, letter, why) -> folder.write(letter, MailFile.of(letter, form));
    }

    /** What is due of a booking. */
    public void take(Booking booking) {
        if (failed.isPresent()
                || !isThere(booking, "pickup", booking.pickup())
                || !isThere(booking, "return", booking.back())) {
            return;
        }
        tellWords(booking);
        Optional<Desk> desk = known.computeIfAbsent(booking.coach(), desks);
        if (desk.isEmpty()) {
            findings.accept(Bookings.unreadable(
                            booking.at(),
                            "nothing is written for it: something is wrong with coach `" + booking.coach() + "`")
                    .mend("`bayfolio check " + booking.coach() + "` tells what."));
            return;
        }
        for (Due due : Due.of(booking, depot, days.today())) {
            if (failed.isEmpty()
                    && (days.every() || due.isSent(booking, days.since(), days.today()))
                    && isHandedOver(booking, due, desk.get())) {
                write(booking, due, desk.get());
            }
        }
    }

    private void write(Booking booking, Due due, Desk desk) {
        List<Chosen> chosen = Chosen.of(booking, due.message(), desk, depot);
        Letter letter = Written.letter(booking, due, chosen, desk, depot, card, catalogs);
        try {
            taker.take(booking, due, letter, chosen.stream().map(Chosen::why).toList());
            written++;
        } catch (IOException e) {
            failed = Optional.of(e);
        }
        if (due.message() == Message.WEEK_BEFORE
                && Chosen.smaller(booking, desk).isPresent()
                && !desk.has(SentWhen.SMALLER_SUPPLY)) {
            findings.accept(Bookings.unread(
                            booking.at(),
                            "a site has a smaller supply than `" + booking.coach()
                                    + "`, and the coach has no page that tells how to plug in there")
                    .mend("Ask whether an adapter is on board, and call the renter."));
        }
        if (due.message() == Message.DAY_BEFORE_RETURN
                && depot.isDeserted(booking.back())
                && !desk.has(SentWhen.AFTER_HOURS_RETURN)) {
            findings.accept(Bookings.unread(
                            booking.at(),
                            "nobody is there at the return, and `" + booking.coach()
                                    + "` has no page that tells what to do then")
                    .mend("Call the renter, or describe where the key goes."));
        }
    }

    /** Without anybody there only what may be. */
    private boolean isHandedOver(Booking booking, Due due, Desk desk) {
        boolean never = desk.coach()
                .unit()
                .facts()
                .find(Unit.HIRE)
                .flatMap(hire -> hire.facts().find(Hire.AFTER_HOURS_PICKUP))
                .filter(may -> !may)
                .isPresent();
        if (due.message() != Message.AFTER_HOURS || !never) {
            return true;
        }
        findings.accept(Bookings.unread(
                        booking.at(),
                        "nobody is there at the pickup, and `" + booking.coach()
                                + "` is handed over by somebody alone (`after-hours-pickup: no`)")
                .mend("Agree on another time with the renter, or have somebody stay."));
        return false;
    }

    /** A time that the clocks of the depot leave out is told, and nothing is guessed. */
    private boolean isThere(Booking booking, String what, LocalDateTime at) {
        if (depot.shows(at)) {
            return true;
        }
        findings.accept(Bookings.unreadable(
                        booking.at(),
                        "`" + what + "` is " + at.toLocalDate() + " " + at.toLocalTime()
                                + ", a time that the clocks of " + depot.zone() + " leave out that night")
                .mend("Write a time that there is."));
        return false;
    }

    /** A report may be sent on, so what stands in the row is not repeated. */
    private void tellWords(Booking booking) {
        if (!booking.supply().isBlank() && Chosen.supply(booking).isEmpty()) {
            findings.accept(Bookings.unread(booking.at(), "`supply` is not told in amps, and no link is chosen by it")
                    .mend("Write amps, the smallest counts: `30 A`, `50 A, 15 A`, `none`; or leave it empty."));
        }
        if (!booking.trip().isBlank() && !Chosen.isFirst(booking) && !Chosen.isRepeat(booking)) {
            findings.accept(
                    Bookings.unread(booking.at(), "`trip` is neither `first` nor `repeat`, and no link is chosen by it")
                            .near(NearNames.to(booking.trip(), List.of("first", "repeat")))
                            .mend("Write one of the two, or leave it empty."));
        }
    }

    /** Why a message could not be written; none was after that. */
    public Optional<IOException> failed() {
        return failed;
    }

    /** How many messages there were. */
    public int written() {
        return written;
    }
}
