package org.tautlog.intake.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Held against the JDK's own reader of numbers, bit for bit. */
class NumberFormLaws {
    private static final NumberForm POINT = new NumberForm('.', false);
    private static final NumberForm COMMA = new NumberForm(',', false);

    @Property(tries = 3000)
    void every_decimal_number_is_the_nearest_double(@ForAll long digits, @ForAll @IntRange(max = 18) int scale) {
        same(BigDecimal.valueOf(digits, scale).toPlainString());
    }

    @Property(tries = 3000)
    void so_are_the_short_ones_of_logs(
            @ForAll @IntRange(min = -9_999_999, max = 9_999_999) int digits, @ForAll @IntRange(max = 6) int scale) {
        same(BigDecimal.valueOf(digits, scale).toPlainString());
        same("-0." + "0".repeat(scale) + Math.abs(digits));
    }

    private static void same(String text) {
        var expected = Double.doubleToRawLongBits(Double.parseDouble(text));
        assertEquals(expected, Double.doubleToRawLongBits(POINT.parse(text).orElseThrow()), text);
        var comma = text.replace('.', ',');
        assertEquals(expected, Double.doubleToRawLongBits(COMMA.parse(comma).orElseThrow()), comma);
    }
}
