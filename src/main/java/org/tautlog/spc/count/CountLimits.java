package org.tautlog.spc.count;

import org.tautlog.spc.chart.Chart;

/**
 * Frozen limits for counts: all that phase 2 needs.
 *
 * @param model what is counted
 * @param rate mean fraction, or mean number of faults for each unit; at least 0
 * @param width distance of the limits in standard deviations, above 0
 * @param scatter Laney's factor: scatter found between points over the chance scatter, widened where neighbours resemble each
 *     other; 1 for the other models
 * @param points how many points the limits rest on
 */
public record CountLimits(CountModel model, double rate, double width, double scatter, int points) {
    /** Checks the ranges. */
    public CountLimits {
        if (!(rate >= 0 && Double.isFinite(rate)))
            throw new IllegalArgumentException("rate is " + rate + "; it must not be negative");
        if (model.binomial() && rate > 1)
            throw new IllegalArgumentException("rate is " + rate + "; a fraction is at most 1");
        if (!(width > 0)) throw new IllegalArgumentException("width is " + width + "; it must be above 0 sigma");
        if (!(scatter > 0 && Double.isFinite(scatter)))
            throw new IllegalArgumentException("scatter is " + scatter + "; it must be above 0");
    }

    /** Lines for one point that rests on so many items or units. */
    Chart.Lines lines(double amount) {
        double variance = model.binomial() ? rate * (1 - rate) / amount : rate / amount;
        double sigma = Math.sqrt(variance) * scatter;
        double scale = model.equalAmounts() ? amount : 1;
        double upper = rate + width * sigma;
        return new Chart.Lines(
                Math.max(0, rate - width * sigma) * scale,
                rate * scale,
                (model.binomial() ? Math.min(1, upper) : upper) * scale,
                sigma * scale,
                (int) Math.max(1, Math.min(Integer.MAX_VALUE, Math.round(amount))));
    }

    double plotted(double count, double amount) {
        return model.equalAmounts() ? count : count / amount;
    }
}
