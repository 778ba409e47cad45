package org.tautlog.review.tuning;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.trace.MeasuredClampLoad;
import org.tautlog.trace.MeasuredClampLoad.Point;

/**
 * The true onset of one tightening: where its measured clamp load first falls behind its own elastic line by a stated turn.
 *
 * <pre>
 * line    F = a + b x through the loads from 20 to 60 % of the highest; b the median of the slopes between all pairs,
 *         a the median of F - b x                                     kN, kN/deg
 * behind  r(x) = x - (F(x) - a) / b                                   deg
 * onset   first x above the line's part with r = offset, the next load measured being behind by as much too
 * offset  360 u / P    for a plastic stretch u and a pitch P, mm: a stretched bolt of the same load has turned so far more
 * u(onset) = (s / b) sqrt(1 + 1/n + (x - mean x)^2 / sum (x - mean x)^2) / r'(x)      s robust spread about the line, kN
 * </pre>
 *
 * <p>The bolt must yield above 60 % of the highest load measured, which a steel bolt does well clear of its fracture.
 *
 * <p>Source: offset in analogy to the proof stress of the tensile test (ISO 6892-1:2019, Rp0.2), with a turn in place of a
 * strain, from memory; its usual size from the 0.0048 d non-proportional elongation of full-size fasteners (Rpf: ISO 898-1:2009,
 * table 3, read in a copy). That a turn takes its place is common practice, no source. The line: Theil (1950) and Sen (1968),
 * from memory. The shares are ours.
 *
 * @param onsetDeg the onset, deg, on the axis of the recording; empty where there is none
 * @param uncertaintyDeg its standard uncertainty from the scatter of the loads, deg; 0 where there is none
 * @param use why there is none; {@link TraceUse#USED} where there is
 */
public record LoadOnset(OptionalDouble onsetDeg, double uncertaintyDeg, TraceUse use) {
    /** Fewest loads that a line is laid through. */
    public static final int LEAST_POINTS = 5;

    private static final double LOWEST_SHARE = 0.2;
    private static final double HIGHEST_SHARE = 0.6;
    private static final double PLASTIC_STRETCH_SHARE = 0.0048;
    private static final double SLOWEST_FALL = 0.1;
    private static final double NORMAL_MAD = 1.4826;
    /** Highest loads whose median counts as the highest, so that one wild reading does not. */
    private static final int HIGHEST = 3;

    /**
     * The offset where nobody states one.
     *
     * @param specification the joint
     * @return 0.0048 of the stated bolt's diameter as a turn, deg; the specification's own onset offset where it states no bolt
     */
    public static double usualOffsetDeg(JointSpecification specification) {
        return specification
                .statedJoint()
                .map(stated -> stated.joint().bolt().thread())
                .map(thread -> 360 * PLASTIC_STRETCH_SHARE * thread.nominalMm() / thread.pitchMm())
                .orElse(specification.reading().onsetOffsetDeg());
    }

    /**
     * Finds it.
     *
     * @param measured loads over angle
     * @param offsetDeg how far behind its line the load must fall, deg, above 0
     * @return the onset, or why there is none
     */
    public static LoadOnset of(MeasuredClampLoad measured, double offsetDeg) {
        if (!(offsetDeg > 0)) {
            throw new IllegalArgumentException("offsetDeg is " + offsetDeg + "; an offset must be above 0 deg");
        }
        var points = measured.points();
        double highest = highest(points);
        if (!(highest > 0)) {
            return without(TraceUse.TOO_FEW_POINTS);
        }
        int top = first(points, HIGHEST_SHARE * highest);
        var lower = points.subList(first(points, LOWEST_SHARE * highest), top);
        if (lower.size() < LEAST_POINTS) {
            return without(TraceUse.TOO_FEW_POINTS);
        }
        double slope = slope(lower);
        double height = median(lower.stream().mapToDouble(point -> point.loadKN() - slope * point.angleDeg()));
        double strayKN = NORMAL_MAD
                * median(lower.stream()
                        .mapToDouble(point -> Math.abs(point.loadKN() - height - slope * point.angleDeg())));
        if (!(slope > 0) || strayKN > offsetDeg / 2 * slope) {
            return without(TraceUse.NO_STRAIGHT_PART);
        }
        var behindDeg = points.stream()
                .mapToDouble(point -> point.angleDeg() - (point.loadKN() - height) / slope)
                .toArray();
        for (int i = top; i + 1 < behindDeg.length; i++) {
            if (behindDeg[i] >= offsetDeg && behindDeg[i + 1] >= offsetDeg) {
                double share = behindDeg[i - 1] < offsetDeg
                        ? (offsetDeg - behindDeg[i - 1]) / (behindDeg[i] - behindDeg[i - 1])
                        : 0;
                double before = points.get(i - 1).angleDeg();
                double turn = points.get(i + 1).angleDeg() - before;
                double falls = Math.max(SLOWEST_FALL, (behindDeg[i + 1] - behindDeg[i - 1]) / turn);
                double onset = before + share * (points.get(i).angleDeg() - before);
                return new LoadOnset(
                        OptionalDouble.of(onset), strayKN / slope * reach(lower, onset) / falls, TraceUse.USED);
            }
        }
        return without(TraceUse.NO_ONSET);
    }

    /** By how much one load and the line carried on to an angle are less sure together than one load. */
    private static double reach(List<Point> lower, double angleDeg) {
        double mean = lower.stream().mapToDouble(Point::angleDeg).average().orElseThrow();
        double squares = lower.stream()
                .mapToDouble(point -> (point.angleDeg() - mean) * (point.angleDeg() - mean))
                .sum();
        return Math.sqrt(1 + 1.0 / lower.size() + (angleDeg - mean) * (angleDeg - mean) / squares);
    }

    private static LoadOnset without(TraceUse use) {
        return new LoadOnset(OptionalDouble.empty(), 0, use);
    }

    private static double highest(List<Point> points) {
        var loads = points.stream().mapToDouble(Point::loadKN).sorted().toArray();
        return loads.length < HIGHEST ? 0 : median(Arrays.stream(loads, loads.length - HIGHEST, loads.length));
    }

    /** The first point at or above a load; their number where there is none. */
    private static int first(List<Point> points, double loadKN) {
        return IntStream.range(0, points.size())
                .filter(i -> points.get(i).loadKN() >= loadKN)
                .findFirst()
                .orElse(points.size());
    }

    private static double slope(List<Point> points) {
        return median(IntStream.range(0, points.size())
                .boxed()
                .flatMapToDouble(i -> IntStream.range(0, i)
                        .mapToDouble(j -> (points.get(i).loadKN()
                                        - points.get(j).loadKN())
                                / (points.get(i).angleDeg() - points.get(j).angleDeg()))));
    }

    static double median(DoubleStream values) {
        var sorted = values.sorted().toArray();
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
