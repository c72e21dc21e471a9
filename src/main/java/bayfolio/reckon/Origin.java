package bayfolio.reckon;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.source.Place;

/** Where a figure came from. */
public sealed interface Origin {
    /** The description of this coach, or of its fleet, says so. */
    record Stated(Facts facts, Key<?> key) implements Origin {
        public Place at() {
            return facts.at(key);
        }
    }

    /** The description says nothing, and a figure of a table is taken. */
    record Usual(Published<?> figure) implements Origin {}
}
