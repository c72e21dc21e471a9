package bayfolio.measure;

/**
 * A current, drawn by a load or let through by a breaker, kept in amperes.
 *
 * @param value in amperes
 */
public record Amps(double value) implements Quantity {
    /** Amperes. */
    public static final Scale<Amps> SCALE =
            Scale.of("current", "12.5 A", Amps::new, WrittenUnit.of("A", 1, "amp", "ampere"));

    public Amps {
        Figure.requireFinite(value);
    }

    @Override
    public Scale<Amps> scale() {
        return SCALE;
    }

    /** {@code 12.5 A} in either system. */
    @Override
    public Amount amount(MeasureSystem system) {
        return Amount.of(Figure.fine(value), Symbol.AMPERE);
    }

    public Amps plus(Amps other) {
        return new Amps(value + other.value);
    }

    public boolean exceeds(Amps limit) {
        return value > limit.value;
    }
}
