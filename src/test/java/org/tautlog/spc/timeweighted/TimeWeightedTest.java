package org.tautlog.spc.timeweighted;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Sample;
import org.tautlog.spc.Simulated;
import org.tautlog.spc.chart.IndividualsOptions;

class TimeWeightedTest {
    private static final IndividualsOptions VALUES = IndividualsOptions.withDefaults();

    /** Theory: {@link RunLength}, itself held against the published tables. */
    @Test
    void simulated_run_lengths_are_those_of_theory() {
        var ewma = new EwmaLimits(0, 1, 0.2, 2.962, 1, EwmaOptions.Form.STEADY);
        runs(500, 0, () -> new EwmaWatch(ewma)::next, 2000, "EWMA in control");
        runs(RunLength.ofEwma(0.2, 2.962, 1), 1, () -> new EwmaWatch(ewma)::next, 4000, "EWMA shifted");
        var cusum = new CusumLimits(0, 0.5, 5, 0);
        runs(465.4, 0, () -> watch(cusum), 2000, "CUSUM in control");
        runs(RunLength.ofCusum(0.5, 5, 1, 0), 1, () -> watch(cusum), 4000, "CUSUM shifted");
        var fast = new CusumLimits(0, 0.5, 5, 2.5);
        runs(RunLength.ofCusum(0.5, 5, 1, 2.5), 1, () -> watch(fast), 4000, "CUSUM with head start");
    }

    /** Source: Lucas and Crosier, Technometrics 24 (1982), table 1: 430 and 149 in control with half of h; from memory. */
    @Test
    void cusums_with_a_head_start_run_in_control_as_long_as_published() {
        runs(430, 0, () -> watch(new CusumLimits(0, 0.5, 5, 2.5)), 4000, "h 5");
        runs(149, 0, () -> watch(new CusumLimits(0, 0.5, 4, 2)), 8000, "h 4");
    }

    /**
     * Theory: a Markov chain over 500 bands of the upper sum (Brook and Evans, Biometrika 59 (1972)). 20,000 runs; 99.9 %
     * binomial interval.
     */
    @ParameterizedTest
    @CsvSource({"5, 0, 20", "5, 2.5, 5", "5, 2.5, 20", "4, 2, 5", "4, 2, 20"})
    void early_false_alarms_of_a_head_start_come_as_often_as_theory_says(double h, double headStart, int points) {
        int runs = 20_000;
        var limits = new CusumLimits(0, 0.5, h, headStart);
        var sampler = Simulated.normal(208);
        int early = 0;
        for (int run = 0; run < runs; run++) {
            var watch = new CusumWatch(limits);
            boolean risen = false;
            for (int i = 0; i < points; i++) risen |= watch.step(sampler.sample()) == CusumPoint.Signal.UP;
            if (risen) early++;
        }
        Simulated.assertRate(risenWithin(points, h, headStart), early, runs, "upper sums beyond " + h);
    }

    private static double risenWithin(int points, double h, double start) {
        int bands = 500;
        double width = h / (bands - 0.5);
        var law = org.apache.commons.statistics.distribution.NormalDistribution.of(-0.5, 1);
        var chance = new double[bands];
        chance[(int) Math.round(start / width)] = 1;
        for (int point = 0; point < points; point++) {
            var next = new double[bands];
            for (int from = 0; from < bands; from++) {
                next[0] += chance[from] * law.cumulativeProbability((0.5 - from) * width);
                for (int to = 1; to < bands; to++)
                    next[to] += chance[from] * law.probability((to - from - 0.5) * width, (to - from + 0.5) * width);
            }
            chance = next;
        }
        return 1 - java.util.Arrays.stream(chance).sum();
    }

    private static DoublePredicate watch(CusumLimits limits) {
        var watch = new CusumWatch(limits);
        return x -> watch.step(x) != CusumPoint.Signal.NONE;
    }

    private static void runs(double theory, double shift, Supplier<DoublePredicate> chart, int runs, String what) {
        var sampler = Simulated.normal(201);
        double sum = 0;
        double squares = 0;
        for (int run = 0; run < runs; run++) {
            var step = chart.get();
            int length = 1;
            while (!step.test(sampler.sample() + shift)) length++;
            sum += length;
            squares += (double) length * length;
        }
        double mean = sum / runs;
        double error = Math.sqrt((squares / runs - mean * mean) / runs);
        assertEquals(theory, mean, 3.3 * error, what);
    }

    /** Theory: the variance of an EWMA of a first-order autoregressive series; here r 0.5, lambda 0.2. */
    @Test
    void autocorrelation_widens_the_limits_to_the_spread_that_the_average_has() {
        var values = Simulated.normal(202, 60_000);
        for (int i = 1; i < values.length; i++) values[i] += 0.5 * values[i - 1];
        var limits = EwmaChart.phaseOne(
                        values,
                        VALUES,
                        new EwmaOptions(0.2, 3, EwmaOptions.Form.STEADY, IndividualsOptions.Neighbours.WIDEN))
                .orThrow()
                .limits();
        var averages = EwmaChart.chart(limits, values).orThrow().points().stream()
                .skip(100)
                .mapToDouble(point -> point.value())
                .toArray();
        double sd = Sample.of(averages, 2, "a test").orThrow().sd();
        assertEquals(sd, limits.reach(1_000_000) / 3, 0.03 * sd);
    }

    @Test
    void phase_one_leaves_strays_out_of_both() {
        var values = Simulated.normal(203, 80);
        values[10] = 12;
        assertEquals(
                10,
                Cusum.phaseOne(values, VALUES, CusumOptions.withDefaults())
                        .orThrow()
                        .removed()
                        .get(0)
                        .index());
        assertEquals(
                10,
                EwmaChart.phaseOne(values, VALUES, EwmaOptions.withDefaults())
                        .orThrow()
                        .removed()
                        .get(0)
                        .index());
        var headed = new CusumOptions(0.5, 5, CusumOptions.HeadStart.HALF, IndividualsOptions.Neighbours.WIDEN);
        var limits = Cusum.phaseOne(values, VALUES, headed).orThrow().limits();
        assertEquals(limits.decision() / 2, limits.headStart(), 1e-12);
        assertEquals(limits.decision() / 10, limits.reference(), 1e-12);
    }

    /** By hand: C+ is 19.5, then 7; C- is 0, then 11.5. */
    @Test
    void a_point_past_both_limits_is_said_for_both() {
        var point = Cusum.of(new CusumLimits(0, 0.5, 5, 0), new double[] {20, -12})
                .orThrow()
                .points()
                .get(1);
        assertEquals(CusumPoint.Signal.BOTH, point.signal());
        assertEquals(List.of(7.0, 11.5), List.of(point.upperSum(), point.lowerSum()));
        assertEquals(List.of(0L, 1L), List.of(point.roseAt(), point.fellAt()));
    }

    @Test
    void data_that_cannot_be_charted_get_a_reason() {
        var limits = new CusumLimits(0, 0.5, 5, 0);
        assertEquals(Optional.of(Reason.EMPTY), Cusum.of(limits, new double[0]).missingFor());
        assertEquals(
                Optional.of(Reason.NOT_FINITE),
                Cusum.of(limits, new double[] {Double.NaN}).missingFor());
        assertEquals(
                Optional.of(Reason.NO_SPREAD),
                EwmaChart.phaseOne(new double[] {1, 1, 1}, VALUES, EwmaOptions.withDefaults())
                        .missingFor());
    }
}
