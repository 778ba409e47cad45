package org.tautlog.spc;

import java.util.Arrays;
import java.util.Locale;

/** Finite values in the order they came, copied in and out, with the plain statistics every method starts from. */
public final class Sample {
    /** A spread below this share of the largest value is what rounding leaves of equal values: 45 times a double's step. */
    private static final double ROUNDING = 1e-14;

    /** Spreads below this count as none: their reciprocals and squares must stay within the range of a double. */
    public static final double LEAST_SPREAD = 1e-60;
    /** Larger values are refused: their squares and products must stay within the range of a double. */
    private static final double LARGEST = 1e60;

    private final double[] values;

    private Sample(double[] values) {
        this.values = values;
    }

    /**
     * Checks values before any method sees them.
     *
     * @param values the values in time order
     * @param least the fewest values the method can work with, at least 1
     * @param purpose what they are for, as it reads after "too few for", such as "a moving range"
     * @return the sample, or why there is none: empty, too few, not finite
     */
    public static Answer<Sample> of(double[] values, int least, String purpose) {
        if (values.length == 0) return Answer.missing(Reason.EMPTY, "no values for " + purpose);
        for (int i = 0; i < values.length; i++) {
            if (!(Math.abs(values[i]) <= LARGEST))
                return Answer.missing(
                        Reason.NOT_FINITE,
                        String.format(
                                Locale.ROOT,
                                "value %d of %d is %s; every value for %s must be a number within +-%s",
                                i + 1,
                                values.length,
                                values[i],
                                purpose,
                                LARGEST));
        }
        if (values.length < least)
            return Answer.missing(
                    Reason.TOO_FEW,
                    String.format(
                            Locale.ROOT,
                            "%d value%s; %s needs at least %d",
                            values.length,
                            values.length == 1 ? "" : "s",
                            purpose,
                            least));
        return Answer.of(new Sample(values.clone()));
    }

    /**
     * Takes values computed from a checked sample, such as its deviations; they may be a little larger than values may.
     *
     * @param derived the computed values, at least 1, all finite
     * @return the sample
     */
    public static Sample derived(double[] derived) {
        if (derived.length == 0) throw new IllegalArgumentException("derived is empty; it must hold at least 1 value");
        for (double x : derived)
            if (!Double.isFinite(x)) throw new IllegalArgumentException("derived holds " + x + "; it must be finite");
        return new Sample(derived.clone());
    }

    /**
     * As {@link #of}, and refuses values that are all equal, or differ by no more than rounding.
     *
     * @param values the values in time order
     * @param least the fewest values the method can work with
     * @param purpose what they are for
     * @return the sample, or why there is none
     */
    public static Answer<Sample> varying(double[] values, int least, String purpose) {
        return of(values, least, purpose).flatMap(sample -> {
            double largest = Arrays.stream(values).map(Math::abs).max().orElse(0);
            if (sample.sd() > ROUNDING * largest) return Answer.of(sample);
            return Answer.missing(
                    Reason.NO_SPREAD,
                    String.format(
                            Locale.ROOT,
                            "all %d values equal %s%s; %s needs values that vary",
                            sample.size(),
                            sample.at(0),
                            sample.sd() > 0 ? " but for rounding" : "",
                            purpose));
        });
    }

    /** {@return how many values} */
    public int size() {
        return values.length;
    }

    /**
     * {@return one value}
     *
     * @param index place in time order, from 0
     */
    public double at(int index) {
        return values[index];
    }

    /** {@return a copy of the values in time order} */
    public double[] toArray() {
        return values.clone();
    }

    /** {@return a copy of the values, smallest first} */
    public double[] sorted() {
        var copy = values.clone();
        Arrays.sort(copy);
        return copy;
    }

    /**
     * {@return how many values lie below one value}
     *
     * @param sorted the values, smallest first
     * @param x the value
     */
    public static int below(double[] sorted, double x) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[middle] < x) low = middle + 1;
            else high = middle;
        }
        return low;
    }

    /**
     * {@return how many values lie above one value}
     *
     * @param sorted the values, smallest first
     * @param x the value
     */
    public static int above(double[] sorted, double x) {
        return sorted.length - below(sorted, Math.nextUp(x));
    }

    /** {@return the smallest value} */
    public double min() {
        return Arrays.stream(values).min().orElseThrow();
    }

    /** {@return the largest value} */
    public double max() {
        return Arrays.stream(values).max().orElseThrow();
    }

    /**
     * {@return the arithmetic mean, with one correcting pass}
     *
     * <pre> m0 = sum(x) / n;  mean = m0 + sum(x - m0) / n </pre>
     *
     * Source: Chan, Golub, LeVeque, The American Statistician 37 (1983), corrected two-pass algorithm; from memory.
     */
    public double mean() {
        double sum = 0;
        for (double x : values) sum += x;
        double rough = sum / values.length;
        double rest = 0;
        for (double x : values) rest += x - rough;
        return rough + rest / values.length;
    }

    /** {@return the sum of squared deviations from the mean, 0 for values that are all equal} */
    public double sumOfSquares() {
        if (min() == max()) return 0;
        double mean = mean();
        double squares = 0;
        double rest = 0;
        for (double x : values) {
            squares += (x - mean) * (x - mean);
            rest += x - mean;
        }
        double sum = squares - rest * rest / values.length;
        return sum > LEAST_SPREAD * LEAST_SPREAD * values.length ? sum : 0;
    }

    /** {@return the sample standard deviation with n - 1, 0 for a single value or values that are all equal} */
    public double sd() {
        return values.length < 2 ? 0 : Math.sqrt(sumOfSquares() / (values.length - 1));
    }

    /** {@return the median} */
    public double median() {
        return medianOf(sorted());
    }

    /** {@return the median of the absolute deviations from the median, unscaled; 0 below the least spread} */
    public double medianDeviation() {
        double centre = median();
        var deviations = Arrays.stream(values).map(x -> Math.abs(x - centre)).toArray();
        Arrays.sort(deviations);
        double deviation = medianOf(deviations);
        return deviation > LEAST_SPREAD ? deviation : 0;
    }

    private static double medianOf(double[] sorted) {
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : sorted[half - 1] + (sorted[half] - sorted[half - 1]) / 2;
    }
}
