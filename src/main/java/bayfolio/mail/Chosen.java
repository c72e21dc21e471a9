package bayfolio.mail;

import bayfolio.bookings.Booking;
import bayfolio.document.Content;
import bayfolio.document.Message;
import bayfolio.document.SentWhen;
import bayfolio.render.mail.Letter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A link that goes into a message.
 *
 * @param why in a few words, for whoever looks at what would be written
 */
record Chosen(Letter.Link link, String why) {
    /** What lasts less long has to be thought of on the way. */
    private static final double SHORT = 2;

    static List<Chosen> of(Booking booking, Message message, Desk desk, Depot depot) {
        List<Chosen> chosen = new ArrayList<>();
        for (Content.Sendable it : desk.links()) {
            if (it.message() == message) {
                why(it.when(), booking, desk, depot)
                        .ifPresent(why -> chosen.add(
                                new Chosen(new Letter.Link(it.link().plain(), it.line(), it.address()), why)));
            }
        }
        if (message == Message.CONFIRMATION && isRepeat(booking)) {
            desk.news().ifPresent(news -> chosen.add(new Chosen(news, "has been on a coach before")));
        }
        return chosen;
    }

    private static Optional<String> why(Optional<SentWhen> when, Booking booking, Desk desk, Depot depot) {
        if (when.isEmpty()) {
            return Optional.of("always");
        }
        return switch (when.get()) {
            case SMALLER_SUPPLY ->
                smaller(booking, desk)
                        .map(site -> figure(site.least()) + " A at a site, "
                                + figure(desk.amps().getAsDouble()) + " A in the coach");
            case MANY_PEOPLE ->
                booking.people().isEmpty()
                        ? Optional.empty()
                        : Optional.ofNullable(desk.days().get(booking.people().getAsInt()))
                                .filter(days -> days < SHORT)
                                .map(days -> booking.people().getAsInt() + " people, a tank lasts " + figure(days)
                                        + " days");
            case REPEAT -> isRepeat(booking) ? Optional.of("has been on a coach before") : Optional.empty();
            case FIRST_TRIP -> isFirst(booking) ? Optional.of("has not been on a coach before") : Optional.empty();
            case FROST ->
                depot.mayFreeze(booking.pickup().toLocalDate(), booking.back().toLocalDate())
                        ? Optional.of("it may freeze then")
                        : Optional.empty();
            case STAFFED_RETURN ->
                depot.isDeserted(booking.back()) ? Optional.empty() : Optional.of("somebody is there at the return");
            case AFTER_HOURS_RETURN ->
                depot.isDeserted(booking.back()) ? Optional.of("nobody is there at the return") : Optional.empty();
        };
    }

    static Optional<SiteSupply> supply(Booking booking) {
        return booking.supply().isBlank() ? Optional.empty() : SiteSupply.parse(booking.supply());
    }

    /** Where that is less than the coach is built for, and more than nothing. */
    static Optional<SiteSupply> smaller(Booking booking, Desk desk) {
        return supply(booking)
                .filter(site -> site.least() > 0
                        && desk.amps().isPresent()
                        && site.least() < desk.amps().getAsDouble());
    }

    static boolean isRepeat(Booking booking) {
        return booking.trip().toLowerCase(Locale.ROOT).equals("repeat");
    }

    static boolean isFirst(Booking booking) {
        return booking.trip().toLowerCase(Locale.ROOT).equals("first");
    }

    private static String figure(double value) {
        return BigDecimal.valueOf(value)
                .setScale(1, RoundingMode.DOWN)
                .stripTrailingZeros()
                .toPlainString();
    }
}
