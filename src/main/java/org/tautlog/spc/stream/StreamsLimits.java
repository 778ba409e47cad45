package org.tautlog.spc.stream;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.chart.IndividualsLimits;

/**
 * Frozen limits of parallel streams: all that phase 2 needs.
 *
 * @param centres centre of each stream by column; null for a stream that had too few values to be charted
 * @param common limits for the mean of the streams, each less its own centre, on the level of the mean centre
 * @param ownSigma standard deviation of a stream about the common movement, above 0
 * @param streamSigma standard deviation of a stream from time to time, the common movement included, above 0; widened
 *     where a stream resembles itself from time to time
 * @param familyWidth distance of the group and own limits in their standard deviations, all streams allowed for
 * @param longestRun how often running one stream may be the largest, or the smallest, before it signals
 * @param cusumDecision h of the sums of one stream, in {@code sumFactor} standard deviations
 * @param sumFactor how much wider the sums' scale is where a stream's differences resemble the ones before, at least 1
 * @param cells how many values the limits rest on
 * @param neighbours how much a stream's differences from the mean resemble the ones before, all streams together
 */
public record StreamsLimits(
        List<@Nullable Double> centres,
        IndividualsLimits common,
        double ownSigma,
        double streamSigma,
        double familyWidth,
        int longestRun,
        double cusumDecision,
        double sumFactor,
        int cells,
        Autocorrelation neighbours) {
    /** k of the sums of one stream. */
    public static final double SLACK = 0.5;

    /** Checks the ranges and copies the list. */
    public StreamsLimits {
        centres = java.util.Collections.unmodifiableList(new java.util.ArrayList<>(centres));
        if (!(ownSigma > 0 && streamSigma > 0))
            throw new IllegalArgumentException(
                    "sigmas are " + ownSigma + " and " + streamSigma + "; both must be above 0");
        if (!(familyWidth > 0))
            throw new IllegalArgumentException("familyWidth is " + familyWidth + "; it must be above 0");
        if (!(sumFactor >= 1))
            throw new IllegalArgumentException("sumFactor is " + sumFactor + "; sums are never made quicker");
    }

    /** {@return the columns of the streams that are left out because they had too few values} */
    public List<Integer> leftOut() {
        return java.util.stream.IntStream.range(0, centres.size())
                .filter(j -> centres.get(j) == null)
                .boxed()
                .toList();
    }

    /**
     * {@return distance of the own limits from 0 for a time at which so many streams are present}
     *
     * @param present how many, at least 2
     */
    public double ownReach(int present) {
        return familyWidth * ownSigma * Math.sqrt(1 - 1.0 / present);
    }

    /**
     * {@return the standard deviation that the sums of one stream count in}
     *
     * @param present how many streams are present, at least 2
     */
    public double sumSigma(int present) {
        return ownSigma * sumFactor * Math.sqrt(1 - 1.0 / present);
    }

    /**
     * {@return the standard deviation that the sums of a stream count in that is held against the mean of others only}
     *
     * @param others how many others, at least 2
     */
    double sumSigmaBeside(int others) {
        return ownSigma * sumFactor * Math.sqrt(1 + 1.0 / others);
    }

    /** {@return distance of the group limits from 0} */
    public double groupReach() {
        return familyWidth * streamSigma;
    }
}
