package org.tautlog.signature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.joint.window.TighteningMethod;

/** The three criteria side by side, on curves whose knee is known. */
class OnsetCriteriaTest {
    private static MadeCurve made(double kneeDeg) {
        var made = new MadeCurve();
        made.noiseShare = 0.004;
        made.kneeDeg = kneeDeg;
        made.kneeWidthDeg = 6;
        return made;
    }

    @Test
    void a_knee_is_seen_by_all_three_near_each_other() {
        for (int seed = 1; seed <= 40; seed++) {
            var made = made(380);
            made.seed = seed;
            var signature = AccuracyTest.read(made);
            double onset = made.onsetDeg(0.5);
            var criteria = signature.criteria();
            assertTrue(criteria.hasKnee(), "gain " + criteria.kneeGain());
            assertEquals(onset, criteria.kneeDeg().number(), 4, "by knee, seed " + seed);
            assertEquals(onset, signature.onset().angleDeg().number(), 5, "by gradient, seed " + seed);
            assertEquals(made.remainingRatio, criteria.kneeRatio().number(), 0.1, "what remains, seed " + seed);
        }
    }

    /** The offset by bisection of the curve's own formula. */
    @Test
    void the_offset_is_where_the_curve_lags_by_the_stated_turn() {
        var made = made(380);
        made.noiseShare = 0.0005;
        double low = made.originDeg() + 250;
        double high = made.stopDeg();
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            double line = made.prevailingNm + made.rateNmPerDeg * (middle - made.originDeg());
            if ((line - made.clean(middle)) / made.rateNmPerDeg < 10) {
                low = middle;
            } else {
                high = middle;
            }
        }
        assertEquals(high, AccuracyTest.read(made).criteria().offsetDeg().number(), 1);
    }

    @Test
    void rules_read_together_say_what_each_says_alone() {
        var curve = made(380).make();
        var rules = List.of(
                new ReadingRule(15, 0.5, 0.67, 0.33, 2, 10),
                new ReadingRule(15, 0.3, 0.67, 0.2, 2, 25),
                new ReadingRule(15, 0.8, 0.9, 0.33, 2, 60));
        var method = new TighteningMethod(20, 360);
        var together = SignatureReader.read(curve, method, rules);
        for (int i = 0; i < rules.size(); i++) {
            assertEquals(SignatureReader.read(curve, method, rules.get(i)), together.get(i));
        }
        var wider = List.of(rules.get(0), new ReadingRule(20, 0.5, 0.67, 0.33, 2, 10));
        assertThrows(IllegalArgumentException.class, () -> SignatureReader.read(curve, method, wider));
    }

    @Test
    void a_wider_offset_is_reached_later() {
        var curve = made(380).make();
        double before = 0;
        for (double offset : new double[] {2, 5, 10, 20}) {
            var rule = new ReadingRule(15, 0.5, 0.67, 0.33, 2, offset);
            var deg = SignatureReader.read(curve, new TighteningMethod(20, 360), rule)
                    .criteria()
                    .offsetDeg();
            assertTrue(deg.number() > before, offset + " deg at " + deg);
            before = deg.number();
        }
    }

    @Test
    void a_straight_curve_has_no_knee_by_any() {
        for (int seed = 1; seed <= 100; seed++) {
            var made = made(1e6);
            made.seed = seed;
            var criteria = AccuracyTest.read(made).criteria();
            assertFalse(criteria.kneeDeg().isFound(), "by knee, seed " + seed);
            assertFalse(criteria.offsetDeg().isFound(), "by offset, seed " + seed);
        }
    }

    @Test
    void torque_lost_at_once_reaches_the_offset_without_a_knee() {
        var made = made(1e6);
        made.slipOfTurn = turn -> turn > 290 ? 14 : 0;
        var signature = AccuracyTest.read(made);
        assertTrue(
                signature.criteria().offsetDeg().isFound(), signature.criteria().toString());
        assertFalse(signature.onset().angleDeg().isFound());
    }
}
