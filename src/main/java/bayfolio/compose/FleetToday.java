package bayfolio.compose;

import bayfolio.bookings.Booked;
import bayfolio.bookings.Booking;
import bayfolio.catalog.Catalog;
import bayfolio.document.NodeId;
import bayfolio.document.PageKind;
import bayfolio.document.Today;
import bayfolio.document.Today.Line;
import bayfolio.document.Today.Part;
import bayfolio.document.Today.Way;
import bayfolio.model.Fleet;
import bayfolio.model.Notice;
import bayfolio.model.Unit;
import bayfolio.model.Units;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the coaches of a fleet need on its day: which go out and come in, who holds an older edition, what is due, what
 * notices say. Of a booking it tells number, coach and time, and of who has it nothing.
 */
public final class FleetToday {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private final Fleet fleet;
    private final Catalog words;
    private final Optional<LocalDate> day;
    private final Units units;
    private final BiPredicate<String, NodeId> there;

    private FleetToday(Fleet fleet, Catalog words, Predicate<String> sound, BiPredicate<String, NodeId> there) {
        this.fleet = fleet;
        this.words = words;
        this.day = fleet.asOf();
        this.units = fleet.units().only(sound);
        this.there = there;
    }

    /**
     * @param words of the language that staff read
     * @param sound whether nothing is wrong with a coach; of others only bookings are told
     * @param booked empty where nobody has said what is booked
     * @param lastEdition the number of the last one of a coach, by its id; 0 where none was issued
     * @param there whether a coach has a page in the staff's copy
     */
    public static Today of(
            Fleet fleet,
            Catalog words,
            Predicate<String> sound,
            Optional<Booked> booked,
            ToIntFunction<String> lastEdition,
            BiPredicate<String, NodeId> there) {
        FleetToday today = new FleetToday(fleet, words, sound, there);
        List<Part> parts = new ArrayList<>();
        booked.ifPresent(it -> parts.addAll(today.booked(it.bookings(), lastEdition)));
        parts.add(today.due());
        parts.add(today.notices());
        return new Today(
                today.day
                        .map(day -> words.say("today.title", "day", words.day(day)))
                        .orElseGet(() -> words.say("today.undated")),
                words.language(),
                today.remarks(booked),
                parts);
    }

    private List<String> remarks(Optional<Booked> booked) {
        List<String> remarks = new ArrayList<>();
        if (booked.isEmpty()) {
            remarks.add(words.say("today.no-bookings"));
        } else if (!booked.get().whole()) {
            remarks.add(words.say("today.not-whole"));
        }
        List<String> leftOut = FleetOverview.leftOut(fleet, units);
        if (!leftOut.isEmpty()) {
            remarks.add(words.say("today.left-out", "coaches", leftOut));
        }
        return remarks;
    }

    private List<Part> booked(List<Booking> bookings, ToIntFunction<String> lastEdition) {
        return List.of(
                part("out", at(bookings, Booking::pickup, PageKind.READY, PageKind.CONDITION)),
                part("in", at(bookings, Booking::back, PageKind.CONDITION, PageKind.DAMAGE)),
                part("older", older(bookings, lastEdition)));
    }

    private Part part(String id, List<Line> lines) {
        return new Part(id, words.say("today." + id), words.say("today." + id + ".none"), lines);
    }

    /** Those of which something happens on the day, in the order of the clock. */
    private List<Line> at(List<Booking> bookings, Function<Booking, LocalDateTime> time, PageKind... sheets) {
        return bookings.stream()
                .filter(booking -> day.equals(Optional.of(time.apply(booking).toLocalDate())))
                .sorted(Comparator.comparing(time).thenComparing(Booking::id))
                .map(booking -> new Line(
                        words.say(
                                "today.booking",
                                "time",
                                TIME.format(time.apply(booking)),
                                "coach",
                                name(booking.coach()),
                                "booking",
                                booking.id()),
                        Stream.of(sheets)
                                .map(sheet -> way(booking.coach(), sheet))
                                .toList()))
                .toList();
    }

    private List<Line> older(List<Booking> bookings, ToIntFunction<String> lastEdition) {
        Map<String, Integer> last = bookings.stream()
                .map(Booking::coach)
                .distinct()
                .collect(Collectors.toMap(coach -> coach, lastEdition::applyAsInt));
        return bookings.stream()
                .filter(booking -> booking.edition().isPresent()
                        && booking.edition().getAsInt() < last.getOrDefault(booking.coach(), 0)
                        && day.filter(booking.pickup().toLocalDate()::isBefore).isEmpty())
                .sorted(Comparator.comparing(Booking::pickup).thenComparing(Booking::id))
                .map(booking -> new Line(
                        words.say(
                                "today.holds",
                                "coach",
                                name(booking.coach()),
                                "booking",
                                booking.id(),
                                "day",
                                words.day(booking.pickup().toLocalDate()),
                                "time",
                                TIME.format(booking.pickup()),
                                "edition",
                                booking.edition().getAsInt(),
                                "last",
                                last.getOrDefault(booking.coach(), 0)),
                        List.of(way(booking.coach(), PageKind.WHAT_CHANGED), home(booking.coach()))))
                .toList();
    }

    private Part due() {
        return part(
                "due",
                FleetDue.pressing(fleet, words, units).stream()
                        .map(due -> new Line(
                                words.row(Stream.of(FleetDue.said(due.when(), words), due.due(), due.by())
                                        .filter(it -> !it.isEmpty())
                                        .toList()),
                                List.of(way(
                                        due.coach(),
                                        PageKind.SERVICE,
                                        words.say("today.of", "coach", due.name(), "what", due.what())))))
                        .toList());
    }

    /** Each once with all its coaches. */
    private Part notices() {
        return part(
                "notices", fleet.notices(units).stream().flatMap(this::noticed).toList());
    }

    private Stream<Line> noticed(Notice notice) {
        List<Way> coaches = units.stream()
                .filter(unit -> holds(notice, unit))
                .map(unit -> home(unit.id()))
                .toList();
        return coaches.isEmpty() ? Stream.empty() : Stream.of(new Line(said(notice), coaches));
    }

    /** A recall holds until it is ticked off, even when its last day is over. */
    private boolean holds(Notice notice, Unit unit) {
        return notice.recall()
                .map(recall -> recall.open().contains(unit.id()))
                .orElseGet(() -> fleet.notices(unit).stream()
                        .anyMatch(it -> it.facts().at().equals(notice.facts().at())));
    }

    private String said(Notice notice) {
        String text = notice.facts().get(Notice.TEXT);
        String days = Notices.days(notice, words);
        return notice.recall()
                .map(recall -> words.say(
                        notice.runOut(day) ? "today.recall-overdue" : "today.recall",
                        "campaign",
                        recall.campaign(),
                        "text",
                        text,
                        "days",
                        days))
                .orElseGet(() -> words.say("today.notice", "text", text, "days", days));
    }

    private Way way(String coach, PageKind page) {
        return way(coach, page, words.say("today.of", "coach", name(coach), "what", words.say("page." + page.id())));
    }

    private Way home(String coach) {
        return way(coach, PageKind.HOME, name(coach));
    }

    private Way way(String coach, PageKind page, String said) {
        return new Way(coach, Optional.of(page.node()).filter(node -> there.test(coach, node)), said);
    }

    /** Of one in which something is wrong its id, since its name may be what is wrong. */
    private String name(String coach) {
        return units.find(coach).map(Unit::name).orElse(coach);
    }
}
