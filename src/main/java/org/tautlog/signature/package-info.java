/**
 * What one curve says: zones, snug point, elastic line, yield onset, clamp-load estimate.
 *
 * <p>Public types in reading order: {@link org.tautlog.signature.SignatureReader}, {@link org.tautlog.signature.Scratch}, {@link org.tautlog.signature.Signature},
 * {@link org.tautlog.signature.Feature}, {@link org.tautlog.signature.SnugPoint},
 * {@link org.tautlog.signature.ElasticLine}, {@link org.tautlog.signature.YieldOnset},
 * {@link org.tautlog.signature.OnsetCriteria}, {@link org.tautlog.signature.EndState}, {@link org.tautlog.signature.FinalPoint},
 * {@link org.tautlog.signature.CurveMarks}, {@link org.tautlog.signature.TorqueOverTurn},
 * {@link org.tautlog.signature.CurveFeature}; then what the stated joint adds,
 * {@link org.tautlog.signature.ClampLoadEstimate} and {@link org.tautlog.signature.ClampLoad}.
 *
 * <p>May import: joint, trace. Refuses to: compare a curve with its peers.
 */
@NullMarked
package org.tautlog.signature;

import org.jspecify.annotations.NullMarked;
