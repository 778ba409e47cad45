package org.tautlog.report.chart;

import java.util.List;
import java.util.Locale;
import org.tautlog.spc.Digits;
import org.tautlog.spc.chart.Chart;

/** What stands beside the limits of a chart: all three with a power of ten, or none. */
final class LimitWords {
    private LimitWords() {}

    /** Centre, upper and lower limit of the last point. */
    static List<String> of(Chart chart) {
        var last = chart.points().get(chart.points().size() - 1);
        double spread = last.upper() - last.lower();
        var values = List.of(last.centre(), last.upper(), last.lower());
        boolean far = values.stream().anyMatch(value -> Digits.of(value, spread).indexOf('E') >= 0);
        var words = values.stream()
                .map(value -> far && value != 0 ? String.format(Locale.ROOT, "%.5E", value) : Digits.of(value, spread))
                .toList();
        return List.of("centre " + words.get(0), "upper " + words.get(1), "lower " + words.get(2));
    }
}
