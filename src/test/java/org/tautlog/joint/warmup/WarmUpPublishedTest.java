package org.tautlog.joint.warmup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tautlog.joint.Bolt;
import org.tautlog.joint.BoltMaterial;
import org.tautlog.joint.BoltSegment;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.Engagement;
import org.tautlog.joint.Friction;
import org.tautlog.joint.HeadForm;
import org.tautlog.joint.Layer;
import org.tautlog.joint.LayerMaterial;
import org.tautlog.joint.LayerShape;
import org.tautlog.joint.MetricThread;
import org.tautlog.joint.TorsionRule;
import org.tautlog.joint.tightening.Knee;
import org.tautlog.joint.tightening.Tightened;

/** Thermal load against a textbook. */
class WarmUpPublishedTest {
    /** A thread so big that head and nut, which the textbook leaves out, give next to nothing. */
    private static final MetricThread STIFF_ENDS = new MetricThread(1e8, 1);

    @Test
    @DisplayName(
            "Hibbeler, Mechanics of Materials, example 4.11 (from memory): steel bolt in an aluminium tube, 20.3 kN")
    void a_snug_steel_bolt_in_an_aluminium_tube() {
        var steel = new BoltMaterial(200_000, 250, 400, 12e-6, 0.1, 0);
        var bolt = new Bolt(
                STIFF_ENDS,
                List.of(BoltSegment.shank(150, 2 * Math.sqrt(400 / Math.PI))),
                steel,
                HeadForm.HEXAGON,
                50,
                30,
                new Engagement(Engagement.Mate.NUT, 200_000));
        var tube = new Layer("tube", 150, new LayerMaterial("2014-T6", 73_100, 23e-6), new LayerShape.StatedArea(600));
        var joint = new BoltedJoint(bolt, List.of(tube), Friction.both(0.1));
        var snug = new Tightened(0, 0, 0, 0, 0, 0, false);
        var hot = new WarmUp(
                        joint,
                        Temperatures.even(joint, 15, 80),
                        HotStrength.unchanged(),
                        0,
                        0,
                        TorsionRule.FULLY_PLASTIC,
                        Knee.SHARP)
                .run(snug);
        assertEquals(20_300, hot.hotN(), 50);
        assertEquals(20_255.062, hot.hotN(), 0.01);
        assertFalse(hot.yieldsAtWarmUp());
        assertEquals(0, hot.coldAfterN());
    }
}
