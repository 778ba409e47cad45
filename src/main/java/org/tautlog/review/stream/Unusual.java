package org.tautlog.review.stream;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.tautlog.spc.Sample;
import org.tautlog.spc.outlier.RobustDistance;
import org.tautlog.spc.outlier.RobustOptions;
import org.tautlog.trace.TraceIdentity;

/**
 * A tightening that keeps every limit by itself and yet does not belong with the others of its station when all features
 * are taken together. Levels of spindles, and steps that hold, are taken out first.
 *
 * @param tightening which it is
 * @param distance its robust distance, in standard deviations of all features together
 * @param limit the distance that one tightening in {@value #ONE_IN} exceeds by chance
 * @param most the feature that puts it there most
 */
public record Unusual(TraceIdentity tightening, double distance, double limit, ChartedFeature most) {
    /** One tightening in so many is unusual by chance. */
    public static final int ONE_IN = 10_000;

    private static final List<ChartedFeature> TOGETHER = List.of(
            ChartedFeature.FINAL_TORQUE,
            ChartedFeature.TORQUE_RATE,
            ChartedFeature.TURN,
            ChartedFeature.ONSET_TORQUE,
            ChartedFeature.ONSET_ANGLE);
    private static final double MOSTLY_FOUND = 0.8;
    private static final int MANY = 2000;
    private static final int STARTS = 100;
    private static final int FEW_STARTS = 20;
    private static final long SEED = 20_260_101L;

    public Unusual {
        Objects.requireNonNull(tightening, "tightening");
        Objects.requireNonNull(most, "most");
    }

    /** Those that none of the charts of one feature could name, most unusual first. */
    static List<Unusual> of(List<StreamChart> charts, List<OwnShift> shifts) {
        var stations = new TreeMap<String, Map<TraceIdentity, Map<ChartedFeature, Double>>>();
        for (var chart : charts) {
            var rows = stations.computeIfAbsent(chart.stream().station(), unused -> new LinkedHashMap<>());
            var residuals = residuals(chart, shifts);
            for (int i = 0; i < residuals.length; i++) {
                rows.computeIfAbsent(chart.tightenings().get(i), unused -> new EnumMap<>(ChartedFeature.class))
                        .put(chart.feature(), residuals[i]);
            }
        }
        var unusual = new ArrayList<Unusual>();
        stations.values().forEach(rows -> unusual.addAll(ofStation(rows)));
        unusual.sort(Comparator.comparingDouble(Unusual::distance).reversed());
        return List.copyOf(unusual);
    }

    private static List<Unusual> ofStation(Map<TraceIdentity, Map<ChartedFeature, Double>> rows) {
        var features = TOGETHER.stream()
                .filter(feature -> rows.values().stream()
                                .filter(row -> row.containsKey(feature))
                                .count()
                        >= MOSTLY_FOUND * rows.size())
                .toList();
        var whole = rows.entrySet().stream()
                .filter(row -> row.getValue().keySet().containsAll(features))
                .toList();
        if (features.size() < 2) {
            return List.of();
        }
        var numbers = whole.stream()
                .map(row -> features.stream()
                        .mapToDouble(
                                feature -> Objects.requireNonNull(row.getValue().get(feature)))
                        .toArray())
                .toArray(double[][]::new);
        var options = new RobustOptions(0.75, 1.0 / ONE_IN, numbers.length > MANY ? FEW_STARTS : STARTS, SEED);
        return RobustDistance.of(numbers, options).found().stream()
                .flatMap(distances -> distances.flagged().stream()
                        .map(i -> new Unusual(
                                whole.get(i).getKey(),
                                Math.sqrt(distances.distances().get(i)),
                                Math.sqrt(distances.limit()),
                                features.get(largest(distances.parts(numbers[i]))))))
                .toList();
    }

    private static int largest(double[] parts) {
        return IntStream.range(0, parts.length)
                .boxed()
                .max(Comparator.comparingDouble(i -> parts[i]))
                .orElseThrow();
    }

    private static double[] residuals(StreamChart chart, List<OwnShift> shifts) {
        var values = chart.numbers();
        shifts.stream()
                .filter(shift ->
                        shift.holds() && shift.stream().equals(chart.stream()) && shift.feature() == chart.feature())
                .forEach(shift -> {
                    int from = chart.tightenings().indexOf(shift.first());
                    for (int i = Math.max(0, from); from >= 0 && i < values.length; i++) {
                        values[i] -= shift.step().size().value();
                    }
                });
        double level =
                Sample.of(values, 1, "a median").found().map(Sample::median).orElse(0.0);
        for (int i = 0; i < values.length; i++) {
            values[i] -= level;
        }
        return values;
    }
}
