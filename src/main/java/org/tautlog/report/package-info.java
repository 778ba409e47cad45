/**
 * What the review found, as HTML, PDF, CSV and JSON; charts as SVG in {@code report.chart}, print in {@code
 * report.paper}.
 *
 * <p>Public types in reading order: {@link org.tautlog.report.judged.JudgementJson} (one line a tightening),
 * {@link org.tautlog.report.judged.JoiningResultJson} (the same for the open joining model),
 * {@link org.tautlog.report.judged.VerdictsCsv} (one row a tightening), {@link org.tautlog.report.judged.VerdictsReader} (reads it back),
 * {@link org.tautlog.report.shift.ShiftPage} (a shift on one page), {@link org.tautlog.report.shift.ShiftJson} (its figures),
 * {@link org.tautlog.report.evidence.DossierPage}, {@link org.tautlog.report.evidence.DossierAnswers}, {@link org.tautlog.report.evidence.DossierCsv} and
 * {@link org.tautlog.report.evidence.DossierJson} (all that is known of an engine),
 * {@link org.tautlog.report.evidence.ComparisonCsv} (what another specification would change),
 * {@link org.tautlog.report.evidence.ContainmentPage}, {@link org.tautlog.report.evidence.ContainmentAnswers},
 * {@link org.tautlog.report.evidence.ContainmentCsv} and {@link org.tautlog.report.evidence.ContainmentJson} (which engines a cause may have touched),
 * {@link org.tautlog.report.evidence.ArchiveJson} (what happened to an archive),
 * {@link org.tautlog.report.WindowPage}, {@link org.tautlog.report.WindowText}, {@link org.tautlog.report.WindowJson} and
 * {@link org.tautlog.report.WindowAnswers} (a window study),
 * {@link org.tautlog.report.page.Provenance}, {@link org.tautlog.report.page.Evidence}, {@link org.tautlog.report.page.SafetyNote},
 * {@link org.tautlog.report.Schema} (how the JSON is made).
 *
 * <p>May import: review and below. Refuses to: compute: every number it shows is a field of what it was given.
 */
@NullMarked
package org.tautlog.report;

import org.jspecify.annotations.NullMarked;
