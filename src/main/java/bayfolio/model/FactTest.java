package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Type;
import bayfolio.measure.Quantity;
import bayfolio.source.Located;
import java.util.List;
import java.util.Set;
import java.util.function.DoublePredicate;

/** What is asked of one fact of a record. */
sealed interface FactTest {
    boolean of(Facts facts);

    /** That it is stated, or is not. */
    record Stated(Key<?> key, boolean stated) implements FactTest {
        @Override
        public boolean of(Facts facts) {
            return facts.has(key) == stated;
        }
    }

    /** That it is one of these words, or a list that holds one of them; what is not stated is none of them. */
    record OneOf(Key<?> key, Set<String> words, boolean so) implements FactTest {
        public OneOf {
            words = Set.copyOf(words);
        }

        @Override
        public boolean of(Facts facts) {
            return facts.find(key).map(this::holds).orElse(false) == so;
        }

        private boolean holds(Object value) {
            return value instanceof List<?> list
                    ? list.stream().anyMatch(each -> words.contains(word(((Located<?>) each).value())))
                    : words.contains(word(value));
        }

        private static String word(Object value) {
            return value instanceof Enum<?> choice
                    ? Type.word(choice)
                    : value instanceof Boolean yes ? (yes ? "yes" : "no") : value.toString();
        }
    }

    /** That its figure is as wanted. */
    record Figure(Key<?> key, DoublePredicate wanted) implements FactTest {
        @Override
        public boolean of(Facts facts) {
            return facts.find(key)
                    .map(value -> wanted.test(
                            value instanceof Quantity quantity ? quantity.value() : ((Number) value).doubleValue()))
                    .orElse(false);
        }
    }
}
