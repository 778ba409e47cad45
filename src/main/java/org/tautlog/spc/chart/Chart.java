package org.tautlog.spc.chart;

import java.util.List;
import java.util.Set;
import java.util.function.IntFunction;

/**
 * A drawn chart: points in time order, each with its limits.
 *
 * @param kind what is plotted
 * @param points the points in time order
 */
public record Chart(ChartKind kind, List<ChartPoint> points) {
    /** Copies the list. */
    public Chart {
        points = List.copyOf(points);
    }

    /** {@return the points that break a rule, in time order} */
    public List<ChartPoint> signals() {
        return points.stream().filter(ChartPoint::signals).toList();
    }

    /** The same chart with its places counted from another start: the first moving range belongs to the second value. */
    Chart from(int start) {
        return new Chart(
                kind,
                points.stream()
                        .map(p -> new ChartPoint(
                                p.index() + start, p.value(), p.lower(), p.centre(), p.upper(), p.n(), p.broken()))
                        .toList());
    }

    /**
     * Limits of one point and the standard deviation that its run rules count in.
     *
     * @param lower lower control limit
     * @param centre centre line
     * @param upper upper control limit
     * @param sigma standard deviation of what is plotted; 0 where no rule but the limits applies
     * @param n how many measurements the point stands for
     */
    public record Lines(double lower, double centre, double upper, double sigma, int n) {
        /**
         * {@return whether a value lies beyond a limit, on a limit not counting}
         *
         * @param value what is plotted
         */
        public boolean beyond(double value) {
            return value > upper || value < lower;
        }
    }

    /**
     * Draws a chart of any statistic: what the charts of this room and its neighbours are made with.
     *
     * @param kind what is plotted
     * @param values finite values in time order
     * @param linesAt limits by place, from 0
     * @param rules the run rules switched on
     * @return the chart
     */
    public static Chart draw(ChartKind kind, double[] values, IntFunction<Lines> linesAt, Set<RunRule> rules) {
        var watch = new RunRuleWatch(rules);
        var points = new ChartPoint[values.length];
        for (int i = 0; i < values.length; i++) {
            points[i] = point(i, values[i], linesAt.apply(i), watch);
        }
        return new Chart(kind, List.of(points));
    }

    /**
     * Draws the next point of a chart: what a series too long for a whole one is held against its limits with.
     *
     * @param index place in the series, from 0
     * @param value what is plotted, a finite number
     * @param lines the limits there
     * @param watch the run rules, told of every point in time order
     * @return the point
     */
    public static ChartPoint point(int index, double value, Lines lines, RunRuleWatch watch) {
        double z = lines.sigma() > 0 ? (value - lines.centre()) / lines.sigma() : 0;
        var broken = watch.next(z, lines.beyond(value));
        return new ChartPoint(index, value, lines.lower(), lines.centre(), lines.upper(), lines.n(), broken);
    }
}
