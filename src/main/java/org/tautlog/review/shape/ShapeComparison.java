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
     * The envelope at one angle, as torque at the curve's own torque rate.
     *
     * @param angleDeg angle past the elastic origin, deg
     * @param lowNm lower edge, N·m
     * @param highNm upper edge, N·m
     */
    public record Band(double angleDeg, double lowNm, double highNm) {}

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

    /** {@return the envelope angle by angle, where it is known, in rising order} */
    public List<Band> band() {
        return IntStream.range(0, envelope.size())
                .filter(envelope::known)
                .mapToObj(step -> new Band(
                        shape.angleDeg(step),
                        shape.torqueNm(envelope.middleDeg(step) - envelope.halfWidthDeg(step)),
                        shape.torqueNm(envelope.middleDeg(step) + envelope.halfWidthDeg(step))))
                .toList();
    }
}
