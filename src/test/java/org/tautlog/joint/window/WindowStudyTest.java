package org.tautlog.joint.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.tautlog.joint.Joints;
import org.tautlog.joint.study.Factor;
import org.tautlog.joint.study.Quantity;
import org.tautlog.joint.study.Spread;
import org.tautlog.joint.tightening.TighteningCurve;
import org.tautlog.joint.warmup.Temperatures;

class WindowStudyTest {
    private static final Map<Factor, Spread> TOLERANCE = Map.of(
            Factor.YIELD_STRENGTH, Spread.normal(20),
            Factor.FRICTION, Spread.normal(0.008),
            Factor.SNUG_TORQUE, Spread.normal(0.2),
            Factor.TURN, Spread.even(3));
    private static final Window PRESENT = new Window(
            new Band(13, 18),
            new Band(290, 310),
            new Band(30, 90),
            Band.open(),
            new Band(0, 5),
            new OnsetLimits(new Band(200, 400), Band.open(), 0.1));

    @Test
    void the_drive_winds_up_between_tool_and_head() {
        var without = WindowStudy.of(specification(stated(null)), 1_000, 1, 0.99);
        var with = WindowStudy.of(specification(stated(20.0)), 1_000, 1, 0.99);
        assertEquals(300, without.nominal().turnDeg());
        double endNm = TighteningCurve.of(with.nominal()).atEnd().torqueNm();
        assertEquals(300 - (endNm - 15) / 20, with.nominal().turnDeg(), 1e-6);
    }

    @Test
    void a_proposal_holds_what_was_drawn_as_the_tool_shows_it() {
        var specification = specification(stated(20.0));
        var study = WindowStudy.of(specification, 5_000, 1, 0.99);
        var result = study.run();
        var window = WindowStudy.proposal(specification, study, result).window();
        double rate = result.summary(Quantity.TORQUE_RATE).mean();
        assertTrue(window.torqueRateNmPerDeg().contains(1 / (1 / rate + 1 / 20.0)));
        assertTrue(window.turnDeg().contains(297.2) && window.turnDeg().contains(302.8));
        assertTrue(window.turnDeg().high() - window.turnDeg().low() <= 8, window::toString);
        assertTrue(
                window.finalTorqueNm().low() <= result.window().finalTorqueNm().low());
        assertTrue(window.onset().pastOriginDeg().low()
                < result.window().onsetPastOriginDeg().low());
        assertTrue(!window.onset().pastOriginDeg().hasHigh(), "an elastic bolt has no onset");
    }

    @Test
    void what_was_not_studied_stays_and_the_version_says_that_it_is_a_proposal() {
        var specification = specification(stated(null));
        var study = WindowStudy.of(specification, 1_000, 1, 0.99);
        var proposed = WindowStudy.proposal(specification, study, study.run());
        assertEquals("7 proposal", proposed.version());
        assertEquals(PRESENT.prevailingTorqueNm(), proposed.window().prevailingTorqueNm());
        assertEquals(PRESENT.onset().pastSnugDeg(), proposed.window().onset().pastSnugDeg());
        assertEquals(specification.statedJoint(), proposed.statedJoint());
    }

    @Test
    void a_specification_that_states_too_little_is_refused_by_section() {
        var bare = specification(stated(null))
                .withStatedJoint(new StatedJoint(Joints.longThroughBolt(), 0, null, null, Map.of()));
        assertTrue(refusal(bare).contains("[warm-up]"));
        var still = specification(stated(null))
                .withStatedJoint(new StatedJoint(Joints.longThroughBolt(), 0, null, warmUp(), Map.of()));
        assertTrue(refusal(still).contains("[tolerance]"));
        var none = new JointSpecification(
                "joint", "7", new TighteningMethod(15, 300), PRESENT, ReadingRule.withDefaults(), Map.of());
        assertTrue(refusal(none).contains("[bolt], [[layer]] and [friction]"));
    }

    private static String refusal(JointSpecification specification) {
        return String.valueOf(
                assertThrows(IllegalArgumentException.class, () -> WindowStudy.of(specification, 1_000, 1, 0.99))
                        .getMessage());
    }

    private static JointSpecification specification(StatedJoint stated) {
        return new JointSpecification(
                        "joint", "7", new TighteningMethod(15, 300), PRESENT, ReadingRule.withDefaults(), Map.of())
                .withStatedJoint(stated);
    }

    private static StatedJoint stated(@Nullable Double driveNmPerDeg) {
        return new StatedJoint(Joints.longThroughBolt(), 1, driveNmPerDeg, warmUp(), TOLERANCE);
    }

    private static StatedWarmUp warmUp() {
        return StatedWarmUp.of(Temperatures.even(Joints.longThroughBolt(), 20, 100));
    }
}
