package org.tautlog.spc.gauge;

import org.apache.commons.statistics.distribution.FDistribution;
import org.jspecify.annotations.Nullable;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Sample;
import org.tautlog.spc.chart.ChartConstants;

/**
 * Crossed gauge studies: every appraiser measures every part equally often.
 *
 * <pre>
 * ANOVA: mean squares MSp, MSo, MSpo, MSe of parts, appraisers, interaction and repeats (n parts, k appraisers, r trials)
 *   kept:   e = MSe, po = (MSpo - MSe) / r, o = (MSo - MSpo) / (n r), p = (MSp - MSpo) / (k r)
 *   pooled: e = (SSpo + SSe) / (their degrees of freedom), o = (MSo - e) / (n r), p = (MSp - e) / (k r)
 *   variances below 0 count as 0;  EV^2 = e, AV^2 = o + po
 * average and range: EV = mean range / d2(r), AV^2 = (range of appraisers' means / d2*(k))^2 - EV^2 / (n r),
 *   PV = range of parts' means / d2*(n),  d2*(m) = sqrt(d2(m)^2 + d3(m)^2) for a single range
 * GRR^2 = EV^2 + AV^2, TV^2 = GRR^2 + PV^2
 * </pre>
 *
 * Source: AIAG, Measurement Systems Analysis, 4th edition, chapter III-B and appendix A; d2*: Duncan (1955), from memory. The
 * manual's K1, K2, K3 are these divisors rounded.
 */
public final class GaugeStudy {
    private GaugeStudy() {}

    /**
     * Studies a gauge by analysis of variance.
     *
     * @param measured by part, appraiser and trial; at least 2 of each, all equally many
     * @param options how it is made
     * @return the study, or why there is none
     */
    public static Answer<GaugeResult> byAnova(double[][][] measured, GaugeOptions options) {
        return checked(measured).flatMap(all -> {
            int n = measured.length;
            int k = measured[0].length;
            int r = measured[0][0].length;
            double middle = all.mean();
            double parts = 0;
            double cells = 0;
            double repeats = 0;
            var byAppraiser = new double[k];
            for (var part : measured) {
                double partMean = 0;
                for (int o = 0; o < k; o++) {
                    var cell = Sample.derived(part[o]);
                    repeats += cell.sumOfSquares();
                    cells += r * square(cell.mean() - middle);
                    partMean += cell.mean() / k;
                    byAppraiser[o] += cell.mean() / n;
                }
                parts += k * r * square(partMean - middle);
            }
            double appraisers = 0;
            for (double mean : byAppraiser) appraisers += n * r * square(mean - middle);
            double interaction = Math.max(0, cells - parts - appraisers);
            if (!(repeats > 0))
                return Answer.missing(
                        Reason.NO_SPREAD,
                        "every repeat equals the first; the readings are too coarse to show repeatability");
            return Answer.of(result(n, k, r, parts, appraisers, interaction, repeats, options));
        });
    }

    private static GaugeResult result(
            int n,
            int k,
            int r,
            double parts,
            double appraisers,
            double interaction,
            double repeats,
            GaugeOptions options) {
        double msp = parts / (n - 1);
        double mso = appraisers / (k - 1);
        double dfpo = (n - 1.0) * (k - 1);
        double dfe = n * k * (r - 1.0);
        double mspo = interaction / dfpo;
        double mse = repeats / dfe;
        double p = FDistribution.of(dfpo, dfe).survivalProbability(mspo / mse);
        boolean pooled = p > options.poolAbove();
        double e = pooled ? (interaction + repeats) / (dfpo + dfe) : mse;
        double against = pooled ? e : mspo;
        double po = pooled ? 0 : Math.max(0, (mspo - mse) / r);
        double o = Math.max(0, (mso - against) / ((double) n * r));
        double part = Math.max(0, (msp - against) / ((double) k * r));
        return combined(
                GaugeResult.Method.ANOVA,
                Math.sqrt(e),
                Math.sqrt(o + po),
                Math.sqrt(part),
                new GaugeResult.Interaction(p, pooled),
                new int[] {n, k, r});
    }

    /**
     * Studies a gauge by averages and ranges.
     *
     * @param measured by part, appraiser and trial; at least 2 of each, all equally many
     * @return the study, or why there is none
     */
    public static Answer<GaugeResult> byRanges(double[][][] measured) {
        return checked(measured).flatMap(all -> {
            int n = measured.length;
            int k = measured[0].length;
            int r = measured[0][0].length;
            double meanRange = 0;
            var byAppraiser = new double[k];
            var byPart = new double[n];
            for (int i = 0; i < n; i++) {
                for (int o = 0; o < k; o++) {
                    var cell = Sample.derived(measured[i][o]);
                    meanRange += (cell.max() - cell.min()) / (n * k);
                    byAppraiser[o] += cell.mean() / n;
                    byPart[i] += cell.mean() / k;
                }
            }
            if (!(meanRange > 0))
                return Answer.missing(
                        Reason.NO_SPREAD,
                        "every repeat equals the first; the readings are too coarse to show repeatability");
            double ev = meanRange / ChartConstants.of(r).d2();
            double av = square(range(byAppraiser) / single(k)) - ev * ev / (n * r);
            return Answer.of(combined(
                    GaugeResult.Method.AVERAGE_RANGE,
                    ev,
                    Math.sqrt(Math.max(0, av)),
                    range(byPart) / single(n),
                    null,
                    new int[] {n, k, r}));
        });
    }

    private static GaugeResult combined(
            GaugeResult.Method method,
            double ev,
            double av,
            double pv,
            GaugeResult.@Nullable Interaction interaction,
            int[] sizes) {
        double gauge = Math.hypot(ev, av);
        return new GaugeResult(
                method, ev, av, gauge, pv, Math.hypot(gauge, pv), interaction, sizes[0], sizes[1], sizes[2]);
    }

    private static Answer<Sample> checked(double[][][] measured) {
        if (measured.length == 0) return Answer.missing(Reason.EMPTY, "no parts were measured");
        int k = measured[0].length;
        int r = k == 0 ? 0 : measured[0][0].length;
        if (measured.length < 2 || k < 2 || r < 2)
            return Answer.missing(
                    Reason.TOO_FEW,
                    measured.length + " parts, " + k + " appraisers, " + r + " trials; a study needs 2 of each");
        for (int i = 0; i < measured.length; i++) {
            if (measured[i].length != k)
                return Answer.missing(
                        Reason.UNEQUAL,
                        "part " + (i + 1) + " was measured by " + measured[i].length + " of " + k + " appraisers");
            for (var trials : measured[i])
                if (trials.length != r)
                    return Answer.missing(
                            Reason.UNEQUAL,
                            "part " + (i + 1) + " was measured " + trials.length + " times by one appraiser, not " + r);
        }
        var all = java.util.Arrays.stream(measured)
                .flatMap(java.util.Arrays::stream)
                .flatMapToDouble(java.util.Arrays::stream)
                .toArray();
        return Sample.varying(all, 8, "a gauge study");
    }

    /** Divisor of a single range, whose mean square counts and not its mean. */
    private static double single(int m) {
        var c = ChartConstants.of(m);
        return Math.hypot(c.d2(), c.d3());
    }

    private static double range(double[] values) {
        var s = Sample.derived(values);
        return s.max() - s.min();
    }

    private static double square(double x) {
        return x * x;
    }
}
