package org.tautlog.joint.tightening;

import java.util.Locale;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.Require;
import org.tautlog.joint.TorqueForm;
import org.tautlog.joint.TorquePreload;

/**
 * Torque, preload and plastic stretch over the angle that the head is turned, through seating, elastic and yield zones.
 *
 * <pre>
 * theta(F) = 360/P (F (delta_S + delta_P) + s(F) + u_p(F)) + F phi + phi_p(F)      deg
 * T(F)     = T_prev + F lever                                                      N·m
 *
 * s     seating closure (Seating), mm
 * u_p   plastic stretch, mm; phi_p plastic twist of the shank, deg (PlasticStretch)
 * phi   elastic twist of the shank by the thread's torque, deg/N (WindUp)
 * </pre>
 *
 * Angle 0 is the first contact of the parts; the elastic origin lies a little later, where the straight line of the elastic
 * zone would start. Friction stays as it is while turning. Past the uniform elongation a real bolt necks; this curve does not.
 *
 * <p>Source: one turn draws bolt and joint together by one pitch (common practice); the parts' own sources beside each.
 */
public final class TighteningCurve {
    private static final double NMM_PER_NM = 1000;

    private final double degPerMm;
    private final double resilienceMmPerN;
    private final double leverNmPerN;
    private final double threadLeverNmPerN;
    private final double twistDegPerN;
    private final double prevailingTorqueNm;
    private final Seating seating;
    private final PlasticStretch plastic;
    private final double heldN;
    private final double proofN;
    private final double snugPreloadN;
    private final double turnDeg;

    private TighteningCurve(Tightening tightening) {
        var joint = tightening.joint();
        var bolt = joint.bolt();
        var friction = joint.friction();
        degPerMm = 360 / bolt.thread().pitchMm();
        resilienceMmPerN = joint.resilienceMmPerN();
        leverNmPerN = TorquePreload.leverMm(bolt, friction, TorqueForm.ADDED_TERMS) / NMM_PER_NM;
        threadLeverNmPerN =
                TorquePreload.threadLeverMm(bolt.thread(), friction.threadMu(), TorqueForm.ADDED_TERMS) / NMM_PER_NM;
        twistDegPerN = threadLeverNmPerN * WindUp.shankDegPerNm(bolt);
        prevailingTorqueNm = tightening.prevailingTorqueNm();
        seating = tightening.seating();
        plastic = PlasticStretch.turning(bolt, friction.threadMu(), tightening.torsionRule(), tightening.knee());
        heldN = plastic.heldN();
        proofN = plastic.proofN();
        snugPreloadN = preloadNAtTorque(tightening.snugTorqueNm());
        turnDeg = tightening.turnDeg();
        if (snugPreloadN >= proofN)
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "snugTorqueNm is %.1f; it must be below the torque at first yield, %.1f N·m",
                    tightening.snugTorqueNm(),
                    firstYieldTorqueNm()));
    }

    /**
     * Works out the curve of one tightening.
     *
     * @param tightening the joint and how it is tightened
     * @return its curve
     * @throws IllegalArgumentException when the bolt yields before the snug torque is reached
     */
    public static TighteningCurve of(Tightening tightening) {
        return new TighteningCurve(tightening);
    }

    /**
     * The head's angle at a preload on the way up.
     *
     * @param preloadN N; from 0 to the highest that the bolt can hold
     * @return deg from first contact
     */
    public double headAngleDeg(double preloadN) {
        return degPerMm * (preloadN * resilienceMmPerN + seating.closedMm(preloadN))
                + preloadN * twistDegPerN
                + plastic.angleDeg(preloadN, degPerMm);
    }

    /**
     * The preload at an angle.
     *
     * @param headAngleDeg deg from first contact
     * @return N; 0 before first contact
     */
    public double preloadN(double headAngleDeg) {
        Require.finite("headAngleDeg", headAngleDeg);
        if (headAngleDeg <= 0) return 0;
        if (Double.isFinite(heldN) && headAngleDeg(heldN) <= headAngleDeg) return heldN;
        return RisingRoot.find(
                preloadN -> headAngleDeg(preloadN) - headAngleDeg,
                preloadN -> elasticDegPerN()
                        + degPerMm * seating.slopeMmPerN(preloadN)
                        + plastic.slopeDegPerN(preloadN, degPerMm),
                Math.min(headAngleDeg / elasticDegPerN(), heldN),
                plastic.nearN(headAngleDeg / degPerMm));
    }

    /**
     * The torque at an angle.
     *
     * @param headAngleDeg deg from first contact
     * @return N·m; the prevailing torque before first contact
     */
    public double torqueNm(double headAngleDeg) {
        return torqueNmAtPreload(preloadN(headAngleDeg));
    }

    /**
     * The torque at a preload.
     *
     * @param preloadN N
     * @return N·m
     */
    public double torqueNmAtPreload(double preloadN) {
        return prevailingTorqueNm + preloadN * leverNmPerN;
    }

    /**
     * The preload at a torque on the way up.
     *
     * @param torqueNm N·m
     * @return N; 0 up to the prevailing torque
     */
    public double preloadNAtTorque(double torqueNm) {
        return Math.max(0, torqueNm - prevailingTorqueNm) / leverNmPerN;
    }

    /**
     * The part of the torque in the shank at a preload, without prevailing torque.
     *
     * @param preloadN N
     * @return N·m
     */
    public double shankTorqueNm(double preloadN) {
        return preloadN * threadLeverNmPerN;
    }

    /**
     * How far the shank is twisted at a preload.
     *
     * @param preloadN N
     * @return deg
     */
    public double shankTwistDeg(double preloadN) {
        return preloadN * twistDegPerN;
    }

    /**
     * The bolt's plastic stretch at an angle.
     *
     * @param headAngleDeg deg from first contact
     * @return mm; at least 0
     */
    public double plasticStretchMm(double headAngleDeg) {
        return plasticStretchMm(headAngleDeg, preloadN(headAngleDeg));
    }

    /**
     * The largest plastic strain of any section at an angle.
     *
     * @param headAngleDeg deg from first contact
     * @return a share (0.01 is 1 %)
     */
    public double plasticStrain(double headAngleDeg) {
        var preloadN = preloadN(headAngleDeg);
        return plastic.largestStrain(preloadN, plasticStretchMm(headAngleDeg, preloadN));
    }

    /**
     * Where the straight line of the elastic zone would start at zero preload.
     *
     * @return deg from first contact
     */
    public double elasticOriginDeg() {
        return seating.closureMm() * degPerMm;
    }

    /**
     * The slope of preload over the head's angle in the elastic zone, the shank's twist included.
     *
     * @return N/deg; a little less than {@link BoltedJoint#preloadPerDegN}
     */
    public double preloadRateNPerDeg() {
        return 1 / elasticDegPerN();
    }

    /**
     * The slope of torque over the head's angle in the elastic zone.
     *
     * @return N·m/deg
     */
    public double torqueRateNmPerDeg() {
        return leverNmPerN / elasticDegPerN();
    }

    /**
     * The preload at the snug torque.
     *
     * @return N
     */
    public double snugPreloadN() {
        return snugPreloadN;
    }

    /**
     * The head's angle at the snug torque.
     *
     * @return deg from first contact
     */
    public double snugAngleDeg() {
        return headAngleDeg(snugPreloadN);
    }

    /**
     * The head's angle at the end of the turn.
     *
     * @return deg from first contact
     */
    public double finalAngleDeg() {
        return snugAngleDeg() + turnDeg;
    }

    /**
     * The preload at which the weakest section reaches its yield strength while turning.
     *
     * @return N
     * @see org.tautlog.joint.FirstYield
     */
    public double firstYieldPreloadN() {
        return proofN;
    }

    /**
     * The angle from which on the bolt counts as yielding while it is turned: the round knee's beginning, short of the angle
     * where the weakest section reaches its yield strength.
     *
     * @return deg from first contact
     * @see PlasticStretch#elasticLimitN
     */
    public double elasticLimitAngleDeg() {
        return headAngleDeg(plastic.elasticLimitN());
    }

    /**
     * The angle at which the weakest section reaches its yield strength.
     *
     * @return deg from first contact
     */
    public double firstYieldAngleDeg() {
        return headAngleDeg(proofN);
    }

    /**
     * The torque at which the weakest section reaches its yield strength.
     *
     * @return N·m
     */
    public double firstYieldTorqueNm() {
        return torqueNmAtPreload(proofN);
    }

    /**
     * The preload at yield onset as a trace shows it: where torque and preload rise half as fast over the angle as in the
     * elastic zone. On a round knee it lies some percent below the preload at the yield strength, on a sharp one at it.
     *
     * <p>Source: common practice (gradient fallen to one half).
     *
     * @return N
     */
    public double onsetPreloadN() {
        return plastic.preloadNAtSlope(elasticDegPerN(), degPerMm);
    }

    /**
     * The angle at yield onset as a trace shows it.
     *
     * @return deg from first contact
     */
    public double onsetAngleDeg() {
        return headAngleDeg(onsetPreloadN());
    }

    /**
     * The torque at yield onset as a trace shows it.
     *
     * @return N·m
     */
    public double onsetTorqueNm() {
        return torqueNmAtPreload(onsetPreloadN());
    }

    /**
     * Where the turn ends.
     *
     * @return the end state
     */
    public Tightened atEnd() {
        var endDeg = finalAngleDeg();
        var preloadN = preloadN(endDeg);
        var stretchMm = plasticStretchMm(endDeg, preloadN);
        return new Tightened(
                preloadN,
                torqueNmAtPreload(preloadN),
                shankTorqueNm(preloadN),
                stretchMm,
                plastic.largestStrain(preloadN, stretchMm),
                preloadN / proofN,
                preloadN >= plastic.elasticLimitN());
    }

    private double plasticStretchMm(double headAngleDeg, double preloadN) {
        var stretchMm = plastic.stretchMm(preloadN);
        if (preloadN < heldN) return stretchMm;
        var pastDeg = Math.max(0, headAngleDeg - headAngleDeg(heldN));
        return stretchMm + pastDeg / plastic.heldDegPerMm(degPerMm);
    }

    private double elasticDegPerN() {
        return degPerMm * resilienceMmPerN + twistDegPerN;
    }
}
