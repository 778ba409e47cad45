package org.tautlog.spc.capability;

import org.tautlog.spc.Answer;
import org.tautlog.spc.Autocorrelation;

/**
 * A process capability study. Cp and Cpk foretell what the process can do and need control; Pp and Ppk say what it did.
 *
 * @param n how many values
 * @param mean their mean
 * @param shortSigma standard deviation from neighbour to neighbour or within subgroups
 * @param overallSd standard deviation of all values
 * @param spec the limits
 * @param neighbours how much values, or means of subgroups, resemble the ones before; bounds allow for it
 * @param stability the word on control
 * @param normality the test of normality, or why there is none
 * @param shape the distribution that the indices rest on
 * @param cp index of short-term spread, or why there is none
 * @param cpk index of the nearer limit with short-term spread, or why there is none
 * @param pp index of overall spread, or why there is none
 * @param ppk index of the nearer limit with overall spread, or why there is none
 * @param outside the share beyond the limits
 */
public record Capability(
        int n,
        double mean,
        double shortSigma,
        double overallSd,
        SpecLimits spec,
        Autocorrelation neighbours,
        Stability stability,
        Answer<AndersonDarling> normality,
        Shape shape,
        Answer<CapabilityIndex> cp,
        Answer<CapabilityIndex> cpk,
        Answer<CapabilityIndex> pp,
        Answer<CapabilityIndex> ppk,
        FractionOutside outside) {
    /**
     * {@return the same study with the word on control of whoever saw more than the study's own chart}
     *
     * @param word the word
     */
    public Capability withStability(Stability word) {
        return new Capability(
                n, mean, shortSigma, overallSd, spec, neighbours, word, normality, shape, cp, cpk, pp, ppk, outside);
    }
}
