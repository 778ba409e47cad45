/**
 * Prints a finished page of the report as a PDF: tagged, searchable, fonts embedded, the same bytes for the same page.
 *
 * <p>Public types in reading order: {@link org.tautlog.report.paper.Paper}, {@link org.tautlog.report.paper.Imprint},
 * {@link org.tautlog.report.paper.Unprintable}.
 *
 * <p>May import: nothing of ours. Refuses to: fetch anything: whatever a page names outside of itself is left out.
 */
@NullMarked
package org.tautlog.report.paper;

import org.jspecify.annotations.NullMarked;
