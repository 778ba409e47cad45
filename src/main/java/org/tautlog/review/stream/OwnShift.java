package org.tautlog.review.stream;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tautlog.spc.change.ChangePoint;
import org.tautlog.trace.TraceIdentity;

/**
 * What one stream did apart from the others of its station, in one feature: its difference from the median of the others,
 * engine by engine, and the likeliest step in it.
 *
 * @param stream the station and spindle
 * @param feature what was compared
 * @param tightenings whose differences these are, in time order; faulty ones are set aside
 * @param differences value less own level, less what the others did on that engine; in the feature's unit
 * @param point the likeliest step; its places count in {@code differences}; null where too few values or none that vary
 * @param whyMissing why there is no step to give; empty where there is one
 * @param adjusted p value with all streams and features searched allowed for; 1 where there is no step
 * @param holds whether the step is taken as one: adjusted p value at or below {@link #LEVEL}
 * @param onChart whether the station's chart of streams names the stream too
 * @param ofStreams how many streams the station has
 */
public record OwnShift(
        Stream stream,
        ChartedFeature feature,
        List<TraceIdentity> tightenings,
        List<Double> differences,
        @Nullable ChangePoint point,
        String whyMissing,
        double adjusted,
        boolean holds,
        boolean onChart,
        int ofStreams) {
    /** Of the steps taken as such, this share is false on average; where nothing moved, one shift in so many names any. */
    public static final double LEVEL = 0.01;

    public OwnShift {
        Objects.requireNonNull(stream, "stream");
        Objects.requireNonNull(feature, "feature");
        tightenings = List.copyOf(tightenings);
        differences = List.copyOf(differences);
        if (tightenings.size() != differences.size()) {
            throw new IllegalArgumentException("there are " + differences.size() + " differences of "
                    + tightenings.size() + " tightenings; one each is needed");
        }
        if (point == null && (whyMissing.isEmpty() || holds)) {
            throw new IllegalArgumentException("a step is missing without a reason, or holds without being there");
        }
    }

    /**
     * {@return the step}
     *
     * @throws IllegalStateException where there is none, with the reason
     */
    public ChangePoint step() {
        var there = point;
        if (there == null) {
            throw new IllegalStateException(whyMissing);
        }
        return there;
    }

    /** {@return the first tightening after the step, at its likeliest place} */
    public TraceIdentity first() {
        return tightenings.get(step().index());
    }

    /** {@return the earliest that the first tightening after the step can be, at the bounds' confidence} */
    public TraceIdentity earliest() {
        return tightenings.get(step().earliest());
    }

    /** {@return the latest that the first tightening after the step can be, at the bounds' confidence} */
    public TraceIdentity latest() {
        return tightenings.get(Math.min(step().latest(), tightenings.size() - 1));
    }
}
