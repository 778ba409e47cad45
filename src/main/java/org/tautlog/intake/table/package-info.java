/**
 * Columns of any table in a text file: what the charts and studies of values from elsewhere are fed with.
 *
 * <p>Public types in reading order: {@link org.tautlog.intake.table.CsvColumns}, {@link org.tautlog.intake.table.CsvRow},
 * {@link org.tautlog.intake.table.CsvScan}; {@link org.tautlog.intake.table.OutcomeFile}.
 *
 * <p>May import: {@code intake.layout}, {@code intake.text}, {@code trace}, {@code problem}. Refuses to: guess what a column
 * means, and to drop a row without a count and a reason.
 */
@NullMarked
package org.tautlog.intake.table;

import org.jspecify.annotations.NullMarked;
