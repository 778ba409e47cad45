package org.tautlog.spc.timeweighted;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.function.DoublePredicate;
import org.tautlog.spc.Moments;
import org.tautlog.spc.chart.IndividualsLimits;
import org.tautlog.spc.chart.RunRule;
import org.tautlog.spc.chart.RunRuleWatch;

/**
 * Holds frozen limits against a series of any length in one pass and bounded memory: the first and last signals are kept, all
 * are counted. Values that are not finite are counted as refused and otherwise left out. Not thread-safe.
 */
public final class RunningChart {
    private final DoublePredicate step;
    private final int mostKept;
    private final Moments moments = new Moments();
    private final List<Signal> first = new ArrayList<>();
    private final Deque<Signal> last = new ArrayDeque<>();
    private long index;
    private long signals;

    /**
     * A value at which the chart signals.
     *
     * @param index place in the series, refused values counted, from 0
     * @param value the value that came in there
     */
    public record Signal(long index, double value) {}

    private RunningChart(DoublePredicate step, int mostKept) {
        if (mostKept < 1) throw new IllegalArgumentException("mostKept is " + mostKept + "; it must be at least 1");
        this.step = step;
        this.mostKept = mostKept;
    }

    /**
     * {@return a chart of single values}
     *
     * @param limits the frozen limits
     * @param rules the run rules switched on
     * @param mostKept how many first and how many last signals are kept, at least 1
     */
    public static RunningChart ofIndividuals(IndividualsLimits limits, Set<RunRule> rules, int mostKept) {
        var watch = new RunRuleWatch(rules);
        double lower = limits.lower();
        double upper = limits.upper();
        return new RunningChart(
                x -> !watch.next((x - limits.centre()) / limits.sigma(), x < lower || x > upper)
                        .isEmpty(),
                mostKept);
    }

    /**
     * {@return a chart of exponentially weighted moving averages}
     *
     * @param limits the frozen limits
     * @param mostKept how many first and how many last signals are kept, at least 1
     */
    public static RunningChart ofEwma(EwmaLimits limits, int mostKept) {
        return new RunningChart(new EwmaWatch(limits)::next, mostKept);
    }

    /**
     * {@return a tabular CUSUM}
     *
     * @param limits the frozen limits
     * @param mostKept how many first and how many last signals are kept, at least 1
     */
    public static RunningChart ofCusum(CusumLimits limits, int mostKept) {
        var watch = new CusumWatch(limits);
        return new RunningChart(x -> watch.step(x) != CusumPoint.Signal.NONE, mostKept);
    }

    /**
     * Takes the next value.
     *
     * @param x the value
     * @return whether the chart signals at it
     */
    public boolean accept(double x) {
        moments.add(x);
        long place = index++;
        if (!Double.isFinite(x) || !step.test(x)) return false;
        signals++;
        var signal = new Signal(place, x);
        if (first.size() < mostKept) first.add(signal);
        last.addLast(signal);
        if (last.size() > mostKept) last.removeFirst();
        return true;
    }

    /** {@return how many values signalled} */
    public long signals() {
        return signals;
    }

    /** {@return the first signals, in time order, as many as are kept} */
    public List<Signal> firstSignals() {
        return List.copyOf(first);
    }

    /** {@return the last signals, in time order, as many as are kept} */
    public List<Signal> lastSignals() {
        return List.copyOf(last);
    }

    /** {@return count, mean and spread of all values so far, as a copy} */
    public Moments moments() {
        var copy = new Moments();
        copy.merge(moments);
        return copy;
    }
}
