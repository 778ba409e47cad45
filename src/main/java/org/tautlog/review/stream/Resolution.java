package org.tautlog.review.stream;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;

/**
 * The step in which values were recorded, read off the values: where most of them come more than once, the least gap between
 * two that differ.
 *
 * <p>Values that spread by less than one step are too coarse to chart, and levels closer than one step are not told apart.
 * Source: Wheeler and Lyday, Evaluating the Measurement Process (1989), on inadequate measurement units, from memory.
 */
public final class Resolution {
    /** Gaps below this share of the values are of binary fractions. */
    private static final double ROUNDING = 1e-9;

    private Resolution() {}

    /** The step that the charts of one feature share; 0 where the values are finer than their ties tell. */
    static double stepOf(List<StreamChart> charts) {
        return stepOf(charts.stream()
                .flatMap(chart -> chart.values().stream())
                .mapToDouble(Double::doubleValue)
                .toArray());
    }

    /**
     * {@return the step of some values, in their unit; 0 where they are finer than their ties tell}
     *
     * @param values finite values, in any order
     */
    public static double stepOf(double[] values) {
        var sorted = values.clone();
        Arrays.sort(sorted);
        double least = Double.POSITIVE_INFINITY;
        int distinct = sorted.length == 0 ? 0 : 1;
        for (int i = 1; i < sorted.length; i++) {
            double gap = sorted[i] - sorted[i - 1];
            if (gap > ROUNDING * Math.max(Math.abs(sorted[0]), Math.abs(sorted[sorted.length - 1]))) {
                distinct++;
                least = Math.min(least, gap);
            }
        }
        return distinct > 1 && 2 * distinct <= sorted.length ? least : 0;
    }

    /** Whether a difference of levels can be told: a step, give or take binary fractions. */
    static boolean tells(double step, double difference) {
        return Math.abs(difference) >= step * (1 - ROUNDING);
    }

    /** The same limits, or why there are none: the values spread by less than a step. */
    static <T> Answer<T> fine(T limits, double sigma, double step) {
        return sigma < step * (1 - ROUNDING)
                ? Answer.missing(
                        Reason.ASSUMPTION_FAILS,
                        "recorded in steps of " + digits(step) + " and spread by " + digits(sigma)
                                + " only: too coarse to chart")
                : Answer.of(limits);
    }

    private static String digits(double value) {
        return String.format(Locale.ROOT, "%.2g", value);
    }
}
