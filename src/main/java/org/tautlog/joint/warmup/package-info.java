/**
 * The first warm-up: what unequal expansion does to a tightened bolt, and the clamp load that stays.
 *
 * <p>Read first {@link org.tautlog.joint.warmup.WarmUp} and its {@link org.tautlog.joint.warmup.WarmUpResult}; then
 * {@link org.tautlog.joint.warmup.Temperatures}, {@link org.tautlog.joint.warmup.HotStrength} and
 * {@link org.tautlog.joint.warmup.StretchClaim}, which says whether a claimed further stretch fits the temperatures.
 *
 * <p>May import: joint, joint.tightening. Refuses to: model creep, gaskets or a second joint nearby; it says what one bolt
 * and its layers do.
 */
@NullMarked
package org.tautlog.joint.warmup;

import org.jspecify.annotations.NullMarked;
