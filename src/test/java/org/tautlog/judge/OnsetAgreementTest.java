package org.tautlog.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.tautlog.joint.window.FindingCode;

/** Where the three criteria of the yield onset do not tell of the same knee, a person must look. */
class OnsetAgreementTest {
    @Test
    void a_joint_that_softens_by_a_fifth_reaches_the_offset_and_never_half_the_gradient() {
        for (int seed = 1; seed <= 20; seed++) {
            var made = Cases.good();
            made.seed = seed;
            made.slipOfTurn = turn -> Math.max(0, 0.2 * (turn - 190));
            made.noiseShare = 0.001;
            made.noiseNm = 0.01;
            var judgement = Cases.judge(made);
            assertTrue(Cases.has(judgement, FindingCode.ONSET_DISAGREES), "seed " + seed + judgement.findings());
            assertEquals(Verdict.REVIEW, judgement.verdict(), "seed " + seed);
        }
    }

    @Test
    void one_knee_is_one_knee_however_sharp_or_round() {
        for (double width : new double[] {1, 4, 8, 15}) {
            for (double remains : new double[] {0.05, 0.2, 0.35}) {
                for (int seed = 1; seed <= 10; seed++) {
                    var made = Cases.good();
                    made.seed = seed;
                    made.turnDeg = 362;
                    made.kneeDeg = 410;
                    made.kneeWidthDeg = width;
                    made.remainingRatio = remains;
                    var judgement = Cases.judge(made);
                    assertFalse(
                            Cases.has(judgement, FindingCode.ONSET_DISAGREES),
                            "width " + width + ", remains " + remains + ", seed " + seed + judgement.findings());
                }
            }
        }
    }
}
