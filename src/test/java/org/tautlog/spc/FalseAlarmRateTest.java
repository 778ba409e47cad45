package org.tautlog.spc;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.PoissonDistribution;
import org.junit.jupiter.api.Test;
import org.tautlog.spc.chart.ChartConstants;
import org.tautlog.spc.chart.IndividualsChart;
import org.tautlog.spc.chart.IndividualsLimits;
import org.tautlog.spc.chart.IndividualsSpread;
import org.tautlog.spc.chart.RunRule;
import org.tautlog.spc.chart.RunRuleWatch;
import org.tautlog.spc.chart.SubgroupChart;
import org.tautlog.spc.chart.SubgroupLimits;
import org.tautlog.spc.chart.SubgroupSpread;
import org.tautlog.spc.count.CountChart;
import org.tautlog.spc.count.CountLimits;
import org.tautlog.spc.count.CountModel;

/** Charts whose rate follows from a known law, on seeded in-control data; the other charts have theirs beside their own tests. */
class FalseAlarmRateTest {
    private static final int POINTS = 100_000;
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    /** Theory: the range of two normal values is sqrt(2) |z|, beyond d2 + 3 d3 with chance 0.0092. */
    @Test
    void moving_ranges_in_control_signal_as_often_as_theory_says() {
        var pair = ChartConstants.of(2);
        double upper = pair.d2() + 3 * pair.d3();
        var limits = new IndividualsLimits(
                0, 1, 1, 3, pair.d2(), upper, 100, IndividualsSpread.MEAN_MOVING_RANGE, Autocorrelation.none());
        long signals = IndividualsChart.chart(limits, Simulated.normal(3001, POINTS), RunRule.limitsOnly())
                .orThrow()
                .spread()
                .signals()
                .size();
        double theory = 2 * NORMAL.survivalProbability(upper / Math.sqrt(2));
        assertEquals(0.0092, theory, 5e-5);
        double error = Math.sqrt(theory / POINTS);
        assertEquals(theory, (double) signals / POINTS, 1.5 * 3.3 * error, "neighbouring ranges share a value");
    }

    /** Theory: the range of five normal values lies beyond d2 + 3 d3 with chance 0.0046 (integral of its law). */
    @Test
    void ranges_in_control_signal_as_often_as_theory_says() {
        double upper = ChartConstants.of(5).d2() + 3 * ChartConstants.of(5).d3();
        double theory = 1 - rangeBelow(upper, 5);
        assertEquals(0.0046, theory, 5e-5);
        Simulated.assertRate(theory, spreadSignals(SubgroupSpread.RANGE, 3002), POINTS, "ranges beyond");
    }

    /** Theory: (n - 1) s^2 is chi squared; five values lie beyond c4 + 3 sqrt(1 - c4^2) with chance 0.0039. */
    @Test
    void standard_deviations_in_control_signal_as_often_as_theory_says() {
        double c4 = ChartConstants.c4(5);
        double upper = c4 + 3 * Math.sqrt(1 - c4 * c4);
        double theory = ChiSquaredDistribution.of(4).survivalProbability(4 * upper * upper);
        assertEquals(0.0039, theory, 5e-5);
        Simulated.assertRate(
                theory, spreadSignals(SubgroupSpread.STANDARD_DEVIATION, 3003), POINTS, "deviations beyond");
    }

    /** Theory: nine fair coins alike in a row, either side, take 2^9 - 1 throws on average. */
    @Test
    void a_run_on_one_side_comes_as_seldom_as_theory_says() {
        var sampler = Simulated.normal(3004);
        int runs = 3000;
        double sum = 0;
        double squares = 0;
        for (int run = 0; run < runs; run++) {
            var watch = new RunRuleWatch(java.util.Set.of(RunRule.NINE_ONE_SIDE));
            int length = 1;
            while (watch.next(sampler.sample()).isEmpty()) length++;
            sum += length;
            squares += (double) length * length;
        }
        double mean = sum / runs;
        double theory = Math.pow(2, 9) - 1;
        assertEquals(theory, mean, 3.3 * Math.sqrt((squares / runs - mean * mean) / runs));
    }

    /** Theory: 16 faults in 4 units as in one: beyond 28 or below 4. */
    @Test
    void faults_for_each_unit_signal_as_often_as_theory_says() {
        var law = PoissonDistribution.of(16);
        var faults = law.createSampler(RandomSource.XO_RO_SHI_RO_128_PP.create(3005L))
                .samples(POINTS)
                .asDoubleStream()
                .toArray();
        var limits = new CountLimits(CountModel.FAULTS_PER_UNIT, 4, 3, 1, 100);
        Simulated.assertRate(
                law.survivalProbability(28) + law.cumulativeProbability(3),
                beyond(limits, faults, 4),
                POINTS,
                "faults for each unit");
    }

    /** Theory: numbers out of so many items are near normal; a scatter of 1.5 that the limits know leaves 0.0027. */
    @Test
    void laneys_chart_signals_as_often_as_three_sigma_limits() {
        double items = 100_000;
        double sd = 1.5 * Math.sqrt(items * 0.1 * 0.9);
        var counts = Arrays.stream(Simulated.normal(3006, POINTS))
                .map(z -> Math.rint(items * 0.1 + sd * z))
                .toArray();
        var limits = new CountLimits(CountModel.FRACTION_LANEY, 0.1, 3, 1.5, 100);
        Simulated.assertRate(0.0027, beyond(limits, counts, items), POINTS, "fractions with scatter");
    }

    /** Theory: the exact binomial chance beyond 20 +- 3 sqrt(18), so above 32 or below 8 of 200 items. */
    @Test
    void numbers_of_equally_many_items_signal_as_often_as_theory_says() {
        var law = BinomialDistribution.of(200, 0.1);
        double theory = law.survivalProbability(32) + law.cumulativeProbability(7);
        assertEquals(0.0034, theory, 5e-5);
        var counts = law.createSampler(RandomSource.XO_RO_SHI_RO_128_PP.create(3007L))
                .samples(POINTS)
                .asDoubleStream()
                .toArray();
        Simulated.assertRate(
                theory,
                beyond(new CountLimits(CountModel.NUMBER, 0.1, 3, 1, 100), counts, 200),
                POINTS,
                "numbers beyond limits");
    }

    /** Theory: many faults are near normal; a scatter of 1.5 that the limits know leaves 0.0027. */
    @Test
    void laneys_chart_of_faults_signals_as_often_as_three_sigma_limits() {
        double units = 10_000;
        var faults = Arrays.stream(Simulated.normal(3008, POINTS))
                .map(z -> Math.rint(4 * units + 1.5 * Math.sqrt(4 * units) * z))
                .toArray();
        Simulated.assertRate(
                0.0027,
                beyond(new CountLimits(CountModel.FAULTS_PER_UNIT_LANEY, 4, 3, 1.5, 100), faults, units),
                POINTS,
                "faults with scatter");
    }

    private static long beyond(CountLimits limits, double[] counts, double amount) {
        return CountChart.chart(limits, counts, filled(amount), RunRule.limitsOnly())
                .orThrow()
                .signals()
                .size();
    }

    private static long spreadSignals(SubgroupSpread spread, long seed) {
        var sampler = Simulated.normal(seed);
        var groups = new double[POINTS][5];
        for (var group : groups) for (int i = 0; i < 5; i++) group[i] = sampler.sample();
        var limits = new SubgroupLimits(0, 1, 3, spread, 1, 100, 500, Autocorrelation.none());
        return SubgroupChart.chart(limits, groups, RunRule.limitsOnly())
                .orThrow()
                .spread()
                .signals()
                .size();
    }

    /** P(W < w) = n integral f(x) (F(x + w) - F(x))^(n - 1) dx, by the trapezium rule. */
    private static double rangeBelow(double w, int n) {
        double step = 1e-3;
        double sum = 0;
        for (double x = -9; x < 6; x += step)
            sum += NORMAL.density(x) * Math.pow(NORMAL.probability(x, x + w), n - 1) * step;
        return n * sum;
    }

    private static double[] filled(double value) {
        var filled = new double[POINTS];
        Arrays.fill(filled, value);
        return filled;
    }
}
