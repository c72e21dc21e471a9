package bayfolio.check.sense;

import bayfolio.fact.Described;
import bayfolio.fact.FactVisitor;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.finding.Finding;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Quantity;
import bayfolio.model.Coach;
import bayfolio.model.Fleet;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The figures of a coach or fleet that lie outside the ranges of their keys. */
final class Figures {
    /**
     * A figure outside its range.
     *
     * @param within the record that states it
     */
    record Figure(Described within, Key<?> key, Located<?> value, Range.Outside outside) {
        /** As it is told; what cannot be is an error, what hardly ever is a warning. */
        Finding finding(MeasureSystem system) {
            String figure = value.value() instanceof Quantity quantity
                    ? quantity.in(system)
                    : value.value().toString();
            String said = "`%s` of %s is %s".formatted(key.name(), Records.naming(within), figure);
            return outside.hard()
                    ? Finding.error("impossible-figure", value.at(), said + ", which cannot be")
                            .mend("It lies between " + outside.between()
                                    + "; measure it or read the plate, or leave the key out.")
                    : Finding.warning("unlikely-figure", value.at(), said + ", which is unusual")
                            .mend("It mostly lies between " + outside.between()
                                    + "; look again, and if it is true, say so under `accept`.");
        }
    }

    private final Fleet fleet;
    private final Optional<Coach> coach;
    private final List<Figure> found = new ArrayList<>();

    private Figures(Fleet fleet, Optional<Coach> coach) {
        this.fleet = fleet;
        this.coach = coach;
    }

    /** Those of a coach, in the order of the description, and of what earlier hires left on it. */
    static Stream<Finding> outside(Coach coach) {
        Figures figures = new Figures(coach.fleet(), Optional.of(coach));
        figures.look(coach.unit());
        coach.fleet().marks(coach.unit()).forEach(figures::look);
        return figures.found.stream()
                .map(figure -> figure.finding(coach.unit().region().first()));
    }

    /** Those that a fleet states of itself. */
    static Stream<Finding> outside(Fleet fleet) {
        Figures figures = new Figures(fleet, Optional.empty());
        figures.look(fleet.facts());
        return figures.found.stream().map(figure -> figure.finding(MeasureSystem.US));
    }

    private void look(Described described) {
        Map<Described, Surroundings> around = new IdentityHashMap<>();
        FactVisitor.of(
                described,
                (record, key, type, value) -> key.judge()
                        .flatMap(judge -> judge.judge(
                                value.value(),
                                around.computeIfAbsent(record, it -> new Surroundings(fleet, coach, it.facts()))))
                        .ifPresent(outside -> found.add(new Figure(record, key, value, outside))));
    }
}
