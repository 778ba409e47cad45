package org.tautlog.joint.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.Joints;
import org.tautlog.joint.study.Factor;
import org.tautlog.joint.study.Spread;
import org.tautlog.joint.tightening.TighteningCurve;
import org.tautlog.joint.warmup.Temperatures;
import org.tautlog.joint.window.GivenNumbers.Given;

/**
 * The case of the trade on a bolt of 380 mm: snug, about one turn, short of yield; in yield after the first warm-up, which is
 * said to stretch it nearly 1 mm further. Common practice, no source.
 */
class GivenNumbersTest {
    @Test
    void a_turn_short_of_yield_and_a_warm_up_into_yield_fit() {
        var given = given(350, 100, null);
        assertEquals(List.of(), given.misfits());
        assertTrue(given.yieldTurnDeg() > 350, given.turnSentence());
        assertTrue(given.riseShare().orElseThrow() < 1, given.temperaturesSentence());
    }

    /** 380 mm x (23 - 11.5) x 1e-6/K x 80 K = 0.35 mm; 1 mm takes 229 K: elementary. */
    @Test
    void the_millimetre_of_the_trade_is_the_number_that_does_not_fit() {
        var given = given(350, 100, 1.0);
        assertEquals(List.of(Given.FURTHER_STRETCH), given.misfits());
        assertEquals(
                "The stated further stretch of 1.00 mm does not fit: the stated temperatures, as much as an even rise of 80 K,"
                        + " give 0.35 mm; 1.00 mm would need a rise of 229 K.",
                given.stretchSentence());
    }

    @Test
    void without_a_stated_stretch_the_report_still_says_what_a_millimetre_would_need() {
        assertEquals(
                "At the stated temperatures the parts outgrow the bolt by 0.35 mm; a whole millimetre would need an even rise of"
                        + " 229 K.",
                given(350, 100, null).stretchSentence());
    }

    @Test
    void a_turn_that_runs_into_yield_does_not_fit() {
        var given = given(450, 100, null);
        assertEquals(List.of(Given.TURN), given.misfits());
        assertTrue(given.turnSentence().contains("beyond that"), given.turnSentence());
    }

    @Test
    void temperatures_too_low_for_yield_do_not_fit_and_the_rise_needed_is_named() {
        var given = given(300, 40, null);
        assertEquals(List.of(Given.TEMPERATURES), given.misfits());
        double share = given.riseShare().orElseThrow();
        var enough = given(300, 20 + 20 * share * 1.001, null);
        assertEquals(List.of(), enough.misfits(), "at the rise named it yields");
        assertEquals(
                List.of(Given.TEMPERATURES),
                given(300, 20 + 20 * share * 0.999, null).misfits());
    }

    @Test
    void the_turn_to_yield_is_the_one_at_which_the_model_yields() {
        double yieldDeg = given(350, 100, null).yieldTurnDeg();
        assertEquals(List.of(), given(yieldDeg - 0.01, 100, null).misfits());
        var study = WindowStudy.of(specification(yieldDeg + 0.01, 100, null), 1_000, 1, 0.99);
        assertTrue(TighteningCurve.of(study.nominal()).atEnd().yielded());
    }

    private static GivenNumbers given(double turnDeg, double hotC, @Nullable Double stretchMm) {
        var specification = specification(turnDeg, hotC, stretchMm);
        return GivenNumbers.of(specification, WindowStudy.of(specification, 1_000, 1, 0.99));
    }

    private static JointSpecification specification(double turnDeg, double hotC, @Nullable Double stretchMm) {
        var drawn = Joints.longThroughBolt();
        var joint = new BoltedJoint(
                drawn.bolt().withMaterial(drawn.bolt().material().withYieldStrengthMPa(1000)),
                drawn.layers(),
                drawn.friction());
        return new JointSpecification(
                        "joint",
                        "1",
                        new TighteningMethod(15, turnDeg),
                        new Window(
                                Band.open(),
                                Band.open(),
                                Band.open(),
                                Band.open(),
                                Band.open(),
                                new OnsetLimits(Band.open(), Band.open(), 0)),
                        ReadingRule.withDefaults(),
                        Map.of())
                .withStatedJoint(new StatedJoint(
                        joint,
                        0,
                        null,
                        new StatedWarmUp(Temperatures.even(joint, 20, hotC), 0.5, 0, stretchMm),
                        Map.of(Factor.YIELD_STRENGTH, Spread.normal(18))));
    }
}
