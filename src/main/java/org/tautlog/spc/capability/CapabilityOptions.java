package org.tautlog.spc.capability;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.tautlog.spc.chart.RunRule;

/**
 * How a capability study is made.
 *
 * @param confidence confidence of all bounds, above 0 and below 1
 * @param normalityLevel p value of the test of normality below which the normal is not used, from 0 to below 1
 * @param stabilityRules the run rules that the word on control rests on
 * @param resamples bootstrap samples for bounds on percentile indices, at least 50
 * @param seed seed of the bootstrap
 */
public record CapabilityOptions(
        double confidence, double normalityLevel, Set<RunRule> stabilityRules, int resamples, long seed) {
    /** Checks the arguments and copies the set. */
    public CapabilityOptions {
        if (!(confidence > 0 && confidence < 1))
            throw new IllegalArgumentException("confidence is " + confidence + "; it must lie between 0 and 1");
        if (!(normalityLevel >= 0 && normalityLevel < 1))
            throw new IllegalArgumentException(
                    "normalityLevel is " + normalityLevel + "; it must lie from 0 to below 1");
        if (resamples < 50)
            throw new IllegalArgumentException("resamples is " + resamples + "; it must be at least 50");
        stabilityRules =
                stabilityRules.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(stabilityRules));
    }

    /** {@return 95 % bounds, normality rejected below p 0.05, points beyond the limits, 300 resamples, a fixed seed} */
    public static CapabilityOptions withDefaults() {
        return new CapabilityOptions(0.95, 0.05, RunRule.limitsOnly(), 300, 20_260_101L);
    }
}
