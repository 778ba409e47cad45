package org.tautlog.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tautlog.joint.window.FindingCode.ANGLE_SLIP;
import static org.tautlog.joint.window.FindingCode.ONSET_DISAGREES;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.joint.window.Consequence;
import org.tautlog.signature.EndState;
import org.tautlog.signature.MadeCurve;

/** A slip need not be sudden: the far end of a through-bolt turns along for a while, or parts touch late. */
class SpreadSlipTest {
    @ParameterizedTest(name = "{0} deg over {1}, from {2} deg past the snug point")
    @CsvSource({
        "10, 25, 150",
        "10, 40, 150",
        "15, 25, 150",
        "20, 40, 30",
        "20, 40, 250",
        "25, 60, 150",
        "40, 100, 150",
        "60, 150, 150",
        "48, 120, 0",
        "32, 80, 0"
    })
    void a_slip_spread_over_turn_is_found_with_its_size(double slipDeg, double overDeg, double atDeg) {
        for (int seed = 1; seed <= 20; seed++) {
            var made = good(seed);
            made.slipOfTurn = turn -> slipDeg * Math.max(0, Math.min(1, (turn - atDeg) / overDeg));
            var judgement = Cases.judge(made);
            assertEquals(ANGLE_SLIP, judgement.findings().get(0).code(), "seed " + seed + ": " + judgement.findings());
            var marks = judgement.signature().marks();
            assertEquals(slipDeg, marks.angleSlipDeg().number(), 1.5, "seed " + seed);
            assertEquals(made.snugDeg() + atDeg, marks.angleSlipAtDeg().number(), 15, "seed " + seed);
        }
    }

    /** A knee however slow, and 2 % of noise, lag for a while too; but the torque never rises as before. */
    @ParameterizedTest(name = "knee {0} deg wide with {1} of the rate left, noise {2} N·m")
    @CsvSource({"4, 0.3, 0", "15, 0.5, 0.3", "30, 0.7, 0.3", "30, 0.6, 0.5", "40, 0.8, 0.3", "4, 1, 1.5"})
    void a_slow_knee_and_noise_are_no_slip(double widthDeg, double left, double noiseNm) {
        for (int seed = 1; seed <= 40; seed++) {
            var made = good(seed);
            made.kneeDeg = 300;
            made.kneeWidthDeg = widthDeg;
            made.remainingRatio = left;
            made.noiseShare = 0;
            made.noiseNm = noiseNm;
            assertTrue(!Cases.has(Cases.judge(made), ANGLE_SLIP), "seed " + seed);
        }
    }

    @Test
    void an_onset_that_the_end_contradicts_leaves_no_clamp_load() {
        var found = List.of(new Finding(ONSET_DISAGREES, Consequence.REVIEW, 40.0, 25.0, "deg", "apart"));
        assertTrue(
                ClampLoadPremises.refuted(found, EndState.ELASTIC).orElseThrow().contains("every recorded degree"));
        assertEquals(Optional.empty(), ClampLoadPremises.refuted(found, EndState.PLASTIC));
    }

    private static MadeCurve good(int seed) {
        var made = Cases.good();
        made.seed = seed;
        made.kiloHertz = seed % 2;
        made.stages = seed % 3 != 0;
        return made;
    }
}
