package org.tautlog.spc;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers of studies as a person reads them: six leading digits, and more where values differ in later ones. */
public final class Digits {
    private static final MathContext SIX = new MathContext(6);
    /** The last digit is worth at most this share of the spread. */
    private static final double FINEST = 1e-3;
    /** More digits than these are noise of a double. */
    private static final MathContext MOST = new MathContext(15);

    private Digits() {}

    /**
     * A number.
     *
     * @param value a finite number
     * @return its six leading digits, with a power of ten only where it is far from one
     */
    public static String of(double value) {
        return of(value, 0);
    }

    /**
     * A number among others.
     *
     * @param value a finite number
     * @param spread how far apart the numbers it is read with lie, such as the width of its limits; 0 for unknown
     * @return its six leading digits, and as many more as tell a thousandth of the spread; with a power of ten only where it is
     *     far from one
     */
    public static String of(double value, double spread) {
        var exact = new BigDecimal(value);
        var rounded = exact.round(SIX);
        if (spread > 0 && Double.isFinite(spread)) {
            int decimals = (int) Math.ceil(-Math.log10(spread * FINEST));
            if (decimals > rounded.scale()) {
                rounded = exact.setScale(decimals, RoundingMode.HALF_UP).round(MOST);
            }
        }
        rounded = rounded.stripTrailingZeros();
        boolean far = rounded.signum() != 0 && (rounded.scale() > 10 || rounded.precision() - rounded.scale() > 12);
        return far ? rounded.toString() : rounded.toPlainString();
    }

    /**
     * A number as somebody stated it.
     *
     * @param value a finite number
     * @return all its digits
     */
    public static String whole(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    /**
     * Two bounds.
     *
     * @param bounds an interval
     * @return both bounds with "to" between
     */
    public static String of(Interval bounds) {
        double spread = bounds.upper() - bounds.lower();
        return of(bounds.lower(), spread) + " to " + of(bounds.upper(), spread);
    }
}
