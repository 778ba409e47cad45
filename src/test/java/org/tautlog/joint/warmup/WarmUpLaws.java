package org.tautlog.joint.warmup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.Joints;
import org.tautlog.joint.Layer;
import org.tautlog.joint.LayerMaterial;
import org.tautlog.joint.LayerShape;
import org.tautlog.joint.TorsionRule;
import org.tautlog.joint.tightening.Knee;
import org.tautlog.joint.tightening.Seating;
import org.tautlog.joint.tightening.Tightened;
import org.tautlog.joint.tightening.Tightening;
import org.tautlog.joint.tightening.TighteningCurve;

/** What holds for every warm-up. */
class WarmUpLaws {
    private static final double BOLT_EXPANSION_PER_K = 11.5e-6;

    @Property
    void equal_expansion_leaves_the_cold_clamp_load_alone(
            @ForAll @DoubleRange(min = 0, max = 550) double turnDeg,
            @ForAll @DoubleRange(min = 20, max = 200) double hotC,
            @ForAll Knee knee) {
        var alike = joint(BOLT_EXPANSION_PER_K);
        var end = end(alike, turnDeg, knee);
        var result = warmUp(alike, hotC, 0.5, knee).run(end);
        assertEquals(end.preloadN(), result.coldAfterN(), 1e-6);
        assertEquals(0, result.plasticStretchMm(), 1e-9);
    }

    @Property
    void a_warm_up_never_adds_to_the_cold_clamp_load_and_takes_what_it_stretched(
            @ForAll @DoubleRange(min = 0, max = 550) double turnDeg,
            @ForAll @DoubleRange(min = 20, max = 200) double hotC,
            @ForAll Knee knee) {
        var joint = joint(23e-6);
        var result = warmUp(joint, hotC, 0.5, knee).run(end(joint, turnDeg, knee));
        assertTrue(result.coldAfterN() <= result.coldBeforeN() + 1e-9);
        assertEquals(result.plasticStretchMm() / joint.resilienceMmPerN(), result.lostN(), 1e-6);
        assertTrue(!result.yieldsAtWarmUp() || result.plasticStretchMm() > 0);
    }

    /** Clipping by a sharp knee: of two bolts without torsion left, the tighter one stays so, and the distance never grows. */
    @Property
    void two_bolts_that_were_elastic_come_closer_and_never_swap(
            @ForAll @DoubleRange(min = 0, max = 300) double turnDeg,
            @ForAll @DoubleRange(min = 0, max = 50) double moreDeg,
            @ForAll @DoubleRange(min = 20, max = 200) double hotC) {
        var joint = joint(23e-6);
        var less = warmUp(joint, hotC, 0, Knee.SHARP).run(end(joint, turnDeg, Knee.SHARP));
        var more = warmUp(joint, hotC, 0, Knee.SHARP).run(end(joint, turnDeg + moreDeg, Knee.SHARP));
        var before = more.coldBeforeN() - less.coldBeforeN();
        var after = more.coldAfterN() - less.coldAfterN();
        assertTrue(after <= before + 1e-6, () -> before + " N before, " + after + " N after");
        assertTrue(after >= -1e-6, () -> before + " N before, " + after + " N after");
    }

    private static WarmUp warmUp(BoltedJoint joint, double hotC, double torsionLeftShare, Knee knee) {
        return new WarmUp(
                joint,
                Temperatures.even(joint, 20, hotC),
                HotStrength.unchanged(),
                torsionLeftShare,
                0,
                TorsionRule.FULLY_PLASTIC,
                knee);
    }

    private static BoltedJoint joint(double layerExpansionPerK) {
        var joint = Joints.longThroughBolt();
        var material = new LayerMaterial("layer", 72_000, layerExpansionPerK);
        return new BoltedJoint(
                joint.bolt(),
                List.of(new Layer("block", 380, material, new LayerShape.StatedArea(900))),
                joint.friction());
    }

    private static Tightened end(BoltedJoint joint, double turnDeg, Knee knee) {
        return TighteningCurve.of(
                        new Tightening(joint, 15, turnDeg, 0, Seating.none(), TorsionRule.FULLY_PLASTIC, knee))
                .atEnd();
    }
}
