package org.tautlog.review.shape;

import java.util.Arrays;
import java.util.List;

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

    /** NaN where too few shapes have the step. */
    private final double[] middleDeg;

    private final double[] deviationDeg;

    private Course(double[] middleDeg, double[] deviationDeg) {
        this.middleDeg = middleDeg;
        this.deviationDeg = deviationDeg;
    }

    static Course of(List<Spread> steps, int leastPeers) {
        int size = steps.size();
        var middle = new double[size];
        var next = new double[size];
        for (int i = 0; i < size; i++) {
            boolean known = steps.get(i).n() >= leastPeers;
            middle[i] = known ? steps.get(i).meanDeg() : Double.NaN;
            next[i] = known ? steps.get(i).ofNextDeg() : 0;
        }
        double highest =
                Arrays.stream(middle).filter(deg -> !Double.isNaN(deg)).max().orElse(0);
        double least = Math.max(LEAST_SHARE * highest, Double.MIN_NORMAL);
        var deviation = new double[size];
        for (int i = 0; i < size; i++) {
            deviation[i] = least;
            for (int near = Math.max(0, i - AROUND); near <= Math.min(i + AROUND, size - 1); near++) {
                deviation[i] = Math.max(deviation[i], next[near]);
            }
        }
        return new Course(middle, deviation);
    }

    int size() {
        return middleDeg.length;
    }

    boolean known(int step) {
        return step >= 0 && step < middleDeg.length && !Double.isNaN(middleDeg[step]);
    }

    double middleDeg(int step) {
        return middleDeg[step];
    }

    double deviationDeg(int step) {
        return deviationDeg[step];
    }

    /** How many standard deviations a shape lies above the middle at a step; NaN where that cannot be said. */
    double distance(Shape shape, int step) {
        return known(step) && step < shape.size()
                ? (shape.equivalentDeg(step) - middleDeg[step]) / deviationDeg[step]
                : Double.NaN;
    }

    /** The step at which a shape lies furthest from the middle; -1 where none can be compared. */
    int furthest(Shape shape) {
        int at = -1;
        double furthest = -1;
        for (int step = 0; step < shape.size(); step++) {
            double distance = Math.abs(distance(shape, step));
            if (distance > furthest) {
                at = step;
                furthest = distance;
            }
        }
        return at;
    }
}
