/**
 * Control charts of several features at once.
 *
 * <p>Read in this order: {@link org.tautlog.spc.multivariate.HotellingChart}, {@link
 * org.tautlog.spc.multivariate.HotellingLimits}.
 *
 * <p>May import: {@code spc}, {@code spc.chart}. Refuses to: name a point without saying which features put it there.
 */
@NullMarked
package org.tautlog.spc.multivariate;

import org.jspecify.annotations.NullMarked;
