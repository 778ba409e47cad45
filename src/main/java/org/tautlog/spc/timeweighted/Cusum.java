package org.tautlog.spc.timeweighted;

import java.util.ArrayList;
import java.util.List;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Sample;
import org.tautlog.spc.chart.IndividualsChart;
import org.tautlog.spc.chart.IndividualsOptions;
import org.tautlog.spc.chart.PhaseOne;

/**
 * A drawn tabular CUSUM: sees small lasting shifts and says when they began. Formulas: {@link CusumLimits}.
 *
 * @param limits the limits it was held against
 * @param points the steps in time order
 */
public record Cusum(CusumLimits limits, List<CusumPoint> points) {
    /** Copies the points. */
    public Cusum {
        points = List.copyOf(points);
    }

    /**
     * Limits from data (phase 1): those of single values, with strays left out, carried over to their sums.
     *
     * @param values values in time order, at least 3, not all equal
     * @param forValues how the limits of single values are made
     * @param options how the sums are made
     * @return the limits with the points left out, or why there are none
     */
    public static Answer<PhaseOne<CusumLimits>> phaseOne(
            double[] values, IndividualsOptions forValues, CusumOptions options) {
        return IndividualsChart.phaseOne(values, forValues)
                .map(phase -> phase.with(CusumLimits.of(phase.limits(), options)));
    }

    /**
     * Holds frozen limits against data (phase 2), or draws phase 1's own data.
     *
     * @param limits the frozen limits
     * @param values values in time order, at least 1
     * @return the sums, or why there are none
     */
    public static Answer<Cusum> of(CusumLimits limits, double[] values) {
        return Sample.of(values, 1, "a CUSUM").map(sample -> {
            var watch = new CusumWatch(limits);
            var points = new ArrayList<CusumPoint>();
            for (int i = 0; i < sample.size(); i++) points.add(watch.next(sample.at(i)));
            return new Cusum(limits, points);
        });
    }

    /** {@return the steps that signal, in time order} */
    public List<CusumPoint> signals() {
        return points.stream()
                .filter(point -> point.signal() != CusumPoint.Signal.NONE)
                .toList();
    }
}
