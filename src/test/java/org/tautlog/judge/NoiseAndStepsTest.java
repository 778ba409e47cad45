package org.tautlog.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tautlog.joint.window.FindingCode.SENSOR_SATURATED;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tautlog.signature.MadeCurve;
import org.tautlog.trace.Curve;

/** Noise and coarse steps of the torque are not faults of the tightening; a sensor at its limit is, however it flickers. */
class NoiseAndStepsTest {
    private static final int SEEDS = 80;
    private static final double DIGIT_NM = 0.01;

    /** 1 % of the final torque at every torque: the highest of many samples lies well above the torque of the stage. */
    @Test
    void a_noise_of_one_percent_makes_no_good_tightening_nonconforming() {
        int read = 0;
        double sumNm = 0;
        for (int seed = 1; seed <= SEEDS; seed++) {
            var made = good(seed);
            made.noiseShare = 0;
            made.noiseNm = 0.75;
            var judgement = Cases.judge(made);
            assertTrue(judgement.verdict() != Verdict.NONCONFORMING, "seed " + seed + ": " + judgement.findings());
            var snugNm = judgement.signature().snug().torqueNm();
            read += snugNm.isFound() ? 1 : 0;
            sumNm += snugNm.isFound() ? snugNm.number() - made.clean(made.snugDeg() + 1.5) : 0;
        }
        assertTrue(read > 0.95 * SEEDS, "saw " + read);
        assertEquals(0, sumNm / read, 0.15, "mean error of the snug stage's torque, N·m");
    }

    @ParameterizedTest(name = "steps of {0} N·m at {1} kHz with a noise of {2} N·m")
    @CsvSource({"0.5, 0, 0.2", "0.2, 1, 0.07", "0.5, 1, 0.2", "0.2, 5, 0.07"})
    void coarse_steps_of_the_torque_are_no_sensor_at_its_limit(double stepNm, double kiloHertz, double noiseNm) {
        for (int seed = 1; seed <= SEEDS; seed++) {
            var made = good(seed);
            made.kiloHertz = kiloHertz;
            made.noiseShare = 0;
            made.noiseNm = noiseNm;
            made.torqueStepNm = stepNm;
            assertTrue(!Cases.has(Cases.judge(made), SENSOR_SATURATED), "seed " + seed);
        }
    }

    @ParameterizedTest(name = "{0} N·m below the end")
    @ValueSource(doubles = {1.5, 3, 6, 20})
    void a_sensor_at_its_limit_is_seen_though_its_last_digit_flickers(double below) {
        for (int seed = 1; seed <= 20; seed++) {
            var made = good(seed);
            made.torqueStepNm = DIGIT_NM;
            var judgement = Cases.judge(clipped(made.make(), made.clean(made.stopDeg()) - below, seed));
            assertTrue(Cases.has(judgement, SENSOR_SATURATED), "seed " + seed + ": " + judgement.findings());
            assertEquals(Verdict.UNJUDGED, judgement.verdict());
        }
    }

    private static MadeCurve good(int seed) {
        var made = Cases.good();
        made.seed = seed;
        made.kiloHertz = seed % 2;
        made.stages = seed % 3 != 0;
        made.rateNmPerDeg = 0.152 + 0.001 * (seed % 17);
        return made;
    }

    /** A limit with one digit above it, as the digitised torque of a sensor at its stop has it. */
    private static Curve clipped(Curve curve, double limitNm, long seed) {
        var random = new SplittableRandom(seed);
        var torque = IntStream.range(0, curve.size())
                .mapToDouble(i -> curve.torqueNm(i) < limitNm
                        ? curve.torqueNm(i)
                        : (Math.rint(limitNm / DIGIT_NM) + random.nextInt(2)) * DIGIT_NM)
                .toArray();
        var clipped = Curve.of(curve.anglesDeg(), torque);
        return curve.hasTime()
                ? clipped.withTimeS(IntStream.range(0, curve.size())
                        .mapToDouble(curve::timeS)
                        .toArray())
                : clipped;
    }
}
