/**
 * What turning the bolt does: torque, preload and plastic stretch over the head's angle.
 *
 * <p>Read first {@link org.tautlog.joint.tightening.Tightening} and its
 * {@link org.tautlog.joint.tightening.TighteningCurve}; then the parts of the curve,
 * {@link org.tautlog.joint.tightening.Seating}, {@link org.tautlog.joint.tightening.PlasticStretch} with its
 * {@link org.tautlog.joint.tightening.Knee} and
 * {@link org.tautlog.joint.tightening.WindUp}, and the state it ends in,
 * {@link org.tautlog.joint.tightening.Tightened}.
 *
 * <p>May import: joint. Refuses to: add noise, sample, or know about tools; that is the simulated line's work.
 */
@NullMarked
package org.tautlog.joint.tightening;

import org.jspecify.annotations.NullMarked;
