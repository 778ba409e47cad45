package org.tautlog.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.tautlog.joint.window.Band;
import org.tautlog.joint.window.Window;
import org.tautlog.spc.Sample;

/**
 * Where one limit lies in the spread that real tightenings show.
 *
 * @param feature what the limit is about
 * @param upper whether it is the upper limit
 * @param limit the limit, in the feature's unit
 * @param n how many tightenings have the feature
 * @param median their median, in the feature's unit
 * @param robustDeviation their robust standard deviation, 1.4826 times the median absolute deviation, in the feature's unit
 * @param shareBelow share of them at or below the limit, 0 to 1
 * @param outside how many of them the limit fails
 */
public record LimitFit(
        WindowFeature feature,
        boolean upper,
        double limit,
        int n,
        double median,
        double robustDeviation,
        double shareBelow,
        int outside) {
    /** Of a normal distribution. Source: Iglewicz and Hoaglin (1993), as in the NIST/SEMATECH e-Handbook 1.3.5.17. */
    private static final double DEVIATION_PER_MEDIAN_DEVIATION = 1.4826;

    /** Fewer say nothing of their spread. Source: our own choice. */
    private static final int LEAST = 20;

    public LimitFit {
        Objects.requireNonNull(feature, "feature");
        if (n < LEAST || outside < 0 || outside > n) {
            throw new IllegalArgumentException(
                    "n is " + n + ", outside " + outside + "; n is at least " + LEAST + ", outside from 0 to n");
        }
    }

    /**
     * How far the limit lies from the median, outwards.
     *
     * @return robust standard deviations; negative where the median itself is outside, infinite where nothing scatters
     */
    public double distanceDeviations() {
        double distance = upper ? limit - median : median - limit;
        return distance / robustDeviation;
    }

    /**
     * Holds a window against real tightenings.
     *
     * @param window the limits
     * @param spread the features of the tightenings
     * @return one entry for each stated limit whose feature at least 20 tightenings have
     */
    public static List<LimitFit> of(Window window, WindowSpread spread) {
        var fits = new ArrayList<LimitFit>();
        for (var feature : WindowFeature.values()) {
            var found =
                    Sample.of(spread.values(feature), LEAST, "a limit's place").found();
            if (found.isEmpty()) {
                continue;
            }
            var band = feature.limits(window);
            if (band.hasLow()) {
                fits.add(of(feature, band, false, found.get()));
            }
            if (band.hasHigh()) {
                fits.add(of(feature, band, true, found.get()));
            }
        }
        return List.copyOf(fits);
    }

    private static LimitFit of(WindowFeature feature, Band band, boolean upper, Sample sample) {
        double limit = upper ? band.high() : band.low();
        int below = 0;
        int outside = 0;
        for (double value : sample.toArray()) {
            below += value <= limit ? 1 : 0;
            outside += (upper ? value > limit : value < limit) ? 1 : 0;
        }
        return new LimitFit(
                feature,
                upper,
                limit,
                sample.size(),
                sample.median(),
                DEVIATION_PER_MEDIAN_DEVIATION * sample.medianDeviation(),
                (double) below / sample.size(),
                outside);
    }
}
