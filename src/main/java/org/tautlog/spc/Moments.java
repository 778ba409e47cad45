package org.tautlog.spc;

/**
 * Count, mean and spread of a series in one pass and constant memory. Not thread-safe; merge one per thread.
 *
 * <pre> mean += (x - mean) / n;  M2 += (x - meanBefore)(x - mean);  sd = sqrt(M2 / (n - 1)) </pre>
 *
 * Source: Welford, Technometrics 4 (1962); merging: Chan, Golub, LeVeque (1979); from memory.
 */
public final class Moments {
    private long count;
    private long refused;
    private double mean;
    private double squares;
    private double smallest = Double.POSITIVE_INFINITY;
    private double largest = Double.NEGATIVE_INFINITY;

    /** Starts with nothing counted. */
    public Moments() {}

    /**
     * Takes one value; a value that is not finite is counted as refused and otherwise left out.
     *
     * @param x the value
     */
    public void add(double x) {
        if (!Double.isFinite(x)) {
            refused++;
            return;
        }
        count++;
        double before = x - mean;
        mean += before / count;
        squares += before * (x - mean);
        smallest = Math.min(smallest, x);
        largest = Math.max(largest, x);
    }

    /**
     * Adds all that another one has seen.
     *
     * @param other the other one, left as it is
     */
    public void merge(Moments other) {
        refused += other.refused;
        if (other.count == 0) return;
        long both = count + other.count;
        double apart = other.mean - mean;
        squares += other.squares + apart * apart * ((double) count * other.count / both);
        mean += apart * other.count / both;
        count = both;
        smallest = Math.min(smallest, other.smallest);
        largest = Math.max(largest, other.largest);
    }

    /** {@return how many finite values were taken} */
    public long count() {
        return count;
    }

    /** {@return how many values were not finite and left out} */
    public long refused() {
        return refused;
    }

    /** {@return the mean, or why there is none} */
    public Answer<Double> mean() {
        return count == 0 ? Answer.missing(Reason.EMPTY, "no finite values for a mean") : Answer.of(mean);
    }

    /** {@return the standard deviation with n - 1, or why there is none; 0 when all values are equal} */
    public Answer<Double> sd() {
        if (count < 2)
            return Answer.missing(
                    count == 0 ? Reason.EMPTY : Reason.TOO_FEW, count + " finite values; a spread needs at least 2");
        return Answer.of(smallest == largest ? 0 : Math.sqrt(squares / (count - 1)));
    }
}
