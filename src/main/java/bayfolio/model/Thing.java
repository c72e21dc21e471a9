package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

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

    default boolean holdsOneOf(Set<String> roles) {
        return roles().stream().anyMatch(roles::contains);
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

    /** Its place on a panel; most things are on none. */
    default Optional<Board> board() {
        return Optional.empty();
    }

    /**
     * The keys that every thing has.
     *
     * @param formerly ids that it had before; a reference to one of them is told the new one
     * @param checkedOn when it was last compared with what is described; the coach's own day where it has none
     */
    record Identity(
            Key<String> id,
            Key<String> name,
            Key<List<Located<String>>> roles,
            Key<List<Located<String>>> formerly,
            Key<List<Located<Acceptance>>> accept,
            Key<LocalDate> checkedOn,
            Key<String> checkedBy) {

        static final Range CHECKED = Range.of("model-year - 2 years", "as-of")
                .usual("as-of - 3 years", "as-of")
                .because("not after the as-of day, not before the coach was built; older than 3 years: ask");

        static Identity declare(Shape.Draft<?> draft, String kind, String meaningOfName) {
            Identity identity = new Identity(
                    draft.required(
                            "id", Type.ID, "Its name in references; addresses are made of it, so choose it to last."),
                    draft.required("name", Type.NAME, meaningOfName),
                    draft.optional("roles", Type.list(Type.role(kind)), "What it is for, in words all coaches share."),
                    draft.optional(
                            "formerly", Type.list(Type.ID), "Ids that it had before, so that old addresses lead on."),
                    draft.forStaff(
                            "accept",
                            Type.list(Type.nested(Acceptance.SHAPE)),
                            "Warnings and notes about it that you live with, each with its reason."),
                    draft.forStaff(
                            "checked-on",
                            Type.DAY,
                            "When it was last compared with the coach; left out, the day of the coach counts.",
                            CHECKED),
                    draft.forStaff("checked-by", Type.TEXT, "Who compared it."));
            draft.ofEachCoach(identity.checkedOn, identity.checkedBy);
            return identity;
        }
    }
}
