/**
 * Statistics for many parallel streams of measurements: plain arrays in, values out. This room holds what its sub-rooms
 * share; control charts lie in {@code spc.chart}, {@code spc.timeweighted}, {@code spc.count}, {@code spc.multivariate} and,
 * for many streams side by side, {@code spc.stream};
 * {@code spc.capability}, {@code spc.outlier}, {@code spc.change}, {@code spc.compare} and {@code spc.gauge} hold what
 * their names say.
 *
 * <p>Read in this order: {@link org.tautlog.spc.Answer} (a result or a plain reason why there is none), {@link
 * org.tautlog.spc.Reason}, {@link org.tautlog.spc.Sample} (checked values), {@link org.tautlog.spc.Moments} (one pass),
 * {@link org.tautlog.spc.QuantileType}, {@link org.tautlog.spc.Autocorrelation}, {@link org.tautlog.spc.Covariance}, {@link
 * org.tautlog.spc.Proportion}, {@link org.tautlog.spc.Interval}, {@link org.tautlog.spc.Quadrature}, {@link
 * org.tautlog.spc.Digits} (numbers as a person reads them).
 *
 * <p>May import: nothing of ours. Refuses to: know what a tightening is, and to put NaN or infinity into a result.
 */
@NullMarked
package org.tautlog.spc;

import org.jspecify.annotations.NullMarked;
