package bayfolio.procedure;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Type;
import bayfolio.measure.Quantity;
import bayfolio.model.Thing;
import bayfolio.model.Wording;
import bayfolio.source.Located;
import bayfolio.template.Names;
import bayfolio.template.Value;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * The facts of one record under the names of their keys.
 *
 * @param what the record in words, for messages: {@code gray tank}
 * @param staff whether staff alone read the text; what is for them is withheld from all others
 */
record RecordNames(Wording wording, Facts facts, String what, boolean staff) implements Names {
    @Override
    public Value find(String name) {
        return facts.shape()
                .key(name)
                .map(key -> staff || !key.forStaff() ? value(key) : Withheld.key(facts.shape(), key))
                .orElse(new Value.Unknown());
    }

    @Override
    public Collection<String> known() {
        return facts.shape().keys().stream()
                .filter(key -> staff || !key.forStaff())
                .<String>map(Key::name)
                .toList();
    }

    private <T> Value value(Key<T> key) {
        Optional<Located<T>> fact = facts.located(key);
        if (fact.isPresent() && !mayRead(fact.get().value())) {
            return Withheld.record(facts.shape(), key, fact.get().at());
        }
        return fact.isPresent()
                ? value(key.type(), fact.get())
                : new Value.Absent(
                        "the description of " + what + " does not state `" + key.name() + "`",
                        "State it, or guard the text with a section that asks for it.");
    }

    private <T> Value value(Type<T> type, Located<?> located) {
        Object fact = located.value();
        return type.accept(new Type.Visitor<Value>() {
            private Value words() {
                return new Value.Text(wording.of(type, located), Optional.of(located));
            }

            @Override
            public Value text(Type.Text text) {
                return words();
            }

            @Override
            public <Q extends Quantity> Value measured(Type.Measured<Q> measured) {
                return words();
            }

            @Override
            public <E> Value choice(Type.Choice<E> choice) {
                Enum<?> chosen = (Enum<?>) fact;
                // Those that drawings alone show have no words of their own.
                String said = wording.words().find(Wording.key(chosen)).orElseGet(() -> Type.word(chosen));
                return new Value.Text(said, Optional.of(located));
            }

            @Override
            public <E> Value listed(Type.Listed<E> listed) {
                return words();
            }

            @Override
            public Value yesNo(Type.YesNo yesNo) {
                return new Value.Flag(fact.equals(true), Optional.of(located));
            }

            @Override
            public Value whole(Type.Whole whole) {
                return words();
            }

            @Override
            public Value day(Type.Day day) {
                return words();
            }

            @Override
            public Value reference(Type.Reference reference) {
                Optional<Thing> thing = wording.coach().referred(reference, fact.toString());
                return thing.map(it -> staff || !it.forStaff()
                                ? new Value.Inner(new ThingNames(wording, it, staff), Optional.of(located))
                                : Withheld.thing(it.kind(), it.id()))
                        .orElse(new Value.Absent(
                                "`" + fact + "` in the description of " + what + " names nothing",
                                "Correct it there."));
            }

            @Override
            public Value role(Type.Role role) {
                return words();
            }

            @Override
            public <E> Value list(Type.ListOf<E> list) {
                return new Value.Many(
                        what,
                        ((List<?>) fact)
                                .stream()
                                        .filter(element -> mayRead(((Located<?>) element).value()))
                                        .map(element -> value(list.element(), (Located<?>) element))
                                        // What names nothing is told where it is written; of several, those for staff
                                        // are left out.
                                        .filter(value ->
                                                !(value instanceof Value.Absent) && !(value instanceof Value.Withheld))
                                        .toList());
            }

            @Override
            public <E extends Described> Value record(Type.Nested<E> nested) {
                return new Value.Inner(
                        new RecordNames(
                                wording,
                                ((Described) fact).facts(),
                                nested.shape().name(),
                                staff),
                        Optional.of(located));
            }
        });
    }

    private boolean mayRead(Object element) {
        return staff || !(element instanceof Described record && record.forStaff());
    }
}
