package org.tautlog.spc.timeweighted;

import org.tautlog.spc.chart.Chart;
import org.tautlog.spc.chart.IndividualsLimits;
import org.tautlog.spc.chart.IndividualsOptions;

/**
 * Frozen values of a tabular CUSUM: all that phase 2 needs. All in the units of the data.
 *
 * <pre>
 * C+[i] = max(0, x[i] - (target + K) + C+[i-1]),  C-[i] = max(0, (target - K) - x[i] + C-[i-1]);  signal above H
 * </pre>
 *
 * Source: NIST/SEMATECH e-Handbook 6.3.2.3; Montgomery 9.1; head start: Lucas and Crosier, Technometrics 24 (1982).
 *
 * @param target where the process should lie
 * @param reference K, the slack, above 0
 * @param decision H, the sum that gives a signal, above 0
 * @param headStart where both sums start, from 0 to below H
 */
public record CusumLimits(double target, double reference, double decision, double headStart) {
    /** Checks the ranges. */
    public CusumLimits {
        if (!Double.isFinite(target)) throw new IllegalArgumentException("target is " + target + "; it must be finite");
        if (!(reference > 0)) throw new IllegalArgumentException("reference is " + reference + "; it must be above 0");
        if (!(decision > 0 && Double.isFinite(decision)))
            throw new IllegalArgumentException("decision is " + decision + "; it must be above 0 and finite");
        if (!(headStart >= 0 && headStart < decision))
            throw new IllegalArgumentException(
                    "headStart is " + headStart + "; it must lie from 0 to below " + decision);
    }

    /** {@return what the upper sum, and the lower one turned below zero, are held against} */
    public Chart.Lines lines() {
        return new Chart.Lines(-decision, 0, decision, 0, 1);
    }

    /**
     * Carries limits of single values over to their sums. Where neighbours resemble each other, K and H grow by the factor
     * on means, sqrt((1 + r) / (1 - r)).
     *
     * @param values limits of single values, from their phase 1
     * @param options how the sums are made
     * @return the limits
     */
    public static CusumLimits of(IndividualsLimits values, CusumOptions options) {
        double sigma = values.sigma()
                * (options.neighbours() == IndividualsOptions.Neighbours.WIDEN
                        ? values.neighbours().meanFactor()
                        : 1);
        double decision = options.decision() * sigma;
        return new CusumLimits(
                values.centre(),
                options.reference() * sigma,
                decision,
                options.headStart() == CusumOptions.HeadStart.HALF ? decision / 2 : 0);
    }
}
