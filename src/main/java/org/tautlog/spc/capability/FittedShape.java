package org.tautlog.spc.capability;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.GumbelDistribution;
import org.apache.commons.statistics.distribution.LogNormalDistribution;
import org.apache.commons.statistics.distribution.WeibullDistribution;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.tautlog.spc.QuantileType;
import org.tautlog.spc.Sample;

/**
 * Distributions fitted by maximum likelihood, each accepted at the 5 % point of its Anderson-Darling distance.
 *
 * <p>Source: critical values 0.752 (lognormal, by logarithms) and 0.757 / (1 + 0.2 / sqrt(n)) (Weibull, Gumbel): Stephens in
 * D'Agostino and Stephens (1986), from memory.
 */
final class FittedShape {
    private static final double LOGNORMAL_5_PERCENT = 0.752;
    private static final double EXTREME_5_PERCENT = 0.757;

    private final Shape shape;
    private final DoubleUnaryOperator inverse;
    private final DoubleUnaryOperator distribution;
    private final double distanceOverCritical;

    private FittedShape(
            Shape shape, DoubleUnaryOperator inverse, DoubleUnaryOperator distribution, double distanceOverCritical) {
        this.shape = shape;
        this.inverse = inverse;
        this.distribution = distribution;
        this.distanceOverCritical = distanceOverCritical;
    }

    /** The best fitting form among those not rejected. */
    static Optional<FittedShape> best(Sample sample) {
        return Stream.of(Shape.LOGNORMAL, Shape.WEIBULL, Shape.GUMBEL)
                .flatMap(shape -> fit(shape, sample).stream())
                .filter(FittedShape::holds)
                .min(Comparator.comparingDouble(fit -> fit.distanceOverCritical));
    }

    static Optional<FittedShape> fit(Shape shape, Sample sample) {
        if (sample.sd() == 0) return Optional.empty();
        Optional<FittedShape> fit = switch (shape) {
            case LOGNORMAL -> lognormal(sample);
            case WEIBULL -> weibull(sample);
            case GUMBEL -> gumbel(sample);
            case EMPIRICAL -> Optional.of(empirical(sample));
            case NORMAL -> Optional.empty();
        };
        return fit.filter(FittedShape::hasPercentiles);
    }

    /** Coarse readings can have two percentiles in one value, and wild ones a percentile beyond all numbers. */
    private boolean hasPercentiles() {
        double low = inverse.applyAsDouble(Percentiles.TAIL);
        double middle = inverse.applyAsDouble(0.5);
        double high = inverse.applyAsDouble(1 - Percentiles.TAIL);
        return low < middle && middle < high && Double.isFinite(low) && Double.isFinite(high - low);
    }

    /** Whether the values do not reject it. */
    boolean holds() {
        return distanceOverCritical <= 1;
    }

    Shape shape() {
        return shape;
    }

    double quantile(double share) {
        return inverse.applyAsDouble(share);
    }

    double share(double upTo) {
        return distribution.applyAsDouble(upTo);
    }

    Percentiles percentiles() {
        return Percentiles.of(inverse);
    }

    /** Share of values below one value. */
    double below(double x) {
        return distribution.applyAsDouble(x);
    }

    double outside(SpecLimits spec) {
        double below = spec.lowerLimit().stream().map(distribution).sum();
        double above = spec.upperLimit().stream()
                .map(u -> 1 - distribution.applyAsDouble(u))
                .sum();
        return Math.min(1, Math.max(0, below) + Math.max(0, above));
    }

    private static FittedShape of(Shape shape, ContinuousDistribution d, Sample sample, double critical) {
        return new FittedShape(
                shape,
                d::inverseCumulativeProbability,
                d::cumulativeProbability,
                AndersonDarling.distance(sample, d) / critical);
    }

    private static Optional<FittedShape> lognormal(Sample sample) {
        if (sample.min() <= 0) return Optional.empty();
        var logs = new double[sample.size()];
        for (int i = 0; i < logs.length; i++) logs[i] = Math.log(sample.at(i));
        var log = Sample.varying(logs, 2, "logarithms").found();
        int n = sample.size();
        return log.map(it -> of(
                Shape.LOGNORMAL,
                LogNormalDistribution.of(it.mean(), it.sd()),
                sample,
                LOGNORMAL_5_PERCENT / (1 + 0.75 / n + 2.25 / ((double) n * n))));
    }

    private static Optional<FittedShape> weibull(Sample sample) {
        if (sample.min() <= 0) return Optional.empty();
        double largest = sample.max();
        var ratio = new double[sample.size()];
        double meanLog = 0;
        for (int i = 0; i < ratio.length; i++) {
            ratio[i] = Math.log(sample.at(i) / largest);
            meanLog += ratio[i] / ratio.length;
        }
        double centre = meanLog;
        DoubleUnaryOperator score = k -> {
            double sum = 0;
            double weighted = 0;
            for (double log : ratio) {
                double power = Math.exp(k * log);
                sum += power;
                weighted += power * log;
            }
            return weighted / sum - 1 / k - centre;
        };
        return root(score, 0.05, 2000).map(k -> {
            double sum = 0;
            for (double log : ratio) sum += Math.exp(k * log);
            double scale = largest * Math.pow(sum / ratio.length, 1 / k);
            return of(Shape.WEIBULL, WeibullDistribution.of(k, scale), sample, extremeCritical(sample));
        });
    }

    private static Optional<FittedShape> gumbel(Sample sample) {
        double mean = sample.mean();
        double least = sample.min();
        DoubleUnaryOperator score = scale -> {
            double sum = 0;
            double weighted = 0;
            for (int i = 0; i < sample.size(); i++) {
                double power = Math.exp(-(sample.at(i) - least) / scale);
                sum += power;
                weighted += power * sample.at(i);
            }
            return scale - mean + weighted / sum;
        };
        return root(score, sample.sd() / 20, sample.sd() * 20).map(scale -> {
            double sum = 0;
            for (int i = 0; i < sample.size(); i++) sum += Math.exp(-(sample.at(i) - least) / scale);
            double location = least - scale * Math.log(sum / sample.size());
            return of(Shape.GUMBEL, GumbelDistribution.of(location, scale), sample, extremeCritical(sample));
        });
    }

    private static FittedShape empirical(Sample sample) {
        var sorted = sample.sorted();
        return new FittedShape(
                Shape.EMPIRICAL,
                p -> QuantileType.R6.ofSorted(sorted, p),
                x -> Sample.below(sorted, x) / (double) sorted.length,
                0);
    }

    private static double extremeCritical(Sample sample) {
        return EXTREME_5_PERCENT / (1 + 0.2 / Math.sqrt(sample.size()));
    }

    private static Optional<Double> root(DoubleUnaryOperator f, double low, double high) {
        if (!(f.applyAsDouble(low) * f.applyAsDouble(high) < 0)) return Optional.empty();
        return Optional.of(new BrentSolver(1e-10, 1e-12).solve(200, f::applyAsDouble, low, high));
    }
}
