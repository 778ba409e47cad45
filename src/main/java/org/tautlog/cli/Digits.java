package org.tautlog.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import org.tautlog.spc.Interval;

/** Numbers of studies as a terminal shows them: six digits. */
final class Digits {
    private static final MathContext SIX = new MathContext(6);

    private Digits() {}

    static String of(double value) {
        var rounded = new BigDecimal(value).round(SIX).stripTrailingZeros();
        boolean far = rounded.signum() != 0 && (rounded.scale() > 10 || rounded.precision() - rounded.scale() > 12);
        return far ? rounded.toString() : rounded.toPlainString();
    }

    static String of(Interval bounds) {
        return of(bounds.lower()) + " to " + of(bounds.upper());
    }
}
