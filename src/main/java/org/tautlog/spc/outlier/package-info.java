/**
 * Values that do not belong with the others, one feature at a time or several together.
 *
 * <p>Read: {@link org.tautlog.spc.outlier.ModifiedZ} (quick and robust).
 *
 * <p>May import: {@code spc}. Refuses to: drop a value; it only names it.
 */
@NullMarked
package org.tautlog.spc.outlier;

import org.jspecify.annotations.NullMarked;
