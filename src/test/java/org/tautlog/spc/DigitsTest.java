package org.tautlog.spc;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DigitsTest {
    @ParameterizedTest
    @CsvSource({
        "1000000.123456, 0.6, 1000000.1235",
        "1000000.123456, 0, 1000000",
        "1000000.123456, 1e9, 1000000",
        "101325000.7, 3, 101325000.7",
        "12.3456789, 0.5, 12.3457",
        "-1e-300, 0, -1E-300",
        "1e300, 1, 1E+300",
        "0, 0.1, 0"
    })
    void more_than_six_digits_are_said_where_the_spread_asks_for_them(double value, double spread, String said) {
        assertEquals(said, Digits.of(value, spread));
    }

    @Test
    void bounds_are_told_apart_however_near_they_lie() {
        assertEquals("1000000.01 to 1000000.02", Digits.of(new Interval(1000000.01, 1000000.02, 0.95)));
    }
}
