package org.tautlog.signature;

/** Medians and percentiles that a few wild values do not move, over at most a few hundred evenly taken values. */
final class Robust {
    /** Enough for a percentile good to a few hundredths, few enough not to rule the time per trace. */
    private static final int MOST = 256;

    /** Normal standard deviation over median absolute deviation. */
    private static final double MAD_TO_SIGMA = 1.4826;

    private Robust() {}

    /** Every k-th of the values from inclusive to exclusive, so many that at most {@code MOST} remain, in a new array. */
    static double[] taken(double[] values, int from, int to) {
        int step = step(to - from);
        var taken = new double[Math.max(0, (to - from + step - 1) / step)];
        for (int i = 0, j = from; i < taken.length; i++, j += step) {
            taken[i] = values[j];
        }
        return taken;
    }

    /** How far apart values lie of which at most {@code MOST} are taken out of so many. */
    static int step(int values) {
        return Math.max(1, (values + MOST - 1) / MOST);
    }

    /** Percentile by linear interpolation; the values, at least one, change places. */
    static double percentile(double[] values, double share) {
        return percentile(values, values.length, share);
    }

    private static double percentile(double[] values, int size, double share) {
        double place = share * (size - 1);
        int low = (int) place;
        double value = select(values, size, low);
        if (low + 1 >= size || place == low) {
            return value;
        }
        double next = values[low + 1];
        for (int i = low + 2; i < size; i++) {
            next = Math.min(next, values[i]);
        }
        return value + (place - low) * (next - value);
    }

    /** Standard deviation of normal values with the same median absolute deviation from a given centre. */
    static double spreadAbout(double[] values, double centre) {
        var away = new double[values.length];
        for (int i = 0; i < away.length; i++) {
            away[i] = Math.abs(values[i] - centre);
        }
        return MAD_TO_SIGMA * percentile(away, 0.5);
    }

    /** The same about 0 for the first of some values, with an array to work in. */
    static double spread(double[] values, int size, double[] away) {
        for (int i = 0; i < size; i++) {
            away[i] = Math.abs(values[i]);
        }
        return MAD_TO_SIGMA * percentile(away, size, 0.5);
    }

    private static double middle(double a, double b, double c) {
        return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    }

    /** Puts the value of a rank at its place, smaller ones before and greater ones after it (Hoare's selection). */
    private static double select(double[] values, int size, int rank) {
        int left = 0;
        int right = size - 1;
        while (left < right) {
            double pivot = middle(values[left], values[(left + right) >>> 1], values[right]);
            int i = left;
            int j = right;
            while (i <= j) {
                while (values[i] < pivot) {
                    i++;
                }
                while (values[j] > pivot) {
                    j--;
                }
                if (i <= j) {
                    double swapped = values[i];
                    values[i++] = values[j];
                    values[j--] = swapped;
                }
            }
            if (rank <= j) {
                right = j;
            } else if (rank >= i) {
                left = i;
            } else {
                break;
            }
        }
        return values[rank];
    }
}
