/**
 * Text as exports hold it: encodings, lines of bounded length, cells, numbers with any decimal mark.
 *
 * <p>Public types in reading order: {@link org.tautlog.intake.text.Encoding}, {@link org.tautlog.intake.text.LineSource},
 * {@link org.tautlog.intake.text.Line}, {@link org.tautlog.intake.text.Cells},
 * {@link org.tautlog.intake.text.Row}, {@link org.tautlog.intake.text.RowsAlike},
 * {@link org.tautlog.intake.text.NumberForm}, {@link org.tautlog.intake.text.FormulaGuard},
 * {@link org.tautlog.intake.text.Words}.
 *
 * <p>May import: nothing of ours. Refuses to: know what a cell means.
 */
@NullMarked
package org.tautlog.intake.text;

import org.jspecify.annotations.NullMarked;
