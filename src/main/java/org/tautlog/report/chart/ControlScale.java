package org.tautlog.report.chart;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jfree.data.Range;
import org.tautlog.review.stream.StreamChart;
import org.tautlog.spc.Sample;

/**
 * The scale of a control chart: one for all spindles of a station and a feature, so that their charts compare. It holds the
 * limits of each; a stray stands at its edge and does not widen it.
 *
 * @param low its lower end, in the feature's unit
 * @param high its upper end
 * @param common whether the station's charts share it; one that lies far from the others has its own
 */
public record ControlScale(double low, double high, boolean common) {
    /** The scale reaches this many times the distance of the limits beyond them; points further out stand at its edge. */
    private static final double REACH = 0.35;
    /** A chart farther from the station's median scale than this many of its lengths does not share it. */
    private static final double FARTHEST = 3;

    public ControlScale {
        if (!(low < high)) {
            throw new IllegalArgumentException(
                    "the scale runs from " + low + " to " + high + "; its lower end must lie below the upper");
        }
    }

    /**
     * Chooses a chart's scale.
     *
     * @param chart the chart
     * @param all charts that are shown with it, itself included
     * @return the scale of its station and feature, or its own
     */
    public static ControlScale of(StreamChart chart, List<StreamChart> all) {
        var alike = all.stream()
                .filter(other -> other.feature() == chart.feature()
                        && other.stream().station().equals(chart.stream().station())
                        && !other.values().isEmpty())
                .map(ControlScale::own)
                .toList();
        var own = own(chart);
        if (alike.isEmpty()) {
            return own;
        }
        double reach = FARTHEST * median(alike, scale -> scale.high - scale.low);
        double lowest = median(alike, ControlScale::low) - reach;
        double highest = median(alike, ControlScale::high) + reach;
        var near = alike.stream()
                .filter(scale -> scale.low >= lowest && scale.high <= highest)
                .toList();
        if (!near.contains(own)) {
            return new ControlScale(own.low, own.high, false);
        }
        return new ControlScale(
                near.stream().mapToDouble(ControlScale::low).min().orElse(own.low),
                near.stream().mapToDouble(ControlScale::high).max().orElse(own.high),
                true);
    }

    Range range() {
        return new Range(low, high);
    }

    private static ControlScale own(StreamChart chart) {
        double low = chart.values().stream().mapToDouble(v -> v).min().orElse(0);
        double high = chart.values().stream().mapToDouble(v -> v).max().orElse(1);
        var found = chart.chart().found();
        if (found.isPresent()) {
            var limits = found.get().points().get(0);
            double reach = REACH * (limits.upper() - limits.lower());
            low = Math.min(limits.lower() - reach / 4, Math.max(low, limits.lower() - reach));
            high = Math.max(limits.upper() + reach / 4, Math.min(high, limits.upper() + reach));
        }
        double margin = high > low ? 0.06 * (high - low) : Math.max(1e-3, Math.abs(high) * 0.05);
        return new ControlScale(low - margin, high + margin, true);
    }

    private static double median(List<ControlScale> scales, ToDoubleFunction<ControlScale> part) {
        return Sample.derived(scales.stream().mapToDouble(part).toArray()).median();
    }
}
