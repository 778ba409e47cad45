/**
 * How limits are found: a study of a window, and onset thresholds tuned on qualification bolts.
 *
 * <p>Public types in reading order: {@link org.tautlog.report.window.WindowPage},
 * {@link org.tautlog.report.window.WindowText}, {@link org.tautlog.report.window.WindowJson} (a window study),
 * {@link org.tautlog.report.window.TuningText}, {@link org.tautlog.report.window.TuningJson} (onset thresholds).
 *
 * <p>May import: {@code report.words}, {@code report.page}, {@code report.chart}; review and below. Refuses to:
 * compute: every number that it shows is a field of the study.
 */
@NullMarked
package org.tautlog.report.window;

import org.jspecify.annotations.NullMarked;
