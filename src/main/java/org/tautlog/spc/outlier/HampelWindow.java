package org.tautlog.spc.outlier;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Sample;

/**
 * Strays along a series, each held against its own neighbourhood.
 *
 * <pre>{@code flagged where |x[i] - median| > t 1.4826 MAD,  median and MAD over x[i - h .. i + h], cut off at the ends }</pre>
 *
 * <ul>
 *   <li>A neighbourhood in which more than half of the values are equal has MAD 0: every other value in it is flagged, which
 *       for coarse readings is too strict; {@code leastDeviation} sets a floor under 1.4826 MAD.
 * </ul>
 *
 * Source: Hampel, JASA 69 (1974); Davies and Gather, JASA 88 (1993); from memory.
 *
 * @param flagged the flagged values in time order
 * @param n how many values
 */
public record HampelWindow(List<Flagged> flagged, int n) {
    private static final double TO_SIGMA = 1.4826;

    /**
     * A flagged value.
     *
     * @param index its place, from 0
     * @param value the value
     * @param median the median of its neighbourhood, fit to stand in for it
     * @param reach how far from the median a value could lie unflagged
     */
    public record Flagged(int index, double value, double median, double reach) {}

    /** Copies the list. */
    public HampelWindow {
        flagged = List.copyOf(flagged);
    }

    /**
     * Looks along a series.
     *
     * @param values the values in time order, at least 3
     * @param halfWidth h, how many neighbours on either side, at least 1
     * @param width t, how many robust standard deviations a value may lie off, above 0; usual 3
     * @param leastDeviation floor under the robust standard deviation, such as the resolution of the readings; at least 0
     * @return the flagged values, or why there is no answer
     */
    public static Answer<HampelWindow> of(double[] values, int halfWidth, double width, double leastDeviation) {
        if (halfWidth < 1) throw new IllegalArgumentException("halfWidth is " + halfWidth + "; it must be at least 1");
        if (!(width > 0)) throw new IllegalArgumentException("width is " + width + "; it must be above 0");
        if (!(leastDeviation >= 0))
            throw new IllegalArgumentException("leastDeviation is " + leastDeviation + "; it must not be negative");
        return Sample.of(values, 3, "a running window").map(sample -> {
            var flagged = new ArrayList<Flagged>();
            for (int i = 0; i < values.length; i++) {
                var near = Arrays.copyOfRange(
                        values, Math.max(0, i - halfWidth), Math.min(values.length, i + halfWidth + 1));
                var around = Sample.derived(near);
                double median = around.median();
                double reach = width * Math.max(leastDeviation, TO_SIGMA * around.medianDeviation());
                if (Math.abs(values[i] - median) > reach) flagged.add(new Flagged(i, values[i], median, reach));
            }
            return new HampelWindow(flagged, sample.size());
        });
    }
}
