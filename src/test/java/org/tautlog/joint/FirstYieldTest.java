package org.tautlog.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How torsion lowers the preload at yield: shares computed from VDI 2230-1 equation R7, no outside source for the numbers. */
class FirstYieldTest {
    private static final MetricThread M10 = MetricThread.of("M10x1.5");

    @ParameterizedTest(name = "mu {0}: thread {1}, shank of 8 mm {2}, first fibre {3}")
    @CsvSource({
        "0.06,0.949,0.941,0.914",
        "0.08,0.930,0.920,0.884",
        "0.10,0.909,0.897,0.853",
        "0.12,0.886,0.872,0.820",
        "0.14,0.863,0.846,0.788",
        "0.16,0.839,0.820,0.756",
        "0.20,0.791,0.769,0.696"
    })
    void torsion_takes_its_share(double mu, double thread, double shank, double firstFibre) {
        assertEquals(thread, share(M10.stressDiameterMm(), mu, TorsionRule.FULLY_PLASTIC), 0.001);
        assertEquals(shank, share(8.0, mu, TorsionRule.FULLY_PLASTIC), 0.001);
        assertEquals(firstFibre, share(M10.stressDiameterMm(), mu, TorsionRule.FIRST_FIBRE), 0.001);
    }

    @ParameterizedTest(name = "torque {0} N·m left in the shank")
    @CsvSource({"0", "5", "12"})
    void a_standing_torque_counts_like_a_turning_one_of_the_same_size(double shankTorqueNm) {
        var standing = FirstYield.standingPreloadN(940, 8.2, shankTorqueNm, TorsionRule.FULLY_PLASTIC);
        var areaMm2 = Math.PI / 4 * 8.2 * 8.2;
        var shearMPa = shankTorqueNm * 1000 * 12 / (Math.PI * 8.2 * 8.2 * 8.2);
        assertEquals(940, Math.hypot(standing / areaMm2, Math.sqrt(3) * shearMPa), 1e-9);
    }

    private static double share(double diameterMm, double mu, TorsionRule rule) {
        return FirstYield.turningPreloadN(1000, diameterMm, M10, mu, rule)
                / (1000 * MetricThread.circleMm2(diameterMm));
    }
}
