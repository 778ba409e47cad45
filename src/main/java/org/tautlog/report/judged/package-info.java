/**
 * One judged tightening, as every report that has room for one shows it: as JSON, as a row of a table, as a part of a
 * page; where its curve departs from its peers; what its engine's bolts bear.
 *
 * <p>Public types in reading order: {@link org.tautlog.report.judged.JudgementJson} (one line a tightening),
 * {@link org.tautlog.report.judged.JoiningResultJson} (the same for the open joining model),
 * {@link org.tautlog.report.judged.VerdictsCsv} (one row a tightening),
 * {@link org.tautlog.report.judged.VerdictsReader} (reads it back), {@link org.tautlog.report.judged.ListedModel}
 * (one on a page), {@link org.tautlog.report.judged.ShapeWords}, {@link org.tautlog.report.judged.ShapesJson},
 * {@link org.tautlog.report.judged.EngineClampLoadJson}, {@link org.tautlog.report.judged.TraceBlocks} (its curve on
 * a terminal).
 *
 * <p>May import: {@code report.words}, {@code report.chart}; review and below. Refuses to: judge, and to know which
 * report it is part of.
 */
@NullMarked
package org.tautlog.report.judged;

import org.jspecify.annotations.NullMarked;
