package org.tautlog.spc;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.tautlog.spc.capability.AndersonDarling;
import org.tautlog.spc.capability.CapabilityOptions;
import org.tautlog.spc.capability.CapabilityStudy;
import org.tautlog.spc.capability.SpecLimits;
import org.tautlog.spc.capability.TimeModel;
import org.tautlog.spc.change.ChangeOptions;
import org.tautlog.spc.change.Changes;
import org.tautlog.spc.change.Pettitt;
import org.tautlog.spc.change.Trend;
import org.tautlog.spc.chart.IndividualsChart;
import org.tautlog.spc.chart.IndividualsOptions;
import org.tautlog.spc.chart.IndividualsSpread;
import org.tautlog.spc.chart.RunRule;
import org.tautlog.spc.chart.SubgroupChart;
import org.tautlog.spc.chart.SubgroupOptions;
import org.tautlog.spc.compare.Adjustment;
import org.tautlog.spc.compare.GroupTests;
import org.tautlog.spc.count.CountChart;
import org.tautlog.spc.count.CountModel;
import org.tautlog.spc.count.CountOptions;
import org.tautlog.spc.gauge.Bias;
import org.tautlog.spc.gauge.Linearity;
import org.tautlog.spc.multivariate.HotellingChart;
import org.tautlog.spc.multivariate.HotellingOptions;
import org.tautlog.spc.outlier.GeneralizedEsd;
import org.tautlog.spc.outlier.Grubbs;
import org.tautlog.spc.outlier.HampelWindow;
import org.tautlog.spc.outlier.ModifiedZ;
import org.tautlog.spc.outlier.RobustDistance;
import org.tautlog.spc.outlier.RobustOptions;
import org.tautlog.spc.stream.StreamsChart;
import org.tautlog.spc.stream.StreamsOptions;
import org.tautlog.spc.timeweighted.Cusum;
import org.tautlog.spc.timeweighted.CusumOptions;
import org.tautlog.spc.timeweighted.EwmaChart;
import org.tautlog.spc.timeweighted.EwmaOptions;

/** Whatever the data, each method gives a result without NaN or infinity, or a reason; it never throws. */
class DegenerateDataLaws {
    private static final IndividualsOptions VALUES = IndividualsOptions.withDefaults();
    private static final ChangeOptions CHANGES = new ChangeOptions(2, 0.95, 0.01);

    private static final List<Function<double[], Answer<?>>> OF_A_SERIES = List.of(
            Autocorrelation::of,
            Autocorrelation::ofDifferences,
            x -> IndividualsChart.phaseOne(x, VALUES)
                    .flatMap(phase -> IndividualsChart.chart(phase.limits(), x, RunRule.nelson())),
            x -> IndividualsChart.phaseOne(x, VALUES.withSpread(IndividualsSpread.MEDIAN_DEVIATION)),
            x -> IndividualsChart.phaseOne(x, VALUES.withSpread(IndividualsSpread.MEDIAN_MOVING_RANGE)),
            x -> EwmaChart.phaseOne(x, VALUES, EwmaOptions.withDefaults())
                    .flatMap(phase -> EwmaChart.chart(phase.limits(), x)),
            x -> Cusum.phaseOne(x, VALUES, CusumOptions.withDefaults()).flatMap(phase -> Cusum.of(phase.limits(), x)),
            x -> ModifiedZ.of(x, 3.5),
            x -> Grubbs.of(x, 0.05, Grubbs.Side.EITHER),
            x -> GeneralizedEsd.of(x, 2, 0.05),
            x -> HampelWindow.of(x, 2, 3, 0),
            x -> Changes.ofMean(x, CHANGES),
            x -> Changes.ofSpread(x, CHANGES),
            x -> Changes.allOfMean(x, CHANGES),
            x -> Trend.of(x, 0.95),
            Pettitt::of,
            AndersonDarling::of,
            x -> CapabilityStudy.process(x, SpecLimits.between(-2, 2), CapabilityOptions.withDefaults()),
            x -> CapabilityStudy.process(x, SpecLimits.atMost(2), CapabilityOptions.withDefaults()),
            x -> Bias.of(x, 1, 0.95),
            x -> Linearity.of(x, x, 0.95),
            x -> CountChart.phaseOne(CountModel.FRACTION_LANEY, x, filled(x.length), CountOptions.withDefaults())
                    .flatMap(phase -> CountChart.chart(phase.limits(), x, filled(x.length), RunRule.limitsOnly())));

    private static final List<Function<double[][], Answer<?>>> OF_A_TABLE = List.of(
            x -> SubgroupChart.phaseOne(x, SubgroupOptions.withDefaults())
                    .flatMap(phase -> SubgroupChart.chart(phase.limits(), x, RunRule.nelson())),
            GroupTests::anova,
            GroupTests::welch,
            GroupTests::brownForsythe,
            GroupTests::kruskalWallis,
            x -> GroupTests.pairs(x, Adjustment.HOLM, 0.95),
            x -> TimeModel.of(x, 0.01),
            x -> CapabilityStudy.process(x, SpecLimits.atLeast(-2), CapabilityOptions.withDefaults()),
            x -> HotellingChart.phaseOne(x, HotellingOptions.withDefaults())
                    .map(phase -> phase.limits().phaseTwoLimit()),
            x -> RobustDistance.of(x, new RobustOptions(0.75, 0.001, 5, 1)).map(RobustDistance::distances),
            x -> StreamsChart.phaseOne(x, StreamsOptions.withDefaults())
                    .flatMap(phase -> StreamsChart.chart(phase.limits(), x, StreamsOptions.withDefaults())));

    @Property(tries = 300)
    void a_series_gives_a_sound_result_or_a_reason(@ForAll("series") double[] x) {
        OF_A_SERIES.forEach(method -> sound(method.apply(x), Arrays.toString(x)));
    }

    @Property(tries = 300)
    void a_table_gives_a_sound_result_or_a_reason(@ForAll("table") double[][] x) {
        OF_A_TABLE.forEach(method -> sound(method.apply(x), Arrays.deepToString(x)));
    }

    @Provide
    Arbitrary<double[]> series() {
        return row(0, 30);
    }

    @Provide
    Arbitrary<double[][]> table() {
        return Arbitraries.integers()
                .between(0, 4)
                .flatMap(columns -> Arbitraries.oneOf(row(columns, columns), row(columns, columns), row(0, 4))
                        .array(double[][].class)
                        .ofMinSize(0)
                        .ofMaxSize(14));
    }

    private static Arbitrary<double[]> row(int least, int most) {
        var tame = Arbitraries.of(0.0, 1.0, -1.0, 0.1, 0.30000000000000004, 2.0, 7.25, -0.0, 3.0, 1e-9);
        var wild = Arbitraries.of(
                0.0,
                1.0,
                0.1,
                Double.MIN_VALUE,
                1e-300,
                1e-160,
                1e60,
                -1e60,
                1e200,
                1e10,
                1e10 + 1e-6,
                Double.MAX_VALUE,
                Double.NaN,
                Double.NEGATIVE_INFINITY);
        var finite = Arbitraries.of(
                0.0, 1.0, Double.MIN_VALUE, 1e-300, 1e-160, 1e-61, 1e-59, 1e60, -1e60, 1e10, 1e10 + 1e-6);
        return Arbitraries.oneOf(
                tame.array(double[].class).ofMinSize(least).ofMaxSize(most),
                Arbitraries.doubles()
                        .between(-3, 3)
                        .array(double[].class)
                        .ofMinSize(least)
                        .ofMaxSize(most),
                finite.array(double[].class).ofMinSize(least).ofMaxSize(most),
                wild.array(double[].class).ofMinSize(least).ofMaxSize(most));
    }

    private static void sound(Answer<?> answer, String data) {
        if (answer instanceof Answer.Missing<?> missing) {
            assertTrue(missing.said().length() > 10, data);
            return;
        }
        String text = String.valueOf(answer.found().orElseThrow());
        assertFalse(text.contains("NaN") && !text.contains("is NaN"), () -> data + " gives " + text);
        assertFalse(text.contains("=Infinity") || text.contains("-Infinity,"), () -> data + " gives " + text);
    }

    private static double[] filled(int n) {
        var filled = new double[n];
        Arrays.fill(filled, 10);
        return filled;
    }
}
