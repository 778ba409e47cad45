package org.tautlog.review.cause;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.tautlog.review.stream.Cue;
import org.tautlog.spc.Sample;

/**
 * How far the cues of some tightenings lie from those of their peers, with the covariance of that.
 *
 * <pre>
 * d = mean(with) - mean(without)
 * C = S (1/n + 1/m) + (0.1 s)^2      S pooled covariance of single tightenings, s its standard deviations
 * </pre>
 *
 * <p>Cues found on fewer than four fifths of either side, or that never vary, are left out, and so are tightenings without
 * all of the others. No cue spreads less than the last digit it is told with. A value is drawn in to {@value #REACH} robust deviations from its own side's median first. The last
 * term keeps a cue that hardly varies from outvoting all others; its size is ours.
 */
final class Moved {
    static final double FLOOR_SHARE = 0.1;
    private static final double MOSTLY_FOUND = 0.8;
    private static final double REACH = 3.5;
    private static final double TO_SIGMA = 1.4826;
    private static final double SHRUNK = 0.1;
    private static final int FEWEST = 8;
    /** Half of the values may be the very same but for rounding: then there is no robust deviation to go by. */
    private static final double ROUNDING = 1e-6;

    private final List<Cue> cues;
    private final RealVector shift;
    private final RealMatrix covariance;
    private final double[] spreads;
    private final int freedom;

    private Moved(List<Cue> cues, double[] shift, double[][] pooled, double perMean, int freedom) {
        this.cues = List.copyOf(cues);
        this.shift = MatrixUtils.createRealVector(shift);
        this.freedom = freedom;
        int p = shift.length;
        spreads = new double[p];
        for (int i = 0; i < p; i++) {
            spreads[i] = Math.sqrt(pooled[i][i]);
        }
        covariance = MatrixUtils.createRealMatrix(p, p);
        for (int i = 0; i < p; i++) {
            for (int j = 0; j < p; j++) {
                double shared = (i == j ? 1 : 1 - SHRUNK) * pooled[i][j] * perMean;
                covariance.setEntry(i, j, i == j ? shared + Math.pow(FLOOR_SHARE * spreads[i], 2) : shared);
            }
        }
    }

    /** The shift of some tightenings against others; empty where too few of them, or of their cues, are there. */
    static Optional<Moved> of(List<Map<Cue, Double>> without, List<Map<Cue, Double>> with) {
        if (without.size() < FEWEST || with.isEmpty()) {
            return Optional.empty();
        }
        var cues = Arrays.stream(Cue.values())
                .filter(cue -> found(cue, without) >= MOSTLY_FOUND && found(cue, with) >= MOSTLY_FOUND)
                .filter(cue -> varies(cue, without))
                .toList();
        var before = columns(cues, without);
        var after = columns(cues, with);
        int n = before.length == 0 ? 0 : before[0].length;
        int m = after.length == 0 ? 0 : after[0].length;
        int freedom = n - 1 + (m > 0 ? m - 1 : 0);
        if (cues.size() < 2 || m == 0 || freedom < Math.max(FEWEST, cues.size() + 2)) {
            return Optional.empty();
        }
        var shift = new double[cues.size()];
        for (int i = 0; i < shift.length; i++) {
            shift[i] = mean(after[i]) - mean(before[i]);
        }
        return Optional.of(new Moved(cues, shift, pooled(cues, before, after, freedom), 1.0 / n + 1.0 / m, freedom));
    }

    List<Cue> cues() {
        return cues;
    }

    RealVector shift() {
        return shift.copy();
    }

    RealMatrix covariance() {
        return covariance.copy();
    }

    /** How far a cue ordinarily spreads from one tightening to the next. */
    double spread(int cue) {
        return spreads[cue];
    }

    /** Standard error of how far a cue moved. */
    double error(int cue) {
        return Math.sqrt(covariance.getEntry(cue, cue));
    }

    /** How far a cue moved, in standard errors; empty where it is none of the cues. */
    Optional<Double> inErrors(Cue cue) {
        int i = cues.indexOf(cue);
        return i < 0 ? Optional.empty() : Optional.of(shift.getEntry(i) / error(i));
    }

    int freedom() {
        return freedom;
    }

    private static double found(Cue cue, List<Map<Cue, Double>> rows) {
        return (double) rows.stream().filter(row -> row.containsKey(cue)).count() / rows.size();
    }

    private static boolean varies(Cue cue, List<Map<Cue, Double>> rows) {
        return rows.stream()
                        .map(row -> row.get(cue))
                        .filter(Objects::nonNull)
                        .distinct()
                        .count()
                > 2;
    }

    private static double[][] columns(List<Cue> cues, List<Map<Cue, Double>> rows) {
        var whole = rows.stream().filter(row -> row.keySet().containsAll(cues)).toList();
        return cues.stream()
                .map(cue -> drawnIn(whole.stream()
                        .mapToDouble(row -> Objects.requireNonNull(row.get(cue)))
                        .toArray()))
                .toArray(double[][]::new);
    }

    private static double[] drawnIn(double[] values) {
        double middle = Sample.derived(values).median();
        double reach = REACH
                * TO_SIGMA
                * Sample.derived(Arrays.stream(values)
                                .map(value -> Math.abs(value - middle))
                                .toArray())
                        .median();
        double widest = Arrays.stream(values)
                .map(value -> Math.abs(value - middle))
                .max()
                .orElse(0);
        return reach > ROUNDING * widest
                ? Arrays.stream(values)
                        .map(value -> Math.max(middle - reach, Math.min(middle + reach, value)))
                        .toArray()
                : values;
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }

    private static double[][] pooled(List<Cue> cues, double[][] before, double[][] after, int freedom) {
        int p = before.length;
        var pooled = new double[p][p];
        for (var side : List.of(before, after)) {
            for (int i = 0; i < p; i++) {
                for (int j = 0; j < p; j++) {
                    pooled[i][j] += products(side[i], side[j]) / freedom;
                }
            }
        }
        for (int i = 0; i < p; i++) {
            double least = 0.5 * Math.pow(10, -cues.get(i).decimals());
            pooled[i][i] = Math.max(pooled[i][i], least * least);
        }
        return pooled;
    }

    private static double products(double[] a, double[] b) {
        double meanA = mean(a);
        double meanB = mean(b);
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += (a[i] - meanA) * (b[i] - meanB);
        }
        return sum;
    }
}
