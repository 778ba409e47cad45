package org.tautlog.joint;

/**
 * Torque, preload and friction, each from the other two.
 *
 * <pre>
 * M = M_G + F mu_K D_Km/2        N mm
 * </pre>
 *
 * with the thread's part M_G as {@link TorqueForm} says, D_Km the mean bearing diameter in mm, mu_K the friction under the
 * head. All torques here are those of tightening, without prevailing torque.
 *
 * <p>Source: VDI 2230-1:2015 clause 5.4.3; ISO 16047 clause 8.
 */
public final class TorquePreload {
    private static final double NMM_PER_NM = 1000;

    private TorquePreload() {}

    /**
     * Torque that the thread takes for each newton of preload: what twists the shank.
     *
     * @param thread the thread
     * @param threadMu friction in the thread; at least 0
     * @param form how the formula is written
     * @return mm, which is N·mm/N
     */
    public static double threadLeverMm(MetricThread thread, double threadMu, TorqueForm form) {
        return form.threadLeverMm(thread.pitchMm(), thread.pitchDiameterMm(), threadMu);
    }

    /**
     * Torque that the whole tightening takes for each newton of preload.
     *
     * @param bolt the bolt
     * @param friction its friction
     * @param form how the formula is written
     * @return mm, which is N·mm/N
     */
    public static double leverMm(Bolt bolt, Friction friction, TorqueForm form) {
        return threadLeverMm(bolt.thread(), friction.threadMu(), form)
                + friction.underHeadMu() * bolt.meanBearingDiameterMm() / 2;
    }

    /**
     * The torque for a preload.
     *
     * @param bolt the bolt
     * @param friction its friction
     * @param preloadN N
     * @param form how the formula is written
     * @return N·m
     */
    public static double torqueNm(Bolt bolt, Friction friction, double preloadN, TorqueForm form) {
        return preloadN * leverMm(bolt, friction, form) / NMM_PER_NM;
    }

    /**
     * The part of the torque that reaches the thread and twists the shank.
     *
     * @param bolt the bolt
     * @param friction its friction
     * @param preloadN N
     * @param form how the formula is written
     * @return N·m
     */
    public static double threadTorqueNm(Bolt bolt, Friction friction, double preloadN, TorqueForm form) {
        return preloadN * threadLeverMm(bolt.thread(), friction.threadMu(), form) / NMM_PER_NM;
    }

    /**
     * The preload that a torque gives.
     *
     * @param bolt the bolt
     * @param friction its friction
     * @param torqueNm N·m
     * @param form how the formula is written
     * @return N
     */
    public static double preloadN(Bolt bolt, Friction friction, double torqueNm, TorqueForm form) {
        return torqueNm * NMM_PER_NM / leverMm(bolt, friction, form);
    }

    /**
     * The nut factor K = M / (F d), which lumps pitch and both frictions.
     *
     * @param bolt the bolt
     * @param friction its friction
     * @param form how the formula is written
     * @return without unit, usually 0.1 to 0.3
     */
    public static double nutFactor(Bolt bolt, Friction friction, TorqueForm form) {
        return leverMm(bolt, friction, form) / bolt.thread().nominalMm();
    }
}
