/**
 * Values that do not belong with the others, one feature at a time or several together.
 *
 * <p>Read in this order: {@link org.tautlog.spc.outlier.ModifiedZ} (quick and robust), {@link
 * org.tautlog.spc.outlier.GeneralizedEsd} (a test for several), {@link org.tautlog.spc.outlier.Grubbs} (a test for one),
 * {@link org.tautlog.spc.outlier.HampelWindow} (along a series), {@link org.tautlog.spc.outlier.RobustDistance} (several
 * features).
 *
 * <p>May import: {@code spc}. Refuses to: drop a value; it only names it.
 */
@NullMarked
package org.tautlog.spc.outlier;

import org.jspecify.annotations.NullMarked;
