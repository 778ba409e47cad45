package org.tautlog.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source: NIST Special Publication 811 (2008), appendix B.8, factors printed to seven digits (from memory). */
class UnitsPublishedTest {
    @ParameterizedTest(name = "1 {0} is {1} N·m")
    @CsvSource({
        "lbf·ft, 1.355818, 5e-7",
        "lbf·in, 0.1129848, 5e-8",
        "kgf·m, 9.80665, 1e-12",
        "kgf·cm, 0.0980665, 1e-12",
        "kp·m, 9.80665, 1e-12",
        "ozf·in, 7.061552e-3, 5e-10",
        "daN·m, 10, 0",
        "dN·m, 0.1, 0",
        "cNm, 0.01, 0",
        "mNm, 0.001, 0",
        "kNm, 1000, 0",
        "N·m, 1, 0"
    })
    void torque_units_have_the_published_factors(String unit, double factor, double tolerance) {
        assertEquals(factor, TorqueUnit.parse(unit).orElseThrow().factorToNm(), tolerance);
    }

    @ParameterizedTest
    @CsvSource({"Nm, N·m", "FT-LB, lbf·ft", "' in-lb ', lbf·in", "kgf m, kgf·m"})
    void usual_spellings_are_understood(String spelling, String symbol) {
        assertEquals(symbol, TorqueUnit.parse(spelling).orElseThrow().symbol());
    }

    @ParameterizedTest
    @CsvSource({"deg, 1", "turns, 360", "Umdrehungen, 360", "gon, 0.9", "rad, 57.29577951308232"})
    void angle_units_count_in_degrees(String unit, double degrees) {
        assertEquals(degrees, AngleUnit.parse(unit).orElseThrow().toDeg(1), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"kN", "''", "|", "nm|n.m", "torque", "MNm"})
    void other_words_are_no_torque_unit(String text) {
        assertTrue(TorqueUnit.parse(text).isEmpty());
    }
}
