package bayfolio.procedure;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.model.Coach;
import bayfolio.model.Kinds;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What staff read out to a renter on the phone: facts that a renter must not have beforehand. {@code slide.override} is that
 * of each slide-out, {@code jacks.override} that of the coach's jacks.
 */
public record OnThePhone(Facts facts) implements Described {
    private static final Shape.Draft<OnThePhone> DRAFT =
            Shape.draft("on-the-phone", "What staff read out while a renter does a step.");
    public static final Key<String> STEP = DRAFT.required("step", Type.ID, "The name of the step: `turn-crank`.");
    public static final Key<String> SAY = DRAFT.required(
            "say",
            new Type.Text(
                    "name of a fact",
                    "^[a-z]+(-[a-z]+)*[.][a-z]+(-[a-z]+)*$",
                    "a fact for staff, such as `slide.override`"),
            "The fact for staff that is read out: a kind of thing, or a part of the coach, and its key: `slide.override`.");
    public static final Shape<OnThePhone> SHAPE = DRAFT.done(OnThePhone::new);

    /** A record that states it, and the key. */
    public record Said(Described record, Key<?> key) {}

    /** Whether any coach could state it, for staff alone. */
    public boolean sayable() {
        return shape().flatMap(shape -> shape.key(word(1)))
                .filter(Key::forStaff)
                .isPresent();
    }

    /** What a coach states of it, in walking order. */
    public Stream<Said> said(Coach coach) {
        return records(coach)
                .flatMap(record -> record.facts().shape().key(word(1)).stream()
                        .filter(key -> record.facts().has(key))
                        .map(key -> new Said(record, key)));
    }

    private Stream<? extends Described> records(Coach coach) {
        return Kinds.named(word(0)).isPresent()
                ? coach.walked().filter(thing -> thing.kind().equals(word(0)))
                : Unit.SHAPE.key(word(0)).stream()
                        .flatMap(key -> coach.unit().facts().located(key).stream())
                        .map(Located::value)
                        .filter(Described.class::isInstance)
                        .map(Described.class::cast);
    }

    private Optional<Shape<?>> shape() {
        return Kinds.named(word(0))
                .<Shape<?>>map(shape -> shape)
                .or(() -> Unit.SHAPE
                        .key(word(0))
                        .map(Key::type)
                        .filter(Type.Nested.class::isInstance)
                        .map(type -> ((Type.Nested<?>) type).shape()));
    }

    private String word(int number) {
        return facts.get(SAY).split("[.]")[number];
    }
}
