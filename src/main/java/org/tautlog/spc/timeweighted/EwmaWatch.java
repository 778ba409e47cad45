package org.tautlog.spc.timeweighted;

/** Follows an exponentially weighted moving average value by value in constant memory. Not thread-safe. */
public final class EwmaWatch {
    private final EwmaLimits limits;
    private double average;
    private long points;

    /**
     * Starts at the centre line.
     *
     * @param limits the frozen limits
     */
    public EwmaWatch(EwmaLimits limits) {
        this.limits = limits;
        this.average = limits.centre();
    }

    /**
     * Takes the next value.
     *
     * @param x a finite value
     * @return whether the average now lies beyond its limits
     */
    public boolean next(double x) {
        if (!Double.isFinite(x)) throw new IllegalArgumentException("x is " + x + "; it must be a finite number");
        points++;
        average += limits.lambda() * (x - average);
        return Math.abs(average - limits.centre()) > limits.reach(points);
    }

    /** {@return the average so far} */
    public double average() {
        return average;
    }

    /** {@return how many values were taken} */
    public long points() {
        return points;
    }
}
