package org.tautlog.signature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.trace.Curve;

class TorqueOverTurnTest {
    private static final TighteningMethod METHOD = new TighteningMethod(20, 360);
    private static final double STEP_DEG = 5;

    /** Sampled by angle or by time, with a pause that springs back and breaks loose: the formula's torque all the same. */
    @ParameterizedTest(name = "sampled at {0} kHz, 0 is by angle")
    @ValueSource(doubles = {0, 1})
    void is_the_mean_of_the_torque_about_each_angle(double kiloHertz) {
        var made = new MadeCurve();
        made.kneeDeg = 430;
        made.kiloHertz = kiloHertz;
        double fromDeg = made.originDeg() - 100;
        var torqueNm = TorqueOverTurn.at(made.make(), METHOD, fromDeg, STEP_DEG, 1000);
        assertEquals((made.stopDeg() - fromDeg) / STEP_DEG, torqueNm.length, 1);
        for (int i = 0; i < torqueNm.length; i++) {
            double deg = fromDeg + i * STEP_DEG;
            double mean = 0;
            for (int k = -49; k <= 49; k += 2) {
                mean += made.clean(deg + k * STEP_DEG / 100) / 50;
            }
            assertEquals(mean, torqueNm[i], 0.05, "at " + deg + " deg");
        }
    }

    @Test
    void says_nothing_of_angles_before_the_recording_or_past_the_stop() {
        var curve = Curve.of(new double[] {0, 10, 20, 30, 40}, new double[] {0, 1, 2, 3, 4});
        var torqueNm = TorqueOverTurn.at(curve, METHOD, -10, 10, 100);
        assertTrue(Double.isNaN(torqueNm[0]) && Double.isNaN(torqueNm[1]));
        assertEquals(1, torqueNm[2], 1e-12);
        assertEquals(5, torqueNm.length);
        assertEquals(3, TorqueOverTurn.at(curve, METHOD, -10, 10, 3).length);
        assertEquals(0, TorqueOverTurn.at(curve, METHOD, 50, 10, 3).length);
    }

    @Test
    void a_curve_that_does_not_turn_on_has_no_torque_over_turn() {
        var curve = Curve.of(new double[] {7}, new double[] {1});
        assertEquals(0, TorqueOverTurn.at(curve, METHOD, 7, 1, 10).length);
        assertThrows(IllegalArgumentException.class, () -> TorqueOverTurn.at(curve, METHOD, 0, 0, 10));
    }
}
