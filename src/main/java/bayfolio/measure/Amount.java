package bayfolio.measure;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A quantity as it is shown: its digits are settled, and to which side they were rounded; the units have the words of
 * whatever language it is shown in.
 *
 * @param pieces one, or two as in feet and inches
 * @param other the same in the other system; empty where it reads the same there
 */
public record Amount(List<Piece> pieces, List<Piece> other) {
    /**
     * @param figure {@code 1,240}
     */
    public record Piece(String figure, Symbol unit) {
        @Override
        public String toString() {
            return unit.after(figure);
        }
    }

    public Amount {
        pieces = List.copyOf(pieces);
        other = List.copyOf(other);
    }

    public static Amount of(String figure, Symbol unit) {
        return new Amount(List.of(new Piece(figure, unit)), List.of());
    }

    /** As somebody wrote it, with its unit. */
    public static Amount written(String text) {
        return of(text, Symbol.AS_WRITTEN);
    }

    /** In one system and then in the other; once where both read the same. */
    public static Amount both(Amount here, Amount there) {
        return new Amount(here.pieces, here.toString().equals(there.toString()) ? List.of() : there.pieces);
    }

    /** In both, that of the reader first. */
    public static Amount both(Amount us, Amount metric, MeasureSystem first) {
        return first == MeasureSystem.US ? both(us, metric) : both(metric, us);
    }

    private static String joined(List<Piece> pieces) {
        return pieces.stream().map(Piece::toString).collect(Collectors.joining(" "));
    }

    /** For messages to writers: {@code 12 ft 11 in (3.94 m)}. */
    @Override
    public String toString() {
        return other.isEmpty() ? joined(pieces) : joined(pieces) + " (" + joined(other) + ")";
    }
}
