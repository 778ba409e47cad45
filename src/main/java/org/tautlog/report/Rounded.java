package org.tautlog.report;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as programs get them: so many decimals and no zeros behind them. */
final class Rounded {
    private Rounded() {}

    static BigDecimal of(double value, int decimals) {
        var number = BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return number.scale() < 0 ? number.setScale(0) : number;
    }
}
