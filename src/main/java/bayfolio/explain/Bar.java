package bayfolio.explain;

/**
 * A result as a length, beside others of its kind.
 *
 * @param shown the figure, rounded to the safe side
 * @param value what is drawn, in the unit of {@code whole}
 * @param limit how far it may go; zero where there is none
 * @param least whether it must not fall below the limit, instead of not passing it
 * @param whole what the whole width stands for
 */
public record Bar(String label, String shown, double value, double limit, boolean least, double whole) {
    /** One that may not pass its limit. */
    static Bar upTo(String label, String shown, double value, double limit) {
        return new Bar(label, shown, value, limit, false, Math.max(value, limit));
    }

    /** Whether the limit is passed; a hair is not. */
    public boolean exceeded() {
        double hair = 1e-6 * whole;
        return limit > 0 && (least ? value < limit - hair : value > limit + hair);
    }
}
