/**
 * Why something differs: a spindle or station that moved or is off all shift long, a whole shift, a bolt lot, a tightening
 * that stands out, each held against what every cause would do to the curve by the joint's own model.
 *
 * <p>Public types in reading order: {@link org.tautlog.review.cause.Cause}, {@link org.tautlog.review.cause.Sensitivities} (by
 * how much it moves each cue), {@link org.tautlog.review.cause.Pattern} (in which streams), {@link
 * org.tautlog.review.cause.Against} (seen beside what), {@link org.tautlog.review.cause.Diagnosis} (what came out) with {@link
 * org.tautlog.review.cause.RankedCause} and {@link org.tautlog.review.cause.Clue}, {@link
 * org.tautlog.review.cause.Separation} and {@link org.tautlog.review.cause.FloorCheck} (what tells causes apart that the curve
 * cannot), {@link org.tautlog.review.cause.Diagnoses} (all of a shift).
 *
 * <p>May import: {@code review.stream}, judge, signature, spc, joint, trace. Refuses to: name a cause where another one is
 * nearly as likely, where fewer than two cues speak for it, or where one speaks against it that it would move as far as any.
 */
@NullMarked
package org.tautlog.review.cause;

import org.jspecify.annotations.NullMarked;
