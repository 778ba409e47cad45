package org.tautlog.review.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.tautlog.review.MadeShift;
import org.tautlog.spc.Simulated;
import org.tautlog.spc.capability.Stability;
import org.tautlog.spc.chart.ChartPair;
import org.tautlog.spc.chart.IndividualsChart;
import org.tautlog.spc.chart.IndividualsOptions;
import org.tautlog.spc.chart.RunRule;
import org.tautlog.trace.TraceIdentity;

/** The word on control of a simulated shift's streams. */
class StreamFiguresTest {
    private static final long SEED = 20260317;

    @Test
    void a_stream_whose_level_moved_is_not_in_control() {
        var review = SimulatedShifts.whole(SEED).review();
        var moved = studied(review).stream().filter(one -> moved(review, one)).toList();
        assertFalse(moved.isEmpty());
        moved.forEach(one -> assertEquals(
                Stability.Word.OUT_OF_CONTROL, word(one), one.stream().words() + ' ' + one.feature()));
    }

    @Test
    void most_streams_of_a_faultless_shift_are_in_control() {
        var studied = studied(SimulatedShifts.faultless(11).review());
        long calm = studied.stream()
                .filter(one -> word(one) == Stability.Word.IN_CONTROL)
                .count();
        assertTrue(calm >= 0.8 * studied.size(), calm + " of " + studied.size());
    }

    /** 600 calm turns of skewed values: the chart of single values, made for normal ones, signals far oftener than chance. */
    @Test
    void a_calm_stream_of_skewed_values_is_in_control_whatever_a_chart_for_normal_ones_says() {
        var turns = Arrays.stream(Simulated.normal(3, 600))
                .mapToObj(z ->
                        350 - 2 * Math.log(-Math.log(NormalDistribution.of(0, 1).cumulativeProbability(z))))
                .toList();
        var stream = stream(turns);
        var figures = figures(stream);
        assertEquals(
                Stability.Word.OUT_OF_CONTROL,
                Stability.of(600, stream.signals().size(), 1 / FalseAlarms.RULES_RUN)
                        .word());
        assertEquals(
                Stability.Word.IN_CONTROL, word(figures), figures.capability().toString());
    }

    /** Half a deviation is too little for the limits of single values and for the certainty of a change found unasked. */
    @Test
    void the_review_shares_the_rule_of_the_capability_study_on_levels_that_moved() {
        var z = Simulated.normal(8, 400);
        var turns = IntStream.range(0, z.length)
                .mapToObj(i -> 350 + Math.exp(0.5 * (z[i] + (i < 200 ? 0 : 0.6))))
                .toList();
        var word = figures(stream(turns)).capability().orThrow().stability();
        assertEquals(Stability.Word.OUT_OF_CONTROL, word.word());
        assertTrue(word.said().contains("the level moved at value"), word.said());
    }

    private static StreamChart stream(List<Double> turns) {
        var numbers = turns.stream().mapToDouble(Double::doubleValue).toArray();
        var chart = IndividualsChart.phaseOne(numbers, IndividualsOptions.withDefaults())
                .flatMap(phase -> IndividualsChart.chart(phase.limits(), numbers, RunRule.westernElectric()))
                .map(ChartPair::location);
        var identities = IntStream.range(0, turns.size())
                .mapToObj(i -> new TraceIdentity("FW-" + i, "S40", "1", "1", 1, null, "A17"))
                .toList();
        return new StreamChart(
                new Stream("S40", "1"), ChartedFeature.TURN, identities, turns, List.of(), chart, chart, "");
    }

    private static StreamFigures figures(StreamChart stream) {
        return StreamFigures.of(
                        List.of(stream),
                        List.of(),
                        List.of(),
                        MadeShift.specification().window())
                .get(0);
    }

    private static List<StreamFigures> studied(StreamReview review) {
        return review.figures().stream()
                .filter(one -> one.capability().found().isPresent())
                .toList();
    }

    private static boolean moved(StreamReview review, StreamFigures one) {
        return review.moved(one.stream(), one.feature())
                || review.changes().stream()
                        .anyMatch(change -> change.stream().equals(one.stream()) && change.feature() == one.feature());
    }

    private static Stability.Word word(StreamFigures one) {
        return one.capability().orThrow().stability().word();
    }
}
