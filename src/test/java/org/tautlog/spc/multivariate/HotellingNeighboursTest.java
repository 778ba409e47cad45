package org.tautlog.spc.multivariate;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.spc.Simulated;
import org.tautlog.spc.chart.IndividualsOptions;
import org.tautlog.spc.chart.PhaseOneOptions;

/**
 * Features of lag-1 autocorrelation r, in control: 0.0027 stated. With allowance the share of 36,000 new points that signals is
 * at most twice that, points of one study sharing its limits; without, several times.
 */
class HotellingNeighboursTest {
    private static final int FEATURES = 3;
    private static final double STATED = 0.0027;

    @ParameterizedTest
    @CsvSource({"60, 0.6", "60, 0.8", "200, 0.8"})
    void single_items_that_resemble_each_other_give_few_more_false_signals_than_stated(int items, double r) {
        double widened = rateOfItems(items, r, IndividualsOptions.Neighbours.WIDEN);
        double plain = rateOfItems(items, r, IndividualsOptions.Neighbours.IGNORE);
        assertTrue(widened < 2 * STATED, widened + " where " + STATED + " is stated");
        assertTrue(plain > 2.5 * STATED, plain + " without allowance");
    }

    @ParameterizedTest
    @CsvSource({"0.3", "0.6"})
    void subgroups_of_neighbours_give_few_more_false_signals_than_stated(double r) {
        double widened = rateOfSubgroups(r, IndividualsOptions.Neighbours.WIDEN);
        double plain = rateOfSubgroups(r, IndividualsOptions.Neighbours.IGNORE);
        assertTrue(widened < 2 * STATED, widened + " where " + STATED + " is stated");
        assertTrue(plain > 8 * STATED, plain + " without allowance");
    }

    private static double rateOfItems(int items, double r, IndividualsOptions.Neighbours neighbours) {
        int studies = 600;
        int fresh = 60;
        int signals = 0;
        for (int study = 0; study < studies; study++) {
            var limits = HotellingChart.phaseOne(
                            rows(Simulated.normal(810_000L + study), items, r), options(neighbours))
                    .orThrow()
                    .limits();
            signals += HotellingChart.chart(
                            limits, rows(Simulated.normal(820_000L + study), fresh, r), HotellingLimits.Phase.TWO)
                    .orThrow()
                    .signals()
                    .size();
        }
        return signals / (double) (studies * fresh);
    }

    private static double rateOfSubgroups(double r, IndividualsOptions.Neighbours neighbours) {
        int studies = 360;
        int fresh = 100;
        int signals = 0;
        for (int study = 0; study < studies; study++) {
            var limits = HotellingChart.phaseOneOfSubgroups(
                            subgroups(Simulated.normal(830_000L + study), 50, r), options(neighbours))
                    .orThrow()
                    .limits();
            var means = Arrays.stream(subgroups(Simulated.normal(840_000L + study), fresh, r))
                    .map(HotellingNeighboursTest::mean)
                    .toArray(double[][]::new);
            signals += HotellingChart.chart(limits, means, HotellingLimits.Phase.TWO)
                    .orThrow()
                    .signals()
                    .size();
        }
        return signals / (double) (studies * fresh);
    }

    private static HotellingOptions options(IndividualsOptions.Neighbours neighbours) {
        return new HotellingOptions(STATED, neighbours, PhaseOneOptions.keepAll());
    }

    private static double[][][] subgroups(ZigguratSampler.NormalizedGaussian sampler, int count, double r) {
        var rows = rows(sampler, 4 * count, r);
        var subgroups = new double[count][][];
        for (int g = 0; g < count; g++) subgroups[g] = Arrays.copyOfRange(rows, 4 * g, 4 * g + 4);
        return subgroups;
    }

    private static double[] mean(double[][] rows) {
        var mean = new double[FEATURES];
        for (var row : rows) for (int j = 0; j < FEATURES; j++) mean[j] += row[j] / rows.length;
        return mean;
    }

    /** Each feature a first-order autoregressive series of variance 1. */
    private static double[][] rows(ZigguratSampler.NormalizedGaussian sampler, int n, double r) {
        var rows = new double[n][FEATURES];
        for (int i = 0; i < n; i++)
            for (int j = 0; j < FEATURES; j++)
                rows[i][j] = i == 0 ? sampler.sample() : r * rows[i - 1][j] + Math.sqrt(1 - r * r) * sampler.sample();
        return rows;
    }
}
