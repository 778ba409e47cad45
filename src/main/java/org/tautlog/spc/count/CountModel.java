package org.tautlog.spc.count;

import java.util.Optional;
import org.tautlog.spc.Digits;

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
        var said = "counts " + Digits.whole(count) + " in " + Digits.whole(amount);
        if (count < 0 || !(amount > 0))
            return Optional.of(said + "; a count is not negative and its amount is above 0");
        if (count != Math.rint(count)) return Optional.of(said + "; a count is a whole number");
        if (!binomial()) return Optional.empty();
        if (amount != Math.rint(amount)) return Optional.of(said + " items; items are a whole number");
        return count > amount ? Optional.of(said + " items; more than there are") : Optional.empty();
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
