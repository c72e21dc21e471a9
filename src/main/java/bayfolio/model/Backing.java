package bayfolio.model;

import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import java.time.LocalDate;
import java.util.stream.Stream;

/**
 * The keys that every value of a country has: who says so, and how far that can be trusted.
 *
 * @param checkedOn when it was last compared with its source; the country's own day where it has none
 */
public record Backing(
        Key<String> asReported,
        Key<Boolean> disputed,
        Key<Boolean> fromMemory,
        Key<LocalDate> checkedOn,
        Key<String> source) {

    public Stream<Key<?>> all() {
        return Stream.of(asReported, disputed, fromMemory, checkedOn, source);
    }

    static Backing declare(Shape.Draft<?> draft) {
        return new Backing(
                draft.optional(
                        "as-reported",
                        Type.TEXT,
                        "The year in which others told of it, or `undated`, where the public body's own page was not seen; renters read it, and staff confirm it. Left out where it was seen."),
                draft.optional(
                        "disputed",
                        Type.YES_NO,
                        "Whether reports differ; then the stricter one is stated, and renters read that it is."),
                draft.optional(
                        "from-memory",
                        Type.YES_NO,
                        "Whether nobody has read it anywhere; then staff alone see it, until somebody has."),
                draft.forStaff(
                        "checked-on",
                        Type.DAY,
                        "When it was last compared with its source; left out, the day of the country counts."),
                draft.forStaff("source", Type.TEXT, "What was read."));
    }
}
