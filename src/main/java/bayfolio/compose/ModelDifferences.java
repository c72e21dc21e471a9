package bayfolio.compose;

import bayfolio.catalog.Catalog;
import bayfolio.document.Overview.Cell;
import bayfolio.document.Overview.Column;
import bayfolio.document.Overview.Row;
import bayfolio.document.Overview.Table;
import bayfolio.model.Difference;
import bayfolio.model.Fleet;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.model.Units;
import bayfolio.model.Whose;
import bayfolio.source.Steps;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What the coaches of each model say otherwise than it: for staff, who take one for the other. */
final class ModelDifferences {
    private final Fleet fleet;
    private final Catalog words;

    private ModelDifferences(Fleet fleet, Catalog words) {
        this.fleet = fleet;
        this.words = words;
    }

    /** A table for each model; none for one whose coaches are all alike. */
    static List<Table> of(Fleet fleet, Units units, Catalog words) {
        SortedSet<String> models = units.stream()
                .flatMap(unit -> fleet.difference(unit).stream())
                .map(Difference::model)
                .collect(Collectors.toCollection(TreeSet::new));
        ModelDifferences differences = new ModelDifferences(fleet, words);
        return models.stream()
                .map(model -> differences.table(model, units.of(new Whose.OfAModel(model))))
                .filter(table -> !table.rows().isEmpty())
                .toList();
    }

    private Table table(String model, List<Unit> sisters) {
        return new Table(
                "model-" + model,
                words.say("overview.model", "model", model),
                List.of(
                        new Column("coach", words.say("overview.coach"), false),
                        new Column("what", words.say("overview.what"), false),
                        new Column("here", words.say("overview.here"), false),
                        new Column("there", words.say("overview.there"), false)),
                sisters.stream()
                        .flatMap(unit -> rows(unit, fleet.difference(unit).orElseThrow(), sisters).stream())
                        .toList());
    }

    private List<Row> rows(Unit unit, Difference difference, List<Unit> sisters) {
        List<Row> rows = new ArrayList<>();
        difference.overrides().stream()
                .filter(it -> !it.same())
                .forEach(it -> rows.add(row(
                        unit,
                        label(it.way(), sisters),
                        Cell.of(it.own().value()),
                        Cell.of(it.below().value()))));
        difference
                .added()
                .forEach(it -> rows.add(
                        row(unit, label(it.way(), sisters), Cell.of(words.say("overview.added")), Cell.EMPTY)));
        difference
                .leftOut()
                .forEach(it -> rows.add(
                        row(unit, label(it.way(), sisters), Cell.of(words.say("overview.left-out-here")), Cell.EMPTY)));
        return rows;
    }

    private static Row row(Unit unit, String what, Cell here, Cell there) {
        return new Row(unit.id(), List.of(Cell.of(unit.name()), Cell.of(what), here, there));
    }

    /** The thing by its name and the fact by its label, as pages have them. */
    private String label(Steps way, List<Unit> sisters) {
        List<String> parts = new ArrayList<>();
        String record = "unit";
        for (Steps.Step step : way.all()) {
            if (step instanceof Steps.Id id) {
                Optional<Thing> thing = sisters.stream()
                        .flatMap(Unit::things)
                        .filter(it -> it.id().equals(id.id()))
                        .findFirst();
                parts.clear();
                parts.add(thing.map(Thing::name).orElse(id.id()));
                record = thing.map(Thing::kind).orElse(record);
            } else {
                parts.add(key(record, step.toString()));
                record = step.toString();
            }
        }
        return parts.size() < 2 ? parts.get(0) : words.say("overview.fact", "of", parts.get(0), "fact", last(parts));
    }

    private static String last(List<String> parts) {
        return String.join(", ", parts.subList(1, parts.size()));
    }

    private String key(String record, String name) {
        return words.find("fact." + record + "." + name)
                .or(() -> words.find("fact." + name))
                .orElse(name);
    }
}
