/**
 * A tightening as it was recorded: identity, source and torque-angle curve, in SI-derived units; and, of a qualification bolt,
 * the clamp load measured beside it.
 *
 * <p>May import: nothing of ours. Refuses to: alter, smooth or interpret a curve.
 */
@NullMarked
package org.tautlog.trace;

import org.jspecify.annotations.NullMarked;
