package org.tautlog.cli.terminal;

import java.math.BigDecimal;
import java.math.MathContext;
import org.tautlog.spc.Interval;

/** Numbers of studies as a terminal shows them: six digits. */
public final class Digits {
    private static final MathContext SIX = new MathContext(6);

    private Digits() {}

    /**
     * A number.
     *
     * @param value a finite number
     * @return its six leading digits, with a power of ten only where it is far from one
     */
    public static String of(double value) {
        var rounded = new BigDecimal(value).round(SIX).stripTrailingZeros();
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
        return of(bounds.lower()) + " to " + of(bounds.upper());
    }
}
