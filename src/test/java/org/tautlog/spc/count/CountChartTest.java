package org.tautlog.spc.count;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.PoissonDistribution;
import org.junit.jupiter.api.Test;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Simulated;
import org.tautlog.spc.chart.IndividualsOptions;
import org.tautlog.spc.chart.PhaseOneOptions;
import org.tautlog.spc.chart.RunRule;

class CountChartTest {
    private static final CountOptions USUAL = CountOptions.withDefaults();

    /** Theory: the exact binomial and Poisson chance beyond the frozen limits. */
    @Test
    void counts_in_control_signal_as_often_as_theory_says() {
        int points = 50_000;
        var random = RandomSource.XO_RO_SHI_RO_128_PP.create(301L);
        var binomial = BinomialDistribution.of(200, 0.1);
        var p = new CountLimits(CountModel.FRACTION, 0.1, 3, 1, 100);
        var sampler = binomial.createSampler(random);
        var counts = sampler.samples(points).asDoubleStream().toArray();
        var amounts = filled(points, 200);
        long signals = CountChart.chart(p, counts, amounts, RunRule.limitsOnly())
                .orThrow()
                .signals()
                .size();
        double reach = 3 * Math.sqrt(200 * 0.1 * 0.9);
        double theory = binomial.survivalProbability((int) Math.floor(20 + reach))
                + binomial.cumulativeProbability((int) Math.ceil(20 - reach) - 1);
        Simulated.assertRate(theory, signals, points, "fractions beyond limits");

        var poisson = PoissonDistribution.of(16);
        var c = new CountLimits(CountModel.FAULTS, 16, 3, 1, 100);
        var faults =
                poisson.createSampler(random).samples(points).asDoubleStream().toArray();
        long beyond = CountChart.chart(c, faults, filled(points, 1), RunRule.limitsOnly())
                .orThrow()
                .signals()
                .size();
        Simulated.assertRate(
                poisson.survivalProbability(28) + poisson.cumulativeProbability(3),
                beyond,
                points,
                "faults beyond limits");
    }

    /** Theory: Laney's factor is the root of 1 + n sd(p)^2 / (p (1 - p)) when the fraction itself breathes by sd(p). */
    @Test
    void a_breathing_fraction_alarms_the_plain_chart_and_not_laneys() {
        int points = 2000;
        var random = RandomSource.XO_RO_SHI_RO_128_PP.create(302L);
        var breath = Simulated.normal(303, points);
        var counts = new double[points];
        for (int i = 0; i < points; i++)
            counts[i] = BinomialDistribution.of(5000, 0.05 + 0.01 * Math.max(-4, breath[i]))
                    .createSampler(random)
                    .sample();
        var amounts = filled(points, 5000);
        var keep = USUAL.withPhaseOne(PhaseOneOptions.keepAll());
        var plain = CountChart.phaseOne(CountModel.FRACTION, counts, amounts, keep)
                .orThrow()
                .limits();
        var laney = CountChart.phaseOne(CountModel.FRACTION_LANEY, counts, amounts, keep)
                .orThrow()
                .limits();
        assertEquals(Math.sqrt(1 + 5000 * 1e-4 / (0.05 * 0.95)), laney.scatter(), 0.15);
        int plainSignals = CountChart.chart(plain, counts, amounts, RunRule.limitsOnly())
                .orThrow()
                .signals()
                .size();
        int laneySignals = CountChart.chart(laney, counts, amounts, RunRule.limitsOnly())
                .orThrow()
                .signals()
                .size();
        assertTrue(plainSignals > 400, plainSignals + " plain signals");
        assertTrue(laneySignals <= 16, laneySignals + " signals of Laney's chart");
    }

    /**
     * Theory: a fraction that breathes from day to day with lag-1 autocorrelation 0.7; 0.0027 of 5,000 points stated. Limits of
     * chance alone give far more, Laney's without allowance several times, with it at most twice, the chance scatter within
     * points hiding a little of the resemblance.
     */
    @Test
    void a_fraction_that_drifts_to_and_fro_alarms_all_but_the_widened_chart() {
        int points = 5000;
        var random = RandomSource.XO_RO_SHI_RO_128_PP.create(304L);
        var fresh = Simulated.normal(305, points);
        var counts = new double[points];
        double breath = 0;
        for (int i = 0; i < points; i++) {
            breath = 0.7 * breath + Math.sqrt(1 - 0.49) * fresh[i];
            counts[i] = BinomialDistribution.of(50_000, 0.05 + 0.008 * breath)
                    .createSampler(random)
                    .sample();
        }
        var amounts = filled(points, 50_000);
        var widen = new CountOptions(
                3, RunRule.limitsOnly(), IndividualsOptions.Neighbours.WIDEN, PhaseOneOptions.keepAll());
        var ignore = new CountOptions(
                3, RunRule.limitsOnly(), IndividualsOptions.Neighbours.IGNORE, PhaseOneOptions.keepAll());
        assertTrue(signals(CountModel.FRACTION, counts, amounts, widen) > 0.2 * points);
        int unallowed = signals(CountModel.FRACTION_LANEY, counts, amounts, ignore);
        int allowed = signals(CountModel.FRACTION_LANEY, counts, amounts, widen);
        assertTrue(unallowed > 10 * 0.0027 * points, unallowed + " without allowance");
        assertTrue(allowed <= 2 * 0.0027 * points, allowed + " with allowance");
    }

    private static int signals(CountModel model, double[] counts, double[] amounts, CountOptions options) {
        return CountChart.phaseOne(model, counts, amounts, options)
                .flatMap(phase -> CountChart.chart(phase.limits(), counts, amounts, options.rules()))
                .orThrow()
                .signals()
                .size();
    }

    @Test
    void varying_units_get_their_own_limits() {
        var limits = CountChart.phaseOne(
                        CountModel.FAULTS_PER_UNIT, new double[] {4, 9, 16}, new double[] {1, 2, 4}, USUAL)
                .orThrow()
                .limits();
        var points = CountChart.chart(limits, new double[] {4, 16}, new double[] {1, 4}, RunRule.limitsOnly())
                .orThrow()
                .points();
        assertEquals(29.0 / 7, limits.rate(), 1e-12);
        assertEquals(
                points.get(0).upper() - points.get(0).centre(),
                2 * (points.get(1).upper() - points.get(1).centre()),
                1e-12);
        assertEquals(0, points.get(0).lower());
    }

    @Test
    void counts_that_cannot_be_charted_get_a_reason() {
        assertEquals(Optional.of(Reason.EMPTY), of(CountModel.FAULTS, new double[0], new double[0]));
        assertEquals(Optional.of(Reason.TOO_FEW), of(CountModel.FAULTS, new double[] {3}, new double[] {1}));
        assertEquals(Optional.of(Reason.UNEQUAL), of(CountModel.NUMBER, new double[] {3, 4}, new double[] {50, 60}));
        assertEquals(Optional.of(Reason.UNEQUAL), of(CountModel.FRACTION, new double[] {3, 4}, new double[] {50}));
        assertEquals(
                Optional.of(Reason.OUT_OF_DOMAIN), of(CountModel.FRACTION, new double[] {3, 4}, new double[] {2, 5}));
        assertEquals(
                Optional.of(Reason.OUT_OF_DOMAIN), of(CountModel.FAULTS, new double[] {-1, 4}, new double[] {1, 1}));
        assertEquals(Optional.of(Reason.NO_SPREAD), of(CountModel.FRACTION, new double[] {0, 0}, new double[] {5, 5}));
        assertEquals(
                Optional.of(Reason.NOT_FINITE),
                of(CountModel.FRACTION, new double[] {0, Double.NaN}, new double[] {5, 5}));
    }

    private static Optional<Reason> of(CountModel model, double[] counts, double[] amounts) {
        return CountChart.phaseOne(model, counts, amounts, USUAL).missingFor();
    }

    private static double[] filled(int n, double value) {
        var filled = new double[n];
        java.util.Arrays.fill(filled, value);
        return filled;
    }
}
