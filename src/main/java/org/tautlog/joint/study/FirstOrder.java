package org.tautlog.joint.study;

/**
 * First-order sensitivity: how much of a quantity's variance one factor explains alone, straight or curved.
 *
 * <pre>
 * S = Var(E[y | x]) / Var(y)
 *   = 1 - (SS_within / (n - b)) / (SS_total / (n - 1))      estimated over b equally likely slices of x
 * </pre>
 *
 * <p>Source: Saltelli et al., Global Sensitivity Analysis: The Primer (2008), section 1.2.11 (definition by slices); the
 * estimator corrected for chance is the epsilon-squared of one-way analysis of variance (Kelley 1935), from memory.
 */
final class FirstOrder {
    private static final int MOST_SLICES = 50;
    private static final int FEWEST_PER_SLICE = 20;

    private FirstOrder() {}

    /**
     * The index of one factor.
     *
     * @param probability the factor's value in each draw as its cumulative probability, 0 to 1
     * @param y the quantity in each draw
     * @return 0 to 1; 0 where the quantity does not vary
     */
    static double index(double[] probability, double[] y) {
        var slices = Math.max(2, Math.min(MOST_SLICES, y.length / FEWEST_PER_SLICE));
        var count = new int[slices];
        var sum = new double[slices];
        var mean = 0.0;
        for (double value : y) mean += value / y.length;
        var total = 0.0;
        for (int i = 0; i < y.length; i++) {
            var slice = Math.min(slices - 1, (int) (probability[i] * slices));
            var centred = y[i] - mean;
            count[slice]++;
            sum[slice] += centred;
            total += centred * centred;
        }
        if (total <= 0) return 0;
        var between = 0.0;
        for (int slice = 0; slice < slices; slice++)
            if (count[slice] > 0) between += sum[slice] * sum[slice] / count[slice];
        var within = (total - between) / (y.length - slices);
        return Math.min(1, Math.max(0, 1 - within / (total / (y.length - 1))));
    }
}
