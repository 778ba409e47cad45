/**
 * What the review found, as HTML, PDF, CSV and JSON; each kind of report has a room of its own below this one.
 *
 * <p>Public types in reading order: {@link org.tautlog.report.Schema} (how the JSON is made). Rooms in reading order:
 * {@code report.judged} (one tightening), {@code report.shift}, {@code report.evidence} (what the archive tells),
 * {@code report.window} (how limits are found), {@code report.study} (values from elsewhere); what they share:
 * {@code report.words}, {@code report.page}, {@code report.chart}, {@code report.paper}.
 *
 * <p>May import: {@code report.words}. Refuses to: compute: every number that a report shows is a field of what it was
 * given.
 */
@NullMarked
package org.tautlog.report;

import org.jspecify.annotations.NullMarked;
