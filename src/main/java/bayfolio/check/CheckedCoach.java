package bayfolio.check;

import bayfolio.catalog.Catalog;
import bayfolio.model.Coach;
import bayfolio.model.Difference;
import bayfolio.model.Unit;
import bayfolio.procedure.Library;
import bayfolio.procedure.Procedure;
import java.util.List;
import java.util.Optional;

/**
 * One coach as the rules look at it.
 *
 * @param coach as it is written
 * @param told the same as its readers hear of it, in the words of their language where there are any
 * @param words in which its procedures were filled in
 * @param procedures all that apply to it, filled in, in the order of the trip
 */
public record CheckedCoach(Coach coach, Coach told, Library library, Catalog words, List<Procedure> procedures) {
    public CheckedCoach {
        procedures = List.copyOf(procedures);
    }

    /** How it differs from its model; empty where it has none. */
    public Optional<Difference> difference() {
        return coach.fleet().difference(unit());
    }

    public Unit unit() {
        return coach.unit();
    }
}
