package bayfolio.mail;

import bayfolio.bookings.Booking;
import bayfolio.catalog.Catalog;
import bayfolio.catalog.Catalogs;
import bayfolio.document.Message;
import bayfolio.fact.Type;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Phone;
import bayfolio.render.mail.CalendarFile;
import bayfolio.render.mail.DeskCard;
import bayfolio.render.mail.Letter;
import java.net.URI;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Puts a message into words. */
final class Written {
    private static final Duration HANDOVER = Duration.ofMinutes(90);

    /** With these go the days for a calendar, and whom to call. */
    private static final Set<Message> WITH_FILES = Set.of(Message.CONFIRMATION, Message.DAY_BEFORE);

    private final Booking booking;
    private final Due due;
    private final Desk desk;
    private final Depot depot;
    private final Catalog words;

    private Written(Booking booking, Due due, Desk desk, Depot depot, Catalogs catalogs) {
        this.booking = booking;
        this.due = due;
        this.desk = desk;
        this.depot = depot;
        this.words = catalogs.of(booking.languages(desk.coach().languages()));
    }

    /** @param card of the desk, the same with all messages */
    static Letter letter(
            Booking booking, Due due, List<Chosen> chosen, Desk desk, Depot depot, String card, Catalogs catalogs) {
        return new Written(booking, due, desk, depot, catalogs).letter(chosen, card);
    }

    private Letter letter(List<Chosen> chosen, String card) {
        Fleet fleet = depot.fleet();
        String message = Type.word(due.message());
        List<Letter.Attached> attached = new ArrayList<>();
        if (WITH_FILES.contains(due.message())) {
            attached.add(new Letter.Attached("booking.ics", CalendarFile.KIND, calendar(sent())));
            attached.add(new Letter.Attached(DeskCard.FILE, DeskCard.KIND, card));
        }
        return new Letter(
                booking.id() + "." + message,
                fleet.facts().facts().find(FleetFacts.MAIL),
                fleet.name(),
                sent(),
                words.language(),
                say("mail." + message + ".subject"),
                List.of(say("mail." + message + ".opening")),
                chosen.stream().map(Chosen::link).toList(),
                closing(),
                attached);
    }

    private Instant sent() {
        return depot.morning(due.day());
    }

    private List<Letter.Paragraph> closing() {
        List<Letter.Paragraph> closing = new ArrayList<>();
        for (Phone phone : depot.fleet().facts().facts().all(FleetFacts.PHONES)) {
            closing.add(new Letter.Paragraph(
                    phone.facts().find(Phone.WHEN).orElseGet(() -> words.say("mail.call")), phone.number()));
        }
        closing.add(new Letter.Paragraph(say("mail.this-coach"), ""));
        return closing;
    }

    private String say(String key) {
        LocalDateTime at = due.message() == Message.DAY_BEFORE_RETURN ? booking.back() : booking.pickup();
        return words.say(
                key,
                "booking",
                booking.id(),
                "coach",
                desk.coach().unit().name(),
                "day",
                words.day(at.toLocalDate()),
                "time",
                time(at.toLocalTime()));
    }

    /** As the language has it; some tables have a narrow space in it, which old mail programs do not know. */
    private String time(LocalTime time) {
        return DateTimeFormatter.ofLocalizedTime(FormatStyle.SHORT)
                .withLocale(Locale.forLanguageTag(words.language()))
                .format(time)
                .replace('\u202F', ' ');
    }

    private String calendar(Instant made) {
        String where = depot.fleet().facts().facts().find(FleetFacts.ADDRESS).orElse("");
        return CalendarFile.of(
                List.of(event("pickup", booking.pickup(), where), event("return", booking.back(), where)), made);
    }

    private CalendarFile.Event event(String which, LocalDateTime at, String where) {
        String host = URI.create(depot.fleet().address()).getHost();
        return new CalendarFile.Event(
                booking.id() + "-" + which + "@" + host,
                words.say("mail." + which, "coach", desk.coach().unit().name()),
                where,
                desk.home(),
                depot.instant(at),
                HANDOVER);
    }
}
