package org.tautlog.spc.stream;

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
 * @param upperSum the largest upper sum of one stream, in {@link StreamsLimits#sumSigma}
 * @param lowerSum the largest lower sum of one stream, in the same
 */
public record StreamPoint(
        int time,
        int present,
        double common,
        int largest,
        double largestDeviation,
        int smallest,
        double smallestDeviation,
        double upperSum,
        double lowerSum) {}
