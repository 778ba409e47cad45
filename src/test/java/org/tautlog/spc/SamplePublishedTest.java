package org.tautlog.spc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tautlog.spc.Published.assertRelative;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SamplePublishedTest {
    record Certified(String set, double mean, double sd, double lagOne, int digits) {}

    static List<Certified> certified() {
        return Published.rows("strd_univariate").stream()
                .map(row -> new Certified(
                        row.get("set"),
                        Double.parseDouble(row.get("mean")),
                        Double.parseDouble(row.get("sd")),
                        Double.parseDouble(row.get("lag1")),
                        Integer.parseInt(row.get("digits"))))
                .toList();
    }

    @ParameterizedTest(name = "NIST StRD {0}")
    @MethodSource("certified")
    void mean_spread_and_autocorrelation_agree_with_certified_values(Certified set) {
        var values = Published.column("strd_" + set.set(), "y");
        var sample = Sample.of(values, 3, "a test").orThrow();
        double tolerance = Math.pow(10, -set.digits());
        assertRelative(set.mean(), sample.mean(), 1e-14, "mean");
        assertRelative(set.sd(), sample.sd(), tolerance, "standard deviation");
        assertRelative(
                set.lagOne(), Autocorrelation.of(values).orThrow().lagOne(), Math.max(tolerance, 1e-12), "lag 1");
    }

    @ParameterizedTest(name = "NIST StRD {0}")
    @MethodSource("certified")
    void one_pass_loses_at_most_two_digits_more(Certified set) {
        var moments = new Moments();
        for (double y : Published.column("strd_" + set.set(), "y")) moments.add(y);
        assertRelative(set.mean(), moments.mean().orThrow(), 1e-14, "mean");
        assertRelative(set.sd(), moments.sd().orThrow(), Math.pow(10, 2 - set.digits()), "standard deviation");
    }

    @Test
    void the_textbook_formula_would_fail_where_ours_holds() {
        var y = Published.column("strd_numacc4", "y");
        double sum = 0;
        double squares = 0;
        for (double v : y) {
            sum += v;
            squares += v * v;
        }
        double naive = Math.sqrt(Math.max(0, (squares - sum * sum / y.length) / (y.length - 1)));
        assertTrue(Math.abs(naive - 0.1) > 1e-3, "the naive formula gives " + naive);
    }

    /** Source: NIST/SEMATECH e-Handbook 7.2.6.2, 90 % point of 12 wafers, printed to 4 decimals. */
    @ParameterizedTest
    @CsvSource({"R6, 95.1981", "R7, 95.1957", "R8, 95.1972"})
    void quantiles_of_twelve_wafers_are_those_of_the_handbook(QuantileType type, double expected) {
        double[] wafers = {
            95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.0610, 95.1591, 95.1195, 95.1065, 95.0925, 95.1990, 95.1682
        };
        assertEquals(expected, type.of(Sample.of(wafers, 1, "a test").orThrow(), 0.9), 5e-5);
    }

    /** Source: Clopper-Pearson and Wilson bounds recomputed in R. */
    @Test
    void bounds_of_a_share_are_those_of_r() {
        var exact =
                Proportion.of(3, 50, 0.95, Proportion.Method.CLOPPER_PEARSON).orThrow();
        assertEquals(0.0125485878353, exact.bounds().lower(), 1e-11);
        assertEquals(0.165481946604, exact.bounds().upper(), 1e-11);
        var score = Proportion.of(3, 50, 0.95, Proportion.Method.WILSON).orThrow();
        assertEquals(0.020614970349, score.bounds().lower(), 1e-11);
        assertEquals(0.162170916888, score.bounds().upper(), 1e-11);
        var none = Proportion.of(0, 30, 0.95, Proportion.Method.CLOPPER_PEARSON).orThrow();
        assertEquals(0, none.bounds().lower());
        assertEquals(0.115703308222, none.bounds().upper(), 1e-11);
    }
}
