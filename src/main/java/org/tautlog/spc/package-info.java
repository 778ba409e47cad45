/**
 * Statistics for many parallel streams of measurements: plain arrays in, values out. This room holds what its sub-rooms
 * share; control charts lie in {@code spc.chart} and {@code spc.stream}, one-pass charts in {@code spc.running}, and
 * {@code spc.capability}, {@code spc.outlier}, {@code spc.change}, {@code spc.compare} and {@code spc.gauge} hold what
 * their names say.
 *
 * <p>Read in this order: {@link org.tautlog.spc.Answer} (a result or a plain reason why there is none), {@link
 * org.tautlog.spc.Reason}, {@link org.tautlog.spc.Sample} (checked values), {@link org.tautlog.spc.Moments} (one pass),
 * {@link org.tautlog.spc.QuantileType}, {@link org.tautlog.spc.Autocorrelation}.
 *
 * <p>May import: nothing of ours. Refuses to: know what a tightening is, and to put NaN or infinity into a result.
 */
@NullMarked
package org.tautlog.spc;

import org.jspecify.annotations.NullMarked;
