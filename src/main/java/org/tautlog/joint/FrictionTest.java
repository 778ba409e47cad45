package org.tautlog.joint;

/**
 * One reading of a torque and clamp-force test, and the friction that follows from it.
 *
 * <pre>
 * mu_tot = (T/F   - P/(2 pi)) / (0.577 d2 + 0.5 Db)
 * mu_th  = (Tth/F - P/(2 pi)) / (0.577 d2)
 * mu_b   = (T - Tth) / (0.5 Db F)
 * K      = T / (F d)
 * Db = (Do + dh)/2 mean bearing diameter, mm
 * </pre>
 *
 * Source: ISO 16047:2005 clause 8, from memory.
 *
 * @param thread the thread tested
 * @param meanBearingDiameterMm mean diameter of the turned bearing face, mm; above 0
 * @param preloadN the clamp force, N; above 0
 * @param torqueNm the tightening torque, N·m; above 0
 * @param threadTorqueNm the part that reached the thread, N·m; at least 0, below the whole torque
 */
public record FrictionTest(
        MetricThread thread, double meanBearingDiameterMm, double preloadN, double torqueNm, double threadTorqueNm) {
    private static final double THREAD_FACTOR = 0.577;
    private static final double NMM_PER_NM = 1000;

    /** Checks each reading. */
    public FrictionTest {
        Require.present("thread", thread);
        Require.above("meanBearingDiameterMm", meanBearingDiameterMm, 0, "mm");
        Require.above("preloadN", preloadN, 0, "N");
        Require.above("torqueNm", torqueNm, 0, "N·m");
        Require.atLeast("threadTorqueNm", threadTorqueNm, 0, "N·m");
        if (threadTorqueNm >= torqueNm)
            throw new IllegalArgumentException("threadTorqueNm is " + threadTorqueNm
                    + "; it must be below the whole torque of " + torqueNm + " N·m");
    }

    /**
     * One coefficient for thread and bearing face together.
     *
     * @return without unit
     */
    public double totalMu() {
        return (torqueNm * NMM_PER_NM / preloadN - pitchLeverMm())
                / (THREAD_FACTOR * thread.pitchDiameterMm() + 0.5 * meanBearingDiameterMm);
    }

    /**
     * Friction in the thread.
     *
     * @return without unit
     */
    public double threadMu() {
        return (threadTorqueNm * NMM_PER_NM / preloadN - pitchLeverMm()) / (THREAD_FACTOR * thread.pitchDiameterMm());
    }

    /**
     * Friction under the turned face.
     *
     * @return without unit
     */
    public double underHeadMu() {
        return (torqueNm - threadTorqueNm) * NMM_PER_NM / (0.5 * meanBearingDiameterMm * preloadN);
    }

    /**
     * The nut factor K.
     *
     * @return without unit
     */
    public double nutFactor() {
        return torqueNm * NMM_PER_NM / (preloadN * thread.nominalMm());
    }

    private double pitchLeverMm() {
        return thread.pitchMm() / (2 * Math.PI);
    }
}
