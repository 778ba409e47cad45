package org.tautlog.review.tuning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.line.SimulatedLine;
import org.tautlog.line.SimulatedTightening;
import org.tautlog.trace.Curve;
import org.tautlog.trace.MeasuredClampLoad;
import org.tautlog.trace.MeasuredClampLoad.Point;
import org.tautlog.trace.Trace;

class OnsetTuningTest {
    private static final JointSpecification RELEASED = FenwaterEngine.specification();
    private static final double OFFSET_DEG = LoadOnset.usualOffsetDeg(RELEASED);
    private static final List<SimulatedTightening> TRIAL = trial(6, 3);

    @Test
    void from_a_shifted_start_the_tuned_thresholds_err_less_on_another_trial() {
        var shifted = reading(new ReadingRule(15, 0.8, 0.85, 0.33, 2, 35));
        var tuned = tune(shifted, TRIAL);
        var again = reading(tuned.proposed());
        var others = trial(6, 4);
        for (var criterion : List.of(OnsetCriterion.GRADIENT, OnsetCriterion.OFFSET)) {
            assertTrue(tuned.tuning(criterion).speaksForAnother(), criterion.title());
            double before = biasDeg(tune(shifted, others), criterion);
            double after = biasDeg(tune(again, others), criterion);
            assertTrue(Math.abs(before) > 10, criterion.title() + " before: " + before);
            assertTrue(Math.abs(after) < 3, criterion.title() + " after: " + after);
        }
    }

    /** The offset of the curve and that of the load are one definition, so the tuned one must come near the one asked for. */
    @Test
    void the_tuned_offset_of_the_curve_lies_near_the_offset_of_the_load() {
        var tuned = tune(RELEASED, TRIAL).tuning(OnsetCriterion.OFFSET).tuned().orThrow();
        assertEquals(OFFSET_DEG, tuned.standing().threshold(), 3);
        assertTrue(tuned.interval().contains(tuned.standing().threshold()));
    }

    @Test
    void the_end_ratios_give_way_where_the_tuned_ratio_passes_them() {
        var proposed =
                tune(reading(new ReadingRule(15, 0.2, 0.4, 0.1, 2, 10)), TRIAL).proposed();
        assertTrue(proposed.onsetRatio() > 0.4, proposed.toString());
        assertEquals(proposed.onsetRatio(), proposed.elasticRatio());
        assertEquals(0.1, proposed.plasticRatio());
    }

    /** Each trace gets the loads of the bolt after it, as when a list slips by a row. */
    @Test
    void outcomes_of_other_bolts_are_noticed_and_nothing_is_proposed() {
        var shifted = reading(new ReadingRule(15, 0.8, 0.85, 0.33, 2, 35));
        var measured =
                TRIAL.stream().filter(one -> !one.measured().points().isEmpty()).toList();
        var tuning = new OnsetTuning(
                shifted,
                IntStream.range(0, measured.size())
                        .mapToObj(i -> of(
                                measured.get(i),
                                measured.get((i + 1) % measured.size())
                                        .measured()
                                        .points()))
                        .toList(),
                OFFSET_DEG,
                1);
        measured.forEach(one -> tuning.accept(one.trace()));
        var review = tuning.review();
        assertFalse(review.tooFew());
        assertTrue(review.unexplained(OnsetCriterion.GRADIENT), review.toString());
        assertTrue(review.unexplained(OnsetCriterion.OFFSET), review.toString());
        assertEquals(shifted.reading(), review.proposed());
        assertFalse(tune(shifted, TRIAL).unexplained(OnsetCriterion.GRADIENT));
    }

    @Test
    void the_same_traces_say_the_same_twice() {
        assertEquals(tune(RELEASED, TRIAL), tune(RELEASED, TRIAL));
    }

    @Test
    void every_trace_that_cannot_be_used_is_counted_with_its_reason() {
        var good =
                TRIAL.stream().filter(one -> !one.measured().points().isEmpty()).toList();
        var released = SimulatedLine.of(1, 3).tightenings().toList().get(0);
        var outcomes = List.of(
                good.get(0).measured(),
                headAxis(good.get(1).measured()),
                of(good.get(2), good.get(2).measured().points().subList(30, 40)),
                new MeasuredClampLoad("Q9", "4", 2, List.of()));
        var tuning = new OnsetTuning(RELEASED, outcomes, OFFSET_DEG, 1);
        List.of(good.get(0), good.get(0), good.get(1), good.get(2), good.get(3))
                .forEach(one -> tuning.accept(one.trace()));
        var review = tuning.review();
        assertEquals(
                Map.of(
                        TraceUse.USED, 1,
                        TraceUse.SECOND_TRACE, 1,
                        TraceUse.OTHER_AXIS, 1,
                        TraceUse.TOO_FEW_POINTS, 1,
                        TraceUse.NO_OUTCOME, 1),
                review.uses());
        assertEquals(List.of("Q9 bolt 4, attempt 2"), review.withoutTrace());
        assertTrue(review.tooFew());
        assertEquals(RELEASED.reading(), review.proposed());
        var short1 = new OnsetTuning(RELEASED, List.of(released.measured()), OFFSET_DEG, 1);
        short1.accept(released.trace());
        assertEquals(Map.of(TraceUse.NO_ONSET, 1), short1.review().uses());
    }

    @Test
    void a_recording_cut_short_is_left_out() {
        var whole = TRIAL.stream()
                .filter(one -> !one.measured().points().isEmpty())
                .findFirst()
                .orElseThrow();
        var curve = whole.trace().curve();
        int kept = curve.size() * 2 / 3;
        var cut = new Trace(
                whole.trace().identity(),
                whole.trace().source(),
                Curve.of(
                        IntStream.range(0, kept).mapToDouble(curve::angleDeg).toArray(),
                        IntStream.range(0, kept).mapToDouble(curve::torqueNm).toArray()));
        var tuning = new OnsetTuning(RELEASED, List.of(whole.measured()), OFFSET_DEG, 1);
        tuning.accept(cut);
        assertEquals(Map.of(TraceUse.UNUSABLE_RECORDING, 1), tuning.review().uses());
    }

    private static MeasuredClampLoad headAxis(MeasuredClampLoad measured) {
        return new MeasuredClampLoad(
                measured.serial(),
                measured.bolt(),
                measured.attempt(),
                measured.points().stream()
                        .map(point -> new Point(point.angleDeg() - 5000, point.loadKN()))
                        .toList());
    }

    private static MeasuredClampLoad of(SimulatedTightening one, List<Point> points) {
        var measured = one.measured();
        return new MeasuredClampLoad(measured.serial(), measured.bolt(), measured.attempt(), points);
    }

    private static double biasDeg(TuningReview review, OnsetCriterion criterion) {
        return review.tuning(criterion).present().biasDeg();
    }

    private static TuningReview tune(JointSpecification specification, List<SimulatedTightening> trial) {
        var outcomes = trial.stream()
                .map(SimulatedTightening::measured)
                .filter(one -> !one.points().isEmpty())
                .toList();
        var tuning = new OnsetTuning(specification, outcomes, OFFSET_DEG, 1);
        trial.forEach(one -> tuning.accept(one.trace()));
        return tuning.review();
    }

    private static JointSpecification reading(ReadingRule rule) {
        return new JointSpecification(RELEASED.name(), "shifted", RELEASED.method(), RELEASED.window(), rule, Map.of());
    }

    private static List<SimulatedTightening> trial(int engines, long seed) {
        return SimulatedLine.trial(engines, seed).tightenings().toList();
    }
}
