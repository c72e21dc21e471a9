package bayfolio.issue;

import bayfolio.edition.Change;
import bayfolio.edition.Compared;
import bayfolio.issue.Consequence.Redo;
import bayfolio.model.Photo;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Whether a photo or a film is of what was before.
 *
 * @param since the day of the earlier edition: what is otherwise since was changed after it
 */
record Taken(Compared compared, LocalDate since) {
    /**
     * Empty where it was taken since.
     *
     * @param day on which the thing was changed, where that is known
     */
    Optional<Redo> redo(Change.Thing picture, Optional<LocalDate> day) {
        Optional<LocalDate> taken = compared.after().day(picture, Photo.TAKEN_ON.name());
        if (day.isPresent()) {
            return taken.filter(it -> !it.isBefore(day.get())).isPresent()
                    ? Optional.empty()
                    : Optional.of(Redo.TAKE_AGAIN);
        }
        if (isNew(picture)) {
            return Optional.empty();
        }
        return Optional.of(taken.filter(it -> it.isAfter(since)).isPresent() ? Redo.LOOK_AT : Redo.TAKE_AGAIN);
    }

    /** A writer who has put another picture there knows what is on it. */
    private boolean isNew(Change.Thing picture) {
        return !compared.before()
                        .value(picture, Photo.FILE.name())
                        .equals(compared.after().value(picture, Photo.FILE.name()))
                || !compared.before()
                        .value(picture, Photo.TAKEN_ON.name())
                        .equals(compared.after().value(picture, Photo.TAKEN_ON.name()));
    }
}
