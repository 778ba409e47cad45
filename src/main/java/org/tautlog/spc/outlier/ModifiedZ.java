package org.tautlog.spc.outlier;

import java.util.List;
import java.util.stream.IntStream;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Sample;

/**
 * Distance of each value from the median, in robust standard deviations.
 *
 * <pre> M = 0.6745 (x - median) / MAD </pre>
 *
 * MAD: median absolute deviation from the median, in the units of x. 0.6745: its value for a standard normal.
 *
 * <ul>
 *   <li>More than half of the values equal: MAD is 0, so there is no scale, and the answer says so.
 * </ul>
 *
 * Source: Iglewicz and Hoaglin, How to Detect and Handle Outliers (1993); NIST/SEMATECH e-Handbook 1.3.5.17.
 *
 * @param median the median
 * @param medianDeviation MAD, above 0
 * @param limit the |M| above which a value is flagged
 * @param n how many values
 * @param scores M of every value, in the values' order
 */
public record ModifiedZ(double median, double medianDeviation, double limit, int n, List<Double> scores) {
    /** The limit that Iglewicz and Hoaglin recommend. */
    public static final double USUAL_LIMIT = 3.5;

    private static final double NORMAL_DEVIATION = 0.6745;

    /** Copies the list. */
    public ModifiedZ {
        scores = List.copyOf(scores);
    }

    /**
     * Scores values.
     *
     * @param values the values, at least 3
     * @param limit the |M| above which a value is flagged, above 0; usual 3.5
     * @return the scores, or why there are none
     */
    public static Answer<ModifiedZ> of(double[] values, double limit) {
        if (!(limit > 0)) throw new IllegalArgumentException("limit is " + limit + "; it must be above 0");
        return Sample.varying(values, 3, "a modified z score").flatMap(sample -> {
            double median = sample.median();
            double deviation = sample.medianDeviation();
            if (!(deviation > 0))
                return Answer.missing(
                        Reason.NO_SPREAD,
                        "more than half of the " + sample.size() + " values equal " + median
                                + ", so their median deviation is 0 and no score can be scaled by it");
            var scores = IntStream.range(0, sample.size())
                    .mapToObj(i -> NORMAL_DEVIATION * (sample.at(i) - median) / deviation)
                    .toList();
            if (scores.stream().anyMatch(score -> score.isInfinite()))
                return Answer.missing(
                        Reason.NO_SPREAD, "the median deviation, " + deviation + ", is too small to scale by");
            return Answer.of(new ModifiedZ(median, deviation, limit, sample.size(), scores));
        });
    }

    /**
     * {@return whether a value is flagged}
     *
     * @param index its place, from 0
     */
    public boolean flagged(int index) {
        return Math.abs(scores.get(index)) > limit;
    }

    /** {@return the places of the flagged values, from 0, in the values' order} */
    public List<Integer> flagged() {
        return IntStream.range(0, n).filter(this::flagged).boxed().toList();
    }
}
