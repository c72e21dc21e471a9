package bayfolio.document;

import bayfolio.drawing.Drawing;
import bayfolio.measure.Quantity;
import bayfolio.source.Place;
import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * How records of a class are written in JSON. A handbook has half a million of them, so it is worked out once a class.
 *
 * @param kind what it is called: {@code link-list}
 * @param isOneOfSeveral whether its kind must be told, since there are others in its place
 * @param fields in the order in which they are declared, but for those that are no part of the normal form
 */
public record RecordForm(String kind, boolean isOneOfSeveral, List<Field> fields) {
    private static final ClassValue<RecordForm> FORMS = new ClassValue<>() {
        @Override
        protected RecordForm computeValue(Class<?> type) {
            return new RecordForm(
                    words(type.getSimpleName()),
                    Stream.of(type.getInterfaces()).anyMatch(Class::isSealed),
                    Stream.of(type.getRecordComponents())
                            .filter(component -> !isLeftOut(component))
                            .map(Field::new)
                            .toList());
        }
    };

    public RecordForm {
        fields = List.copyOf(fields);
    }

    public static RecordForm of(Class<? extends Record> type) {
        return FORMS.get(type);
    }

    /** One of a record, with what it is called in JSON. */
    public static final class Field {
        private static final MethodType ANY = MethodType.methodType(Object.class, Record.class);

        private final RecordComponent component;
        private final String name;
        private final MethodHandle accessor;

        Field(RecordComponent component) {
            this.component = component;
            this.name = words(component.getName());
            try {
                this.accessor = MethodHandles.publicLookup()
                        .unreflect(component.getAccessor())
                        .asType(ANY);
            } catch (IllegalAccessException e) {
                throw new IllegalStateException("every part of a handbook is a public record", e);
            }
        }

        public String name() {
            return name;
        }

        RecordComponent component() {
            return component;
        }

        public @Nullable Object value(Record of) {
            try {
                return (@Nullable Object) accessor.invokeExact(of);
            } catch (RuntimeException | Error failed) {
                throw failed;
            } catch (Throwable e) {
                throw new IllegalStateException(e);
            }
        }

        /** Whether there are values of it that say nothing. */
        boolean mayBeLeftOut() {
            Class<?> type = component.getType();
            return type == List.class
                    || type == Optional.class
                    || type == String.class
                    || type == boolean.class
                    || type == Audience.class;
        }
    }

    /** Where it was written; a drawing, which is made of facts that stand in it elsewhere; a figure that the words tell. */
    private static boolean isLeftOut(RecordComponent component) {
        return component.getType() == Place.class
                || component.getType() == Drawing.class
                || component.getGenericType() instanceof ParameterizedType generic
                        && generic.getActualTypeArguments()[0] == Quantity.class;
    }

    private static String words(String camel) {
        return camel.replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
    }
}
