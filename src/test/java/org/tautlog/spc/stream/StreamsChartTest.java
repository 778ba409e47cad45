package org.tautlog.spc.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.spc.Autocorrelation;
import org.tautlog.spc.Reason;
import org.tautlog.spc.Simulated;
import org.tautlog.spc.chart.IndividualsOptions;
import org.tautlog.spc.chart.PhaseOneOptions;
import org.tautlog.spc.timeweighted.RunLength;

class StreamsChartTest {
    private static final StreamsOptions USUAL = StreamsOptions.withDefaults();
    private static final StreamsOptions THREE_SIGMA = new StreamsOptions(0.0027, 5, USUAL.common(), USUAL.phaseOne());
    private static final int STREAMS = 8;

    /** Source: Nelson (1986) and Montgomery 10.3, one-sided run length (k^r - 1) / (k - 1): 1093, 1365, 781, 585; from memory. */
    @ParameterizedTest
    @CsvSource({"3, 7, 1093", "4, 6, 1365", "5, 5, 781", "8, 4, 585", "10, 4, 1111"})
    void runs_of_one_stream_are_as_long_as_the_table_asks(int streams, int run, double printed) {
        assertEquals(printed, (Math.pow(streams, run) - 1) / (streams - 1), 0.5);
        assertEquals(run, StreamsChart.longestRun(streams, 1 / printed));
    }

    /** Theory: 0.0027 a time for own limits, all streams together; (k^r - 1) / (k - 1) for runs; RunLength for sums. */
    @Test
    void streams_in_control_signal_as_often_as_theory_says() {
        int times = 100_000;
        var limits = known();
        var chart = StreamsChart.chart(limits, streams(501, times, 0.7), USUAL).orThrow();
        long own = chart.signals().stream()
                .filter(s -> s.kind() == StreamSignal.Kind.OWN_HIGH || s.kind() == StreamSignal.Kind.OWN_LOW)
                .count();
        Simulated.assertRate(0.0027, own, times, "own limits");
        long group = chart.signals().stream()
                .filter(s -> s.kind() == StreamSignal.Kind.GROUP_HIGH || s.kind() == StreamSignal.Kind.GROUP_LOW)
                .map(StreamSignal::time)
                .distinct()
                .count();
        assertTrue(
                group > 0 && group <= 0.0030 * times, group + " times beyond group limits: common movement only helps");
        int run = limits.longestRun();
        double between = (Math.pow(STREAMS, run) - 1) / (STREAMS - 1);
        long runs = chart.signals().stream()
                .filter(s -> s.kind() == StreamSignal.Kind.RUN_LARGEST)
                .count();
        double perTime = (1.0 / 8) * (7.0 / 8) * Math.pow(1.0 / 8, run - 2);
        assertTrue(perTime < 1 / between * 1.2);
        Simulated.assertRate(perTime, runs, times, "runs of one stream as the largest");
    }

    /**
     * Theory: three-sigma limits of a normal mean whose spread is known, 0.0027; 100,000 times, 99.9 % binomial interval. The
     * mean of 8 streams has variance 1 / 8 about a common movement of 0.49.
     */
    @Test
    void the_mean_of_streams_in_control_signals_as_often_as_theory_says() {
        int times = 100_000;
        var limits = known();
        double sigma = Math.sqrt(0.49 + 1.0 / STREAMS);
        assertEquals(sigma, limits.common().sigma(), 0.03 * sigma, "learnt from 2000 times");
        var x = streams(509, times, 0.7);
        for (var row : x)
            for (int j = 0; j < STREAMS; j++) row[j] *= limits.common().sigma() / sigma;
        long signals = StreamsChart.chart(limits, x, USUAL).orThrow().signals().stream()
                .filter(s -> s.kind() == StreamSignal.Kind.MEAN_MOVED)
                .count();
        Simulated.assertRate(0.0027, signals, times, "means of streams beyond limits");
    }

    /** Theory: the sum of one stream follows a CUSUM of standard normal values; ours restarts nothing, so first signals. */
    @Test
    void one_sigma_of_one_stream_in_eight_is_found_as_soon_as_theory_says() {
        var limits = known();
        double shift = 1 * Math.sqrt(1 - 1.0 / STREAMS);
        double theory = RunLength.ofCusum(0.5, limits.cusumDecision(), shift, 0);
        int runs = 800;
        int blamed = 0;
        double sum = 0;
        double squares = 0;
        for (int run = 0; run < runs; run++) {
            var x = streams(600_000L + run, 150, 0.7);
            for (var row : x) row[3] += 1;
            var rises = StreamsChart.chart(limits, x, USUAL).orThrow().signals().stream()
                    .filter(s -> s.kind() == StreamSignal.Kind.OWN_RISE)
                    .toList();
            if (rises.get(0).named().orElseThrow() == 3) blamed++;
            double length = rises.stream()
                            .filter(s -> s.named().orElseThrow() == 3)
                            .findFirst()
                            .orElseThrow()
                            .time()
                    + 1;
            sum += length;
            squares += length * length;
        }
        double mean = sum / runs;
        double error = Math.sqrt((squares / runs - mean * mean) / runs);
        assertEquals(theory, mean, 3.3 * error, "average run length, theory " + theory);
        assertTrue(blamed > 0.98 * runs, blamed + " of " + runs + " name the right stream first");
    }

    /** Theory: standard normal values whose sums, of all streams and both sides, run 1 / 0.0027 times on average. */
    @Test
    void sums_of_streams_in_control_signal_no_oftener_than_stated() {
        int runs = 400;
        int signals = 0;
        var limits = known();
        for (int run = 0; run < runs; run++)
            if (StreamsChart.chart(limits, streams(700_000L + run, 250, 0.7), USUAL).orThrow().signals().stream()
                    .anyMatch(s -> ofSums(s.kind()))) signals++;
        double theory = 1 - Math.exp(-250 * 0.0027);
        assertTrue(signals < theory * runs + 3.3 * Math.sqrt(runs * theory * (1 - theory)), signals + " of " + runs);
        assertTrue(signals > 0.75 * theory * runs, signals + " of " + runs + ": streams of one mean hinder each other");
    }

    /**
     * Theory: first-order autoregressive streams of lag-1 r. Limits that allow for it may give a false signal of each kind no
     * oftener than the one in 1000 that they state; limits that do not give several times as many.
     */
    @ParameterizedTest
    @CsvSource({"0.3", "0.6"})
    void streams_that_resemble_themselves_give_no_more_false_signals_than_stated(double r) {
        var learnt = alike(800_001, 3000, r);
        var widened = StreamsChart.phaseOne(learnt, USUAL).orThrow().limits();
        var ignoring = new StreamsOptions(
                0.001,
                5,
                USUAL.common().withNeighbours(IndividualsOptions.Neighbours.IGNORE),
                PhaseOneOptions.keepAll());
        var plain = StreamsChart.phaseOne(learnt, ignoring).orThrow().limits();
        assertEquals(r, widened.neighbours().lagOne(), 0.05);
        assertEquals(Math.sqrt((1 + r) / (1 - r)), widened.sumFactor(), 0.15);
        assertEquals(Math.hypot(1, 0.7), widened.streamSigma(), 0.08);
        int times = 30_000;
        var fresh = alike(800_002, times, r);
        var calm = StreamsChart.chart(widened, fresh, USUAL).orThrow();
        var noisy = StreamsChart.chart(plain, fresh, ignoring).orThrow();
        for (var of : List.<java.util.function.Predicate<StreamSignal.Kind>>of(
                StreamsChartTest::ofSums, StreamsChartTest::ofRuns, StreamsChartTest::ofGroup)) {
            long quiet = count(calm, of);
            assertTrue(quiet <= 0.0015 * times, quiet + " of " + times);
            assertTrue(count(noisy, of) > 2 * quiet, count(noisy, of) + " beside " + quiet);
        }
    }

    @Test
    void independent_streams_are_seldom_taken_for_alike() {
        int runs = 400;
        int widened = 0;
        for (int run = 0; run < runs; run++)
            if (StreamsChart.phaseOne(streams(900_000L + run, 60, 0.7), USUAL)
                            .orThrow()
                            .limits()
                            .sumFactor()
                    > 1) widened++;
        assertTrue(widened <= 0.09 * runs, widened + " of " + runs + ", where the noise bound lets 5 % through");
    }

    private static boolean ofSums(StreamSignal.Kind kind) {
        return kind == StreamSignal.Kind.OWN_RISE || kind == StreamSignal.Kind.OWN_FALL;
    }

    private static boolean ofRuns(StreamSignal.Kind kind) {
        return kind == StreamSignal.Kind.RUN_LARGEST || kind == StreamSignal.Kind.RUN_SMALLEST;
    }

    private static boolean ofGroup(StreamSignal.Kind kind) {
        return kind == StreamSignal.Kind.GROUP_HIGH || kind == StreamSignal.Kind.GROUP_LOW;
    }

    private static long count(StreamsChart chart, java.util.function.Predicate<StreamSignal.Kind> of) {
        return chart.signals().stream().filter(s -> of.test(s.kind())).count();
    }

    /** Streams of sigma 1, each with lag-1 autocorrelation r, on a common movement of the same. */
    private static double[][] alike(long seed, int times, double r) {
        var x = new double[times][STREAMS];
        var sampler = Simulated.normal(seed);
        double fresh = Math.sqrt(1 - r * r);
        double common = 0;
        var own = new double[STREAMS];
        for (var row : x) {
            common = r * common + fresh * sampler.sample();
            for (int j = 0; j < STREAMS; j++) {
                own[j] = r * own[j] + fresh * sampler.sample();
                row[j] = 0.7 * common + own[j];
            }
        }
        return x;
    }

    @Test
    void a_shift_of_all_streams_is_not_blamed_on_one() {
        var phase = StreamsChart.phaseOne(streams(502, 200, 0.7), USUAL).orThrow();
        var x = streams(503, 60, 0.7);
        for (int t = 30; t < 60; t++) for (int j = 0; j < STREAMS; j++) x[t][j] += 4;
        var chart = StreamsChart.chart(phase.limits(), x, USUAL).orThrow();
        assertTrue(chart.kinds().contains(StreamSignal.Kind.MEAN_MOVED));
        assertEquals(List.of(), chart.ownMovers());
    }

    @Test
    void a_shift_of_one_stream_is_blamed_on_it_alone() {
        var phase = StreamsChart.phaseOne(streams(504, 200, 0.7), USUAL).orThrow();
        var x = streams(505, 60, 0.7);
        for (int t = 30; t < 60; t++) x[t][5] -= 5;
        var chart = StreamsChart.chart(phase.limits(), x, USUAL).orThrow();
        assertEquals(List.of(5), chart.ownMovers(), chart.signals().toString());
        assertTrue(chart.kinds()
                .containsAll(
                        Set.of(StreamSignal.Kind.OWN_LOW, StreamSignal.Kind.OWN_FALL, StreamSignal.Kind.RUN_SMALLEST)));
        assertEquals(
                30,
                chart.signals().stream()
                        .filter(s -> s.kind().ofOneStream())
                        .findFirst()
                        .orElseThrow()
                        .time(),
                2);
    }

    @Test
    void a_second_stream_that_drifts_is_named_while_another_is_worse() {
        var phase = StreamsChart.phaseOne(streams(504, 200, 0.7), USUAL).orThrow();
        var x = streams(510, 90, 0.7);
        for (int t = 20; t < 90; t++) {
            x[t][2] += 3;
            x[t][6] += 1.5;
        }
        var chart = StreamsChart.chart(phase.limits(), x, USUAL).orThrow();
        assertEquals(List.of(2, 6), chart.ownMovers(), chart.signals().toString());
        int told = chart.signals().stream()
                .filter(s -> s.kind() == StreamSignal.Kind.OWN_RISE && s.named().orElseThrow() == 6)
                .findFirst()
                .orElseThrow()
                .time();
        int passed = chart.points().stream()
                .filter(p -> p.upperSums().get(6) > phase.limits().cusumDecision())
                .findFirst()
                .orElseThrow()
                .time();
        assertEquals(passed, told, "told when it passes h");
    }

    @Test
    void phase_one_finds_centres_and_spreads_and_leaves_a_stray_out() {
        var x = streams(506, 400, 0.7);
        for (var row : x) for (int j = 0; j < STREAMS; j++) row[j] += 10 * j;
        x[100][2] += 9;
        for (int t = 0; t < 400; t += 3) x[t][6] = Double.NaN;
        var phase = StreamsChart.phaseOne(x, USUAL).orThrow();
        assertEquals(1, phase.limits().ownSigma(), 0.04);
        assertEquals(Math.hypot(1, 0.7), phase.limits().streamSigma(), 0.06);
        for (int j = 0; j < STREAMS; j++)
            assertEquals(10 * j, phase.limits().centres().get(j), 0.25);
        assertTrue(phase.removed().stream().anyMatch(r -> r.index() == 100 * STREAMS + 2));
    }

    @Test
    void a_stream_that_appears_once_is_named_and_left_out() {
        var x = streams(507, 50, 0.7);
        for (int t = 0; t < 50; t++) if (t != 7) x[t][1] = Double.NaN;
        var limits = StreamsChart.phaseOne(x, USUAL).orThrow().limits();
        assertEquals(List.of(1), limits.leftOut());
        var chart = StreamsChart.chart(limits, x, USUAL).orThrow();
        assertEquals(50, chart.points().size());
        assertTrue(chart.points().stream().allMatch(p -> p.present() == 7));
    }

    @Test
    void times_with_one_stream_only_are_passed_over() {
        var x = streams(508, 40, 0.7);
        for (int j = 1; j < STREAMS; j++) x[20][j] = Double.NaN;
        var limits = StreamsChart.phaseOne(x, USUAL).orThrow().limits();
        assertEquals(39, StreamsChart.chart(limits, x, USUAL).orThrow().points().size());
    }

    @Test
    void data_that_cannot_be_charted_get_a_reason() {
        assertEquals(
                Optional.of(Reason.EMPTY),
                StreamsChart.phaseOne(new double[0][], USUAL).missingFor());
        assertEquals(
                Optional.of(Reason.TOO_FEW),
                StreamsChart.phaseOne(new double[][] {{1, 2}, {2, 3}}, USUAL).missingFor());
        assertEquals(
                Optional.of(Reason.UNEQUAL),
                StreamsChart.phaseOne(new double[][] {{1, 2}, {2}}, USUAL).missingFor());
        double[][] parallel = {{1, 2}, {2, 3}, {3, 4}, {5, 6}, {4, 5}, {3, 4}};
        assertEquals(
                Optional.of(Reason.NO_SPREAD),
                StreamsChart.phaseOne(parallel, USUAL).missingFor());
        double[][] infinite = {{1, Double.NEGATIVE_INFINITY}, {2, 3}};
        assertEquals(
                Optional.of(Reason.NOT_FINITE),
                StreamsChart.phaseOne(infinite, USUAL).missingFor());
        assertEquals(
                Optional.of(Reason.UNEQUAL),
                StreamsChart.chart(known(), new double[][] {{1, 2}}, USUAL).missingFor());
    }

    private static StreamsLimits known() {
        var fitted = StreamsChart.phaseOne(streams(500, 2000, 0.7), THREE_SIGMA)
                .orThrow()
                .limits();
        return new StreamsLimits(
                Collections.nCopies(STREAMS, 0.0),
                fitted.common(),
                1,
                Math.hypot(1, 0.7),
                fitted.familyWidth(),
                fitted.longestRun(),
                fitted.cusumDecision(),
                1,
                fitted.cells(),
                Autocorrelation.none());
    }

    /** Independent streams of sigma 1 on a common movement. */
    private static double[][] streams(long seed, int times, double commonSigma) {
        var sampler = Simulated.normal(seed);
        var x = new double[times][STREAMS];
        for (var row : x) {
            double common = commonSigma * sampler.sample();
            for (int j = 0; j < STREAMS; j++) row[j] = common + sampler.sample();
        }
        return x;
    }
}
