package org.tautlog.review.stream;

import java.util.List;

/**
 * How many signals so many charts and points are expected to show by chance alone, beside how many they showed.
 *
 * @param charts charts of one stream that have limits
 * @param points their points
 * @param seenByRules signals of single values: beyond the limits, or the first of a run that breaks another rule
 * @param expectedByRules how many the four rules give by chance
 * @param seenByAverages times that a weighted average went beyond its limits
 * @param expectedByAverages how many chance gives
 * @param times engines compared on the charts of streams, all charts together
 * @param seenOfOne signals of one stream on the charts of streams
 * @param expectedOfOne how many chance gives: own limits, runs and sums
 * @param searched streams times features searched for a step of their own
 */
public record FalseAlarms(
        int charts,
        long points,
        int seenByRules,
        double expectedByRules,
        int seenByAverages,
        double expectedByAverages,
        long times,
        int seenOfOne,
        double expectedOfOne,
        int searched) {
    /** Points between false signals under the four rules; Champ and Woodall, Technometrics 29 (1987); from memory. */
    static final double RULES_RUN = 91.75;
    /** Points between false signals of weighted averages at weight 0.2 and width 2.962; see the options of that chart. */
    static final double AVERAGES_RUN = 500;
    /** Chance of a signal at one time for each kind: the usual options of charts of streams. */
    private static final double OWN_CHANCE = 0.001;

    private static final int OWN_KINDS = 3;

    static FalseAlarms of(List<StreamChart> charts, List<StationChart> stations, List<OwnShift> shifts) {
        var limited = charts.stream()
                .filter(chart -> chart.chart().found().isPresent())
                .toList();
        long points = limited.stream().mapToLong(chart -> chart.values().size()).sum();
        long times = stations.stream()
                .filter(station -> station.chart().found().isPresent())
                .mapToLong(StationChart::times)
                .sum();
        return new FalseAlarms(
                limited.size(),
                points,
                limited.stream().mapToInt(chart -> chart.signals().size()).sum(),
                points / RULES_RUN,
                limited.stream().mapToInt(chart -> chart.lastingShifts().size()).sum(),
                points / AVERAGES_RUN,
                times,
                stations.stream().mapToInt(StationChart::ownSignals).sum(),
                times * OWN_CHANCE * OWN_KINDS,
                (int) shifts.stream().filter(shift -> shift.point() != null).count());
    }
}
