package org.tautlog.review.shape;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.tautlog.spc.Answer;

/**
 * One curve held against the envelope of its peers.
 *
 * @param shape the curve's shape
 * @param envelope what its peers let expect
 * @param departure where it lies furthest out
 */
public record ShapeComparison(Shape shape, Envelope envelope, Departure departure) {
    /**
     * Curve and envelope at one angle, as torque at the curve's own torque rate.
     *
     * @param angleDeg angle past the elastic origin, deg
     * @param excessNm torque less what the peers let expect, N·m
     * @param allowedNm how far from it the envelope goes to either side, N·m
     */
    public record Step(double angleDeg, double excessNm, double allowedNm) {}

    public ShapeComparison {
        Objects.requireNonNull(shape, "shape");
        Objects.requireNonNull(envelope, "envelope");
        Objects.requireNonNull(departure, "departure");
    }

    /**
     * Compares.
     *
     * @param shape the curve's shape, or why it has none
     * @param envelope of its peers, or why there is none
     * @return the comparison, or why there is none
     */
    public static Answer<ShapeComparison> of(Answer<Shape> shape, Answer<Envelope> envelope) {
        return shape.flatMap(own -> envelope.flatMap(
                peers -> peers.departure(own).map(departure -> new ShapeComparison(own, peers, departure))));
    }

    /** {@return curve and envelope angle by angle, as far as both go, in rising order} */
    public List<Step> steps() {
        return IntStream.range(0, Math.min(shape.size(), envelope.size()))
                .filter(step -> envelope.known(step) && !Double.isNaN(shape.equivalentDeg(step)))
                .mapToObj(step -> new Step(
                        shape.angleDeg(step),
                        shape.torqueNm(shape.equivalentDeg(step)) - shape.torqueNm(envelope.middleDeg(step)),
                        shape.torqueNm(envelope.halfWidthDeg(step)) - shape.torqueNm(0)))
                .toList();
    }
}
