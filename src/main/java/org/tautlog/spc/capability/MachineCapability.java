package org.tautlog.spc.capability;

import org.tautlog.spc.Answer;
import org.tautlog.spc.Autocorrelation;

/**
 * A machine capability study: one run under one set of conditions.
 *
 * @param n how many values; 50 are recommended and 30 the fewest (ISO 22514-3)
 * @param mean their mean
 * @param sd their standard deviation
 * @param spec the limits
 * @param neighbours how much values resemble the ones before; bounds allow for it
 * @param stability the word on control during the run
 * @param normality the test of normality, or why there is none
 * @param shape the distribution that the indices rest on
 * @param cm index of spread, or why there is none
 * @param cmk index of the nearer limit, or why there is none
 * @param outside the share beyond the limits
 */
public record MachineCapability(
        int n,
        double mean,
        double sd,
        SpecLimits spec,
        Autocorrelation neighbours,
        Stability stability,
        Answer<AndersonDarling> normality,
        Shape shape,
        Answer<CapabilityIndex> cm,
        Answer<CapabilityIndex> cmk,
        FractionOutside outside) {}
