package org.tautlog.spc.capability;

import java.util.Arrays;
import java.util.function.Function;
import org.tautlog.spc.Answer;
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
 *   <li>Where neighbours resemble each other, no sigma is widened here: the word on control says what the charts saw.
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
            return IndividualsChart.phaseOne(values, charting)
                    .map(phase -> study(
                            sample,
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
                    var overall = Overall.of(sample, spec, options);
                    return new MachineCapability(
                            sample.size(),
                            sample.mean(),
                            sample.sd(),
                            spec,
                            Stability.ofIndividuals(values, overall.scores(), options.stabilityRules()),
                            overall.normality(),
                            overall.shape(),
                            overall.spread(),
                            overall.nearest(),
                            overall.outside());
                });
    }

    private static Capability study(
            Sample sample,
            double shortSigma,
            double freedom,
            SpecLimits spec,
            Function<NormalScores, Stability> control,
            CapabilityOptions options) {
        var overall = Overall.of(sample, spec, options);
        Answer<CapabilityIndex> cp;
        Answer<CapabilityIndex> cpk;
        if (overall.shape() == Shape.NORMAL) {
            var within = new NormalIndices(sample.mean(), shortSigma, sample.size(), freedom, spec);
            cp = within.spread(options.confidence());
            cpk = Answer.of(within.nearest(options.confidence()));
        } else {
            String said =
                    "the values are not normal, so a short-term standard deviation does not give their percentiles";
            cp = Answer.missing(Reason.ASSUMPTION_FAILS, said);
            cpk = Answer.missing(Reason.ASSUMPTION_FAILS, said);
        }
        return new Capability(
                sample.size(),
                sample.mean(),
                shortSigma,
                sample.sd(),
                spec,
                control.apply(overall.scores()),
                overall.normality(),
                overall.shape(),
                cp,
                cpk,
                overall.spread(),
                overall.nearest(),
                overall.outside());
    }

    private static double movingRangeFreedom(int n) {
        return (n - 1.0) * (n - 1.0) / (2 * (0.8264 * n - 1.082));
    }
}
