package bayfolio.reckon.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * How long it takes to find all sets that never go together, of 24 things on two legs and on one small outlet. Run on
 * demand; the figures are in DEVELOPERS.md.
 */
final class LimitsBenchmark {
    private static final int THINGS = 24;
    private static final int COACHES = 40;

    private LimitsBenchmark() {}

    public static void main(String[] arguments) {
        for (int round = 0; round < 3; round++) {
            measure("two legs of 50 A", 2, 50);
            measure("both legs on 30 A", 1, 30);
        }
    }

    private static void measure(String name, int legs, double amps) {
        Random random = new Random(24);
        double worst = 0;
        double all = 0;
        long sets = 0;
        for (int coach = 0; coach < COACHES; coach++) {
            Limits limits = coach(random, legs, amps);
            long start = System.nanoTime();
            sets += limits.never(THINGS).size();
            double took = (System.nanoTime() - start) / 1e6;
            all += took;
            worst = Math.max(worst, took);
        }
        System.out.printf(
                Locale.ROOT,
                "%s: %.2f ms on average, %.2f ms at most, %d sets on average%n",
                name,
                all / COACHES,
                worst,
                sets / COACHES);
    }

    /** Things as a large coach has them: half of them heavy, half of them light. */
    private static Limits coach(Random random, int legs, double amps) {
        List<double[]> draws = new ArrayList<>();
        for (int thing = 0; thing < THINGS; thing++) {
            double[] draw = new double[legs];
            draw[random.nextInt(legs)] = thing % 2 == 0 ? 8 + 10 * random.nextDouble() : 2 + 5 * random.nextDouble();
            draws.add(draw);
        }
        double[] limits = new double[legs];
        java.util.Arrays.fill(limits, amps);
        return new Limits(limits, new double[legs], draws);
    }
}
