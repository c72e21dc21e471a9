package bayfolio.explain;

import bayfolio.reckon.Question;
import java.util.List;
import java.util.Map;

/**
 * A question that a reader may vary: fields to choose in, and the figures of the coach that the script of the page reckons
 * with. The script has none of its own, and gives the same answers as this.
 */
public interface Calculator {
    /** Whose result it varies. */
    Question question();

    /** In the order of the form. */
    List<Field> fields();

    /** The same as they are at first in a case; where that is no case of it, the usual one. */
    default List<Field> fields(Begin begin) {
        return fields();
    }

    /** Text, numbers, yes or no, lists and maps of such, ready to be written as JSON. */
    Map<String, Object> figures();

    /** What comes of a choice. */
    Result result(Chosen choice);

    /**
     * What a reader has chosen.
     *
     * @param values for the name of each field a Boolean, a Double, or the place in its list as an Integer
     */
    record Chosen(Map<String, Object> values) {
        public Chosen {
            values = Map.copyOf(values);
        }

        public boolean ticked(String field) {
            return value(field, Boolean.class);
        }

        public double number(String field) {
            return value(field, Double.class);
        }

        /** Counted from 0. */
        public int place(String field) {
            return value(field, Integer.class);
        }

        private <T> T value(String field, Class<T> type) {
            Object value = values.get(field);
            if (!type.isInstance(value)) {
                throw new IllegalArgumentException("`" + field + "` holds " + value);
            }
            return type.cast(value);
        }
    }

    /**
     * A place of the form.
     *
     * @param name the key of the choice
     * @param label what stands beside it
     */
    record Field(String name, String label, Kind kind) {}

    /** What can be chosen in a field, and what is chosen at first. */
    sealed interface Kind {
        /** On or off. */
        record Tick(boolean ticked) implements Kind {}

        /** A number within bounds. */
        record Number(double value, double least, double most, double step) implements Kind {}

        /**
         * One of several, told by its place in the list.
         *
         * @param chosen counted from 0
         */
        record Choice(List<String> choices, int chosen) implements Kind {
            public Choice {
                choices = List.copyOf(choices);
            }
        }
    }

    /**
     * What comes of a choice.
     *
     * @param rows each a label and what it comes to
     */
    record Result(String answer, List<List<String>> rows) {
        public Result {
            rows = rows.stream().map(List::copyOf).toList();
        }
    }
}
