package org.tautlog.review.cause;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tautlog.joint.study.Factor;
import org.tautlog.joint.study.Spread;
import org.tautlog.joint.window.StatedJoint;
import org.tautlog.review.stream.Cue;

/**
 * What two good sides differ by without any cause, on top of the scatter of single tightenings.
 *
 * <pre>
 * friction         its own spread and those of thread and head by their shares of the mean coefficient, in quadrature
 * joint stiffness  bolt and layers, each by its share of the resilience, in quadrature
 * </pre>
 *
 * <p>Good lots and tools differ by a quarter of each cause's usual size: friction 2 %, strength 1 %, torque
 * 1 %; common practice, no source. Source of the shares: springs in a row, elementary.
 *
 * @param sizes standard deviation of each cause between good sides, a share of one or in its unit
 * @param spreads what else each cue differs by between them, standard deviations in its unit
 * @param oneOff whether one stray of good parts, picked for being furthest out, is among what may be
 */
record Ordinary(Map<Cause, Double> sizes, Map<Cue, Double> spreads, boolean oneOff) {
    private static final double GOOD = 0.25;
    /** A step over the variance of rounding to it: that of a uniform distribution. */
    private static final double STEP_VARIANCE = 12;

    private static final double LEAST_OF_DRIVES = 0.1;

    Ordinary {
        sizes = Map.copyOf(sizes);
        spreads = Map.copyOf(spreads);
    }

    static Ordinary none() {
        return new Ordinary(Map.of(), Map.of(), false);
    }

    static Ordinary stray() {
        return new Ordinary(Map.of(), Map.of(), true);
    }

    static Ordinary goodLots() {
        return new Ordinary(good(EnumSet.of(Cause.FRICTION, Cause.BOLT_STRENGTH)), Map.of(), false);
    }

    /** Between shifts lots and layers change, and each tool stays. */
    static Ordinary goodParts() {
        return new Ordinary(
                good(EnumSet.of(Cause.FRICTION, Cause.BOLT_STRENGTH, Cause.JOINT_STIFFNESS)), Map.of(), false);
    }

    /** Spindles and their bolt positions differ as the shift's other spindles do, and drives of one make by 10 % at least. */
    static Ordinary spindles(Map<Cue, Double> spreads) {
        return new Ordinary(Map.of(Cause.WIND_UP, LEAST_OF_DRIVES), spreads, false);
    }

    /** The same spindles on other bolts of other lots, each apart from the others: the scatter, and so much more. */
    static Ordinary beyondScatter(Map<Cue, Double> spreads) {
        return new Ordinary(Map.of(), spreads, false);
    }

    /** Medians of both sides are each off by up to half a step of the recording. */
    Ordinary recordedIn(Map<Cue, Double> steps) {
        var wider = new EnumMap<Cue, Double>(Cue.class);
        wider.putAll(spreads);
        steps.forEach((cue, step) -> wider.merge(cue, step * Math.sqrt(2 / STEP_VARIANCE), Math::hypot));
        return new Ordinary(sizes, wider, oneOff);
    }

    /** The tolerances that the specification states, and good tools. */
    static Ordinary tolerances(StatedJoint stated, Map<Cue, Double> spreads) {
        var sizes = new EnumMap<Cause, Double>(good(EnumSet.of(Cause.TORQUE_SCALE, Cause.ANGLE_SCALE, Cause.WIND_UP)));
        var joint = stated.joint();
        var friction = joint.friction();
        double mean = (friction.threadMu() + friction.underHeadMu()) / 2;
        sizes.put(
                Cause.FRICTION,
                Math.hypot(
                                spread(stated, Factor.FRICTION),
                                Math.hypot(
                                                spread(stated, Factor.THREAD_FRICTION),
                                                spread(stated, Factor.UNDER_HEAD_FRICTION))
                                        / 2)
                        / mean);
        sizes.put(
                Cause.BOLT_STRENGTH,
                spread(stated, Factor.YIELD_STRENGTH) / joint.bolt().material().yieldStrengthMPa());
        double layers = joint.clampedResilienceMmPerN() / joint.resilienceMmPerN();
        sizes.put(
                Cause.JOINT_STIFFNESS,
                Math.hypot(
                        layers * spread(stated, Factor.LAYER_STIFFNESS),
                        (1 - layers) * spread(stated, Factor.BOLT_STIFFNESS)));
        sizes.put(Cause.SNUG_TORQUE, spread(stated, Factor.SNUG_TORQUE));
        sizes.put(Cause.TURN, spread(stated, Factor.TURN));
        return new Ordinary(sizes, spreads, false);
    }

    private static double spread(StatedJoint stated, Factor factor) {
        return Optional.ofNullable(stated.tolerance().get(factor))
                .map(Spread::standardDeviation)
                .orElse(0.0);
    }

    private static Map<Cause, Double> good(Set<Cause> causes) {
        var sizes = new EnumMap<Cause, Double>(Cause.class);
        Arrays.stream(Cause.values())
                .filter(causes::contains)
                .forEach(cause -> sizes.put(cause, GOOD * cause.usualSize()));
        return sizes;
    }
}
