package bayfolio.model;

import bayfolio.source.Digest;
import bayfolio.source.Located;
import bayfolio.source.Steps;
import java.util.List;
import java.util.Optional;

/**
 * How a coach differs from its model.
 *
 * @param model its name
 * @param overrides facts that both state
 * @param added things and facts of the coach alone
 * @param leftOut what the model has and the coach has not
 * @param idle digests beside which nothing is overridden
 */
public record Difference(
        String model, List<Override> overrides, List<Added> added, List<LeftOut> leftOut, List<Said> idle) {
    public Difference {
        overrides = List.copyOf(overrides);
        added = List.copyOf(added);
        leftOut = List.copyOf(leftOut);
        idle = List.copyOf(idle);
    }

    /**
     * A fact that a coach states although its model does, or a thing that it describes anew.
     *
     * @param record the record that holds the digest
     * @param own as the coach says it, in one line
     * @param below as the model says it, in one line
     * @param said the digest of what the model said when the coach was last compared with it
     */
    public record Override(
            Steps way, Steps record, Located<String> own, Located<String> below, Optional<Located<String>> said) {
        /** Of what the model says. */
        public String digest() {
            return Digest.of(below.value());
        }

        /** Whether it says what the model says anyway. */
        public boolean same() {
            return own.value().equals(below.value());
        }
    }

    /** Something that the model does not have. */
    public record Added(Steps way, Located<String> own) {}

    /**
     * Something that the coach does not have.
     *
     * @param at the coach's word for it
     * @param below what the model says, in one line
     */
    public record LeftOut(Steps way, Located<String> at, Located<String> below) {}

    /** A digest. */
    public record Said(Steps way, Located<String> digest) {}
}
