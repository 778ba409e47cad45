package org.tautlog.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tautlog.joint.LayerShape.Cone;

/** Stiffness against numbers computed from the same formulas by other means; no outside source where none is named. */
class ResilienceTest {
    /** Computed from VDI 2230-1 clause 5.1.1, no outside source for the numbers. */
    @Test
    void a_bolt_is_the_sum_of_its_parts() {
        assertEquals(5.50015912e-6, Joints.shortThroughBolt(40).boltResilienceMmPerN(), 1e-13);
    }

    /** VDI 2230-1 clause 5.1.2, cone that meets the edge; checked by integrating dz/(E A(z)) numerically. */
    @Test
    void a_narrow_layer_is_a_cone_with_a_sleeve() {
        assertEquals(2.582463353e-6, Joints.shortThroughBolt(30).clampedResilienceMmPerN(), 1e-14);
        assertEquals(2.227899325e-6, Joints.shortThroughBolt(40).clampedResilienceMmPerN(), 1e-14);
    }

    @Test
    void load_factor_and_preload_rate_follow() {
        assertEquals(0.28828707, Joints.shortThroughBolt(40).loadFactor(), 1e-8);
        assertEquals(539.16086, Joints.shortThroughBolt(40).preloadPerDegN(), 1e-4);
        assertEquals(515.50925, Joints.shortThroughBolt(30).preloadPerDegN(), 1e-4);
    }

    /** One geometry, two publications: VDI 2230-1 full cone with tan 30 deg is Shigley 10th ed. equation 8-21. */
    @Test
    void the_full_cone_of_vdi_is_the_frustum_pair_of_shigley() {
        double d = 12, bearing = 18, grip = 40, modulus = 207_000, tan = Math.tan(Math.PI / 6);
        var vdi = 2
                * Math.log((bearing + d) * (bearing + grip * tan - d) / ((bearing - d) * (bearing + grip * tan + d)))
                / (modulus * Math.PI * d * tan);
        var pair = 2 * Resilience.frustumPerMm(d, bearing, grip / 2, tan) / modulus;
        assertEquals(vdi, pair, 1e-12 * vdi);
        assertEquals(2_235_068.0948, 1 / pair, 1e-4);
    }

    /** Layers of one material may be cut anywhere. */
    @Test
    void cutting_a_layer_in_two_changes_nothing() {
        var whole = Joints.shortThroughBolt(30);
        var cut = new BoltedJoint(
                whole.bolt(),
                List.of(
                        new Layer("upper", 17, Joints.ALUMINIUM, new Cone(11, 30)),
                        new Layer("lower", 43, Joints.ALUMINIUM, new Cone(11, 30))),
                whole.friction());
        assertEquals(whole.clampedResilienceMmPerN(), cut.clampedResilienceMmPerN(), 1e-18);
    }

    /** The integral of dz/(E A(z)) by small slices, tapped hole: one cone from the head to the thread. */
    @Test
    void a_tapped_hole_has_one_cone_from_the_head() {
        var nut = Joints.shortThroughBolt(40);
        var tapped = new BoltedJoint(
                new Bolt(
                        nut.bolt().thread(),
                        nut.bolt().segments(),
                        nut.bolt().material(),
                        nut.bolt().headForm(),
                        14.63,
                        11,
                        new Engagement(Engagement.Mate.TAPPED_HOLE, 72_000)),
                nut.layers(),
                nut.friction());
        var tan = 0.348 + 0.013 * Math.log(60 / 14.63) + 0.193 * Math.log(40 / 14.63);
        var slices = 200_000;
        var sum = 0.0;
        for (int i = 0; i < slices; i++) {
            var depth = 60 * (i + 0.5) / slices;
            var outer = Math.min(40, 14.63 + 2 * depth * tan);
            sum += 60.0 / slices / (Math.PI / 4 * (outer * outer - 121)) / 72_000;
        }
        assertEquals(sum, tapped.clampedResilienceMmPerN(), 1e-9 * sum);
    }

    @Test
    void a_sleeve_is_one_division() {
        assertEquals(
                60 / (72_000 * Math.PI / 4 * (900 - 121)), Joints.sleeved(30).clampedResilienceMmPerN(), 1e-18);
    }
}
