package org.tautlog.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.tautlog.joint.Joints.ALUMINIUM;
import static org.tautlog.joint.Joints.M10;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What the records refuse, and the sentence they say it with. */
class BadInputTest {
    @Test
    void a_negative_length_is_named() {
        refused("lengthMm is -3.0; it must be above 0.0 mm", () -> BoltSegment.shank(-3, 8));
        refused(
                "thicknessMm is -60.0; it must be above 0.0 mm",
                () -> new Layer("plate", -60, ALUMINIUM, new LayerShape.StatedArea(900)));
        refused("pitchMm is NaN; it must be above 0.0 mm", () -> new MetricThread(10, Double.NaN));
    }

    @Test
    void layers_that_do_not_fill_the_grip_are_refused_with_both_lengths() {
        var joint = Joints.longThroughBolt();
        var thin = List.of(new Layer("block", 379, ALUMINIUM, new LayerShape.StatedArea(900)));
        refused(
                "layers add up to 379.000 mm; they must fill the bolt's free length (segments) of 380.000 mm within 0.1 mm",
                () -> new BoltedJoint(joint.bolt(), thin, joint.friction()));
    }

    @Test
    void yield_above_ultimate_is_refused() {
        refused(
                "yieldStrengthMPa is 1100.0; it must not be above ultimateStrengthMPa, 1040.0 MPa",
                () -> new BoltMaterial(205_000, 1100, 1040, 11.5e-6, 0.04, 2500));
    }

    @Test
    @SuppressWarnings("NullAway") // the missing value is what the test is about
    void a_missing_material_is_named() {
        refused("material is missing", () -> new Layer("plate", 60, null, new LayerShape.StatedArea(900)));
        refused("material is missing", () -> Joints.longThroughBolt().bolt().withMaterial(null));
    }

    @Test
    void an_unknown_thread_offers_the_known_ones() {
        refused(
                "thread 'M10x1.4' is unknown; for M10 there are M10x1.5, M10x1.25, M10x1, M10x0.75",
                () -> MetricThread.of("M10x1.4"));
        refused(
                "thread 'M13' is unknown; known sizes: M5, M6, M7, M8, M9, M10, M11, M12, M14, M16, M18, M20",
                () -> MetricThread.of("M13"));
        refused("thread '3/8-16' is not understood; write it like M10 or M10x1.25", () -> MetricThread.of("3/8-16"));
    }

    @Test
    void an_unknown_property_class_offers_the_known_ones() {
        refused("property class '11.9' is unknown; known classes: 8.8, 10.9, 12.9", () -> PropertyClass.of("11.9"));
    }

    @Test
    void a_hole_wider_than_the_head_is_refused() {
        var joint = Joints.shortThroughBolt(30);
        refused(
                "holeDiameterMm of layer 'plate' is 16.0; it must be below the head's bearingOuterMm, 14.63 mm",
                () -> new BoltedJoint(
                        joint.bolt(),
                        List.of(new Layer("plate", 60, ALUMINIUM, new LayerShape.Cone(16, 30))),
                        joint.friction()));
    }

    @Test
    void friction_outside_its_range_is_refused() {
        refused("threadMu is -0.1; it must lie from 0.0 to 1.0", () -> new Friction(-0.1, 0.1));
        refused("underHeadMu is 12.0; it must lie from 0.0 to 1.0", () -> new Friction(0.1, 12));
    }

    @Test
    void a_designation_is_written_back_as_it_was_read() {
        assertEquals("M10x1.25", MetricThread.of("M10x1.25").designation());
        assertEquals(M10, MetricThread.of("M10"));
    }

    private static void refused(String sentence, Executable wrong) {
        assertEquals(
                sentence, assertThrows(IllegalArgumentException.class, wrong).getMessage());
    }
}
