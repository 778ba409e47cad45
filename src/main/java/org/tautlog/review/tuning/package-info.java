/**
 * Onset thresholds tuned on qualification bolts: tightenings whose clamp load or elongation was
 * measured beside the torque.
 *
 * <p>Public types in reading order: {@link org.tautlog.review.tuning.OnsetTuning} (takes traces, gives the review), {@link
 * org.tautlog.review.tuning.LoadOnset} (where a measured clamp load leaves its line) with {@link
 * org.tautlog.review.tuning.ElongationLoad}, {@link
 * org.tautlog.review.tuning.TraceUse}, {@link org.tautlog.review.tuning.OnsetCriterion}, {@link
 * org.tautlog.review.tuning.ThresholdTuning} with {@link org.tautlog.review.tuning.Standing}, {@link
 * org.tautlog.review.tuning.TuningReview}.
 *
 * <p>May import: judge, signature, spc, joint, trace. Refuses to: write a specification, or to tune by what was not measured.
 */
@NullMarked
package org.tautlog.review.tuning;

import org.jspecify.annotations.NullMarked;
