/**
 * Control charts of counts: fractions, numbers and faults for each unit.
 *
 * <p>Read in this order: {@link org.tautlog.spc.count.CountChart}, {@link org.tautlog.spc.count.CountModel}, {@link
 * org.tautlog.spc.count.CountLimits}.
 *
 * <p>May import: {@code spc}, {@code spc.chart}. Refuses to: chart a count without the amount behind it.
 */
@NullMarked
package org.tautlog.spc.count;

import org.jspecify.annotations.NullMarked;
