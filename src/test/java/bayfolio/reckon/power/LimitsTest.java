package bayfolio.reckon.power;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Against trying out every set there is, on seeded coaches. */
final class LimitsTest {
    private static final int COACHES = 400;

    static List<Limits> generated() {
        Random random = new Random(20_261_125);
        return IntStream.range(0, COACHES).mapToObj(it -> generated(random)).toList();
    }

    /** One to four conductors and up to nine things; tenths of an amp, so that sums often meet a limit exactly. */
    private static Limits generated(Random random) {
        int conductors = 1 + random.nextInt(4);
        List<double[]> draws = new ArrayList<>();
        for (int thing = random.nextInt(10); thing > 0; thing--) {
            draws.add(random.doubles(conductors, 0, 1)
                    .map(it -> it < 0.3 ? 0 : Math.round(200 * it) / 10.0)
                    .toArray());
        }
        double[] limits = random.doubles(conductors, 5, 60).map(Math::rint).toArray();
        double[] always = random.doubles(conductors, 0, 12).map(Math::rint).toArray();
        return new Limits(limits, always, draws);
    }

    private static LongStream sets(Limits limits) {
        return LongStream.range(0, 1L << limits.things());
    }

    private static boolean within(long part, long whole) {
        return (part & ~whole) == 0;
    }

    @ParameterizedTest
    @MethodSource("generated")
    void aSetFitsExactlyWhenItHoldsNoMinimalSet(Limits limits) {
        List<Long> never = limits.never(limits.things());

        sets(limits)
                .forEach(set ->
                        assertThat(limits.fits(set)).isEqualTo(never.stream().noneMatch(part -> within(part, set))));
    }

    @ParameterizedTest
    @MethodSource("generated")
    void aMinimalSetFitsWithAnyOneThingOff(Limits limits) {
        List<Long> never = limits.never(limits.things());

        assertThat(never)
                .doesNotHaveDuplicates()
                .allSatisfy(set -> assertThat(
                                LongStream.range(0, limits.things()).filter(thing -> within(1L << thing, set)))
                        .allMatch(thing -> limits.fits(set & ~(1L << thing))));
    }

    @ParameterizedTest
    @MethodSource("generated")
    void moreCapacityForbidsNothingMore(Limits limits) {
        double[] larger = Arrays.stream(limits.limits()).map(it -> it + 3.5).toArray();
        Limits roomier = new Limits(larger, limits.always(), limits.draws());
        List<Long> never = limits.never(limits.things());

        assertThat(roomier.never(limits.things()))
                .allSatisfy(set -> assertThat(never).anyMatch(part -> within(part, set)));
    }

    @ParameterizedTest
    @MethodSource("generated")
    void smallSetsAloneAreTheSmallOnesOfAll(Limits limits) {
        List<Long> all = limits.never(limits.things());

        assertThat(limits.never(2))
                .isEqualTo(all.stream().filter(set -> Long.bitCount(set) <= 2).toList());
    }

    @ParameterizedTest
    @MethodSource("generated")
    void theMostIsAsLargeAsAnySetThatFits(Limits limits) {
        long all = (1L << limits.things()) - 1;
        int largest =
                sets(limits).filter(limits::fits).mapToInt(Long::bitCount).max().orElse(0);

        assertThat(Long.bitCount(limits.most(all))).isEqualTo(largest);
    }

    @Test
    void exactlyAtTheLimitFits() {
        Limits tenths =
                new Limits(new double[] {0.3}, new double[] {0}, List.of(new double[] {0.1}, new double[] {0.2}));

        assertThat(tenths.never(2)).isEmpty();
    }

    @Test
    void tooMuchThatIsAlwaysOnForbidsEverything() {
        Limits full = new Limits(new double[] {10}, new double[] {11}, List.of(new double[] {1}));

        assertThat(full.never(1)).containsExactly(0L);
        assertThat(full.most(1)).isZero();
    }
}
