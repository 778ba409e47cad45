package org.tautlog.spc.capability;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Interval;
import org.tautlog.spc.Reason;

/**
 * Indices of a normal process from its mean and standard deviation.
 *
 * <pre>
 * C  = (U - L) / (6 s)            bounds: C sqrt(chi2(a/2; df) / df), C sqrt(chi2(1 - a/2; df) / df)
 * CU = (U - m) / (3 s), CL = (m - L) / (3 s), Ck = min(CU, CL)
 *                                 bounds: Ck +- z sqrt(1 / (9 n) + Ck^2 / (2 df))
 * Cpm = (U - L) / (6 sqrt(s^2 + (m - T)^2))
 * </pre>
 *
 * m, s: mean and standard deviation; L, U, T: limits and target, in the same units. Whether the result is called Cp, Pp or Cm depends on where s
 * comes from.
 *
 * <p>Source: NIST/SEMATECH e-Handbook 6.1.6; bounds: Bissell, Applied Statistics 39 (1990).
 *
 * @param mean mean
 * @param sd standard deviation, above 0
 * @param n how many values the mean rests on, at least 2
 * @param degreesOfFreedom of the standard deviation, above 0; n - 1 for a plain one
 * @param spec the limits
 */
public record NormalIndices(double mean, double sd, int n, double degreesOfFreedom, SpecLimits spec) {
    /** Checks the arguments. */
    public NormalIndices {
        if (!Double.isFinite(mean)) throw new IllegalArgumentException("mean is " + mean + "; it must be finite");
        if (!(sd > 0 && Double.isFinite(sd)))
            throw new IllegalArgumentException("sd is " + sd + "; it must be above 0 and finite");
        if (n < 2) throw new IllegalArgumentException("n is " + n + "; it must be at least 2");
        if (!(degreesOfFreedom > 0))
            throw new IllegalArgumentException("degreesOfFreedom is " + degreesOfFreedom + "; it must be above 0");
    }

    /**
     * {@return the index of spread alone, or why there is none: one limit}
     *
     * @param confidence confidence of the bounds
     */
    public Answer<CapabilityIndex> spread(double confidence) {
        var lower = spec.lowerLimit();
        var upper = spec.upperLimit();
        if (lower.isEmpty() || upper.isEmpty())
            return Answer.missing(Reason.NOT_ASKED, "only one limit is given; an index of spread alone needs both");
        double c = (upper.getAsDouble() - lower.getAsDouble()) / (6 * sd);
        var chi = ChiSquaredDistribution.of(degreesOfFreedom);
        double tail = (1 - confidence) / 2;
        var bounds = new Interval(
                c * Math.sqrt(chi.inverseCumulativeProbability(tail) / degreesOfFreedom),
                c * Math.sqrt(chi.inverseSurvivalProbability(tail) / degreesOfFreedom),
                confidence);
        return Answer.of(new CapabilityIndex(c, bounds, n, CapabilityIndex.Method.NORMAL_CHI_SQUARED));
    }

    /**
     * {@return the index of the nearer limit, or of the only one}
     *
     * @param confidence confidence of the bounds
     */
    public CapabilityIndex nearest(double confidence) {
        double toUpper =
                upperSide(confidence).found().map(CapabilityIndex::value).orElse(Double.POSITIVE_INFINITY);
        double toLower =
                lowerSide(confidence).found().map(CapabilityIndex::value).orElse(Double.POSITIVE_INFINITY);
        return bissell(Math.min(toUpper, toLower), confidence);
    }

    /**
     * {@return the index of the upper limit, or why there is none}
     *
     * @param confidence confidence of the bounds
     */
    public Answer<CapabilityIndex> upperSide(double confidence) {
        var upper = spec.upperLimit();
        return upper.isEmpty()
                ? Answer.missing(Reason.NOT_ASKED, "no upper limit is given")
                : Answer.of(bissell((upper.getAsDouble() - mean) / (3 * sd), confidence));
    }

    /**
     * {@return the index of the lower limit, or why there is none}
     *
     * @param confidence confidence of the bounds
     */
    public Answer<CapabilityIndex> lowerSide(double confidence) {
        var lower = spec.lowerLimit();
        return lower.isEmpty()
                ? Answer.missing(Reason.NOT_ASKED, "no lower limit is given")
                : Answer.of(bissell((mean - lower.getAsDouble()) / (3 * sd), confidence));
    }

    /**
     * {@return the index of spread about a target, without bounds, or why there is none: one limit}
     *
     * @param target the target, in the values' units
     */
    public Answer<Double> aboutTarget(double target) {
        return spread(0.95).map(c -> c.value() * sd / Math.hypot(sd, mean - target));
    }

    private CapabilityIndex bissell(double index, double confidence) {
        double z = NormalDistribution.of(0, 1).inverseSurvivalProbability((1 - confidence) / 2);
        double half = z * Math.sqrt(1 / (9.0 * n) + index * index / (2 * degreesOfFreedom));
        return new CapabilityIndex(
                index, new Interval(index - half, index + half, confidence), n, CapabilityIndex.Method.NORMAL_BISSELL);
    }
}
