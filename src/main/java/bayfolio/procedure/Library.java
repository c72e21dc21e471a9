package bayfolio.procedure;

import bayfolio.model.Unit;
import java.util.List;
import java.util.Optional;

/** All scripts of a fleet: shared ones and those of single coaches. */
public record Library(List<Script> scripts) {
    public Library {
        scripts = List.copyOf(scripts);
    }

    /** Those that apply to a coach, in the order of the trip, then of their titles. */
    public List<Script> of(Unit unit) {
        return scripts.stream()
                .filter(script -> script.head().facts().whole() && script.appliesTo(unit))
                .sorted(
                        java.util.Comparator.comparing((Script script) -> script.head().stage())
                                .thenComparing(script -> script.head().title()))
                .toList();
    }

    public boolean knows(String id) {
        return scripts.stream().anyMatch(script -> script.id().equals(id));
    }

    public Optional<Script> named(Unit unit, String id) {
        return of(unit).stream().filter(script -> script.id().equals(id)).findFirst();
    }
}
