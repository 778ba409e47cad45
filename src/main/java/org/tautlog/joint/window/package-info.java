/**
 * The window: what a tightening must keep, how its curve is read, and what each finding means for the verdict.
 *
 * <p>Public types in reading order: {@link org.tautlog.joint.window.JointSpecification},
 * {@link org.tautlog.joint.window.TighteningMethod}, {@link org.tautlog.joint.window.Window},
 * {@link org.tautlog.joint.window.OnsetLimits}, {@link org.tautlog.joint.window.ReadingRule},
 * {@link org.tautlog.joint.window.FaultRule}, {@link org.tautlog.joint.window.FindingCode}, {@link org.tautlog.joint.window.Consequence},
 * {@link org.tautlog.joint.window.Band}, {@link org.tautlog.joint.window.BoltPlace}; then what
 * the specification says of the joint itself, {@link org.tautlog.joint.window.StatedJoint} and
 * {@link org.tautlog.joint.window.StatedWarmUp}, and the way from there to a window,
 * {@link org.tautlog.joint.window.WindowStudy}, and {@link org.tautlog.joint.window.GivenNumbers}, which says whether the
 * stated numbers fit each other, and {@link org.tautlog.joint.window.SideEffects}, which says what comes on top.
 *
 * <p>May import: joint and its other sub-rooms. Refuses to: read files; judge.
 */
@NullMarked
package org.tautlog.joint.window;

import org.jspecify.annotations.NullMarked;
