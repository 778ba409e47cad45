package org.tautlog.spc.timeweighted;

/** Follows a tabular CUSUM value by value in constant memory. Not thread-safe. */
public final class CusumWatch {
    private final CusumLimits limits;
    private double upper;
    private double lower;
    private long upperRun;
    private long lowerRun;
    private long index;

    /**
     * Starts at the head start.
     *
     * @param limits the frozen limits
     */
    public CusumWatch(CusumLimits limits) {
        this.limits = limits;
        this.upper = limits.headStart();
        this.lower = limits.headStart();
    }

    /**
     * Takes the next value; nothing is allocated.
     *
     * @param x a finite value
     * @return which sum lies above the decision value
     */
    public CusumPoint.Signal step(double x) {
        if (!Double.isFinite(x)) throw new IllegalArgumentException("x is " + x + "; it must be a finite number");
        index++;
        upper = Math.max(0, x - (limits.target() + limits.reference()) + upper);
        lower = Math.max(0, (limits.target() - limits.reference()) - x + lower);
        upperRun = upper > 0 ? upperRun + 1 : 0;
        lowerRun = lower > 0 ? lowerRun + 1 : 0;
        boolean up = upper > limits.decision();
        boolean down = lower > limits.decision();
        if (up && down) return CusumPoint.Signal.BOTH;
        return up ? CusumPoint.Signal.UP : down ? CusumPoint.Signal.DOWN : CusumPoint.Signal.NONE;
    }

    /**
     * Takes the next value.
     *
     * @param x a finite value
     * @return the step
     */
    public CusumPoint next(double x) {
        var signal = step(x);
        return new CusumPoint(index - 1, x, upper, lower, upperRun, lowerRun, signal);
    }
}
