package bayfolio.survey;

import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.source.Steps;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A fact to be looked up at the coach.
 *
 * @param was what is written there now
 */
public record Ask(Steps at, Shape<?> shape, Key<?> key, Optional<String> was, List<Why> why) {
    public Ask {
        why = List.copyOf(why);
    }

    /** Whether it is only looked at again. */
    boolean again() {
        return why.stream().allMatch(it -> it.reason() == Why.Reason.OLD);
    }

    /** One of each reason is enough to go and look. */
    Ask also(Why other) {
        List<Why> all = new ArrayList<>(why);
        if (all.stream().noneMatch(it -> it.reason() == other.reason())) {
            all.add(other);
        }
        return new Ask(at, shape, key, was, all);
    }
}
