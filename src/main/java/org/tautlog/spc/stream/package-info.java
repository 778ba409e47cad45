/**
 * Many parallel streams charted together, such as the spindles of a station: a shift of all is told from a shift of one.
 *
 * <p>Read in this order: {@link org.tautlog.spc.stream.StreamsChart}, {@link org.tautlog.spc.stream.StreamSignal}, {@link
 * org.tautlog.spc.stream.StreamPoint}, {@link org.tautlog.spc.stream.StreamsLimits}, {@link
 * org.tautlog.spc.stream.StreamsOptions}.
 *
 * <p>May import: {@code spc}, {@code spc.chart}, {@code spc.timeweighted}. Refuses to: pool streams before it has compared
 * them.
 */
@NullMarked
package org.tautlog.spc.stream;

import org.jspecify.annotations.NullMarked;
