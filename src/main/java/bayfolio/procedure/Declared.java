package bayfolio.procedure;

import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.measure.Quantity;
import bayfolio.model.Kinds;
import bayfolio.model.Thing;
import bayfolio.source.Place;
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
 * @param things the kind of things that go by these names, by their ids or roles
 * @see RootNames
 */
record Declared(
        Optional<Collection<String>> known,
        Function<String, Declared> find,
        Optional<Value.Withheld> withheld,
        Optional<String> things) {
    /** The code for a name within a text or a yes. */
    static final String INNERMOST = "nothing-to-fill-in";

    /** Names that only a coach could tell. */
    static final Declared OPEN = new Declared(Optional.empty(), word -> open(), Optional.empty(), Optional.empty());

    /** A text or a yes: there are no names within it. */
    static final Declared NONE = of(List.of(), word -> open());

    private static Declared open() {
        return OPEN;
    }

    static Declared of(Collection<String> known, Function<String, Declared> find) {
        return new Declared(Optional.of(known), find, Optional.empty(), Optional.empty());
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
        return new Declared(known, find, Optional.of(why), things);
    }

    /** The same, which are the ids and roles of things of a kind. */
    Declared ofThings(String kind) {
        return new Declared(known, find, withheld, Optional.of(kind));
    }

    /** Those of them that a text of theirs may ask for. */
    List<String> known(boolean staff) {
        return known.orElse(List.of()).stream()
                .filter(name -> staff || find.apply(name).withheld().isEmpty())
                .toList();
    }

    /**
     * What is wrong with a dotted name within these, whatever the coach: one of its words is no name, or for staff.
     *
     * @param at where it is asked for
     * @param staff whether staff alone read the text that asks
     */
    Optional<Finding> wrong(String[] words, Place at, boolean staff) {
        Declared names = this;
        for (int i = 0; i < words.length && names.known.isPresent(); i++) {
            String before = String.join(".", List.of(words).subList(0, i));
            if (names.known.get().isEmpty()) {
                return Optional.of(Finding.error(INNERMOST, at, "`" + before + "` has no names within it")
                        .mend("Ask for it alone."));
            }
            if (!names.known.get().contains(words[i])) {
                return Optional.of(unknown(words[i], before, names.known(staff), at));
            }
            names = names.find.apply(words[i]);
            if (names.withheld.isPresent() && !staff) {
                Value.Withheld why = names.withheld.get();
                return Optional.of(
                        Finding.error("staff-fact-for-renter", at, why.why()).mend(why.mend()));
            }
        }
        return Optional.empty();
    }

    /** @param before what the word was looked for in; empty for the first of a name */
    static Finding unknown(String word, String before, Collection<String> known, Place at) {
        return Finding.error(
                        "unknown-name",
                        at,
                        "there is no name `" + word + "`" + (before.isEmpty() ? "" : " in `" + before + "`"))
                .near(NearNames.to(word, known))
                .mend("The reference for writers lists the names.");
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
            public <E> Declared listed(Type.Listed<E> listed) {
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
