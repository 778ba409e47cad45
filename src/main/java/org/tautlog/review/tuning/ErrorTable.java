package org.tautlog.review.tuning;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.rng.simple.RandomSource;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Interval;
import org.tautlog.spc.QuantileType;
import org.tautlog.spc.Reason;

/**
 * Errors of the onset by threshold and trace. Infinite where a threshold reads no onset: it would read one later than the
 * recording goes, and a median bears that.
 *
 * <pre>
 * tuned     the threshold of least |median error|; of equal ones the first
 * interval  2.5 and 97.5 % of the thresholds so tuned on draws of as many traces, with replacement
 * </pre>
 *
 * <p>Source: percentile interval of the bootstrap (Efron and Tibshirani, An Introduction to the Bootstrap, 1993, chapter 13), from
 * memory.
 */
final class ErrorTable {
    static final int DRAWS = 2000;
    static final double CONFIDENCE = 0.95;
    /** Fewest traces that are tuned on at all: of five the draws already leave out two in five. */
    static final int LEAST = 5;

    private static final double NORMAL_MAD = 1.4826;

    private final double[] thresholds;
    private final double[][] errorDeg;
    private final int[][] rising;
    private final int traces;

    /** Errors row by row, one row a threshold, rows of equal length. */
    ErrorTable(double[] thresholds, double[][] errorDeg) {
        this.thresholds = thresholds.clone();
        this.errorDeg = errorDeg;
        traces = errorDeg[0].length;
        rising = Arrays.stream(errorDeg).map(ErrorTable::order).toArray(int[][]::new);
    }

    /** Medians of bias and spread of one row, as the standing of its threshold. */
    static Standing standing(double threshold, double[] errors, int claimed) {
        var sorted = errors.clone();
        Arrays.sort(sorted);
        double bias = middle(sorted);
        var away = Arrays.stream(errors)
                .map(error -> Double.isFinite(bias) ? Math.abs(error - bias) : Double.POSITIVE_INFINITY)
                .sorted()
                .toArray();
        int notRead = (int) Arrays.stream(errors).filter(Double::isInfinite).count();
        return new Standing(threshold, bias, NORMAL_MAD * middle(away), notRead, claimed);
    }

    /** The tuned threshold; {@code claimed} says of each threshold on how many traces without an onset it reads one. */
    Answer<Tuned> tuned(long seed, int[] claimed) {
        if (traces < LEAST) {
            return Answer.missing(
                    Reason.TOO_FEW, traces + " traces with a measured onset; at least " + LEAST + " are needed");
        }
        var once = new int[traces];
        Arrays.fill(once, 1);
        int best = best(once);
        if (best < 0) {
            return Answer.missing(Reason.NO_SPREAD, "no threshold reads an onset on half of the traces");
        }
        return Answer.of(new Tuned(
                standing(thresholds[best], errorDeg[best], claimed[best]),
                interval(seed),
                Arrays.stream(thresholds).min().orElseThrow(),
                Arrays.stream(thresholds).max().orElseThrow()));
    }

    private Interval interval(long seed) {
        var random = RandomSource.XO_SHI_RO_256_PP.create(seed);
        var times = new int[traces];
        var tuned = IntStream.range(0, DRAWS)
                .map(draw -> {
                    Arrays.fill(times, 0);
                    for (int i = 0; i < traces; i++) {
                        times[random.nextInt(traces)]++;
                    }
                    return best(times);
                })
                .filter(best -> best >= 0)
                .mapToDouble(best -> thresholds[best])
                .sorted()
                .toArray();
        double tail = (1 - CONFIDENCE) / 2;
        return new Interval(
                QuantileType.R7.ofSorted(tuned, tail), QuantileType.R7.ofSorted(tuned, 1 - tail), CONFIDENCE);
    }

    /** The row of least median error where each trace counts so many times; -1 where none is finite. */
    private int best(int[] times) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int row = 0; row < errorDeg.length; row++) {
            double bias = Math.abs(median(row, times));
            if (bias < least) {
                least = bias;
                best = row;
            }
        }
        return best;
    }

    /** Median where each trace counts so many times, as many in all as there are traces. */
    private double median(int row, int[] times) {
        int seen = 0;
        double low = Double.NaN;
        for (int trace : rising[row]) {
            seen += times[trace];
            if (Double.isNaN(low) && seen > (traces - 1) / 2) {
                low = errorDeg[row][trace];
            }
            if (seen > traces / 2) {
                return (low + errorDeg[row][trace]) / 2;
            }
        }
        return low;
    }

    private static double middle(double[] sorted) {
        int n = sorted.length;
        return n == 0 ? Double.NaN : (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
    }

    private static int[] order(double[] values) {
        return IntStream.range(0, values.length)
                .boxed()
                .sorted((a, b) -> Double.compare(values[a], values[b]))
                .mapToInt(i -> i)
                .toArray();
    }
}
