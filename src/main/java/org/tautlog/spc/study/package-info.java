/**
 * One way in to every chart: a kind by name, rows of values, and a finished study with its limits, panels, signals and
 * what was left out, whatever room the chart itself lives in; and one to every test for outliers, changes and differences.
 *
 * <p>Read in this order: {@link org.tautlog.spc.study.SeriesStudies}, {@link
 * org.tautlog.spc.study.LongSeries}, {@link org.tautlog.spc.study.StudyKind}, {@link
 * org.tautlog.spc.study.StudyRow}, {@link org.tautlog.spc.study.StudyOptions}, {@link org.tautlog.spc.study.SeriesStudy},
 * {@link org.tautlog.spc.study.StudyPanel}, {@link org.tautlog.spc.study.PanelLine}, {@link
 * org.tautlog.spc.study.StudySignal}, {@link org.tautlog.spc.study.SilentStreams}, {@link
 * org.tautlog.spc.study.FrozenLimits}; {@link
 * org.tautlog.spc.study.OutlierTests}, {@link org.tautlog.spc.study.ChangeTests}, {@link
 * org.tautlog.spc.study.GroupComparison}, {@link org.tautlog.spc.study.TestOptions}, {@link
 * org.tautlog.spc.study.TestStudy}.
 *
 * <p>May import: {@code spc} and its other rooms. Refuses to: hold a formula; those rooms do.
 */
@NullMarked
package org.tautlog.spc.study;

import org.jspecify.annotations.NullMarked;
