/**
 * The tolerance study: what scatter in bolts, friction, tool and temperatures does to torque, angle and clamp load, which of
 * them drives it, and the window that follows.
 *
 * <p>Read first {@link org.tautlog.joint.study.ToleranceStudy} with its {@link org.tautlog.joint.study.Factor}s and
 * {@link org.tautlog.joint.study.Spread}s; then {@link org.tautlog.joint.study.StudyResult} and what it holds: a
 * {@link org.tautlog.joint.study.Summary} of each {@link org.tautlog.joint.study.Quantity}, its
 * {@link org.tautlog.joint.study.Driver}s, the {@link org.tautlog.joint.study.ScatterLeft} after the first warm-up and the
 * {@link org.tautlog.joint.study.ProposedWindow}; and the curves behind them, {@link org.tautlog.joint.study.Envelope}.
 *
 * <p>May import: joint, joint.tightening, joint.warmup. Refuses to: release a window; it proposes, a person decides.
 */
@NullMarked
package org.tautlog.joint.study;

import org.jspecify.annotations.NullMarked;
