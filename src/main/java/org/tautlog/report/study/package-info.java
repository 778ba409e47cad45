/**
 * Studies of values from elsewhere as JSON, and control limits kept in a file between two runs.
 *
 * <p>Public types in reading order: {@link org.tautlog.report.study.SeriesJson}, {@link
 * org.tautlog.report.study.CapabilityJson}, {@link org.tautlog.report.study.GaugeJson}, {@link
 * org.tautlog.report.study.Unwatched}, {@link org.tautlog.report.study.LimitsFile}, {@link
 * org.tautlog.report.study.KeptLimits}, {@link org.tautlog.report.study.ChartedColumns}.
 *
 * <p>May import: {@code report.words}; spc, problem. Refuses to: compute.
 */
@NullMarked
package org.tautlog.report.study;

import org.jspecify.annotations.NullMarked;
