package bayfolio.fact;

import bayfolio.source.Located;
import java.util.List;
import java.util.function.BiConsumer;

/** Visits every single fact of a record and of the records within it, lists taken apart. */
public final class Walkthrough {
    private Walkthrough() {}

    /**
     * @param visitor gets the type of the single value and the value with its place
     */
    public static void of(Facts facts, BiConsumer<Type<?>, Located<?>> visitor) {
        facts.each((key, value) -> visit(key.type(), value, visitor));
    }

    private static void visit(Type<?> type, Located<?> value, BiConsumer<Type<?>, Located<?>> visitor) {
        if (value.value() instanceof Described record) {
            of(record.facts(), visitor);
        } else if (type instanceof Type.ListOf<?> list) {
            ((List<?>) value.value()).forEach(each -> visit(list.element(), (Located<?>) each, visitor));
        } else {
            visitor.accept(type, value);
        }
    }
}
