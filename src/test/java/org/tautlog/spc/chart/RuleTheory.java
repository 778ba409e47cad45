package org.tautlog.spc.chart;

import java.util.Arrays;
import java.util.function.Predicate;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Average run length of one rule alone, for independent normal values.
 *
 * <pre>
 * run of n with chance p each:  (1 - p^n) / (p^n (1 - p));  n on one side of the centre, either side:  2^n - 1
 * so many of the last w:        Markov chain over the last w - 1 zones (Champ and Woodall 1987), solved by repetition
 * order of the values:          chance of no signal in n points by the rank of the last among n, summed over n
 * </pre>
 */
final class RuleTheory {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    private static final int RANKED = 400;

    private RuleTheory() {}

    static double averageRunLength(RunRule rule) {
        double within = NORMAL.probability(-1, 1);
        return switch (rule) {
            case BEYOND_LIMITS -> 1 / (2 * NORMAL.survivalProbability(3));
            case NINE_ONE_SIDE -> ofSide(9);
            case EIGHT_ONE_SIDE -> ofSide(8);
            case FIFTEEN_WITHIN -> ofRun(15, within);
            case EIGHT_BEYOND -> ofRun(8, 1 - within);
            case TWO_OF_THREE -> ofWindow(3, NORMAL.survivalProbability(2), last -> most(last) >= 2);
            case FOUR_OF_FIVE -> ofWindow(5, NORMAL.survivalProbability(1), last -> most(last) >= 4);
            case SIX_STEADY -> ofOrder(6, true);
            case FOURTEEN_ALTERNATING -> ofOrder(14, false);
        };
    }

    private static double ofSide(int n) {
        return 1 + ofRun(n - 1, 0.5);
    }

    private static double ofRun(int n, double p) {
        double all = Math.pow(p, n);
        return (1 - all) / (all * (1 - p));
    }

    /** Zones 0 inside, 1 beyond above, 2 beyond below; a state is the last w - 1 of them as digits of base 3. */
    private static double ofWindow(int w, double beyond, Predicate<int[]> signals) {
        double[] chance = {1 - 2 * beyond, beyond, beyond};
        int states = (int) Math.round(Math.pow(3, w - 1));
        var survive = new double[states];
        survive[0] = 1;
        double sum = 0;
        for (double left = 1; left > 1e-12; left = Arrays.stream(survive).sum()) {
            sum += left;
            var next = new double[states];
            for (int state = 0; state < states; state++) {
                for (int zone = 0; zone < 3; zone++) {
                    if (!signals.test(digits(3 * state + zone, w)))
                        next[(3 * state + zone) % states] += survive[state] * chance[zone];
                }
            }
            survive = next;
        }
        return sum;
    }

    private static int[] digits(int number, int count) {
        var digits = new int[count];
        for (int i = 0; i < count; i++, number /= 3) digits[i] = number % 3;
        return digits;
    }

    private static long most(int[] zones) {
        long above = Arrays.stream(zones).filter(zone -> zone == 1).count();
        long below = Arrays.stream(zones).filter(zone -> zone == 2).count();
        return Math.max(above, below);
    }

    /**
     * P(no signal in n points), by rank of the last point and length of its run that ends rising; falling is its mirror. From
     * {@code RANKED} points on the chance falls by one and the same factor.
     */
    private static double ofOrder(int pattern, boolean steady) {
        double sum = 2;
        double before = 1;
        double now = 1;
        var rising = new double[][] {{0, 0}};
        for (int n = 2; n <= RANKED; n++) {
            rising = n == 2 ? first(pattern) : next(rising, n, pattern, steady);
            before = now;
            now = 2 * Arrays.stream(rising).flatMapToDouble(Arrays::stream).sum();
            sum += now;
        }
        double factor = now / before;
        return sum + now * factor / (1 - factor);
    }

    private static double[][] first(int pattern) {
        var rising = new double[2][pattern];
        rising[1][2] = 0.5;
        return rising;
    }

    private static double[][] next(double[][] rising, int n, int most, boolean steady) {
        var next = new double[n][most];
        for (int run = 2; run < most; run++) {
            int longer = run + 1;
            int again = steady ? longer : 2;
            int turned = steady ? 2 : longer;
            double below = 0;
            for (int rank = 1; rank < n; rank++) {
                below += rising[rank - 1][run] / n;
                if (again < most) next[rank][again] += below;
            }
            double mirrored = 0;
            for (int rank = 1; rank < n; rank++) {
                mirrored += rising[n - 1 - rank][run] / n;
                if (turned < most) next[rank][turned] += mirrored;
            }
        }
        return next;
    }
}
