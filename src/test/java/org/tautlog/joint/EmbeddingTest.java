package org.tautlog.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tautlog.joint.LayerShape.StatedArea;

/** Flattening by VDI 2230-1 table 5 (from memory); sums by hand. */
class EmbeddingTest {
    @Test
    void a_through_bolt_with_two_inner_joints_flattens_by_eleven_micrometres() {
        var one = Joints.longThroughBolt();
        var three = new BoltedJoint(
                one.bolt(),
                List.of(
                        new Layer("head", 120, Joints.ALUMINIUM, new StatedArea(900)),
                        new Layer("block", 200, Joints.ALUMINIUM, new StatedArea(900)),
                        new Layer("ladder", 60, Joints.ALUMINIUM, new StatedArea(900))),
                one.friction());
        assertEquals(0.011, Embedding.flatteningMm(three, Embedding.Roughness.FINE, Embedding.Loading.AXIAL), 1e-12);
        assertEquals(
                0.011 / three.resilienceMmPerN(),
                Embedding.lossN(three, Embedding.Roughness.FINE, Embedding.Loading.AXIAL),
                1e-9);
    }

    @Test
    void a_short_joint_loses_a_larger_share_than_a_long_one() {
        var longLossN = Embedding.lossN(Joints.longThroughBolt(), Embedding.Roughness.MEDIUM, Embedding.Loading.SHEAR);
        var shortLossN =
                Embedding.lossN(Joints.shortThroughBolt(40), Embedding.Roughness.MEDIUM, Embedding.Loading.SHEAR);
        assertEquals(0.012 / Joints.longThroughBolt().resilienceMmPerN(), longLossN, 1e-9);
        assertEquals(
                Joints.longThroughBolt().resilienceMmPerN()
                        / Joints.shortThroughBolt(40).resilienceMmPerN(),
                shortLossN / longLossN,
                1e-9);
    }
}
