package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What a word of {@code there-when} stands for: a feature, or facts of the description. */
public sealed interface Presence {
    /**
     * @param features whether the coach has one
     * @throws bayfolio.fact.UnreadException when that hangs on what could not be read
     */
    boolean of(Unit unit, Predicate<String> features);

    /** Of what its facts are; of a feature those of the coach. */
    default Shape<?> shape() {
        return Unit.SHAPE;
    }

    /** {@code lp-tank} */
    record OfFeature(String word) implements Presence {
        @Override
        public boolean of(Unit unit, Predicate<String> features) {
            return features.test(word);
        }
    }

    /** Facts of the coach itself, {@code unit[load-management = yes]}, or of one of its records, {@code gas[kind = tank]}. */
    record OfRecord(Optional<Key<?>> record, List<FactTest> tests) implements Presence {
        public OfRecord {
            tests = List.copyOf(tests);
        }

        @Override
        public boolean of(Unit unit, Predicate<String> features) {
            return records(unit).anyMatch(facts -> tests.stream().allMatch(test -> test.of(facts)));
        }

        @Override
        public Shape<?> shape() {
            return record.<Shape<?>>map(key -> ((Type.Nested<?>) key.type()).shape())
                    .orElse(Unit.SHAPE);
        }

        /** It, if the coach has it. */
        public Stream<Facts> records(Unit unit) {
            return record.isEmpty()
                    ? Stream.of(unit.facts())
                    : record.flatMap(unit.facts()::find).stream().map(it -> ((Described) it).facts());
        }
    }

    /**
     * Things of a kind of which all that holds: {@code supply[source = shore, amps = 50 A]}.
     *
     * @param roles that they must hold: of each of these sets one; empty where they need none
     * @param count how many there must be
     */
    record OfThings(String kind, List<Set<String>> roles, List<FactTest> tests, Predicate<Long> count)
            implements Presence {
        public OfThings {
            tests = List.copyOf(tests);
            roles = List.copyOf(roles);
        }

        @Override
        public boolean of(Unit unit, Predicate<String> features) {
            return count.test(things(unit).count());
        }

        @Override
        public Shape<?> shape() {
            return Kinds.named(kind).orElseThrow();
        }

        /** Those of a coach. */
        public Stream<Thing> things(Unit unit) {
            if (!roles.stream().allMatch(one -> one.stream().anyMatch(unit::holds))) {
                return Stream.of();
            }
            // Of which alone the role is asked, one that could not be read otherwise is there, too.
            Stream<? extends Thing> those = tests.isEmpty() && !roles.isEmpty()
                    ? unit.things().filter(thing -> thing.kind().equals(kind))
                    : unit.all(kind).stream();
            return those.<Thing>map(it -> it)
                    .filter(this::holds)
                    .filter(thing -> tests.stream().allMatch(test -> test.of(thing.facts())));
        }

        /** Its roles are asked for again, so that whoever watches the facts learns by which it is so. */
        private boolean holds(Thing thing) {
            return roles.stream()
                    .allMatch(one -> thing.facts().ifRead(thing.identity().roles()).stream()
                                    .flatMap(held -> held.value().stream())
                                    .anyMatch(held -> one.contains(held.value()))
                            && thing.holdsOneOf(one));
        }
    }
}
