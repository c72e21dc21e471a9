package bayfolio.check.weight;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Facts;
import bayfolio.finding.Finding;
import bayfolio.model.Bed;
import bayfolio.model.People;
import bayfolio.model.Unit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a coach that is said to sleep more people than its beds do. */
public final class BedsAgainstSleepers implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().facts().find(Unit.PEOPLE).map(People::facts).flatMap(BedsAgainstSleepers::check).stream();
    }

    private static Optional<Finding> check(Facts people) {
        List<Bed> beds = people.all(People.BEDS);
        int sleeps = beds.stream()
                .mapToInt(bed -> bed.facts().find(Bed.SLEEPS).orElse(0))
                .sum();
        boolean known =
                !beds.isEmpty() && beds.stream().allMatch(bed -> bed.facts().has(Bed.SLEEPS));
        return people.find(People.SLEEPING_PLACES)
                .filter(places -> known && places > sleeps)
                .map(places -> Finding.error(
                                "beds-against-sleepers",
                                people.at(People.SLEEPING_PLACES),
                                "the coach is said to sleep %d, and its beds sleep %d".formatted(places, sleeps))
                        .mend("List the bed that is missing, or lower the number."));
    }
}
