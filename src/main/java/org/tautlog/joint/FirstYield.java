package org.tautlog.joint;

/**
 * The preload at which a bolt starts to yield, stretched and twisted together.
 *
 * <pre>
 * sqrt(sigma^2 + 3 tau^2) = Re      sigma = F/A0      tau = M_G/W0
 *
 * while turning, M_G = F g:   F = Re A0 / sqrt(1 + 3 (g A0/W0)^2)
 * with a torque left over:    F = A0 sqrt(Re^2 - 3 (M_G/W0)^2)
 *
 * A0 = pi/4 d0^2, mm2; W0 by the torsion rule, mm3; g thread torque over preload, mm
 * d0 = stress diameter of a thread, the shank's own diameter of a shank
 * </pre>
 *
 * With the fully plastic rule the first line is F = Re A0 / sqrt(1 + 3 (3/2 d2/d0 (P/(pi d2) + mu_G/cos 30 deg))^2).
 *
 * <p>Source: VDI 2230-1:2015, equation R7, which prints 1.155 for 1/cos 30 deg.
 */
public final class FirstYield {
    private static final double NMM_PER_NM = 1000;

    private FirstYield() {}

    /**
     * The preload at which the weakest section yields while the bolt is being turned.
     *
     * @param bolt the bolt
     * @param threadMu friction in the thread; at least 0
     * @param rule when a section counts as yielding
     * @return N
     */
    public static double turningPreloadN(Bolt bolt, double threadMu, TorsionRule rule) {
        var stressMPa = bolt.material().yieldStrengthMPa();
        var weakest = Double.POSITIVE_INFINITY;
        for (var section : bolt.strengthSections())
            weakest =
                    Math.min(weakest, turningPreloadN(stressMPa, section.diameterMm(), bolt.thread(), threadMu, rule));
        return weakest;
    }

    /**
     * The preload at which one section reaches a stated equivalent stress while the bolt is being turned.
     *
     * @param stressMPa the equivalent stress, MPa: the yield strength, or a share of it
     * @param diameterMm the section's diameter, mm
     * @param thread the bolt's thread
     * @param threadMu friction in the thread; at least 0
     * @param rule how the section modulus in torsion is taken
     * @return N
     */
    public static double turningPreloadN(
            double stressMPa, double diameterMm, MetricThread thread, double threadMu, TorsionRule rule) {
        var areaMm2 = MetricThread.circleMm2(diameterMm);
        var shear = TorquePreload.threadLeverMm(thread, threadMu, TorqueForm.ADDED_TERMS)
                * areaMm2
                / rule.sectionModulusMm3(diameterMm);
        return stressMPa * areaMm2 / Math.sqrt(1 + 3 * shear * shear);
    }

    /**
     * The preload at which one section reaches a stated equivalent stress while a torque stays in the shank.
     *
     * @param stressMPa the equivalent stress, MPa
     * @param diameterMm the section's diameter, mm
     * @param shankTorqueNm the torque left in the shank, N·m; at least 0
     * @param rule how the section modulus in torsion is taken
     * @return N; 0 where the torque alone reaches the stress
     */
    public static double standingPreloadN(double stressMPa, double diameterMm, double shankTorqueNm, TorsionRule rule) {
        var shearMPa = shankTorqueNm * NMM_PER_NM / rule.sectionModulusMm3(diameterMm);
        return MetricThread.circleMm2(diameterMm)
                * Math.sqrt(Math.max(0, stressMPa * stressMPa - 3 * shearMPa * shearMPa));
    }
}
