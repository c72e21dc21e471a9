package bayfolio.check.reference;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.FactVisitor;
import bayfolio.fact.Key;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Flags a list in which one thing or choice is named twice: another one was meant. */
public final class NamedTwice implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        List<Finding> found = new ArrayList<>();
        Set<Named> seen = new HashSet<>();
        FactVisitor.of(coach.unit(), (record, key, type, value) -> {
            boolean listed = key.type() instanceof Type.ListOf<?>
                    && (type instanceof Type.Reference || type instanceof Type.Choice<?>);
            if (listed && !seen.add(new Named(record.facts().at(key), value.value()))) {
                found.add(finding(key, value));
            }
        });
        return found.stream();
    }

    /** @param list where it stands */
    private record Named(Place list, Object what) {}

    private static Finding finding(Key<?> key, Located<?> value) {
        String word = value.value() instanceof Enum<?> choice
                ? Type.word(choice)
                : value.value().toString();
        return Finding.error("named-twice", value.at(), "`" + key.name() + "` names `" + word + "` twice")
                .mend("Name the other one that was meant, or leave it out.");
    }
}
