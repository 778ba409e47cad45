/**
 * The shapes of curves held against those of their peers: where along the curve one departs from what good ones do.
 *
 * <p>Public types in reading order: {@link org.tautlog.review.shape.Landmarks} (what a curve is laid over others by),
 * {@link org.tautlog.review.shape.Shape} (one curve at even steps from its elastic origin),
 * {@link org.tautlog.review.shape.Envelope} (where good ones run), {@link org.tautlog.review.shape.Departure} with {@link
 * org.tautlog.review.shape.Zone}, {@link org.tautlog.review.shape.ShapeComparison} (one curve against its peers); of a
 * shift {@link org.tautlog.review.shape.ShapeWatch}, {@link org.tautlog.review.shape.ShapeReview}, {@link
 * org.tautlog.review.shape.ComparedShape}, {@link org.tautlog.review.shape.ShapeStream}.
 *
 * <p>May import: {@code review.stream}, judge, signature, spc, joint, trace. Refuses to: alter a verdict, learn from what does
 * not conform, or judge by fewer peers than it says.
 */
@NullMarked
package org.tautlog.review.shape;

import org.jspecify.annotations.NullMarked;
