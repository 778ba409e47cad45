package org.tautlog.review.tuning;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.trace.TraceIdentity;

/**
 * What traces with a measured clamp load say about the onset thresholds of a specification.
 *
 * @param specification the specification, not altered
 * @param offsetDeg how far behind its line the load of a true onset falls, deg
 * @param measurementDeg standard uncertainty of a measured onset, median over the traces used, deg; NaN where there are none
 * @param seed the seed of the bootstrap
 * @param uses how many traces were used, and how many were not, by reason
 * @param unused the traces that something was measured on and that could still not be used
 * @param withoutTrace measurements of which the logs hold no trace, in words
 * @param tunings what is said about each criterion's threshold
 * @param kneeAtGradientOrNull how the knee reads the traces by the ratio that the gradient was tuned to; null where it was not
 */
public record TuningReview(
        JointSpecification specification,
        double offsetDeg,
        double measurementDeg,
        long seed,
        Map<TraceUse, Integer> uses,
        List<Unused> unused,
        List<String> withoutTrace,
        List<ThresholdTuning> tunings,
        @Nullable Standing kneeAtGradientOrNull) {
    /** Fewest traces with an onset for which the tuning is more than a first look; common practice, no source. */
    public static final int ENOUGH = 20;

    /**
     * Spread left over what measuring and reading explain from which on outcomes and traces may not belong together; ours. In
     * three simulated trials it was 1.1 to 1.3 times, and 1.9 to 2.8 where the outcomes were those of the next bolt.
     */
    private static final double MOST_UNEXPLAINED = 1.75;

    /** What the reading of a good curve adds of its own, deg: the study of accuracy finds 1.4 to 2.1. */
    private static final double READING_DEG = 2;

    /**
     * A trace that could not be used.
     *
     * @param tightening which one
     * @param why the reason
     */
    public record Unused(TraceIdentity tightening, TraceUse why) {}

    public TuningReview {
        Objects.requireNonNull(specification, "specification");
        uses = Map.copyOf(uses);
        unused = List.copyOf(unused);
        withoutTrace = List.copyOf(withoutTrace);
        tunings = List.copyOf(tunings);
    }

    /** {@return how many traces the thresholds were tuned on} */
    public int used() {
        return uses.getOrDefault(TraceUse.USED, 0);
    }

    /** {@return whether they are too few for more than a first look} */
    public boolean tooFew() {
        return used() < ENOUGH;
    }

    /** {@return the spread that the measured loads' own scatter and the reading of a good curve make together, deg} */
    public double explainedDeg() {
        return Math.hypot(measurementDeg, READING_DEG);
    }

    /**
     * Whether far more spread is left than measuring and reading explain: the outcomes may be those of other bolts.
     *
     * @param criterion the criterion
     * @return false where it could not be tuned
     */
    public boolean unexplained(OnsetCriterion criterion) {
        return tuning(criterion)
                .tuned()
                .found()
                .filter(tuned -> tuned.standing().spreadDeg() > MOST_UNEXPLAINED * explainedDeg())
                .isPresent();
    }

    /** {@return how the knee reads the traces by the ratio that the gradient was tuned to} */
    public Optional<Standing> kneeAtGradient() {
        return Optional.ofNullable(kneeAtGradientOrNull);
    }

    /**
     * The reading rule with the thresholds that the traces speak for. The ratio is the gradient's, as the window judges by
     * that; the knee follows.
     *
     * @return the rule; equal to the specification's own where they speak for no other, are too few, or do not fit their outcomes
     */
    public ReadingRule proposed() {
        var present = specification.reading();
        return RuleGrid.with(
                present,
                threshold(OnsetCriterion.GRADIENT, present.onsetRatio()),
                threshold(OnsetCriterion.OFFSET, present.onsetOffsetDeg()));
    }

    /**
     * What is said about one criterion's threshold.
     *
     * @param criterion the criterion
     * @return the tuning
     */
    public ThresholdTuning tuning(OnsetCriterion criterion) {
        return tunings.stream()
                .filter(tuning -> tuning.criterion() == criterion)
                .findFirst()
                .orElseThrow();
    }

    private double threshold(OnsetCriterion criterion, double present) {
        var tuning = tuning(criterion);
        return !tooFew() && !unexplained(criterion) && tuning.speaksForAnother()
                ? tuning.tuned().orThrow().standing().threshold()
                : present;
    }
}
