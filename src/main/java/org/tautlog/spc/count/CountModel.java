package org.tautlog.spc.count;

/** What is counted, and how its chance scatter is known. */
public enum CountModel {
    /** Fraction of items that do not conform, p: binomial scatter. */
    FRACTION,
    /** Number of items that do not conform among equally many, np: binomial scatter. */
    NUMBER,
    /** Faults in equal units, c: Poisson scatter. */
    FAULTS,
    /** Faults for each unit of varying amount, u: Poisson scatter. */
    FAULTS_PER_UNIT,
    /** Fraction that does not conform, Laney's p': binomial scatter times the scatter found between points. */
    FRACTION_LANEY,
    /** Faults for each unit, Laney's u': Poisson scatter times the scatter found between points. */
    FAULTS_PER_UNIT_LANEY;

    boolean binomial() {
        return this == FRACTION || this == NUMBER || this == FRACTION_LANEY;
    }

    boolean laney() {
        return this == FRACTION_LANEY || this == FAULTS_PER_UNIT_LANEY;
    }

    boolean equalAmounts() {
        return this == NUMBER || this == FAULTS;
    }
}
