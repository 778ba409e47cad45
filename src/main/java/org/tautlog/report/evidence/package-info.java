/**
 * What the archive tells: all that is known of an engine, which engines a cause may have touched, what another
 * specification would change, and what happened to the archive itself.
 *
 * <p>Public types in reading order: {@link org.tautlog.report.evidence.DossierPage},
 * {@link org.tautlog.report.evidence.DossierAnswers}, {@link org.tautlog.report.evidence.DossierCsv},
 * {@link org.tautlog.report.evidence.DossierJson} (an engine), {@link org.tautlog.report.evidence.ContainmentPage},
 * {@link org.tautlog.report.evidence.ContainmentAnswers}, {@link org.tautlog.report.evidence.ContainmentCsv},
 * {@link org.tautlog.report.evidence.ContainmentJson} (a cause), {@link org.tautlog.report.evidence.ComparisonCsv}
 * (another specification), {@link org.tautlog.report.evidence.ArchiveJson} (the archive).
 *
 * <p>May import: {@code report.words}, {@code report.page}, {@code report.judged}, {@code report.chart}; review and
 * below. Refuses to: compute: every number that it shows is a field of what it was given.
 */
@NullMarked
package org.tautlog.report.evidence;

import org.jspecify.annotations.NullMarked;
