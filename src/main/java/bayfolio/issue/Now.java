package bayfolio.issue;

import bayfolio.check.Check;
import bayfolio.check.CheckedCoach;
import bayfolio.compose.Composer;
import bayfolio.document.Handbook;
import bayfolio.edition.Snapshot;
import bayfolio.model.Unit;
import java.util.Optional;

/**
 * A coach as its files describe it now.
 *
 * @param handbook empty where the check found an error in the coach
 */
public record Now(CheckedCoach coach, Optional<Handbook> handbook, Snapshot snapshot) {
    public static Now of(Check check, Unit unit) {
        return of(check, check.of(unit));
    }

    /** @param coach filled in already */
    public static Now of(Check check, CheckedCoach coach) {
        Optional<Handbook> handbook =
                check.findings().stopping(coach.unit().id(), false).isEmpty()
                        ? Optional.of(Composer.compose(coach))
                        : Optional.empty();
        return new Now(coach, handbook, Snapshot.of(coach, handbook));
    }
}
