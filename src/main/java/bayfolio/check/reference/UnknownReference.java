package bayfolio.check.reference;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.FactVisitor;
import bayfolio.fact.Type;
import bayfolio.finding.Article;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Coach;
import bayfolio.model.Thing;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Flags a fact that names a thing which this coach does not have, or has as another kind. */
public final class UnknownReference implements Rule {
    private static final int MOST_KINDS_NAMED = 4;

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        List<Finding> findings = new ArrayList<>();
        Map<String, Set<String>> kinds = new HashMap<>();
        coach.unit()
                .things()
                .forEach(thing -> kinds.computeIfAbsent(thing.id(), it -> new LinkedHashSet<>())
                        .add(thing.kind()));
        Set<String> named = new TreeSet<>();
        FactVisitor.of(coach.unit().facts(), (type, value) -> {
            if (type instanceof Type.Reference) {
                named.add(value.value().toString());
            }
        });
        FactVisitor.of(coach.unit().facts(), (type, value) -> {
            if (type instanceof Type.Reference reference) {
                check(reference, value, kinds, coach.coach(), named).ifPresent(findings::add);
            }
        });
        return findings.stream();
    }

    /**
     * @param kinds of what this coach has, by id
     */
    private static Optional<Finding> check(
            Type.Reference reference,
            Located<?> value,
            Map<String, Set<String>> kinds,
            Coach coach,
            Set<String> named) {
        String id = value.value().toString();
        Set<String> same = kinds.getOrDefault(id, Set.of());
        if (same.stream().anyMatch(reference.kinds()::contains)) {
            return Optional.empty();
        }
        String wanted = String.join(" or ", reference.kinds());
        if (!same.isEmpty()) {
            return Optional.of(Finding.error(
                            "wrong-kind",
                            value.at(),
                            "`" + id + "` is " + Article.a(same.iterator().next()) + ", not " + Article.a(wanted))
                    .near(NearNames.to(id, ids(coach, reference)))
                    .mend("Name " + Article.a(wanted) + " of this coach."));
        }
        if (!reference.kinds().stream().allMatch(coach::idsRead)) {
            return Optional.empty(); // it may be the one whose id could not be read
        }
        // Nobody reads a list of all kinds there are.
        boolean anything = reference.kinds().size() > MOST_KINDS_NAMED;
        return Optional.of(Finding.error(
                        "unknown-reference",
                        value.at(),
                        anything
                                ? "there is nothing called `" + id + "` on this coach"
                                : "there is no " + wanted + " `" + id + "`")
                .near(near(id, reference, coach, named))
                .mend("Name " + (anything ? "a thing" : Article.a(wanted)) + " of this coach by its id."));
    }

    /**
     * A former id leads to the new one; where no name is near, those that nothing names may be the
     * renamed one.
     */
    private static List<String> near(String id, Type.Reference reference, Coach coach, Set<String> named) {
        List<String> now = coach.unit()
                .things()
                .filter(thing -> reference.kinds().contains(thing.kind()))
                .filter(thing -> thing.formerly().contains(id))
                .map(Thing::id)
                .toList();
        if (!now.isEmpty()) {
            return now;
        }
        List<String> near = new ArrayList<>(NearNames.to(id, ids(coach, reference)));
        List<String> free =
                ids(coach, reference).stream().filter(it -> !named.contains(it)).toList();
        if (free.size() == 1 && !near.contains(free.get(0))) {
            near.add(free.get(0));
        }
        return near;
    }

    private static List<String> ids(Coach coach, Type.Reference reference) {
        return coach.unit()
                .things()
                .filter(thing -> reference.kinds().contains(thing.kind()))
                .map(Thing::id)
                .toList();
    }
}
