package org.tautlog.review.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Where some shapes run, step by step: their middle, and one standard deviation of the next one. */
final class Course {
    /**
     * A step's spread is the greatest of those so many steps around it: where the knee comes a little earlier than it ever
     * did, it brings its spread along. Ours.
     */
    private static final int AROUND = 2;

    /**
     * No spread below this share of the highest middle: transducers and the reading of the elastic line tell no finer, and
     * an excess below about 1 % of the torque at the stop is not worth a look. Ours.
     */
    private static final double LEAST_SHARE = 0.002;

    private final List<Spread> steps;
    private final int leastPeers;
    private final double[] deviationDeg;

    private Course(List<Spread> steps, int leastPeers) {
        this.steps = steps;
        this.leastPeers = leastPeers;
        double highest = IntStream.range(0, steps.size())
                .filter(this::known)
                .mapToDouble(this::middleDeg)
                .max()
                .orElse(0);
        deviationDeg = new double[steps.size()];
        for (int i = 0; i < deviationDeg.length; i++) {
            deviationDeg[i] = Math.max(LEAST_SHARE * highest, Double.MIN_NORMAL);
            for (int near = Math.max(0, i - AROUND); near <= Math.min(i + AROUND, steps.size() - 1); near++) {
                if (known(near)) {
                    deviationDeg[i] = Math.max(deviationDeg[i], steps.get(near).ofNextDeg());
                }
            }
        }
    }

    static Course of(List<Shape> shapes, int leastPeers) {
        int size = shapes.stream().mapToInt(Shape::size).max().orElse(0);
        return new Course(
                IntStream.range(0, size)
                        .mapToObj(step -> Spread.of(shapes, step))
                        .toList(),
                leastPeers);
    }

    /** The course of the other shapes. */
    Course without(Shape shape) {
        var others = new ArrayList<>(steps);
        for (int step = 0; step < shape.size(); step++) {
            if (!Double.isNaN(shape.equivalentDeg(step))) {
                others.set(step, steps.get(step).without(shape.equivalentDeg(step)));
            }
        }
        return new Course(others, leastPeers - 1);
    }

    int size() {
        return steps.size();
    }

    boolean known(int step) {
        return step >= 0 && step < steps.size() && steps.get(step).n() >= leastPeers;
    }

    double middleDeg(int step) {
        return steps.get(step).meanDeg();
    }

    double deviationDeg(int step) {
        return deviationDeg[step];
    }

    /** How many standard deviations a shape lies above the middle at a step; NaN where that cannot be said. */
    double distance(Shape shape, int step) {
        return step >= 0 && step < shape.size() && known(step)
                ? (shape.equivalentDeg(step) - middleDeg(step)) / deviationDeg(step)
                : Double.NaN;
    }

    /** The step at which a shape lies furthest from the middle; -1 where none can be compared. */
    int furthest(Shape shape) {
        int at = -1;
        for (int step = 0; step < shape.size(); step++) {
            double distance = Math.abs(distance(shape, step));
            if (!Double.isNaN(distance) && (at < 0 || distance > Math.abs(distance(shape, at)))) {
                at = step;
            }
        }
        return at;
    }
}
