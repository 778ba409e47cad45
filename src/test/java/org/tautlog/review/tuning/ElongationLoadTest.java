package org.tautlog.review.tuning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.tautlog.joint.TorsionRule;
import org.tautlog.joint.tightening.Knee;
import org.tautlog.joint.tightening.Seating;
import org.tautlog.joint.tightening.Tightening;
import org.tautlog.joint.tightening.TighteningCurve;
import org.tautlog.joint.window.StatedJoint;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.trace.MeasuredClampLoad;
import org.tautlog.trace.MeasuredElongation;

/** Elongation of a bolt turned past yield: what the turn does not give to layers and drive, springs in a row. */
class ElongationLoadTest {
    private static final StatedJoint STATED =
            FenwaterEngine.specification().statedJoint().orElseThrow();
    private static final TighteningCurve CURVE = TighteningCurve.of(
            new Tightening(STATED.joint(), 20, 0, 1.5, Seating.none(), TorsionRule.FULLY_PLASTIC, Knee.ROUND));
    private static final double STEP_DEG = 8;

    /** Angle of the recording where the head has turned so far. */
    private static double recordedDeg(double headDeg) {
        return headDeg + CURVE.torqueNm(headDeg) / STATED.driveNmPerDeg().orElse(Double.POSITIVE_INFINITY);
    }

    private static DoubleStream heads() {
        double end = CURVE.onsetAngleDeg() + 160;
        return DoubleStream.iterate(CURVE.elasticOriginDeg() + STEP_DEG, deg -> deg < end, deg -> deg + STEP_DEG);
    }

    private static MeasuredElongation elongation() {
        return new MeasuredElongation(
                "Q1",
                "1",
                1,
                heads().mapToObj(deg -> new MeasuredElongation.Point(recordedDeg(deg), 1000 * stretchMm(deg)))
                        .toList());
    }

    private static double stretchMm(double headDeg) {
        return CURVE.preloadN(headDeg) * STATED.joint().boltResilienceMmPerN() + CURVE.plasticStretchMm(headDeg);
    }

    @Test
    void load_from_elongation_is_the_load_past_yield_too() {
        var load = ElongationLoad.of(elongation(), STATED).orElseThrow();
        var heads = heads().toArray();
        for (int i = 0; i < heads.length; i++) {
            double trueKN = CURVE.preloadN(heads[i]) / 1000;
            assertEquals(trueKN, load.points().get(i).loadKN(), 0.02 * trueKN + 0.2, "at " + heads[i]);
        }
    }

    @Test
    void both_tell_the_same_onset() {
        double offset = LoadOnset.usualOffsetDeg(FenwaterEngine.specification());
        var load = new MeasuredClampLoad(
                "Q1",
                "1",
                1,
                heads().mapToObj(deg -> new MeasuredClampLoad.Point(recordedDeg(deg), CURVE.preloadN(deg) / 1000))
                        .toList());
        var fromLoad = LoadOnset.of(load, offset).onsetDeg().orElseThrow();
        var fromElongation = LoadOnset.of(
                        ElongationLoad.of(elongation(), STATED).orElseThrow(), offset)
                .onsetDeg()
                .orElseThrow();
        assertEquals(fromLoad, fromElongation, 1.5);
    }

    @Test
    void a_few_points_or_a_bolt_alone_give_no_load() {
        var few = new MeasuredElongation("Q1", "1", 1, elongation().points().subList(0, LoadOnset.LEAST_POINTS - 1));
        assertTrue(ElongationLoad.of(few, STATED).isEmpty());
        double pitchUm = 1000 * STATED.joint().bolt().thread().pitchMm() / 360;
        var alone = new MeasuredElongation(
                "Q1",
                "1",
                1,
                heads().mapToObj(deg -> new MeasuredElongation.Point(deg, pitchUm * deg))
                        .toList());
        assertTrue(ElongationLoad.of(alone, STATED).isEmpty());
    }
}
