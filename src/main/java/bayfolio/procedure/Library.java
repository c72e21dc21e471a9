package bayfolio.procedure;

import bayfolio.model.Unit;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/** All scripts of a fleet, procedures and trouble guides: shared ones and those of single coaches. */
public final class Library {
    private static final Comparator<Script> TRIP = Comparator.comparing(
                    (Script script) -> script.head().stage())
            .thenComparing(script -> script.head().title());

    private final List<Script> scripts;
    private final Map<Form, Set<String>> ids;
    // Asked for with every reference; conditions and features would be worked out anew each time.
    private final Map<Unit, List<Script>> applying = new ConcurrentHashMap<>();

    public Library(List<Script> scripts) {
        this.scripts = List.copyOf(scripts);
        this.ids = scripts.stream()
                .collect(Collectors.groupingBy(Script::form, Collectors.mapping(Script::id, Collectors.toSet())));
    }

    public List<Script> scripts() {
        return scripts;
    }

    /** Those that apply to a coach, in the order of the trip, then of their titles. */
    public List<Script> of(Unit unit) {
        return applying.computeIfAbsent(
                unit,
                it -> scripts.stream()
                        .filter(script -> script.head().facts().whole() && script.appliesTo(it))
                        .sorted(TRIP)
                        .toList());
    }

    /** Of all there are, those too that apply to no coach. */
    Set<String> ids(Form form) {
        return ids.getOrDefault(form, Set.of());
    }

    public boolean knows(Form form, String id) {
        return ids(form).contains(id);
    }

    public Optional<Script> named(Unit unit, String id) {
        return of(unit).stream().filter(script -> script.id().equals(id)).findFirst();
    }
}
