/**
 * A shift on one page, and its figures for programs: what is unsafe, what changed, where, since when, and why.
 *
 * <p>Public types in reading order: {@link org.tautlog.report.shift.ShiftPage},
 * {@link org.tautlog.report.shift.ShiftJson} (its figures), {@link org.tautlog.report.shift.CauseWords} (why
 * something differs).
 *
 * <p>May import: {@code report.words}, {@code report.page}, {@code report.judged}, {@code report.chart}; review and
 * below. Refuses to: compute: every number that it shows is a field of the review.
 */
@NullMarked
package org.tautlog.report.shift;

import org.jspecify.annotations.NullMarked;
