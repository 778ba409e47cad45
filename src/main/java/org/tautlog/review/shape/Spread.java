package org.tautlog.review.shape;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.tautlog.spc.Sample;

/**
 * Middle and spread of some shapes at one step, without those that lie so far out that they would spoil both.
 *
 * @param n how many shapes count
 * @param meanDeg their mean, deg
 * @param squaresDeg2 sum of their squared deviations, deg^2
 * @param furthestDeg the greatest deviation from the median that counts, deg
 * @param medianDeg the median of all, deg
 */
record Spread(int n, double meanDeg, double squaresDeg2, double furthestDeg, double medianDeg) {
    /** Robust deviations from the median beyond which a value does not count; so far out lies no good curve. */
    private static final double FURTHEST = 8;

    /** Of a normal distribution. Source: as in the NIST/SEMATECH e-Handbook 1.3.5.17. */
    private static final double TO_SIGMA = 1.4826;

    /** The spread at every step that any of some shapes has. */
    static List<Spread> along(List<Shape> shapes) {
        int size = shapes.stream().mapToInt(Shape::size).max().orElse(0);
        return IntStream.range(0, size).mapToObj(step -> of(shapes, step)).toList();
    }

    /** The same without one of the shapes. */
    static List<Spread> without(List<Spread> steps, Shape shape) {
        return IntStream.range(0, steps.size())
                .mapToObj(step -> step < shape.size() && !Double.isNaN(shape.equivalentDeg(step))
                        ? steps.get(step).without(shape.equivalentDeg(step))
                        : steps.get(step))
                .toList();
    }

    private static Spread of(List<Shape> shapes, int step) {
        var values = new double[shapes.size()];
        int known = 0;
        for (var shape : shapes) {
            if (step < shape.size() && !Double.isNaN(shape.equivalentDeg(step))) {
                values[known++] = shape.equivalentDeg(step);
            }
        }
        if (known == 0) {
            return new Spread(0, 0, 0, 0, 0);
        }
        var all = Sample.derived(Arrays.copyOf(values, known));
        double median = all.median();
        double furthest = FURTHEST * TO_SIGMA * all.medianDeviation();
        var near = Sample.derived(Arrays.stream(all.toArray())
                .filter(value -> Math.abs(value - median) <= furthest)
                .toArray());
        return new Spread(near.size(), near.mean(), near.sumOfSquares(), furthest, median);
    }

    private Spread without(double value) {
        if (!(Math.abs(value - medianDeg) <= furthestDeg)) {
            return this;
        }
        double away = value - meanDeg;
        return new Spread(
                n - 1,
                meanDeg - away / (n - 1),
                Math.max(0, squaresDeg2 - away * away * n / (n - 1)),
                furthestDeg,
                medianDeg);
    }

    /** One standard deviation of the next curve: what it strays by itself and what the mean of so few does. */
    double ofNextDeg() {
        return Math.sqrt(squaresDeg2 / (n - 1) * (1 + 1.0 / n));
    }
}
