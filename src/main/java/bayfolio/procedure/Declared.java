package bayfolio.procedure;

import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Quantity;
import bayfolio.model.Kinds;
import bayfolio.model.Thing;
import bayfolio.template.Value;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The names within a name, as far as the declarations tell without any coach: what {@link Names} finds on one, of the
 * same words.
 *
 * @param known all names there are; empty where only a coach could tell
 * @param find what is behind one of them
 * @param withheld why renters' texts may not ask for it, if so
 * @see RootNames
 */
record Declared(
        Optional<Collection<String>> known, Function<String, Declared> find, Optional<Value.Withheld> withheld) {
    /** Names that only a coach could tell. */
    static final Declared OPEN = new Declared(Optional.empty(), word -> open(), Optional.empty());

    /** A text or a yes: there are no names within it. */
    static final Declared NONE = of(List.of(), word -> open());

    private static Declared open() {
        return OPEN;
    }

    static Declared of(Collection<String> known, Function<String, Declared> find) {
        return new Declared(Optional.of(known), find, Optional.empty());
    }

    static Declared of(Shape<?> shape) {
        boolean thing = Kinds.ALL.contains(shape);
        List<String> names = new ArrayList<>(shape.keyNames());
        if (thing) {
            names.addAll(ThingNames.derived(shape));
        }
        return of(names, word -> shape.key(word).map(key -> of(shape, key)).orElse(NONE));
    }

    private static Declared of(Shape<?> shape, Key<?> key) {
        Declared behind = of(key.type());
        return key.forStaff() ? behind.withheld(Withheld.key(shape, key)) : behind;
    }

    /** The same, which is for staff. */
    Declared withheld(Value.Withheld why) {
        return new Declared(known, find, Optional.of(why));
    }

    /** Those of them that a text of theirs may ask for. */
    List<String> known(boolean staff) {
        return known.orElse(List.of()).stream()
                .filter(name -> staff || find.apply(name).withheld().isEmpty())
                .toList();
    }

    /** All kinds that a reference may be to are one here, or it takes a coach to tell them apart. */
    private static Declared of(Type.Reference reference) {
        List<Shape<? extends Thing>> kinds = reference.kinds().stream()
                .flatMap(kind -> Kinds.named(kind).stream())
                .toList();
        return kinds.size() == 1 ? of(kinds.get(0)) : OPEN;
    }

    private static Declared of(Type<?> type) {
        return type.accept(new Type.Visitor<Declared>() {
            @Override
            public Declared text(Type.Text text) {
                return NONE;
            }

            @Override
            public <Q extends Quantity> Declared measured(Type.Measured<Q> measured) {
                return NONE;
            }

            @Override
            public <E> Declared choice(Type.Choice<E> choice) {
                return NONE;
            }

            @Override
            public Declared yesNo(Type.YesNo yesNo) {
                return NONE;
            }

            @Override
            public Declared whole(Type.Whole whole) {
                return NONE;
            }

            @Override
            public Declared day(Type.Day day) {
                return NONE;
            }

            @Override
            public Declared reference(Type.Reference reference) {
                return of(reference);
            }

            @Override
            public Declared role(Type.Role role) {
                return NONE;
            }

            @Override
            public <E> Declared list(Type.ListOf<E> list) {
                return of(list.element());
            }

            @Override
            public <E extends Described> Declared record(Type.Nested<E> nested) {
                return of(nested.shape());
            }
        });
    }
}
