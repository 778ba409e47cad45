package org.tautlog.spc;

/** Why a statistic cannot be given. The sentence beside it in {@link Answer.Missing} carries the numbers. */
public enum Reason {
    /** There are no values at all. */
    EMPTY,
    /** There are fewer values, subgroups or groups than the method needs. */
    TOO_FEW,
    /** A value is not a number, infinite, or too large to be squared. */
    NOT_FINITE,
    /** The values do not vary, so nothing can be scaled by their spread. */
    NO_SPREAD,
    /** Values lie outside what the method is defined for, such as a negative count. */
    OUT_OF_DOMAIN,
    /** The lengths or sizes that must agree do not. */
    UNEQUAL,
    /** The assumption the figure rests on does not hold for these values. */
    ASSUMPTION_FAILS,
    /** The question does not apply, such as a two-sided index with one limit. */
    NOT_ASKED
}
