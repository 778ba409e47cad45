package org.tautlog.spc.timeweighted;

import org.tautlog.spc.chart.IndividualsOptions;

/**
 * How a tabular CUSUM is made.
 *
 * @param reference k: half the shift to be found, in sigma, above 0
 * @param decision h: the sum that gives a signal, in sigma, above 0
 * @param headStart where the sums start
 * @param neighbours what to do where neighbouring values resemble each other
 */
public record CusumOptions(
        double reference, double decision, HeadStart headStart, IndividualsOptions.Neighbours neighbours) {
    /** Where the sums start. */
    public enum HeadStart {
        /** At 0. */
        NONE,
        /** At half the decision value: a process that starts off target is found sooner (fast initial response). */
        HALF
    }

    /** Checks the ranges. */
    public CusumOptions {
        if (!(reference > 0)) throw new IllegalArgumentException("reference is " + reference + "; it must be above 0");
        if (!(decision > 0)) throw new IllegalArgumentException("decision is " + decision + "; it must be above 0");
    }

    /** {@return k 0.5, h 5, from 0, widened where neighbours resemble} */
    public static CusumOptions withDefaults() {
        return new CusumOptions(0.5, 5, HeadStart.NONE, IndividualsOptions.Neighbours.WIDEN);
    }
}
