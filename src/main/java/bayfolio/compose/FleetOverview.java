package bayfolio.compose;

import bayfolio.catalog.Catalog;
import bayfolio.document.Overview;
import bayfolio.document.Overview.Cell;
import bayfolio.document.Overview.Column;
import bayfolio.document.Overview.Row;
import bayfolio.document.Overview.Table;
import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Quantity;
import bayfolio.model.Coach;
import bayfolio.model.Engine;
import bayfolio.model.Fleet;
import bayfolio.model.Hire;
import bayfolio.model.People;
import bayfolio.model.Service;
import bayfolio.model.Size;
import bayfolio.model.Supply;
import bayfolio.model.Unit;
import bayfolio.model.Units;
import bayfolio.model.Wording;
import bayfolio.reckon.NextDue;
import bayfolio.source.Located;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** All coaches of a fleet side by side, as their descriptions are now, whether or not their handbooks are made anew. */
public final class FleetOverview {
    /** After so long somebody should walk the coach again with its description in hand; {@link Unit#CHECKED_ON} asks for it, too. */
    private static final int YEARS_BETWEEN_WALKS = 3;

    private final Fleet fleet;
    private final Catalog words;

    private FleetOverview(Fleet fleet, Catalog words) {
        this.fleet = fleet;
        this.words = words;
    }

    /**
     * @param words of the language that staff read
     * @param sound whether nothing is wrong with a coach; of others nothing is said that may be untrue
     */
    public static Overview of(Fleet fleet, Catalog words, Predicate<String> sound) {
        Units units = fleet.units().only(sound);
        return new Overview(
                "fleet",
                words.say("overview.title"),
                words.language(),
                Stream.concat(
                                Stream.of(new FleetOverview(fleet, words).coaches(units)),
                                ModelDifferences.of(fleet, units, words).stream())
                        .toList(),
                leftOut(fleet, units));
    }

    /** Ids of the coaches that nothing is said of. */
    static List<String> leftOut(Fleet fleet, Units said) {
        return fleet.coaches().stream().filter(coach -> !said.has(coach)).toList();
    }

    /** A column and what a coach has in it. */
    private record Told(Column column, BiFunction<Unit, Wording, Cell> cell) {}

    private List<Told> columns() {
        return List.of(
                new Told(
                        new Column("coach", words.say("overview.coach"), false),
                        (unit, wording) -> Cell.of(unit.name())),
                fact(Unit.SHAPE, Unit.NUMBER, false, Optional::of),
                fact(Unit.SHAPE, Unit.MODEL, true, Optional::of),
                fact(Unit.SHAPE, Unit.BODY, true, Optional::of),
                fact(Size.SHAPE, Size.HEIGHT, false, unit -> Optional.of(unit.size())),
                fact(Size.SHAPE, Size.LENGTH, false, unit -> Optional.of(unit.size())),
                new Told(new Column("hook-up", words.say("overview.hook-up"), true), FleetOverview::hookUp),
                fact(Engine.SHAPE, Engine.FUEL, true, unit -> unit.facts().find(Unit.ENGINE)),
                fact(
                        People.SHAPE,
                        People.SLEEPING_PLACES,
                        false,
                        unit -> unit.facts().find(Unit.PEOPLE)),
                fact(
                        People.SHAPE,
                        People.BELTED_SEATS,
                        false,
                        unit -> unit.facts().find(Unit.PEOPLE)),
                new Told(new Column("hire", words.say("overview.hire"), true), this::hire),
                new Told(new Column("due", words.say("overview.due"), false), this::due));
    }

    /** One that no coach has anything in is left out. */
    private Table coaches(Units units) {
        List<Told> all = columns();
        List<List<Cell>> rows = units.stream()
                .map(unit -> {
                    Wording wording = new Wording(new Coach(fleet, unit), words);
                    return all.stream()
                            .map(column -> column.cell.apply(unit, wording))
                            .toList();
                })
                .toList();
        List<Integer> used = IntStream.range(0, all.size())
                .filter(column ->
                        rows.stream().anyMatch(row -> !row.get(column).lines().isEmpty()))
                .boxed()
                .toList();
        List<String> ids = units.ids();
        return new Table(
                "coaches",
                words.say("overview.coaches"),
                used.stream().map(column -> all.get(column).column).toList(),
                IntStream.range(0, rows.size())
                        .mapToObj(row -> new Row(
                                ids.get(row),
                                used.stream().map(rows.get(row)::get).toList()))
                        .toList());
    }

    private <D extends Described> Told fact(
            Shape<D> shape, Key<?> key, boolean chosen, Function<Unit, Optional<D>> owner) {
        return new Told(
                new Column(key.name(), label(shape, key), chosen),
                (unit, wording) -> owner.apply(unit)
                        .flatMap(record -> record.facts().located(key))
                        .map(fact -> new Cell(List.of(wording.of(key.type(), fact)), order(fact.value())))
                        .orElse(Cell.EMPTY));
    }

    private static OptionalDouble order(Object value) {
        if (value instanceof Quantity quantity) {
            return OptionalDouble.of(quantity.value());
        }
        return value instanceof Integer count ? OptionalDouble.of(count) : OptionalDouble.empty();
    }

    private String label(Shape<?> shape, Key<?> key) {
        return words.find("fact." + shape.name() + "." + key.name()).orElseGet(() -> words.say("fact." + key.name()));
    }

    /** The largest outlet that it takes all from. */
    private static Cell hookUp(Unit unit, Wording wording) {
        return unit.supplies().stream()
                .filter(supply -> supply.source() == Supply.Source.SHORE)
                .max(Comparator.comparingDouble(
                        supply -> supply.facts().get(Supply.AMPS).value()))
                .map(supply -> Cell.of(
                        wording.words()
                                .row(Stream.of(Supply.AMPS, Supply.VOLTS)
                                        .map(key -> wording.of(
                                                key.type(),
                                                supply.facts().located(key).orElseThrow()))
                                        .toList()),
                        supply.facts().get(Supply.AMPS).value()))
                .orElse(Cell.EMPTY);
    }

    /** What can be said in a word: sentences stand in the handbook. */
    private Cell hire(Unit unit, Wording wording) {
        List<String> rules = new ArrayList<>();
        unit.facts()
                .find(Unit.HIRE)
                .ifPresent(hire -> hire.facts().each((key, fact) -> {
                    if (!(key.type() instanceof Type.Text) && !(key.type() instanceof Type.ListOf)) {
                        rules.add(words.say(
                                "overview.rule",
                                "rule",
                                label(Hire.SHAPE, key),
                                "value",
                                wording.of(key.type(), fact)));
                    }
                }));
        return new Cell(rules, OptionalDouble.empty());
    }

    /** Work whose day is over, then the next that comes; and a walk with the description that is long ago. */
    private Cell due(Unit unit, Wording wording) {
        List<Work> works = unit.facts().all(Unit.SERVICES).stream()
                .map(service -> new Work(service.facts().get(Service.WHAT), NextDue.of(service)))
                .filter(work -> work.next.known())
                .sorted(Comparator.comparing(Work::day))
                .toList();
        List<Work> over = works.stream().filter(this::over).toList();
        List<String> lines = new ArrayList<>();
        unit.facts()
                .located(Unit.CHECKED_ON)
                .filter(this::longAgo)
                .ifPresent(walk -> lines.add(words.say("overview.walked", "day", wording.of(Type.DAY, walk.value()))));
        over.forEach(work -> lines.add(said("overview.overdue", work, wording)));
        works.stream()
                .filter(work -> !over.contains(work))
                .findFirst()
                .ifPresent(work -> lines.add(said("overview.next", work, wording)));
        return new Cell(
                lines,
                works.stream()
                        .flatMap(work -> work.next.day().stream())
                        .mapToDouble(LocalDate::toEpochDay)
                        .min());
    }

    private record Work(String what, NextDue next) {
        /** Without one it comes after all that have one. */
        LocalDate day() {
            return next.day().orElse(LocalDate.MAX);
        }
    }

    private String said(String key, Work work, Wording wording) {
        return words.say(
                key, "what", work.what, "when", DueWords.of(work.next, wording).orElseThrow());
    }

    private boolean over(Work work) {
        return fleet.asOf().filter(work.day()::isBefore).isPresent();
    }

    private boolean longAgo(Located<LocalDate> walk) {
        return fleet.asOf()
                .filter(walk.value().plusYears(YEARS_BETWEEN_WALKS)::isBefore)
                .isPresent();
    }
}
