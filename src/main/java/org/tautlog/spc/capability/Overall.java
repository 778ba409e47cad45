package org.tautlog.spc.capability;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Autocorrelation;
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
        FractionOutside outside,
        NormalScores scores,
        List<Integer> strays) {
    /** Fewest values for which the 0.135 % point lies within them: 1 / 0.00135, rounded up to a plain number. */
    static final int LEAST_EMPIRICAL = 1000;

    static Overall of(Sample sample, SpecLimits spec, CapabilityOptions options, Autocorrelation neighbours) {
        var all = new Overall(
                AndersonDarling.of(sample.toArray()),
                Shape.EMPIRICAL,
                noForm(sample),
                noForm(sample),
                new FractionOutside(
                        counted(sample, spec, options, neighbours),
                        Answer.missing(Reason.ASSUMPTION_FAILS, "no shape fits")),
                NormalScores.byRanks(sample),
                List.of());
        var judging = new Judging(spec, options, neighbours);
        return judging.known(all, sample)
                .or(() -> Stream.of(Shape.NORMAL, Shape.LOGNORMAL)
                        .flatMap(scale -> Strays.of(sample, scale).stream())
                        .sorted(Comparator.comparingInt(
                                strays -> strays.places().size()))
                        .flatMap(strays -> judging.without(all, strays).stream())
                        .findFirst())
                .or(() -> Optional.of(sample)
                        .filter(it -> it.size() >= LEAST_EMPIRICAL)
                        .flatMap(it -> FittedShape.fit(Shape.EMPIRICAL, it))
                        .flatMap(fit -> judging.byPercentiles(all, sample, fit)))
                .orElse(all);
    }

    private Overall withStrays(List<Integer> places) {
        return new Overall(normality, shape, spread, nearest, outside, scores, places);
    }

    private static Answer<CapabilityIndex> noForm(Sample sample) {
        return Answer.missing(
                Reason.ASSUMPTION_FAILS,
                "neither the normal nor a lognormal, Weibull or Gumbel form holds, and the percentiles cannot be read from "
                        + sample.size() + " values: that needs " + LEAST_EMPIRICAL + ", in fine enough steps");
    }

    private static Proportion counted(
            Sample sample, SpecLimits spec, CapabilityOptions options, Autocorrelation neighbours) {
        long beyond = Arrays.stream(sample.toArray()).filter(spec::outside).count();
        return Proportion.of(beyond, sample.size(), options.confidence(), Proportion.Method.CLOPPER_PEARSON, neighbours)
                .orThrow();
    }

    /** What is the same for every form that is tried. */
    private record Judging(SpecLimits spec, CapabilityOptions options, Autocorrelation neighbours) {
        Optional<Overall> known(Overall all, Sample sample) {
            return holds(all.normality())
                    ? Optional.of(normal(all, sample))
                    : FittedShape.best(sample).flatMap(fit -> byPercentiles(all, sample, fit));
        }

        Optional<Overall> without(Overall all, Strays strays) {
            var rest = strays.rest();
            var overall = strays.scale() == Shape.NORMAL
                    ? Optional.of(rest)
                            .filter(it -> holds(AndersonDarling.of(it.toArray())))
                            .map(it -> normal(all, it))
                    : FittedShape.fit(Shape.LOGNORMAL, rest)
                            .filter(FittedShape::holds)
                            .flatMap(fit -> byPercentiles(all, rest, fit));
            return overall.map(it -> it.withStrays(strays.places()));
        }

        private boolean holds(Answer<AndersonDarling> normality) {
            return normality
                    .found()
                    .map(test -> test.pValue() >= options.normalityLevel())
                    .orElse(true);
        }

        private Overall normal(Overall all, Sample sample) {
            int worth = neighbours.worth(sample.size());
            var indices = new NormalIndices(sample.mean(), sample.sd(), worth, worth - 1, spec);
            return new Overall(
                    all.normality(),
                    Shape.NORMAL,
                    indices.spread(options.confidence()),
                    Answer.of(indices.nearest(options.confidence())),
                    new FractionOutside(all.outside().counted(), Answer.of(foretold(indices))),
                    NormalScores.ofNormal(),
                    List.of());
        }

        private FractionOutside.Foretold foretold(NormalIndices indices) {
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
            return new FractionOutside.Foretold(Math.min(1, estimate), bounds, Shape.NORMAL);
        }

        private Optional<Overall> byPercentiles(Overall all, Sample sample, FittedShape fit) {
            boolean read = fit.shape() == Shape.EMPIRICAL;
            var method = read ? CapabilityIndex.Method.PERCENTILE_EMPIRICAL : CapabilityIndex.Method.PERCENTILE_FITTED;
            var again = refits(sample, fit.shape());
            if (again.length < options.resamples() / 2) return Optional.empty();
            int worth = neighbours.worth(sample.size());
            Answer<CapabilityIndex> spread = fit.percentiles().spread(spec).isEmpty()
                    ? Answer.missing(Reason.NOT_ASKED, "only one limit is given; an index of spread alone needs both")
                    : Answer.of(
                            index(fit, again, f -> f.percentiles().spread(spec).orElseThrow(), worth, method));
            Answer<FractionOutside.Foretold> foretold = read
                    ? Answer.missing(Reason.ASSUMPTION_FAILS, "no shape fits, and what is counted foretells no tails")
                    : Answer.of(foretold(fit, again));
            return Optional.of(new Overall(
                    all.normality(),
                    fit.shape(),
                    spread,
                    Answer.of(index(fit, again, f -> f.percentiles().nearest(spec), worth, method)),
                    new FractionOutside(all.outside().counted(), foretold),
                    read ? NormalScores.byRanks(sample) : NormalScores.of(fit),
                    List.of()));
        }

        private CapabilityIndex index(
                FittedShape fit,
                FittedShape[] again,
                ToDoubleFunction<FittedShape> index,
                int worth,
                CapabilityIndex.Method method) {
            return new CapabilityIndex(index.applyAsDouble(fit), bounds(fit, again, index), worth, method);
        }

        private FractionOutside.Foretold foretold(FittedShape fit, FittedShape[] again) {
            var bounds = bounds(fit, again, f -> f.outside(spec));
            return new FractionOutside.Foretold(
                    fit.outside(spec),
                    new Interval(Math.max(0, bounds.lower()), Math.min(1, bounds.upper()), bounds.confidence()),
                    fit.shape());
        }

        private FittedShape[] refits(Sample sample, Shape shape) {
            UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(options.seed());
            return IntStream.range(0, options.resamples())
                    .mapToObj(r -> IntStream.range(0, sample.size())
                            .mapToDouble(i -> sample.at(random.nextInt(sample.size())))
                            .toArray())
                    .flatMap(x ->
                            Sample.of(x, 2, "a resample").found().flatMap(one -> FittedShape.fit(shape, one)).stream())
                    .toArray(FittedShape[]::new);
        }

        /** The resamples draw values singly, so their bounds widen about the figure where neighbours resemble. */
        private Interval bounds(FittedShape fit, FittedShape[] again, ToDoubleFunction<FittedShape> index) {
            var values = Arrays.stream(again).mapToDouble(index).sorted().toArray();
            double tail = (1 - options.confidence()) / 2;
            int low = (int) Math.floor(tail * (values.length - 1));
            double figure = index.applyAsDouble(fit);
            double widen = neighbours.meanFactor() - 1;
            double lower = values[low];
            double upper = values[values.length - 1 - low];
            return new Interval(
                    lower - widen * Math.max(0, figure - lower),
                    upper + widen * Math.max(0, upper - figure),
                    options.confidence());
        }
    }
}
