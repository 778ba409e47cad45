package org.tautlog.spc.count;

import java.util.Optional;

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

    /**
     * {@return why such a point cannot be charted, empty where it can}
     *
     * @param count what was counted
     * @param amount items or units behind it
     */
    public Optional<String> refuses(double count, double amount) {
        if (count < 0 || !(amount > 0))
            return Optional.of(
                    "counts " + count + " in " + amount + "; a count is not negative and its amount is above 0");
        return binomial() && count > amount
                ? Optional.of("counts " + count + " of " + amount + " items")
                : Optional.empty();
    }

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
