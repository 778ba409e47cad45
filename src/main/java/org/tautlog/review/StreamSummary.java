package org.tautlog.review;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tautlog.review.stream.Stream;

/**
 * One stream of a shift in a line.
 *
 * @param stream the station and spindle
 * @param counts its verdicts
 * @param firstPass its first attempts
 * @param medianFinalTorqueNm median final torque of the first attempts, N·m; null where none was found
 * @param medianTorqueRateNmPerDeg median torque rate of the first attempts, N·m/deg; null where none was found
 * @param medianTurnDeg median turn of the first attempts, deg; null where none was found
 */
public record StreamSummary(
        Stream stream,
        VerdictCounts counts,
        FirstPass firstPass,
        @Nullable Double medianFinalTorqueNm,
        @Nullable Double medianTorqueRateNmPerDeg,
        @Nullable Double medianTurnDeg) {
    public StreamSummary {
        Objects.requireNonNull(stream, "stream");
        Objects.requireNonNull(counts, "counts");
        Objects.requireNonNull(firstPass, "firstPass");
    }
}
