package org.tautlog.signature;

import java.util.Arrays;

/** Medians and percentiles that a few wild values do not move, over at most a few hundred evenly taken values. */
final class Robust {
    /** Enough for a percentile good to a few hundredths, few enough that sorting does not rule the time per trace. */
    private static final int MOST = 256;

    /** Normal standard deviation over median absolute deviation. */
    private static final double MAD_TO_SIGMA = 1.4826;

    private Robust() {}

    /** Every k-th of the values from inclusive to exclusive, so many that at most {@code MOST} remain, sorted. */
    static double[] sorted(double[] values, int from, int to) {
        int step = Math.max(1, (to - from + MOST - 1) / MOST);
        var taken = new double[Math.max(0, (to - from + step - 1) / step)];
        for (int i = 0, j = from; i < taken.length; i++, j += step) {
            taken[i] = values[j];
        }
        Arrays.sort(taken);
        return taken;
    }

    /** Percentile by linear interpolation of values already sorted; at least one value. */
    static double percentile(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int low = (int) place;
        int high = Math.min(low + 1, sorted.length - 1);
        return sorted[low] + (place - low) * (sorted[high] - sorted[low]);
    }

    static double median(double[] values, int from, int to) {
        return percentile(sorted(values, from, to), 0.5);
    }

    /** Standard deviation of normal values with the same median absolute deviation from their median. */
    static double spread(double[] values, int from, int to) {
        var taken = sorted(values, from, to);
        return spreadAbout(taken, percentile(taken, 0.5));
    }

    /** Standard deviation of normal values with the same median absolute deviation from a given centre. */
    static double spreadAbout(double[] sorted, double centre) {
        var away = new double[sorted.length];
        for (int i = 0; i < away.length; i++) {
            away[i] = Math.abs(sorted[i] - centre);
        }
        Arrays.sort(away);
        return MAD_TO_SIGMA * percentile(away, 0.5);
    }
}
