package bayfolio.reckon;

/**
 * A figure that a reckoning begins with.
 *
 * @param name what it is: {@code capacity of the fresh tank}
 * @param value with its unit, as it is shown: {@code 60 gal (227 L)}
 * @param origin where it came from
 */
public record Input(String name, String value, Origin origin) {
    /** Where a figure came from. */
    public sealed interface Origin {
        /** The description of this coach or fleet says so. */
        record Described() implements Origin {}

        /**
         * The description says nothing, and the usual figure is taken.
         *
         * @param source what it was published in, or that it is common practice
         */
        record Usual(String source) implements Origin {}

        /**
         * Nothing published is known for it, and a figure is taken for planning; renters read only that.
         *
         * @param doubt for staff: where it came from, and what is to be checked
         */
        record Unverified(String doubt) implements Origin {}
    }

    public static Input described(String name, String value) {
        return new Input(name, value, new Origin.Described());
    }

    public static Input unverified(String name, String value, String doubt) {
        return new Input(name, value, new Origin.Unverified(doubt));
    }

    public static Input usual(String name, String value, String source) {
        return new Input(name, value, new Origin.Usual(source));
    }
}
