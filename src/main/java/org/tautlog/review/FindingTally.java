package org.tautlog.review;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.window.Consequence;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.review.stream.Stream;

/**
 * How often one kind of finding was met in a shift, where most, and since when.
 *
 * @param code the kind
 * @param severity the gravest meaning it had
 * @param tightenings on how many tightenings it was found, at least 1
 * @param leading on how many of them it is the first finding: the judge puts what explains before what follows from it
 * @param mostIn the stream with most of them
 * @param mostInCount how many of them there
 * @param streams in how many streams it was found
 * @param lots bolt lots of those tightenings in order of name; empty where the export does not say
 * @param first when it was first met; null where the export gives no times
 * @param last when it was last met; null where the export gives no times
 */
public record FindingTally(
        FindingCode code,
        Consequence severity,
        int tightenings,
        int leading,
        Stream mostIn,
        int mostInCount,
        int streams,
        List<String> lots,
        @Nullable OffsetDateTime first,
        @Nullable OffsetDateTime last) {
    public FindingTally {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(mostIn, "mostIn");
        lots = List.copyOf(lots);
        if (leading < 0 || leading > tightenings) {
            throw new IllegalArgumentException(
                    "leading is " + leading + " of " + tightenings + " tightenings; it must lie from 0 to that");
        }
        if (tightenings < 1 || mostInCount < 1 || mostInCount > tightenings) {
            throw new IllegalArgumentException("tightenings is " + tightenings + ", mostInCount " + mostInCount
                    + "; a tally counts at least 1, and its largest part not more than the whole");
        }
    }
}
