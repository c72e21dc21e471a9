package bayfolio.check.sense;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.UnreadException;
import bayfolio.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Flags facts that do not agree with each other, by one table. */
public final class Relations implements Rule {
    static final List<Relation<?, ?>> ALL = Stream.of(
                    ElectricRelations.ALL,
                    WaterRelations.ALL,
                    FuelRelations.ALL,
                    RoadRelations.ALL,
                    SpaceRelations.ALL,
                    LookRelations.ALL,
                    StateRelations.ALL,
                    UseRelations.ALL,
                    ReferenceRelations.ALL,
                    LoadRelations.ALL)
            .flatMap(List::stream)
            .toList();

    /** The codes of them all. */
    public static Set<String> codes() {
        return ALL.stream().map(Relation::code).collect(Collectors.toUnmodifiableSet());
    }

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Records records = new Records(coach.coach());
        List<Finding> found = new ArrayList<>();
        // What one of them asks for and could not be read says nothing of the others.
        ALL.forEach(
                relation -> UnreadException.upTo(() -> relation.check(records).forEach(found::add)));
        return found.stream();
    }
}
