package bayfolio.mail;

import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.Month;
import java.time.Period;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** When somebody is at the depot, and which time it is there. */
public record Depot(Fleet fleet, ZoneId zone) {
    /** When a message of a day is sent. */
    private static final LocalTime MORNING = LocalTime.of(9, 0);

    /** Empty where the fleet does not say in which time zone it is, or names none that there is. */
    public static Optional<Depot> of(Fleet fleet) {
        try {
            return fleet.facts()
                    .facts()
                    .find(FleetFacts.TIME_ZONE)
                    .map(ZoneId::of)
                    .map(zone -> new Depot(fleet, zone));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** Whether the clocks of the depot ever show it: in a night in spring they leave out an hour. */
    public boolean shows(LocalDateTime at) {
        return !zone.getRules().getValidOffsets(at).isEmpty();
    }

    /** Of a time that comes twice, in a night in autumn, the first. */
    public Instant instant(LocalDateTime at) {
        return at.atZone(zone).withEarlierOffsetAtOverlap().toInstant();
    }

    public Instant morning(LocalDate day) {
        return day.atTime(MORNING).atZone(zone).toInstant();
    }

    /** Whether it is known when somebody is there. */
    public boolean tellsHours() {
        return fleet.facts().facts().has(FleetFacts.OPEN);
    }

    /** Whether it is known that nobody is there. */
    boolean isDeserted(LocalDateTime at) {
        return tellsHours() && !isStaffed(at);
    }

    /** Whether somebody is there to hand over a coach, or to take it. */
    private boolean isStaffed(LocalDateTime at) {
        return !fleet.facts().facts().all(FleetFacts.CLOSED_ON).contains(at.toLocalDate())
                && fleet.facts().facts().all(FleetFacts.OPEN).stream().anyMatch(it -> it.holds(at));
    }

    /** Whether it may freeze on one of the days, both of them among them. */
    public boolean mayFreeze(LocalDate first, LocalDate last) {
        List<Month> frost = fleet.facts().facts().all(FleetFacts.FROST_MONTHS);
        return first.withDayOfMonth(1)
                .datesUntil(last.plusDays(1), Period.ofMonths(1))
                .map(LocalDate::getMonth)
                .anyMatch(frost::contains);
    }
}
