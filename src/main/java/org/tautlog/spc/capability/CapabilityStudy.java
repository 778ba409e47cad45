package org.tautlog.spc.capability;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Sample;
import org.tautlog.spc.chart.IndividualsChart;
import org.tautlog.spc.chart.IndividualsOptions;
import org.tautlog.spc.chart.PhaseOneOptions;
import org.tautlog.spc.chart.SubgroupChart;
import org.tautlog.spc.chart.SubgroupOptions;
import org.tautlog.spc.chart.SubgroupSpread;

/**
 * Makes capability studies.
 *
 * <ul>
 *   <li>Cp and Cpk are given for normal values only, with the mean moving range; their bounds use its degrees of freedom,
 *       {@code 1 / (2 cv^2)} with {@code cv^2 = (0.8264 n - 1.082) / (n - 1)^2}.
 *   <li>Where neighbours resemble each other, their short-term standard deviation is too small, so single values give no Cp nor
 *       Cpk; the bounds of all else rest on as many independent values as tell a mean as well.
 *   <li>Where no shape holds but for strays, Pp and Ppk leave these out and there is no Cp nor Cpk; the counted share keeps
 *       them.
 *   <li>The word on control comes from charts of normal scores of the shape that the indices rest on; where no shape holds,
 *       control is not shown.
 *   <li>Values that are all equal give a reason: no index of nothing.
 * </ul>
 *
 * Source: ISO 22514-2 and -3; variance of the mean moving range: Cryer and Ryan, Journal of Quality Technology 22 (1990),
 * from memory.
 */
public final class CapabilityStudy {
    private static final int LEAST = 5;
    private static final int LEAST_MACHINE = 30;

    private CapabilityStudy() {}

    /**
     * Studies a process by single values.
     *
     * @param values values in time order, at least 5, not all equal
     * @param spec the limits
     * @param options how the study is made
     * @return the study, or why there is none
     */
    public static Answer<Capability> process(double[] values, SpecLimits spec, CapabilityOptions options) {
        return Sample.varying(values, LEAST, "a capability study").flatMap(sample -> {
            var charting = IndividualsOptions.withDefaults()
                    .withNeighbours(IndividualsOptions.Neighbours.IGNORE)
                    .withPhaseOne(PhaseOneOptions.keepAll());
            var neighbours = NormalScores.neighbours(values);
            return IndividualsChart.phaseOne(values, charting)
                    .map(phase -> study(
                            sample,
                            neighbours,
                            neighbours.allowed() > 0
                                    ? Optional.of(
                                            "neighbours resemble each other, so their short-term standard deviation is"
                                                    + " too small to foretell by")
                                    : Optional.empty(),
                            phase.limits().shortSigma(),
                            movingRangeFreedom(values.length),
                            spec,
                            scores -> Stability.ofIndividuals(values, scores, options.stabilityRules()),
                            options));
        });
    }

    /**
     * Studies a process by subgroups: Cp and Cpk rest on the pooled spread within them.
     *
     * @param subgroups subgroups in time order, at least 2, of at least 2 values each
     * @param spec the limits
     * @param options how the study is made
     * @return the study, or why there is none
     */
    public static Answer<Capability> process(double[][] subgroups, SpecLimits spec, CapabilityOptions options) {
        var charting = SubgroupOptions.withDefaults()
                .withSpread(SubgroupSpread.POOLED)
                .withPhaseOne(PhaseOneOptions.keepAll());
        return SubgroupChart.phaseOne(subgroups, charting).flatMap(phase -> {
            var limits = phase.limits();
            var values =
                    Arrays.stream(subgroups).flatMapToDouble(Arrays::stream).toArray();
            return Sample.varying(values, LEAST, "a capability study")
                    .map(sample -> study(
                            sample,
                            NormalScores.neighbours(Arrays.stream(subgroups)
                                    .mapToDouble(group ->
                                            Arrays.stream(group).average().orElseThrow())
                                    .toArray()),
                            Optional.empty(),
                            limits.sigma(),
                            limits.values() - limits.subgroups(),
                            spec,
                            scores -> Stability.ofSubgroups(subgroups, scores, options.stabilityRules()),
                            options));
        });
    }

    /**
     * Studies a machine by one run.
     *
     * @param values values in time order, at least 30, not all equal
     * @param spec the limits
     * @param options how the study is made
     * @return the study, or why there is none
     */
    public static Answer<MachineCapability> machine(double[] values, SpecLimits spec, CapabilityOptions options) {
        return Sample.varying(values, LEAST_MACHINE, "a machine capability study")
                .map(sample -> {
                    var neighbours = NormalScores.neighbours(values);
                    var overall = Overall.of(sample, spec, options, neighbours);
                    return new MachineCapability(
                            sample.size(),
                            sample.mean(),
                            sample.sd(),
                            spec,
                            neighbours,
                            Stability.ofIndividuals(values, overall.scores(), options.stabilityRules())
                                    .withStrays(overall.strays()),
                            overall.normality(),
                            overall.shape(),
                            overall.spread(),
                            overall.nearest(),
                            overall.outside());
                });
    }

    private static Capability study(
            Sample sample,
            Autocorrelation neighbours,
            Optional<String> whyNoShortTerm,
            double shortSigma,
            double freedom,
            SpecLimits spec,
            Function<NormalScores, Stability> control,
            CapabilityOptions options) {
        var overall = Overall.of(sample, spec, options, neighbours);
        Answer<NormalIndices> within = whyNoShortTerm(overall)
                .or(() -> whyNoShortTerm)
                .<Answer<NormalIndices>>map(why -> Answer.missing(Reason.ASSUMPTION_FAILS, why))
                .orElseGet(() -> Answer.of(
                        new NormalIndices(sample.mean(), shortSigma, neighbours.worth(sample.size()), freedom, spec)));
        return new Capability(
                sample.size(),
                sample.mean(),
                shortSigma,
                sample.sd(),
                spec,
                neighbours,
                control.apply(overall.scores()).withStrays(overall.strays()),
                overall.normality(),
                overall.shape(),
                within.flatMap(indices -> indices.spread(options.confidence())),
                within.map(indices -> indices.nearest(options.confidence())),
                overall.spread(),
                overall.nearest(),
                overall.outside());
    }

    private static Optional<String> whyNoShortTerm(Overall overall) {
        if (overall.shape() != Shape.NORMAL)
            return Optional.of(
                    "the values are not normal, so a short-term standard deviation does not give their percentiles");
        return overall.strays().isEmpty()
                ? Optional.empty()
                : Optional.of("strays are in the short-term standard deviation");
    }

    private static double movingRangeFreedom(int n) {
        return (n - 1.0) * (n - 1.0) / (2 * (0.8264 * n - 1.082));
    }
}
