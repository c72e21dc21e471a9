package bayfolio.check.reference;

import bayfolio.check.Case;
import bayfolio.check.Rule;
import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Flags a list in which one thing or choice is named twice: another one was meant. */
public final class NamedTwice implements Rule {
    @Override
    public Stream<Finding> check(Case coach) {
        List<Finding> found = new ArrayList<>();
        look(coach.unit(), found);
        return found.stream();
    }

    private static void look(Described record, List<Finding> found) {
        record.facts().each((key, value) -> {
            if (value.value() instanceof Described inner) {
                look(inner, found);
            } else if (value.value() instanceof List<?> list) {
                list(key, list, found);
            }
        });
    }

    private static void list(Key<?> key, List<?> list, List<Finding> found) {
        boolean named = key.type() instanceof Type.ListOf<?> type
                && (type.element() instanceof Type.Reference || type.element() instanceof Type.Choice<?>);
        Set<Object> seen = new HashSet<>();
        for (Object each : list) {
            Located<?> element = (Located<?>) each;
            if (element.value() instanceof Described inner) {
                look(inner, found);
            } else if (named && !seen.add(element.value())) {
                String word = element.value() instanceof Enum<?> choice
                        ? Type.word(choice)
                        : element.value().toString();
                found.add(Finding.error("named-twice", element.at(), "`" + key.name() + "` names `" + word + "` twice")
                        .mend("Name the other one that was meant, or leave it out."));
            }
        }
    }
}
