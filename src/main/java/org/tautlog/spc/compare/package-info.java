/**
 * Whether groups differ, in level or in spread, and which of them, with the number of comparisons allowed for.
 *
 * <p>Read in this order: {@link org.tautlog.spc.compare.GroupTests}, {@link org.tautlog.spc.compare.GroupTest}, {@link
 * org.tautlog.spc.compare.PairComparison}, {@link org.tautlog.spc.compare.Adjustment}.
 *
 * <p>May import: {@code spc}. Refuses to: give a list of p values without the number of comparisons behind them.
 */
@NullMarked
package org.tautlog.spc.compare;

import org.jspecify.annotations.NullMarked;
