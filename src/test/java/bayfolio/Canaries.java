package bayfolio;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.NotAQuantityException;
import bayfolio.measure.Quantity;
import bayfolio.model.Item;
import bayfolio.model.Note;
import bayfolio.model.Photo;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A coach with the same word in everything that is for staff: each key for them in each record, made from the
 * declarations, and an item, a photo and a note for staff, named wherever one of their kind may be.
 */
public final class Canaries {
    public static final LocalDate DAY = LocalDate.of(2031, 7, 4);

    /** Kinds of which some may be for staff. */
    public static final List<Shape<? extends Thing>> WITH_SOME_FOR_STAFF = List.of(Item.SHAPE, Photo.SHAPE);

    /** Held by the item for staff. */
    public static final String ROLE = "override-crank";

    private final String word;

    private Canaries(String word) {
        this.word = word;
    }

    /** @param word in each text for staff, whole */
    public static Unit in(Unit unit, String word) {
        return unit.with(new Canaries(word).facts(unit.facts()));
    }

    /** The same in any record, such as the fleet's facts. */
    public static Facts in(Facts facts, String word) {
        return new Canaries(word).facts(facts);
    }

    /** The key of a coach that lists things of that kind. */
    public static Optional<Key<?>> listing(Shape<?> kind) {
        return Unit.SHAPE.keys().stream()
                .filter(key -> key.type() instanceof Type.ListOf<?> list
                        && list.element() instanceof Type.Nested<?> nested
                        && nested.shape() == kind)
                .findFirst();
    }

    /** The id of the thing for staff of a kind. */
    public static String id(Shape<?> kind) {
        return "staff-" + kind.name();
    }

    private Facts facts(Facts facts) {
        Facts.Draft draft = Facts.draft(facts.shape(), facts.at());
        facts.each((key, value) -> put(draft, key, within(key.type(), value)));
        for (Key<?> key : facts.shape().keys()) {
            if (key.forStaff()) {
                put(draft, key, new Located<>(value(key.type(), facts.at()), facts.at()));
            }
        }
        if (facts.shape() == Unit.SHAPE) {
            add(draft, facts, Unit.ITEMS, new Item(forStaff(Item.SHAPE, Item.FOR, Item.For.STAFF, facts.at())));
            add(
                    draft,
                    facts,
                    Unit.PHOTOS,
                    new Photo(forStaff(Photo.SHAPE, Photo.STAFF_ONLY, true, facts.at())),
                    open(facts.at()));
            add(draft, facts, Unit.NOTES, new Note(forStaff(Note.SHAPE, Note.STAFF_ONLY, true, facts.at())));
        }
        return draft.done();
    }

    private Located<?> within(Type<?> type, Located<?> value) {
        if (type instanceof Type.Nested<?> nested && value.value() instanceof Described record) {
            return new Located<>(nested.shape().make(facts(record.facts())), value.at());
        }
        if (type instanceof Type.ListOf<?> list) {
            List<Located<?>> all = new ArrayList<>();
            ((List<?>) value.value()).forEach(each -> all.add(within(list.element(), (Located<?>) each)));
            forStaff(list.element()).ifPresent(id -> all.add(new Located<>(id, value.at())));
            return new Located<>(all, value.at());
        }
        return forStaff(type).isPresent() ? new Located<>(forStaff(type).get(), value.at()) : value;
    }

    /** What for staff a fact may refer to. */
    private static Optional<String> forStaff(Type<?> type) {
        return WITH_SOME_FOR_STAFF.stream()
                .filter(kind -> type instanceof Type.Reference reference
                        && reference.kinds().equals(Set.of(kind.name())))
                .map(Canaries::id)
                .findFirst();
    }

    @SafeVarargs
    private <T extends Described> void add(Facts.Draft draft, Facts facts, Key<List<Located<T>>> list, T... records) {
        List<Located<T>> all = new ArrayList<>();
        facts.all(list)
                .forEach(each -> all.add(new Located<>(
                        make(list, facts(each.facts())), each.facts().at())));
        for (T record : records) {
            all.add(new Located<>(record, facts.at()));
        }
        draft.put(list, new Located<>(all, facts.at()));
    }

    /** A picture that renters see, as a coach without one has no place for what staff write of it. */
    private Photo open(Place at) {
        Facts.Draft draft = Facts.draft(Photo.SHAPE, at)
                .put(Photo.FILE, new Located<>("open.jpg", at))
                .put(Photo.ALT, new Located<>("The coach from the left.", at));
        for (Key<?> key : Photo.SHAPE.keys()) {
            if (key.forStaff()) {
                put(draft, key, new Located<>(value(key.type(), at), at));
            } else if (key.name().equals("id") || key.name().equals("name")) {
                put(draft, key, new Located<>("open", at));
            }
        }
        return new Photo(draft.done());
    }

    @SuppressWarnings("unchecked") // the shape of the list makes what the list holds
    private static <T extends Described> T make(Key<List<Located<T>>> list, Facts facts) {
        return (T) ((Type.Nested<?>) ((Type.ListOf<?>) list.type()).element())
                .shape()
                .make(facts);
    }

    /** With a word in each of its texts. */
    private <V> Facts forStaff(Shape<?> shape, Key<V> mark, V marked, Place at) {
        Facts.Draft draft = Facts.draft(shape, at);
        for (Key<?> key : shape.keys()) {
            if (key.type() == Type.ID) {
                put(draft, key, new Located<>(id(shape), at));
            } else if (shape == Item.SHAPE && key.name().equals("roles")) {
                put(draft, key, new Located<>(List.of(new Located<>(ROLE, at)), at));
            } else if (key.type() == Type.FILE_NAME) {
                put(draft, key, new Located<>(word + ".jpg", at));
            } else if (key.type() instanceof Type.Text || key.type() == Type.DAY) {
                put(draft, key, new Located<>(value(key.type(), at), at));
            }
        }
        return draft.put(mark, new Located<>(marked, at)).done();
    }

    @SuppressWarnings("unchecked") // made for the type of that key
    private static <T> void put(Facts.Draft draft, Key<T> key, Located<?> value) {
        draft.put(key, (Located<T>) value);
    }

    private Object value(Type<?> type, Place at) {
        return type.accept(new Type.Visitor<Object>() {
            @Override
            public Object text(Type.Text text) {
                return word;
            }

            @Override
            public <Q extends Quantity> Object measured(Type.Measured<Q> measured) {
                try {
                    return measured.scale().parse(measured.scale().example());
                } catch (NotAQuantityException e) {
                    throw new IllegalStateException(e);
                }
            }

            @Override
            public <E> Object listed(Type.Listed<E> listed) {
                return listed.bare().apply("other");
            }

            @Override
            public <E> Object choice(Type.Choice<E> choice) {
                return choice.words().values().iterator().next();
            }

            @Override
            public Object yesNo(Type.YesNo yesNo) {
                return true;
            }

            @Override
            public Object whole(Type.Whole whole) {
                return whole.least();
            }

            @Override
            public Object day(Type.Day day) {
                return DAY;
            }

            @Override
            public Object reference(Type.Reference reference) {
                return id(Item.SHAPE);
            }

            @Override
            public Object role(Type.Role role) {
                return word;
            }

            @Override
            public <E> Object list(Type.ListOf<E> list) {
                return List.of(new Located<>(value(list.element(), at), at));
            }

            @Override
            public <E extends Described> Object record(Type.Nested<E> nested) {
                Facts.Draft draft = Facts.draft(nested.shape(), at);
                nested.shape().keys().forEach(key -> put(draft, key, new Located<>(value(key.type(), at), at)));
                return nested.shape().make(draft.done());
            }
        });
    }
}
