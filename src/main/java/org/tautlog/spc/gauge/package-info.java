/**
 * How much of the spread seen is the measuring's own: crossed gauge studies, bias and linearity.
 *
 * <p>Read in this order: {@link org.tautlog.spc.gauge.GaugeStudy}, {@link org.tautlog.spc.gauge.GaugeResult}, {@link org.tautlog.spc.gauge.GaugePlot}, {@link
 * org.tautlog.spc.gauge.Linearity}, {@link org.tautlog.spc.gauge.Bias}.
 *
 * <p>May import: {@code spc}, {@code spc.chart}. Refuses to: call a gauge good or bad; the plant's rules do.
 */
@NullMarked
package org.tautlog.spc.gauge;

import org.jspecify.annotations.NullMarked;
