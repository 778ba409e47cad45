/**
 * What pages share: templates filled for screen and paper, what made a report, on what it stands, and what each of
 * them says about safety.
 *
 * <p>Public types in reading order: {@link org.tautlog.report.page.Pages},
 * {@link org.tautlog.report.page.Provenance}, {@link org.tautlog.report.page.Evidence},
 * {@link org.tautlog.report.page.SafetyNote}.
 *
 * <p>May import: {@code report.paper}; alone in the house it sees the templates' engine. Refuses to: know what a page
 * shows: a model is words under the names that its template uses.
 */
@NullMarked
package org.tautlog.report.page;

import org.jspecify.annotations.NullMarked;
