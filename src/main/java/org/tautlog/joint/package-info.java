/**
 * Bolt, layers, materials and friction; stiffness, preload and yield.
 *
 * <p>Read first {@link org.tautlog.joint.BoltedJoint} and what it is made of: {@link org.tautlog.joint.Bolt} with its
 * {@link org.tautlog.joint.MetricThread}, {@link org.tautlog.joint.BoltSegment}s and
 * {@link org.tautlog.joint.BoltMaterial} (or a {@link org.tautlog.joint.PropertyClass}), the clamped
 * {@link org.tautlog.joint.Layer}s, {@link org.tautlog.joint.Friction}. Then the formulas:
 * {@link org.tautlog.joint.Resilience}, {@link org.tautlog.joint.TorquePreload}, {@link org.tautlog.joint.FirstYield},
 * {@link org.tautlog.joint.Embedding}, {@link org.tautlog.joint.TiltedHead}. The torque-angle curve that they lead to is
 * the sub-room {@code tightening}'s.
 *
 * <p>May import: nothing of ours. Refuses to: read or write files.
 */
@NullMarked
package org.tautlog.joint;

import org.jspecify.annotations.NullMarked;
