package org.tautlog.review.stream;

import java.util.Objects;
import org.tautlog.spc.change.ChangePoint;
import org.tautlog.trace.TraceIdentity;

/**
 * A level that moved within the shift: what, where, since when, by how much.
 *
 * @param stream where
 * @param feature what
 * @param point sizes and bounds; its places count in the stream's chart
 * @param first the first tightening after the change, at its likeliest place
 * @param earliest the earliest that may be the first after it, as its bounds go
 * @param latest the latest that may be
 * @param alike how many streams of the same station moved the same way at about the same time, this one included
 * @param ofStreams how many streams that station has
 */
public record Change(
        Stream stream,
        ChartedFeature feature,
        ChangePoint point,
        TraceIdentity first,
        TraceIdentity earliest,
        TraceIdentity latest,
        int alike,
        int ofStreams) {
    public Change {
        Objects.requireNonNull(stream, "stream");
        Objects.requireNonNull(feature, "feature");
        Objects.requireNonNull(point, "point");
        Objects.requireNonNull(first, "first");
        Objects.requireNonNull(earliest, "earliest");
        Objects.requireNonNull(latest, "latest");
        if (alike < 1 || alike > ofStreams) {
            throw new IllegalArgumentException(
                    "alike is " + alike + " of " + ofStreams + " streams; it must lie from 1 to that");
        }
    }
}
