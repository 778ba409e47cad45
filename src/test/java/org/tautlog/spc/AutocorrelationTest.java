package org.tautlog.spc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AutocorrelationTest {
    private static final int RUNS = 2000;

    /** Theory: the bound lets 5 % of independent series through; with 20 values the estimate is coarser than that. */
    @ParameterizedTest(name = "n = {0}")
    @ValueSource(ints = {20, 60, 200, 2000})
    void independent_values_are_seldom_called_alike(int n) {
        int called = 0;
        double sum = 0;
        for (int run = 0; run < RUNS; run++) {
            var found = Autocorrelation.ofDifferences(Simulated.normal(100_000L + run, n))
                    .orThrow();
            if (found.allowed() > 0) called++;
            sum += found.lagOne();
        }
        assertTrue(called <= 0.09 * RUNS && called >= 0.035 * RUNS, called + " of " + RUNS + " called alike");
        assertEquals(0, sum / RUNS, 0.035, "mean coefficient");
    }

    /** Theory: a first-order autoregressive series has its parameter as lag-1 autocorrelation, jumps or none. */
    @ParameterizedTest
    @CsvSource({"60, 0.3, 0", "60, 0.6, 0", "200, 0.6, 0", "200, 0.3, 8", "200, 0, 8"})
    void the_coefficient_is_met_even_where_the_level_jumps(int n, double r, double jump) {
        double sum = 0;
        for (int run = 0; run < RUNS; run++)
            sum += Autocorrelation.ofDifferences(series(200_000L + run, n, r, jump))
                    .orThrow()
                    .lagOne();
        assertEquals(r, sum / RUNS, 0.04);
    }

    @Test
    void a_series_resembles_itself_as_much_in_any_unit() {
        for (double unit : new double[] {1, 0.1, 0.001, 1e6}) {
            var saw = java.util.stream.IntStream.range(0, 30)
                    .mapToDouble(i -> unit * (100 + i * 7 % 11))
                    .toArray();
            var ramp = java.util.stream.IntStream.range(0, 36)
                    .mapToDouble(i -> unit * (100 + i - (i % 9 == 0 ? 1 : 0)))
                    .toArray();
            assertEquals(0, Autocorrelation.ofDifferences(saw).orThrow().allowed(), "saw in " + unit);
            assertEquals(0, Autocorrelation.ofDifferences(ramp).orThrow().allowed(), "ramp in " + unit);
        }
    }

    @Test
    void many_short_series_tell_together_what_one_cannot() {
        int alone = 0;
        int together = 0;
        for (int run = 0; run < 200; run++) {
            var eight = java.util.stream.LongStream.range(0, 8)
                    .mapToObj(new SeriesOf(300_000L + 8L * run))
                    .toList();
            if (Autocorrelation.ofDifferences(eight.get(0)).orThrow().allowed() > 0) alone++;
            if (Autocorrelation.pooled(eight, 8).orThrow().allowed() > 0) together++;
        }
        assertTrue(together > 190 && alone < 150, together + " and " + alone + " of 200");
        assertEquals(
                Optional.of(Reason.TOO_FEW),
                Autocorrelation.pooled(List.of(new double[] {1, 2, 3}), 1).missingFor());
    }

    private record SeriesOf(long seed) implements java.util.function.LongFunction<double[]> {
        @Override
        public double[] apply(long j) {
            return series(seed + j, 40, 0.4, 0);
        }
    }

    private static double[] series(long seed, int n, double r, double jump) {
        var z = Simulated.normal(seed, n);
        z[0] /= Math.sqrt(1 - r * r);
        for (int i = 1; i < n; i++) z[i] += r * z[i - 1];
        for (int i = n / 2; i < n; i++) z[i] += jump;
        return z;
    }
}
