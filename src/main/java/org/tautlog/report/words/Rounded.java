package org.tautlog.report.words;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as programs get them: so many decimals and no zeros behind them. */
public final class Rounded {
    private Rounded() {}

    /**
     * {@return a number to so many decimals, halves to the even digit, without zeros behind; a whole number keeps its own}
     *
     * @param value the number; finite
     * @param decimals most digits after the point
     */
    public static BigDecimal of(double value, int decimals) {
        var number = BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return number.scale() < 0 ? number.setScale(0) : number;
    }
}
