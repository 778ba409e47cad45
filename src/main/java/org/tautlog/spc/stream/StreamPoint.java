package org.tautlog.spc.stream;

import java.util.Collections;
import java.util.List;

/**
 * One time of a group chart. Deviations are from each stream's own centre.
 *
 * @param time place in time, from 0
 * @param present how many charted streams were seen, at least 2
 * @param common mean deviation of the streams: what moved all of them
 * @param largest column of the stream with the largest deviation
 * @param largestDeviation its deviation
 * @param smallest column of the stream with the smallest deviation
 * @param smallestDeviation its deviation
 * @param upperSums upper sum of each stream by column, in standard deviations; one that was not seen keeps its last
 * @param lowerSums lower sum of each stream, in the same
 */
public record StreamPoint(
        int time,
        int present,
        double common,
        int largest,
        double largestDeviation,
        int smallest,
        double smallestDeviation,
        List<Double> upperSums,
        List<Double> lowerSums) {
    /** Copies the lists. */
    public StreamPoint {
        upperSums = List.copyOf(upperSums);
        lowerSums = List.copyOf(lowerSums);
    }

    /** {@return the largest upper sum of any stream} */
    public double upperSum() {
        return Collections.max(upperSums);
    }

    /** {@return the largest lower sum of any stream} */
    public double lowerSum() {
        return Collections.max(lowerSums);
    }
}
