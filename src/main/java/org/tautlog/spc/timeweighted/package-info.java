/**
 * Charts that remember: exponentially weighted averages and cumulative sums, which find small lasting shifts; whole, or value
 * by value in constant memory for series of any length.
 *
 * <p>Read in this order: {@link org.tautlog.spc.timeweighted.EwmaChart}, {@link org.tautlog.spc.timeweighted.Cusum}, {@link
 * org.tautlog.spc.timeweighted.RunLength} (what a chart can be expected to see).
 *
 * <p>May import: {@code spc}, {@code spc.chart}. Refuses to: hold a series in memory that it was given value by value.
 */
@NullMarked
package org.tautlog.spc.timeweighted;

import org.jspecify.annotations.NullMarked;
