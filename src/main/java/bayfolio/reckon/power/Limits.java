package bayfolio.reckon.power;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What may be on at once: things that draw on conductors which carry only so much. Sets are written as bits, the first
 * thing is the lowest.
 *
 * @param limits what each conductor carries
 * @param always what is on it in any case
 * @param draws for each thing, what it draws on each conductor; at most 62 things, nothing negative
 */
public record Limits(double[] limits, double[] always, List<double[]> draws) {
    /** Currents are multiplied and added up, so what is exactly at a limit may lie a hair above it. */
    private static final double HAIR = 1e-6;

    private static final int MOST = 62;

    public Limits {
        draws = List.copyOf(draws);
        if (draws.size() > MOST) {
            throw new IllegalArgumentException(draws.size() + " things, and no more than " + MOST + " are taken");
        }
    }

    public int things() {
        return draws.size();
    }

    /** What a conductor carries with a set on. */
    public double on(int conductor, long set) {
        double sum = always[conductor];
        for (long rest = set; rest != 0; rest &= rest - 1) {
            sum += draws.get(Long.numberOfTrailingZeros(rest))[conductor];
        }
        return sum;
    }

    public boolean fits(long set) {
        for (int conductor = 0; conductor < limits.length; conductor++) {
            if (over(on(conductor, set), conductor)) {
                return false;
            }
        }
        return true;
    }

    private boolean over(double sum, int conductor) {
        return sum > limits[conductor] + HAIR;
    }

    /**
     * The sets that do not fit, though they would with any one thing off. A set fits exactly when it holds none of them.
     * The empty set is the only one where not even what is always on fits.
     *
     * @param most how many things a set has at most; with 24 things or fewer all of them are found in some milliseconds
     */
    public List<Long> never(int most) {
        if (!fits(0)) {
            return List.of(0L);
        }
        List<Long> sets = new ArrayList<>();
        for (int conductor = 0; conductor < limits.length; conductor++) {
            new Search(conductor, most, sets).from(0, 0, always[conductor], 0);
        }
        sets.sort(Comparator.comparingInt((Long set) -> Long.bitCount(set))
                .thenComparing(set -> Long.reverse(set), Long::compareUnsigned));
        return sets;
    }

    /** The largest part of some things that fits together; of equally large ones, that which draws least. */
    public long most(long among) {
        long best = 0;
        double least = 0;
        for (long part = among; part != 0; part = (part - 1) & among) {
            int size = Long.bitCount(part);
            if (size >= Long.bitCount(best) && fits(part)) {
                double sum = sum(part);
                if (size > Long.bitCount(best) || sum < least) {
                    best = part;
                    least = sum;
                }
            }
        }
        return best;
    }

    private double sum(long set) {
        double sum = 0;
        for (int conductor = 0; conductor < limits.length; conductor++) {
            sum += on(conductor, set);
        }
        return sum;
    }

    /** The same with some things on in any case. */
    public Limits with(long on) {
        double[] more = new double[limits.length];
        Arrays.setAll(more, conductor -> on(conductor, on));
        return new Limits(limits, more, draws);
    }

    /**
     * On one conductor, things from the largest draw to the smallest: as soon as the sum is over the limit, the last and
     * smallest could not be left out, nor any of the others, so the set is minimal there.
     */
    private final class Search {
        private final int conductor;
        private final int most;
        private final List<Long> sets;
        private final int[] order;
        private final double[] below;

        Search(int conductor, int most, List<Long> sets) {
            this.conductor = conductor;
            this.most = most;
            this.sets = sets;
            this.order = IntStream.range(0, things())
                    .filter(thing -> draws.get(thing)[conductor] > 0)
                    .boxed()
                    .sorted(Comparator.comparingDouble((Integer thing) -> -draws.get(thing)[conductor]))
                    .mapToInt(Integer::intValue)
                    .toArray();
            this.below = new double[order.length + 1];
            for (int i = order.length - 1; i >= 0; i--) {
                below[i] = below[i + 1] + draws.get(order[i])[conductor];
            }
        }

        void from(int next, long set, double sum, int size) {
            if (size == most) {
                return;
            }
            for (int i = next; i < order.length && over(sum + below[i], conductor); i++) {
                long more = set | 1L << order[i];
                double total = sum + draws.get(order[i])[conductor];
                if (!over(total, conductor)) {
                    from(i + 1, more, total, size + 1);
                } else if (minimal(more)) {
                    sets.add(more);
                }
            }
        }

        /** Whether it fits elsewhere with any one thing off, and was not found on a conductor before this one. */
        private boolean minimal(long set) {
            for (int other = 0; other < limits.length; other++) {
                double sum = on(other, set);
                if (other != conductor && over(sum, other)) {
                    for (long rest = set; rest != 0; rest &= rest - 1) {
                        if (over(sum - draws.get(Long.numberOfTrailingZeros(rest))[other], other)) {
                            return false;
                        }
                    }
                    if (other < conductor) {
                        return false;
                    }
                }
            }
            return true;
        }
    }
}
