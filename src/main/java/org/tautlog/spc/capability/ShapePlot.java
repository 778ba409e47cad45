package org.tautlog.spc.capability;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.jspecify.annotations.Nullable;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Interval;
import org.tautlog.spc.QuantileType;
import org.tautlog.spc.Sample;

/**
 * How values lie and how the shape of a study lets expect them.
 *
 * <pre>
 * probability plot: the i-th of n ordered values at the normal score of its median rank,
 *   m(1) = 1 - 0.5^(1/n), m(i) = (i - 0.3175) / (n + 0.365), m(n) = 0.5^(1/n)
 * steps: 2.7 min(s, IQR / 1.35) / n^(1/3) wide, rounded down to 1, 2 or 5 times a power of ten; IQR / 1.35 is s of a normal
 * </pre>
 *
 * Source: median ranks: NIST/SEMATECH e-Handbook 1.3.3.21; width of steps: Freedman and Diaconis (1981), from memory.
 *
 * @param ordered the values, smallest first, each with the normal score of its median rank
 * @param line values of the shape with their normal scores; empty where no shape holds
 * @param steps the share of the values in each step, the steps without a gap between them
 * @param stepWidth width of a step, in the unit of the values
 * @param expected the share that the shape lets expect in a step around a value; empty where no shape holds
 * @param reference where the middle 99.73 % lie, from the 0.135 % to the 99.865 % point of what the indices rest on; null where
 *     there is none
 */
public record ShapePlot(
        List<Point> ordered,
        List<Point> line,
        List<Point> steps,
        double stepWidth,
        List<Point> expected,
        @Nullable Interval reference) {
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);
    private static final double MIDDLE = 0.9973;
    private static final int LINE_POINTS = 81;
    private static final double FURTHEST_SCORE = 4;
    private static final int MOST_STEPS = 60;
    private static final int LEAST_STEPS = 4;
    /** Distance between the quartiles of a normal distribution, in its standard deviations. */
    private static final double NORMAL_QUARTILES = 1.35;

    /**
     * A point of a plot.
     *
     * @param x a value; of a step its middle
     * @param y its normal score, or a share from 0 to 1
     */
    public record Point(double x, double y) {}

    /** Copies the lists. */
    public ShapePlot {
        ordered = List.copyOf(ordered);
        line = List.copyOf(line);
        steps = List.copyOf(steps);
        expected = List.copyOf(expected);
    }

    /**
     * Lays values out beside a shape.
     *
     * @param values values, at least 2, not all equal
     * @param shape the shape that a study found
     * @param strays places of the values that it found the shape without, from 0
     * @return the plot, or why there is none
     */
    public static Answer<ShapePlot> of(double[] values, Shape shape, Collection<Integer> strays) {
        var out = Set.copyOf(strays);
        var rest = IntStream.range(0, values.length)
                .filter(i -> !out.contains(i))
                .mapToDouble(i -> values[i])
                .toArray();
        return Sample.varying(rest, 2, "a probability plot")
                .flatMap(fitted ->
                        Sample.varying(values, 2, "a probability plot").map(sample -> of(sample, fitted, shape)));
    }

    private static ShapePlot of(Sample sample, Sample fitted, Shape shape) {
        var sorted = sample.sorted();
        double width = width(sample);
        var inverse = inverse(fitted, shape);
        var cumulative = cumulative(fitted, shape);
        boolean curve = inverse.isPresent() && shape != Shape.EMPIRICAL;
        var line = new ArrayList<Point>();
        var expected = new ArrayList<Point>();
        for (int i = 0; curve && i < LINE_POINTS; i++) {
            double score = FURTHEST_SCORE * (2.0 * i / (LINE_POINTS - 1) - 1);
            double x = inverse.get().applyAsDouble(STANDARD.cumulativeProbability(score));
            if (Double.isFinite(x)) {
                line.add(new Point(x, score));
                double share = cumulative.applyAsDouble(x + width / 2) - cumulative.applyAsDouble(x - width / 2);
                expected.add(new Point(x, share));
            }
        }
        return new ShapePlot(
                ordered(sorted),
                line,
                steps(sorted, width),
                width,
                expected,
                inverse.map(of -> new Interval(
                                of.applyAsDouble((1 - MIDDLE) / 2), of.applyAsDouble((1 + MIDDLE) / 2), MIDDLE))
                        .orElse(null));
    }

    private static Optional<DoubleUnaryOperator> inverse(Sample sample, Shape shape) {
        if (shape == Shape.NORMAL) return Optional.of(normal(sample)::inverseCumulativeProbability);
        if (shape == Shape.EMPIRICAL && sample.size() < Overall.LEAST_EMPIRICAL) return Optional.empty();
        return FittedShape.fit(shape, sample).map(fit -> fit::quantile);
    }

    private static DoubleUnaryOperator cumulative(Sample sample, Shape shape) {
        if (shape == Shape.NORMAL) return normal(sample)::cumulativeProbability;
        return FittedShape.fit(shape, sample)
                .<DoubleUnaryOperator>map(fit -> fit::share)
                .orElse(x -> 0);
    }

    private static NormalDistribution normal(Sample sample) {
        return NormalDistribution.of(sample.mean(), sample.sd());
    }

    private static List<Point> ordered(double[] sorted) {
        int n = sorted.length;
        return IntStream.range(0, n)
                .mapToObj(i -> new Point(sorted[i], STANDARD.inverseCumulativeProbability(medianRank(i + 1, n))))
                .toList();
    }

    static double medianRank(int i, int n) {
        if (i == n) return Math.pow(0.5, 1.0 / n);
        return i == 1 ? 1 - Math.pow(0.5, 1.0 / n) : (i - 0.3175) / (n + 0.365);
    }

    private static double width(Sample sample) {
        var sorted = sample.sorted();
        int n = sorted.length;
        double range = sorted[n - 1] - sorted[0];
        double quartiles = QuantileType.R7.ofSorted(sorted, 0.75) - QuantileType.R7.ofSorted(sorted, 0.25);
        double gap = IntStream.range(1, n)
                .mapToDouble(i -> sorted[i] - sorted[i - 1])
                .filter(apart -> apart > 1e-9 * range)
                .min()
                .orElse(range);
        double spread = Math.min(sample.sd(), quartiles / NORMAL_QUARTILES);
        double wanted = Math.min(2 * NORMAL_QUARTILES * spread / Math.cbrt(n), range / LEAST_STEPS);
        return Math.max(wanted > 0 ? down(wanted) : 0, up(Math.max(gap, range / MOST_STEPS)));
    }

    private static double down(double width) {
        double power = Math.pow(10, Math.floor(Math.log10(width)));
        double digit = width / power;
        return (digit >= 4.999 ? 5 : digit >= 1.999 ? 2 : 1) * power;
    }

    private static double up(double width) {
        double power = Math.pow(10, Math.floor(Math.log10(width)));
        double digit = width / power;
        return (digit <= 1.001 ? 1 : digit <= 2.001 ? 2 : digit <= 5.001 ? 5 : 10) * power;
    }

    private static List<Point> steps(double[] sorted, double width) {
        long first = Math.round(sorted[0] / width);
        int count = (int) (Math.round(sorted[sorted.length - 1] / width) - first) + 1;
        var counted = new int[count];
        for (double x : sorted) counted[(int) (Math.round(x / width) - first)]++;
        return IntStream.range(0, count)
                .mapToObj(i -> new Point((first + i) * width, counted[i] / (double) sorted.length))
                .toList();
    }
}
