package org.tautlog.spc.gauge;

import org.jspecify.annotations.Nullable;

/**
 * A crossed gauge study. Standard deviations in the units of the measurements.
 *
 * @param method how it was computed
 * @param repeatability EV: one appraiser, one part, again
 * @param reproducibility AV: between appraisers, an interaction that was kept included
 * @param gauge GRR: both together
 * @param part PV: between parts
 * @param total TV: all together
 * @param interaction what was found of an interaction of part and appraiser; null for the range method, which cannot see it
 * @param parts how many parts
 * @param appraisers how many appraisers
 * @param trials how many trials of each part by each appraiser
 */
public record GaugeResult(
        Method method,
        double repeatability,
        double reproducibility,
        double gauge,
        double part,
        double total,
        @Nullable Interaction interaction,
        int parts,
        int appraisers,
        int trials) {
    /** The root of 2 as the manual rounds it. */
    private static final double CATEGORIES = 1.41;

    /**
     * The test for an interaction of part and appraiser.
     *
     * @param pValue chance of so large an interaction where there is none
     * @param pooled whether it was taken as repeatability
     */
    public record Interaction(double pValue, boolean pooled) {}

    /** How a gauge study is computed. */
    public enum Method {
        /** Analysis of variance: sees the interaction, asks for a balanced study. */
        ANOVA,
        /** Average and range: by hand in the manual; cannot see the interaction. */
        AVERAGE_RANGE
    }

    /** {@return GRR as a share of the total standard deviation, from 0 to 1} */
    public double shareOfTotal() {
        return gauge / total;
    }

    /** {@return GRR as a share of the total variance, from 0 to 1} */
    public double contribution() {
        return shareOfTotal() * shareOfTotal();
    }

    /**
     * {@return six standard deviations of the gauge as a share of the tolerance}
     *
     * @param tolerance width of the tolerance, above 0
     */
    public double shareOfTolerance(double tolerance) {
        if (!(tolerance > 0)) throw new IllegalArgumentException("tolerance is " + tolerance + "; it must be above 0");
        return 6 * gauge / tolerance;
    }

    /** {@return number of distinct categories that the gauge can tell, before it is cut to a whole number} */
    public double categories() {
        return CATEGORIES * part / gauge;
    }
}
