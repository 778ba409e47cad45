package org.tautlog.signature;

import java.util.Objects;

/**
 * What one curve says about its tightening, as computed; the recorded samples stay with the trace.
 *
 * @param samples how many samples the curve has
 * @param prevailingTorqueNm torque of the free turning before seating, N·m
 * @param snug the snug point
 * @param elastic the elastic line
 * @param onset the yield onset
 * @param end the final point
 * @param marks what else the curve shows
 * @param criteria the yield onset by two further criteria
 * @param clampLoad the clamp load as estimated with the stated joint; missing where the specification states none
 */
public record Signature(
        int samples,
        Feature prevailingTorqueNm,
        SnugPoint snug,
        ElasticLine elastic,
        YieldOnset onset,
        FinalPoint end,
        CurveMarks marks,
        OnsetCriteria criteria,
        ClampLoad clampLoad) {
    private static final ClampLoad NO_JOINT = ClampLoad.none("the specification states no bolt and layers");

    public Signature {
        if (samples < 1) {
            throw new IllegalArgumentException("samples is " + samples + "; a curve has at least 1");
        }
        Objects.requireNonNull(prevailingTorqueNm, "prevailingTorqueNm");
        Objects.requireNonNull(snug, "snug");
        Objects.requireNonNull(elastic, "elastic");
        Objects.requireNonNull(onset, "onset");
        Objects.requireNonNull(end, "end");
        Objects.requireNonNull(marks, "marks");
        Objects.requireNonNull(criteria, "criteria");
        Objects.requireNonNull(clampLoad, "clampLoad");
    }

    /**
     * A signature without a clamp load, which no curve gives alone, and with the onset by its gradient only.
     *
     * @param samples how many samples the curve has
     * @param prevailingTorqueNm torque of the free turning before seating, N·m
     * @param snug the snug point
     * @param elastic the elastic line
     * @param onset the yield onset
     * @param end the final point
     * @param marks what else the curve shows
     */
    public Signature(
            int samples,
            Feature prevailingTorqueNm,
            SnugPoint snug,
            ElasticLine elastic,
            YieldOnset onset,
            FinalPoint end,
            CurveMarks marks) {
        this(samples, prevailingTorqueNm, snug, elastic, onset, end, marks, OnsetCriteria.notRead(), NO_JOINT);
    }

    /**
     * A signature of a curve that nothing was read from.
     *
     * @param samples how many samples the curve has
     * @param why the reason in words
     * @return a signature whose every feature is missing for that reason
     */
    public static Signature none(int samples, String why) {
        var missing = Feature.missing(why);
        return new Signature(
                samples,
                missing,
                new SnugPoint(missing, missing),
                new ElasticLine(missing, missing, missing),
                new YieldOnset(missing, missing, missing, missing, missing, EndState.UNKNOWN),
                new FinalPoint(missing, missing, missing, missing),
                CurveMarks.none(why));
    }

    /**
     * The same signature with a clamp load.
     *
     * @param estimate the clamp load
     * @return the changed signature
     */
    public Signature withClampLoad(ClampLoad estimate) {
        return new Signature(samples, prevailingTorqueNm, snug, elastic, onset, end, marks, criteria, estimate);
    }

    /**
     * The same signature with the onset by further criteria.
     *
     * @param others the criteria
     * @return the changed signature
     */
    public Signature withCriteria(OnsetCriteria others) {
        return new Signature(samples, prevailingTorqueNm, snug, elastic, onset, end, marks, others, clampLoad);
    }
}
