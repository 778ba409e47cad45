package org.tautlog.intake.specification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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
import org.tautlog.joint.PropertyClass;
import org.tautlog.joint.study.Factor;
import org.tautlog.joint.study.Spread;
import org.tautlog.joint.warmup.Temperatures;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.joint.window.StatedJoint;
import org.tautlog.joint.window.StatedWarmUp;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;

class JointSectionsTest {
    private static final String WINDOW = """
            [specification]
            name = "Through-bolt M10"
            version = "3"
            [method]
            snug-torque = { target = 20.0, unit = "N·m" }
            turn = { target = 1, unit = "turn" }
            [window]
            snug-torque = "open"
            turn = "open"
            final-torque = "open"
            torque-rate = "open"
            prevailing-torque = "open"
            onset = { past-snug = "open", past-origin = "open", least-final-gradient-ratio = 0.05 }
            """;

    private static final String JOINT = """
            [bolt]
            thread = "M10"
            head = "hexagon"
            bearing-outer = { value = 15.6, unit = "mm" }
            bearing-inner = { value = 10.5, unit = "mm" }
            engaged-in = "nut"
            engaged-modulus = { value = 205.0, unit = "GPa" }
            [bolt.material]
            property-class = "10.9"
            yield-strength = { value = 1022.0, unit = "MPa" }
            [[bolt.segment]]
            form = "shank"
            length = { value = 0.378, unit = "mm" }
            diameter = { value = 8.2, unit = "mm" }
            [[bolt.segment]]
            form = "thread"
            length = { value = 24.622, unit = "mm" }
            [[layer]]
            name = "washer"
            thickness = { value = 2500, unit = "µm" }
            material = "steel"
            youngs-modulus = { value = 205000, unit = "MPa" }
            expansion = { value = 11.5e-6, unit = "1/K" }
            shape = "sleeve"
            hole-diameter = { value = 10.5, unit = "mm" }
            outer-diameter = { value = 20.0, unit = "mm" }
            [[layer]]
            name = "block"
            thickness = { value = 22.5, unit = "mm" }
            material = "aluminium"
            youngs-modulus = { value = 72.0, unit = "GPa" }
            expansion = { value = 23.0, unit = "µm/(m·K)" }
            shape = "cone"
            hole-diameter = { value = 11, unit = "mm" }
            outer-diameter = { value = 40, unit = "mm" }
            [friction]
            thread = 0.11
            under-head = 0.12
            prevailing-torque = { value = 160, unit = "N·cm" }
            [drive]
            stiffness = { value = 25.0, unit = "N·m/deg" }
            [warm-up]
            assembly = { value = 20.0, unit = "°C" }
            bolt = { value = 95.0, unit = "°C" }
            layers = { each = [95, 100], unit = "°C" }
            [tolerance]
            yield-strength = { standard-deviation = 18.0, unit = "MPa" }
            friction = { standard-deviation = 0.006 }
            turn = { plus-minus = 3, unit = "deg" }
            """;

    private static final MetricThread M10 = MetricThread.of("M10x1.5");

    @Test
    void a_file_that_states_no_bolt_states_no_joint() {
        assertTrue(read(WINDOW).statedJoint().isEmpty());
    }

    @Test
    void a_whole_joint_is_read_with_units_converted() {
        var steel = PropertyClass.CLASS_10_9.material(M10).withYieldStrengthMPa(1022);
        var bolt = new Bolt(
                M10,
                List.of(BoltSegment.shank(0.378, 8.2), BoltSegment.thread(24.622, M10)),
                steel,
                HeadForm.HEXAGON,
                15.6,
                10.5,
                new Engagement(Engagement.Mate.NUT, 205_000));
        var layers = List.of(
                new Layer("washer", 2.5, new LayerMaterial("steel", 205_000, 11.5e-6), new LayerShape.Sleeve(10.5, 20)),
                new Layer(
                        "block",
                        22.5,
                        new LayerMaterial("aluminium", 72_000, 23 * 1.0e-6),
                        new LayerShape.Cone(11, 40)));
        var expected = new StatedJoint(
                new BoltedJoint(bolt, layers, new Friction(0.11, 0.12)),
                1.6,
                25.0,
                StatedWarmUp.of(new Temperatures(20, 95, List.of(95.0, 100.0))),
                Map.of(
                        Factor.YIELD_STRENGTH,
                        Spread.normal(18),
                        Factor.FRICTION,
                        Spread.normal(0.006),
                        Factor.TURN,
                        Spread.even(3)));
        assertEquals(expected, read(WINDOW + JOINT).statedJoint().orElseThrow());
    }

    @Test
    void a_bolt_of_no_class_states_its_material_and_hardens_towards_its_tensile_strength() {
        var text = WINDOW + JOINT.replace("property-class = \"10.9\"", """
                youngs-modulus = { value = 205, unit = "GPa" }
                ultimate-strength = { value = 1100, unit = "MPa" }
                expansion = { value = 11.5e-6, unit = "1/K" }
                uniform-elongation = 0.05""");
        assertEquals(
                new BoltMaterial(205_000, 1022, 1100, 11.5e-6, 0.05, (1100 - 1022.0) / 0.05),
                read(text).statedJoint().orElseThrow().joint().bolt().material());
    }

    @ParameterizedTest(name = "{0} -> {1}: {4}")
    @CsvSource(delimiter = '~', textBlock = """
            length = { value = 0.378,~length = { value = -1.0,~BAD_VALUE~26:1~(bolt.segment[1].length): length is -1.0; it must be above 0.0 mm
            value = 24.622~value = 30.0~BAD_VALUE~31:1~(layer): layers add up to 25.000 mm; they must fill the bolt's free length (segments) of 30.378 mm within 0.1 mm
            yield-strength = { value = 1022.0~ultimate-strength = { value = 900.0~BAD_VALUE~21:1~(bolt.material.yield-strength): yield-strength is 940.0; it must not be above ultimate-strength, 900.0 MPa
            property-class = "10.9"~~MISSING_KEY~21:1~(bolt.material.youngs-modulus): 'youngs-modulus' is missing in bolt.material; add it
            property-class = "10.9"~property-class = "10.8"~BAD_VALUE~22:1~property class '10.8' is unknown; known classes: 8.8, 10.9, 12.9
            thread = "M10"~thread = "M10x1.4"~BAD_VALUE~15:1~for M10 there are M10x1.5, M10x1.25, M10x1, M10x0.75
            head = "hexagon"~head = "hexagom"~BAD_VALUE~16:1~'hexagom' is not known; expected one of hexagon, socket; did you mean 'hexagon'?
            head = "hexagon"~~MISSING_KEY~14:1~'head' is missing in bolt
            shape = "cone"~shape = "con"~BAD_VALUE~46:1~expected one of area, cone, sleeve; did you mean 'cone'?
            name = "block"~~MISSING_KEY~40:1~(layer[2].name): 'name' is missing in layer[2]; add it
            material = "aluminium"~~MISSING_KEY~40:1~(layer[2].material): 'material' is missing in layer[2]; add it
            thickness = { value = 22.5,~thickness = { value = -22.5,~BAD_VALUE~42:1~(layer[2].thickness): thickness is -22.5; it must be above 0.0 mm
            bearing-outer = { value = 15.6,~bearing-outer = { value = 9,~BAD_VALUE~17:1~(bolt.bearing-outer): bearing-outer is 9.0; it must be above 10.5 mm (bearing-inner)
            bolt = { value = 95.0,~bolt = { value = 950,~BAD_VALUE~57:1~(warm-up.bolt): bolt is 950.0; it must lie from -100.0 to 300.0, deg C
            layers = { each = [95, 100], unit = "°C" }~layers = { value = 95, unit = "°C" }; further-stretch = { value = -1, unit = "mm" }~BAD_VALUE~59:1~(warm-up.further-stretch): further-stretch is -1.0; it must be above 0.0 and finite, mm
            hole-diameter = { value = 11,~hole-diameter = { value = 16,~BAD_VALUE~47:1~(layer[2].hole-diameter): hole-diameter is 16.0 mm; expected below the head's bearing-outer of 15.6 mm
            thread = 0.11~thread = 1.1~BAD_VALUE~50:1~(friction.thread): thread is 1.1; it must lie from 0.0 to 1.0
            thread = 0.11~tread = 0.11~UNKNOWN_KEY~50:1~did you mean 'thread'?
            stiffness = { value = 25.0~stiffness = { value = 0.0~BAD_VALUE~54:1~(drive.stiffness): stiffness is 0.0; expected above 0 N·m/deg
            each = [95, 100]~each = [95]~BAD_VALUE~58:12~(warm-up.layers.each): each holds 1 temperatures; expected one for each [[layer]], 2
            value = 95.0, unit = "°C"~value = 95.0, unit = "°F"~BAD_UNIT~57:24~'°F' is no unit of temperature; expected one of °C
            value = 23.0, unit = "µm/(m·K)"~value = 23.0, unit = "mm"~BAD_UNIT~45:29~'mm' is no unit of thermal expansion; expected one of 1/K, µm/(m·K)
            turn = { plus-minus = 3~turn = { plusminus = 3~UNKNOWN_KEY~62:10~did you mean 'plus-minus'?
            turn = { plus-minus = 3~turn = { standard-deviation = 1, plus-minus = 3~BAD_VALUE~62:10~both 'standard-deviation' and 'plus-minus' are stated
            friction = { standard-deviation = 0.006 }~friktion = { standard-deviation = 0.006 }~UNKNOWN_KEY~61:1~did you mean 'friction'?
            [tolerance]~[tolerances]~UNKNOWN_KEY~59:1~did you mean 'tolerance'?
            """)
    void a_slip_is_named_with_its_place_and_what_was_meant(
            String right, String slip, ProblemCode code, String place, String words) {
        var text = WINDOW + JOINT.replace(right, slip == null ? "" : slip.replace("; ", "\n"));
        var problem = problem(text, code);
        assertEquals(
                code == ProblemCode.BAD_VALUE ? 1 : 0,
                SpecificationFile.read(text, "joint.toml").problems().stream()
                        .filter(one -> one.code() == ProblemCode.BAD_VALUE)
                        .count(),
                "one slip, one problem");
        assertEquals(place, problem.where().line() + ":" + problem.where().column(), problem::sentence);
        assertTrue(problem.sentence().contains(words), problem::sentence);
    }

    /** 1 in = 25.4 mm, 1 ksi = 6.894757 MPa, 1 lbf·in = 0.1129848 N·m. Source: NIST Special Publication 811, appendix B.8. */
    @Test
    void a_joint_stated_in_inches_is_the_same_joint() {
        var inches = JOINT.replace("{ value = 15.6, unit = \"mm\" }", "{ value = 0.6141732283464567, unit = \"in\" }")
                .replace("{ value = 8.2, unit = \"mm\" }", "{ value = 0.3228346456692913, unit = \"in\" }")
                .replace("{ value = 22.5, unit = \"mm\" }", "{ value = 0.8858267716535433, unit = \"in\" }")
                .replace("{ value = 1022.0, unit = \"MPa\" }", "{ value = 148.2285742572, unit = \"ksi\" }")
                .replace("{ value = 72.0, unit = \"GPa\" }", "{ value = 10442.717444, unit = \"ksi\" }")
                .replace("{ value = 160, unit = \"N·cm\" }", "{ value = 14.161194, unit = \"lbf·in\" }");
        var metric = read(WINDOW + JOINT).statedJoint().orElseThrow();
        var other = read(WINDOW + inches).statedJoint().orElseThrow();
        assertEquals(
                metric.joint().resilienceMmPerN(),
                other.joint().resilienceMmPerN(),
                1e-6 * metric.joint().resilienceMmPerN());
        assertEquals(metric.joint().loadFactor(), other.joint().loadFactor(), 1e-6);
        assertEquals(metric.prevailingTorqueNm(), other.prevailingTorqueNm(), 1e-6);
        assertEquals(
                metric.joint().bolt().material().yieldStrengthMPa(),
                other.joint().bolt().material().yieldStrengthMPa(),
                1e-4);
    }

    @Test
    void a_joint_is_stated_whole_or_not_at_all() {
        assertEquals("[bolt] is given without what it clamps", missing("[[layer]]", "[friction]", "bolt"));
        assertEquals("[bolt] is given without its friction", missing("[friction]", "[drive]", "bolt"));
        assertEquals(
                "[tolerance] is given without the warm-up that it bears on",
                missing("[warm-up]", "[tolerance]", "tolerance"));
        var withoutBolt = JOINT.substring(JOINT.indexOf("[[layer]]"));
        assertEquals(
                List.of(
                        "'layer' is given without [bolt]",
                        "'friction' is given without [bolt]",
                        "'drive' is given without [bolt]",
                        "'warm-up' is given without [bolt]",
                        "'tolerance' is given without [bolt]"),
                SpecificationFile.read(WINDOW + withoutBolt, "joint.toml").problems().stream()
                        .map(Problem::what)
                        .collect(Collectors.toList()));
    }

    private static String missing(String from, String to, String key) {
        int begin = JOINT.indexOf(from);
        int end = JOINT.indexOf(to, begin);
        var problem = problem(WINDOW + JOINT.substring(0, begin) + JOINT.substring(end), ProblemCode.MISSING_KEY);
        assertEquals(key, problem.where().key());
        assertTrue(problem.where().line() > 0);
        return problem.what();
    }

    private static Problem problem(String text, ProblemCode code) {
        var read = SpecificationFile.read(text, "joint.toml");
        assertTrue(read.value().isEmpty());
        return read.problems().stream()
                .filter(one -> one.code() == code)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + code + " among " + read.problems()));
    }

    private static JointSpecification read(String text) {
        var read = SpecificationFile.read(text, "joint.toml");
        return read.value().orElseThrow(() -> new AssertionError(read.problems()));
    }
}
