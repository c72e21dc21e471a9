package bayfolio.fact;

import bayfolio.source.Located;
import java.util.List;
import java.util.function.BiConsumer;

/** Visits every single fact of a record and of the records within it, lists taken apart. */
public final class FactVisitor {
    private FactVisitor() {}

    /** What is told of each single value. */
    public interface Visitor {
        /**
         * @param record that states it, itself or in a list
         * @param type of the single value, where the key has a list of them
         */
        void visit(Described record, Key<?> key, Type<?> type, Located<?> value);
    }

    /**
     * @param visitor gets the type of the single value and the value with its place
     */
    public static void of(Facts facts, BiConsumer<Type<?>, Located<?>> visitor) {
        facts.each((key, value) ->
                visit(() -> facts, key, key.type(), value, (record, at, type, single) -> visitor.accept(type, single)));
    }

    /** The same, with the record and the key that each stands under. */
    public static void of(Described record, Visitor visitor) {
        record.facts().each((key, value) -> visit(record, key, key.type(), value, visitor));
    }

    private static void visit(Described record, Key<?> key, Type<?> type, Located<?> value, Visitor visitor) {
        if (value.value() instanceof Described inner) {
            of(inner, visitor);
        } else if (type instanceof Type.ListOf<?> list) {
            ((List<?>) value.value()).forEach(each -> visit(record, key, list.element(), (Located<?>) each, visitor));
        } else {
            visitor.visit(record, key, type, value);
        }
    }
}
