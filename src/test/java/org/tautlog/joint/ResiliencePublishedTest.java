package org.tautlog.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.joint.LayerShape.Cone;

/**
 * Stiffness against worked examples: Shigley's Mechanical Engineering Design, 10th ed., and Budynas, solutions to chapter 8
 * (8th ed., 2006). Some are in inches and millions of pounds per square inch: the formulas ask for one set of units only.
 */
class ResiliencePublishedTest {
    private static final double TAN_30 = Math.tan(Math.PI / 6);
    private static final double WIDE = 1000;

    @ParameterizedTest(name = "{0}: frustum D {2}, t {3}, E {4}: stiffness {5}")
    @CsvFileSource(resources = "/published/frusta.csv", numLinesToSkip = 4)
    void each_frustum_is_as_stiff_as_printed(
            String example,
            double hole,
            double smallDiameter,
            double thickness,
            double modulus,
            double stiffness,
            double tolerance) {
        assertEquals(stiffness, modulus / Resilience.frustumPerMm(hole, smallDiameter, thickness, TAN_30), tolerance);
    }

    @Test
    @DisplayName("Shigley 10th ed. example 8-2: washer, steel plate and cast iron give 9.378 Mlbf/in")
    void steel_over_cast_iron_in_shigley() {
        var stack = stack(0.5, 0.75, layer(0.095, 30), layer(0.5, 30), layer(0.75, 14.5));
        assertEquals(9.378, stiffness(stack), 0.0015);
    }

    @Test
    @DisplayName("Shigley 10th ed. example 8-2: all steel gives 14.64 Mlbf/in")
    void all_steel_in_shigley() {
        assertEquals(14.64, stiffness(stack(0.5, 0.75, layer(1.345, 30))), 0.005);
    }

    @Test
    @DisplayName("Budynas 8-22: steel over cast iron gives 1379 MN/m")
    void steel_over_cast_iron_in_budynas_22() {
        assertEquals(1379, stiffness(stack(12, 18, layer(20, 207), layer(25, 100))), 1);
    }

    @Test
    @DisplayName("Budynas 8-23: 1963 MN/m; the print says 2158 because it reads 55 620 for 15 620")
    void steel_over_cast_iron_in_budynas_23() {
        assertEquals(1963.1, stiffness(stack(12, 18, layer(20, 207), layer(6, 100))), 1);
    }

    @Test
    @DisplayName("Budynas 8-24: steel, cast iron, washer give 10.79 Mlbf/in")
    void three_layers_in_budynas_24() {
        assertEquals(10.79, stiffness(stack(0.5, 0.75, layer(0.5, 30), layer(0.625, 14.5), layer(0.095, 30))), 0.01);
    }

    @Test
    @DisplayName("Budynas 8-20: M12 with 30 mm shank and 15 mm thread gives 466.8 MN/m")
    void bolt_by_segments_in_budynas_20() {
        assertEquals(466.8, boltStiffness(207, area(30, 113), area(15, 84.3)), 0.05);
    }

    @Test
    @DisplayName("Budynas 8-23: M12 with 10 mm shank and 16 mm thread gives 744 MN/m")
    void bolt_by_segments_in_budynas_23() {
        assertEquals(744, boltStiffness(207, area(10, 113), area(16, 84.3)), 0.5);
    }

    @Test
    @DisplayName("Budynas 8-24: 1/2 in bolt gives 3.936 Mlbf/in")
    void bolt_by_segments_in_budynas_24() {
        assertEquals(3.936, boltStiffness(30, area(0.72, 0.1419), area(0.5, 0.1963)), 0.0005);
    }

    @Test
    @DisplayName("Shigley 9th ed. example 8-4: 5/8 in-11 bolt gives 5.21 Mlbf/in (from memory)")
    void bolt_by_segments_in_shigley() {
        assertEquals(5.21, boltStiffness(30, area(0.75, 0.3068), area(0.75, 0.226)), 0.005);
    }

    /** Source: Shigley, 10th ed., table 8-12 (values cut off after three digits): 1/2 in-13 bolt, steel, grip 2, 3 and 4 in. */
    @ParameterizedTest(name = "Shigley table 8-12: grip {0} in: joint constant {1}")
    @CsvSource({"2,0.168", "3,0.136", "4,0.114"})
    void joint_constant_over_grip(double grip, double constant) {
        var threaded = 0.75;
        var bolt = boltStiffness(30, area(grip - threaded, Math.PI / 4 * 0.25), area(threaded, 0.1419));
        var members = stiffness(stack(0.5, 0.75, layer(grip, 30)));
        assertEquals(constant, bolt / (bolt + members), 0.001);
    }

    private static double stiffness(BoltedJoint joint) {
        return 1 / Resilience.clampedMmPerN(joint, ConeAngle.FIXED_30_DEG);
    }

    private static double boltStiffness(double modulus, BoltSegment... segments) {
        return 1 / Resilience.freeLengthMmPerN(bolt(12, 18, List.of(segments), modulus));
    }

    private static BoltSegment area(double length, double area) {
        return BoltSegment.shank(length, 2 * Math.sqrt(area / Math.PI));
    }

    private record Ply(double thickness, double modulus) {}

    private static Ply layer(double thickness, double modulus) {
        return new Ply(thickness, modulus);
    }

    private static BoltedJoint stack(double hole, double bearing, Ply... plies) {
        var layers = new ArrayList<Layer>();
        var grip = 0.0;
        for (var ply : plies) {
            layers.add(new Layer(
                    "ply", ply.thickness(), new LayerMaterial("as given", ply.modulus(), 0), new Cone(hole, WIDE)));
            grip += ply.thickness();
        }
        return new BoltedJoint(
                bolt(hole, bearing, List.of(BoltSegment.shank(grip, hole)), 30), layers, Friction.both(0.15));
    }

    private static Bolt bolt(double nominal, double bearing, List<BoltSegment> segments, double modulus) {
        return new Bolt(
                new MetricThread(nominal, nominal / 10),
                segments,
                new BoltMaterial(modulus, 0.1, 0.2, 0, 0.1, 0),
                HeadForm.HEXAGON,
                bearing,
                nominal,
                new Engagement(Engagement.Mate.NUT, modulus));
    }
}
