/**
 * Everything that needs peers: one shift seen as a whole, its streams (station and spindle) compared and charted, and the
 * tightenings that a person must look at.
 *
 * <p>Public types in reading order: {@link org.tautlog.review.ShiftReviewer} (takes judgements one by one),
 * {@link org.tautlog.review.ShiftReview} (what it found), {@link org.tautlog.review.Listed},
 * {@link org.tautlog.review.StreamSummary},
 * {@link org.tautlog.review.FindingTally}, {@link org.tautlog.review.FirstAction};
 * {@link org.tautlog.review.EngineClampLoad}; what streams say side by side lies in {@code review.stream},
 * where along its length a curve departs from its peers in {@code review.shape}, onset thresholds tuned on qualification
 * bolts in {@code review.tuning}. Of a window: {@link org.tautlog.review.WindowReview},
 * {@link org.tautlog.review.WindowSpread}, {@link org.tautlog.review.WindowFeature}, {@link org.tautlog.review.LimitFit}.
 *
 * <p>What an auditor asks of an archive is in {@code review.evidence}, which may import this room.
 *
 * <p>May import: judge, signature, spc, joint, trace, problem. Refuses to: format, read or write files, alter a verdict.
 */
@NullMarked
package org.tautlog.review;

import org.jspecify.annotations.NullMarked;
