package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.List;
import java.util.Optional;

/**
 * Something on a coach that has an id and can be referred to: a compartment, a switch, a tank, an
 * item.
 */
public interface Thing extends Described {
    Identity identity();

    /** What kind of thing it is: the scheme of references to it. */
    default String kind() {
        return facts().shape().name();
    }

    default String id() {
        return facts().get(identity().id());
    }

    default String name() {
        return facts().get(identity().name());
    }

    default List<String> roles() {
        return facts().all(identity().roles());
    }

    default List<String> formerly() {
        return facts().all(identity().formerly());
    }

    /** Where its id is written. */
    default Place at() {
        return facts().at(identity().id());
    }

    /** Where it is; most things that are no solid objects have no spot. */
    default Optional<Spot> spot() {
        return Optional.empty();
    }

    /**
     * The keys that every thing has.
     *
     * @param formerly ids that it had before; a reference to one of them is told the new one
     */
    record Identity(
            Key<String> id,
            Key<String> name,
            Key<List<Located<String>>> roles,
            Key<List<Located<String>>> formerly,
            Key<List<Located<Acceptance>>> accept) {

        static Identity declare(Shape.Draft<?> draft, String kind, String meaningOfName) {
            return new Identity(
                    draft.required(
                            "id", Type.ID, "Its name in references; addresses are made of it, so choose it to last."),
                    draft.required("name", Type.TEXT, meaningOfName),
                    draft.optional("roles", Type.list(Type.role(kind)), "What it is for, in words all coaches share."),
                    draft.optional(
                            "formerly", Type.list(Type.ID), "Ids that it had before, so that old addresses lead on."),
                    draft.forStaff(
                            "accept",
                            Type.list(Type.nested(Acceptance.SHAPE)),
                            "Warnings and notes about it that you live with, each with its reason."));
        }
    }
}
