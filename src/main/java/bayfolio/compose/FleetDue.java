package bayfolio.compose;

import bayfolio.catalog.Catalog;
import bayfolio.document.Overview;
import bayfolio.document.Overview.Cell;
import bayfolio.document.Overview.Column;
import bayfolio.document.Overview.Row;
import bayfolio.document.Overview.Table;
import bayfolio.fact.Type;
import bayfolio.model.Coach;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Gauge;
import bayfolio.model.Notice;
import bayfolio.model.Service;
import bayfolio.model.Tires;
import bayfolio.model.Unit;
import bayfolio.model.Units;
import bayfolio.model.Wording;
import bayfolio.reckon.NextDue;
import bayfolio.reckon.TireWeek;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What is to be done on the coaches of a fleet, the most urgent first: seen from the day of the fleet, whatever the clock says. */
public final class FleetDue {
    private static final int WEEK = 7;

    /** How urgent it is, the most urgent first; a word on the page, and no color. */
    enum When {
        OVERDUE,
        THIS_WEEK,
        /** A recall that is not ticked off. */
        OPEN,
        /** Nobody can tell, since something is not stated. */
        NOT_KNOWN,
        LATER,
        /** By a counter alone, which this page does not read. */
        BY_COUNTER
    }

    /**
     * Of a coach only what stands in the line: a large fleet is not kept in mind for its list.
     *
     * @param coach its id
     * @param day empty where it goes by no day
     */
    record Due(String coach, String name, When when, Optional<LocalDate> day, String what, String due, String by) {}

    private static final Comparator<Due> MOST_URGENT_FIRST = Comparator.comparing(Due::when)
            .thenComparing(due -> due.day.orElse(LocalDate.MAX))
            .thenComparing(due -> due.name)
            .thenComparing(Due::what);

    private final Fleet fleet;
    private final Catalog words;
    private final Units units;

    private FleetDue(Fleet fleet, Catalog words, Units units) {
        this.fleet = fleet;
        this.words = words;
        this.units = units;
    }

    /**
     * @param words of the language that staff read
     * @param sound whether nothing is wrong with a coach; of others nothing is said that may be untrue
     */
    public static Overview of(Fleet fleet, Catalog words, Predicate<String> sound) {
        Units units = fleet.units().only(sound);
        return new Overview(
                "due",
                words.say("due.title"),
                words.language(),
                List.of(new FleetDue(fleet, words, units).table()),
                FleetOverview.leftOut(fleet, units));
    }

    /** Work that is overdue or due within a week, the most urgent first; recalls are none. */
    static List<Due> pressing(Fleet fleet, Catalog words, Units units) {
        FleetDue all = new FleetDue(fleet, words, units);
        return units.stream()
                .flatMap(all::works)
                .filter(due -> due.when == When.OVERDUE || due.when == When.THIS_WEEK)
                .sorted(MOST_URGENT_FIRST)
                .toList();
    }

    private Table table() {
        // Once for all: who asks for them goes through the whole fleet.
        List<Notice> recalls = fleet.notices(units).stream()
                .filter(notice -> notice.recall().isPresent())
                .toList();
        List<Row> rows = units.stream()
                .flatMap(unit -> Stream.concat(works(unit), recalls(unit, recalls)))
                .sorted(MOST_URGENT_FIRST)
                .map(this::row)
                .toList();
        return new Table(
                "due",
                fleet.asOf()
                        .map(day -> words.say("due.as-of", "day", words.day(day)))
                        .orElseGet(() -> words.say("due.title")),
                List.of(
                        new Column("coach", words.say("overview.coach"), false),
                        new Column("when", words.say("due.when"), true),
                        new Column("what", words.say("overview.what"), false),
                        new Column("day", words.say("due.day"), false),
                        new Column("by", words.say("due.by"), false)),
                rows);
    }

    static String said(When when, Catalog words) {
        return words.say("due." + Type.word(when));
    }

    private Row row(Due due) {
        return new Row(
                due.coach,
                List.of(
                        Cell.of(due.name),
                        Cell.of(said(due.when, words), due.when.ordinal()),
                        Cell.of(due.what),
                        due.day.map(day -> Cell.of(due.due, day.toEpochDay())).orElseGet(() -> Cell.of(due.due)),
                        due.by.isEmpty() ? Cell.EMPTY : Cell.of(due.by)));
    }

    private Stream<Due> works(Unit unit) {
        Wording wording = new Wording(new Coach(fleet, unit), words);
        return Stream.of(
                        unit.facts().all(Unit.SERVICES).stream().map(service -> service(unit, service, wording)),
                        unit.gauges().stream()
                                .filter(FleetDue::isAlarm)
                                .map(alarm -> dated(
                                        unit,
                                        words.say("due.alarm", "alarm", alarm.name()),
                                        alarm.facts().find(Gauge.REPLACE_BY),
                                        words.say("due.no-replace-by"))),
                        tires(unit).stream())
                .flatMap(each -> each);
    }

    private static boolean isAlarm(Gauge gauge) {
        return gauge.roles().stream().anyMatch(role -> role.endsWith("-alarm"));
    }

    private Due service(Unit unit, Service service, Wording wording) {
        NextDue next = NextDue.of(service);
        return new Due(
                unit.id(),
                unit.name(),
                next.day().map(this::when).orElse(next.known() ? When.BY_COUNTER : When.NOT_KNOWN),
                next.day(),
                service.facts().get(Service.WHAT),
                DueWords.of(next, wording).orElseGet(() -> words.say("sheet.not-known")),
                service.facts().find(Service.BY).orElse(""));
    }

    /** The oldest tire, where the fleet says how old one may be. */
    private Optional<Due> tires(Unit unit) {
        return fleet.facts()
                .facts()
                .find(FleetFacts.TIRE_YEARS)
                .flatMap(years -> unit.facts().find(Unit.TIRES).map(tires -> {
                    Optional<String> code = tires.facts().find(Tires.AGE_CODE);
                    return dated(
                            unit,
                            code.map(wall -> words.say("due.tires-of", "code", wall))
                                    .orElseGet(() -> words.say("due.tires")),
                            code.flatMap(TireWeek::of).map(made -> made.plusYears(years)),
                            words.say("due.no-week"));
                }));
    }

    private Due dated(Unit unit, String what, Optional<LocalDate> day, String unknown) {
        return new Due(
                unit.id(),
                unit.name(),
                day.map(this::when).orElse(When.NOT_KNOWN),
                day,
                what,
                day.map(words::day).orElse(unknown),
                "");
    }

    /** Also one whose last day is over: what was not done by then still is not. */
    private Stream<Due> recalls(Unit unit, List<Notice> recalls) {
        return recalls.stream()
                .filter(notice -> notice.recall()
                        .filter(recall -> recall.open().contains(unit.id()))
                        .isPresent())
                .map(notice -> {
                    Optional<LocalDate> until = notice.facts().find(Notice.UNTIL);
                    return new Due(
                            unit.id(),
                            unit.name(),
                            until.map(this::when)
                                    .filter(when -> when != When.LATER)
                                    .orElse(When.OPEN),
                            until,
                            words.say(
                                    "due.recall",
                                    "campaign",
                                    notice.recall().orElseThrow().campaign()),
                            until.map(words::day)
                                    .orElseGet(() -> words.say(
                                            "notice.since",
                                            "since",
                                            words.day(notice.facts().get(Notice.SINCE)))),
                            "");
                });
    }

    /** On its last day it is not overdue yet. */
    private When when(LocalDate day) {
        return fleet.asOf()
                .map(asOf -> day.isBefore(asOf)
                        ? When.OVERDUE
                        : day.isAfter(asOf.plusDays(WEEK)) ? When.LATER : When.THIS_WEEK)
                .orElse(When.LATER);
    }
}
