package org.tautlog.spc.timeweighted;

import org.tautlog.spc.Answer;
import org.tautlog.spc.Sample;
import org.tautlog.spc.chart.Chart;
import org.tautlog.spc.chart.ChartKind;
import org.tautlog.spc.chart.IndividualsChart;
import org.tautlog.spc.chart.IndividualsOptions;
import org.tautlog.spc.chart.PhaseOne;
import org.tautlog.spc.chart.RunRule;

/** Chart of exponentially weighted moving averages: sees small lasting shifts. Formulas: {@link EwmaLimits}. */
public final class EwmaChart {
    private EwmaChart() {}

    /**
     * Limits from data (phase 1): those of single values, with strays left out, carried over to their averages.
     *
     * @param values values in time order, at least 3, not all equal
     * @param forValues how the limits of single values are made
     * @param options how the averages are charted
     * @return the limits with the points left out, or why there are none
     */
    public static Answer<PhaseOne<EwmaLimits>> phaseOne(
            double[] values, IndividualsOptions forValues, EwmaOptions options) {
        return IndividualsChart.phaseOne(values, forValues)
                .map(phase -> phase.with(EwmaLimits.of(phase.limits(), options)));
    }

    /**
     * Holds frozen limits against data (phase 2), or draws phase 1's own data.
     *
     * @param limits the frozen limits
     * @param values values in time order, at least 1
     * @return the chart, or why there is none
     */
    public static Answer<Chart> chart(EwmaLimits limits, double[] values) {
        return Sample.of(values, 1, "a chart of moving averages").map(sample -> {
            var watch = new EwmaWatch(limits);
            var averages = new double[sample.size()];
            for (int i = 0; i < averages.length; i++) {
                watch.next(sample.at(i));
                averages[i] = watch.average();
            }
            return Chart.draw(ChartKind.EWMA, averages, i -> limits.lines(i + 1L), RunRule.limitsOnly());
        });
    }
}
