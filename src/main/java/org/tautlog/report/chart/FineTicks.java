package org.tautlog.report.chart;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.TickUnit;
import org.jfree.chart.axis.TickUnitSource;

/**
 * Steps of 1, 2 and 5 times any power of ten, whose labels have the digits that tell one tick from the next: the library's own
 * have three decimals at most.
 */
final class FineTicks implements TickUnitSource {
    private static final double[] STEPS = {1, 2, 5, 10};
    private static final double SMALLEST_PLAIN = 1e-4;
    private static final double LARGEST_PLAIN = 1e9;
    private static final int MOST_DECIMALS = 15;

    private final double largest;

    FineTicks(double low, double high) {
        largest = Math.max(Math.abs(low), Math.abs(high));
    }

    @Override
    public TickUnit getLargerTickUnit(TickUnit unit) {
        return getCeilingTickUnit(unit.getSize() * 1.0001);
    }

    @Override
    public TickUnit getCeilingTickUnit(TickUnit unit) {
        return getCeilingTickUnit(unit.getSize());
    }

    @Override
    public TickUnit getCeilingTickUnit(double size) {
        int exponent = (int) Math.floor(Math.log10(size));
        double power = Math.pow(10, exponent);
        for (double step : STEPS) {
            if (step * power >= size * (1 - 1e-9)) {
                return new Tick(step * power, format(step == 10 ? exponent + 1 : exponent));
            }
        }
        throw new IllegalStateException("10 times a power of ten is not below " + size);
    }

    private DecimalFormat format(int exponent) {
        var symbols = DecimalFormatSymbols.getInstance(Locale.ROOT);
        boolean plain = largest >= SMALLEST_PLAIN && largest < LARGEST_PLAIN;
        int decimals = plain ? -exponent : (int) Math.floor(Math.log10(largest)) - exponent;
        var zeros = "0".repeat(Math.max(0, Math.min(MOST_DECIMALS, decimals)));
        return new DecimalFormat(
                (plain ? "#,##0" : "0") + (zeros.isEmpty() ? "" : '.' + zeros) + (plain ? "" : "E0"), symbols);
    }

    /** Zero stays 0, whatever power of ten the other ticks have. */
    private static final class Tick extends NumberTickUnit {
        private static final long serialVersionUID = 1L;

        Tick(double size, DecimalFormat format) {
            super(size, format);
        }

        @Override
        public String valueToString(double value) {
            return Math.abs(value) < 1e-9 * getSize() ? "0" : super.valueToString(value);
        }
    }
}
