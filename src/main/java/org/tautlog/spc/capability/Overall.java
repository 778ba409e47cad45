package org.tautlog.spc.capability;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Interval;
import org.tautlog.spc.Proportion;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Sample;

/** What all values together say: normality first, then the indices by the form that holds. */
record Overall(
        Answer<AndersonDarling> normality,
        Shape shape,
        Answer<CapabilityIndex> spread,
        Answer<CapabilityIndex> nearest,
        Answer<FractionOutside> outside,
        NormalScores scores) {
    /** Fewest values for which the 0.135 % point lies within them: 1 / 0.00135, rounded up to a plain number. */
    static final int LEAST_EMPIRICAL = 1000;

    static Overall of(Sample sample, SpecLimits spec, CapabilityOptions options) {
        var normality = AndersonDarling.of(sample.toArray());
        boolean normal = normality
                .found()
                .map(test -> test.pValue() >= options.normalityLevel())
                .orElse(true);
        if (normal) return normal(sample, spec, options, normality);
        var fit = FittedShape.best(sample)
                .or(() -> sample.size() >= LEAST_EMPIRICAL
                        ? FittedShape.fit(Shape.EMPIRICAL, sample)
                        : java.util.Optional.empty());
        return fit.map(it -> byPercentiles(sample, spec, options, normality, it))
                .orElseGet(() -> noForm(sample, normality));
    }

    private static Overall normal(
            Sample sample, SpecLimits spec, CapabilityOptions options, Answer<AndersonDarling> normality) {
        var indices = new NormalIndices(sample.mean(), sample.sd(), sample.size(), sample.size() - 1, spec);
        return new Overall(
                normality,
                Shape.NORMAL,
                indices.spread(options.confidence()),
                Answer.of(indices.nearest(options.confidence())),
                counted(sample, spec, options).map(counted -> normalOutside(indices, options, counted)),
                NormalScores.ofNormal());
    }

    private static FractionOutside normalOutside(NormalIndices indices, CapabilityOptions options, Proportion counted) {
        var spec = indices.spec();
        var distances = IntStream.range(0, 2)
                .mapToObj(side -> side == 0
                        ? spec.lowerLimit().stream().map(l -> (indices.mean() - l) / indices.sd())
                        : spec.upperLimit().stream().map(u -> (u - indices.mean()) / indices.sd()))
                .flatMapToDouble(s -> s)
                .toArray();
        double tail = (1 - options.confidence()) / 2 / distances.length;
        var normal = NormalDistribution.of(0, 1);
        double estimate = 0;
        double lower = 0;
        double upper = 0;
        for (double k : distances) {
            estimate += normal.survivalProbability(k);
            lower += ToleranceFactor.fractionBeyond(k, indices.n(), tail);
            upper += ToleranceFactor.fractionBeyond(k, indices.n(), 1 - tail);
        }
        var bounds = new Interval(Math.min(lower, estimate), Math.min(1, upper), options.confidence());
        return new FractionOutside(counted, Math.min(1, estimate), bounds, Shape.NORMAL);
    }

    private static Overall byPercentiles(
            Sample sample,
            SpecLimits spec,
            CapabilityOptions options,
            Answer<AndersonDarling> normality,
            FittedShape fit) {
        var method = fit.shape() == Shape.EMPIRICAL
                ? CapabilityIndex.Method.PERCENTILE_EMPIRICAL
                : CapabilityIndex.Method.PERCENTILE_FITTED;
        var again = refits(sample, fit.shape(), options);
        if (again.length < options.resamples() / 2) return noForm(sample, normality);
        var percentiles = fit.percentiles();
        int n = sample.size();
        OptionalDouble spread = percentiles.spread(spec);
        Answer<CapabilityIndex> spreadIndex = spread.isEmpty()
                ? Answer.missing(Reason.NOT_ASKED, "only one limit is given; an index of spread alone needs both")
                : Answer.of(new CapabilityIndex(
                        spread.getAsDouble(),
                        bounds(again, f -> f.percentiles().spread(spec).orElseThrow(), options),
                        n,
                        method));
        var nearest = new CapabilityIndex(
                percentiles.nearest(spec), bounds(again, f -> f.percentiles().nearest(spec), options), n, method);
        return new Overall(
                normality,
                fit.shape(),
                spreadIndex,
                Answer.of(nearest),
                counted(sample, spec, options)
                        .map(counted -> new FractionOutside(
                                counted, fit.outside(spec), bounds(again, f -> f.outside(spec), options), fit.shape())),
                fit.shape() == Shape.EMPIRICAL ? NormalScores.byRanks(sample) : NormalScores.of(fit));
    }

    private static Overall noForm(Sample sample, Answer<AndersonDarling> normality) {
        String said =
                "neither the normal nor a lognormal, Weibull or Gumbel form holds, and the percentiles cannot be read from "
                        + sample.size() + " values: that needs " + LEAST_EMPIRICAL + ", in fine enough steps";
        return new Overall(
                normality,
                Shape.EMPIRICAL,
                Answer.missing(Reason.ASSUMPTION_FAILS, said),
                Answer.missing(Reason.ASSUMPTION_FAILS, said),
                Answer.missing(Reason.ASSUMPTION_FAILS, said),
                NormalScores.byRanks(sample));
    }

    private static Answer<Proportion> counted(Sample sample, SpecLimits spec, CapabilityOptions options) {
        long beyond = Arrays.stream(sample.toArray()).filter(spec::outside).count();
        return Proportion.of(beyond, sample.size(), options.confidence(), Proportion.Method.CLOPPER_PEARSON);
    }

    private static FittedShape[] refits(Sample sample, Shape shape, CapabilityOptions options) {
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(options.seed());
        return IntStream.range(0, options.resamples())
                .mapToObj(r -> IntStream.range(0, sample.size())
                        .mapToDouble(i -> sample.at(random.nextInt(sample.size())))
                        .toArray())
                .flatMap(x ->
                        Sample.of(x, 2, "a resample").found().flatMap(again -> FittedShape.fit(shape, again)).stream())
                .toArray(FittedShape[]::new);
    }

    private static Interval bounds(FittedShape[] fits, ToDoubleFunction<FittedShape> index, CapabilityOptions options) {
        var values = Arrays.stream(fits).mapToDouble(index).sorted().toArray();
        double tail = (1 - options.confidence()) / 2;
        int low = (int) Math.floor(tail * (values.length - 1));
        return new Interval(values[low], values[values.length - 1 - low], options.confidence());
    }
}
