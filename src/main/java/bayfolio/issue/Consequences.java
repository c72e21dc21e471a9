package bayfolio.issue;

import bayfolio.check.CheckedCoach;
import bayfolio.edition.AsPrinted;
import bayfolio.edition.Changed;
import bayfolio.edition.Compared;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A change with all that follows from it. */
public record Consequences(Changed changed, List<Consequence> all) {
    public Consequences {
        all = List.copyOf(all);
    }

    /**
     * Of each change, in their order.
     *
     * @param since the day of the earlier state
     * @param printed the book of the earlier state, where it is known how it was printed
     * @param now the coach as its files are, where that is the later state
     */
    public static List<Consequences> of(
            Compared compared, LocalDate since, Optional<AsPrinted> printed, Optional<CheckedCoach> now) {
        Taken taken = new Taken(compared, since);
        List<Consequent> each = new ArrayList<>(List.of(
                new LabelsOf(compared),
                new PapersOf(compared, printed),
                new PicturesOf(compared, taken),
                new ScenesOf(compared, taken),
                new LookUpsOf(compared, since),
                new ReadingsOf(compared),
                new LinksOf(compared)));
        now.ifPresent(coach -> each.add(new TranslationsOf(compared, coach)));
        return compared.changes().stream()
                .map(changed -> new Consequences(
                        changed,
                        each.stream()
                                .<Consequence>flatMap(it -> it.of(changed))
                                .distinct()
                                .toList()))
                .toList();
    }

    /** Changes of which nobody asks what follows. */
    public static List<Consequences> unasked(List<Changed> changes) {
        return changes.stream()
                .map(changed -> new Consequences(changed, List.of()))
                .toList();
    }

    /** Those of one kind. */
    <C extends Consequence> Stream<C> of(Class<C> kind) {
        return all.stream().filter(kind::isInstance).map(kind::cast);
    }
}
