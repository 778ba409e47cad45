package org.tautlog.signature;

import java.util.Locale;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.FirstYield;
import org.tautlog.joint.Friction;
import org.tautlog.joint.TorqueForm;
import org.tautlog.joint.TorquePreload;
import org.tautlog.joint.TorsionRule;
import org.tautlog.joint.study.Factor;
import org.tautlog.joint.tightening.WindUp;
import org.tautlog.joint.window.StatedJoint;

/**
 * Estimates the clamp load of one tightening from its curve and the stated joint.
 *
 * <pre>
 * F = (theta - r T phi - T/k) / (c + P/(2 pi) (1 - r) phi)      N
 *
 * theta  angle past the elastic origin, deg; past the knee T over the torque rate instead
 * T      final torque less prevailing torque, N·m
 * c      360 (delta_S + delta_P) / P, deg/N
 * phi    twist of the shank for each N·m of thread torque, deg; k stiffness of the drive, N·m/deg
 * r      share of the friction torque that is the thread's: a mu_G / (a mu_G + b mu_K)
 *        a = d2 / (2 cos 30 deg), b = D_Km / 2, with the stated friction, of which only the ratio counts
 *
 * mu = (T/F - P/(2 pi)) / (a + b)                               apparent friction
 * </pre>
 *
 * The angle stretches bolt and layers, twists the shank and winds up the drive; the thread torque that twists the shank is
 * the pitch's part of F and the share r of the rest. Neither needs the friction coefficient itself.
 *
 * <p>Bounds lie two standard uncertainties either side. Relative standard uncertainties, added in squares: stiffness 4 %,
 * shank twist and friction split 2.5 %, cone or eccentric load 2.5 %; elastic origin at least 2.5 %, or as read; past the
 * knee 5 % for friction that drifts in its place. That is 5.9 % elastic and 7.3 % past the knee.
 *
 * <p>Source: stretch by turn and pitch, common practice; carrying the torque back to the elastic line, ASM Handbook volume 8
 * (yield from initial tightening); torque terms, VDI 2230-1:2015 clause 5.4.3; the budget's shares, common practice, no
 * source. On three published traces to yield the plain angle formula was 60 to 80 % high at 200 deg and the carried-back
 * torque within 6 %.
 */
public final class ClampLoadEstimate {
    private static final double NMM_PER_NM = 1000;
    private static final double N_PER_KN = 1000;
    private static final double STIFFNESS_SHARE = 0.04;
    private static final double TWIST_SHARE = 0.025;
    private static final double CONE_SHARE = 0.025;
    private static final double LEAST_ORIGIN_SHARE = 0.025;
    private static final double FRICTION_DRIFT_SHARE = 0.05;
    private static final double COVERAGE_FACTOR = 2;
    /** Deviations of the lot's strength beyond which no bolt is thought to lie. */
    private static final double STRONGEST_DEVIATIONS = 3;
    /** Angle and torque of an elastic bolt say the same; further apart, one of them is not what it seems. */
    private static final double MOST_DISAGREEMENT = 0.2;

    private static final int STRENGTH_ROUNDS = 4;

    private final Signature signature;
    private final StatedJoint stated;
    private final BoltedJoint joint;
    private final double pitchLeverMm;
    private final double threadLeverMm;
    private final double headLeverMm;
    private final double threadShare;
    private final double twistDegPerNm;
    private final double torqueNm;

    private ClampLoadEstimate(Signature signature, StatedJoint stated) {
        this.signature = signature;
        this.stated = stated;
        joint = stated.joint();
        var bolt = joint.bolt();
        var thread = bolt.thread();
        pitchLeverMm = TorquePreload.threadLeverMm(thread, 0, TorqueForm.ADDED_TERMS);
        threadLeverMm = TorquePreload.threadLeverMm(thread, 1, TorqueForm.ADDED_TERMS) - pitchLeverMm;
        headLeverMm = bolt.meanBearingDiameterMm() / 2;
        threadShare = threadShare(joint.friction());
        twistDegPerNm = WindUp.shankDegPerNm(bolt);
        var prevailing = signature.prevailingTorqueNm();
        torqueNm = signature.end().torqueNm().number()
                - (prevailing.isFound() ? prevailing.number() : stated.prevailingTorqueNm());
    }

    /**
     * Estimates the clamp load where the tool stopped.
     *
     * @param signature what the curve says
     * @param stated bolt, layers, friction and what else the specification states of the joint
     * @return the estimate, or why there is none
     */
    public static ClampLoad of(Signature signature, StatedJoint stated) {
        var why = whyNot(signature);
        return why.isEmpty() ? new ClampLoadEstimate(signature, stated).estimate() : ClampLoad.none(why);
    }

    private static String whyNot(Signature signature) {
        var elastic = signature.elastic();
        if (!elastic.torqueRateNmPerDeg().isFound() || !elastic.originDeg().isFound()) {
            return "no elastic line: " + elastic.originDeg().whyMissing();
        }
        if (!signature.end().torqueNm().isFound() || !signature.end().angleDeg().isFound()) {
            return "no final point: " + signature.end().torqueNm().whyMissing();
        }
        return signature.onset().endState() == EndState.UNKNOWN
                ? "the curve does not say whether the bolt is past its knee"
                : "";
    }

    private ClampLoad estimate() {
        double angleDeg = signature.end().angleDeg().number()
                - signature.elastic().originDeg().number();
        double carriedBackDeg =
                torqueNm / signature.elastic().torqueRateNmPerDeg().number();
        double byAngleN = loadN(angleDeg);
        double byTorqueN = loadN(carriedBackDeg);
        boolean elastic = signature.onset().endState() == EndState.ELASTIC;
        if (!(byTorqueN > 0) || !(byAngleN > 0)) {
            return ClampLoad.none(String.format(
                    Locale.ROOT, "%.1f N·m and %.0f deg past the elastic origin leave no stretch", torqueNm, angleDeg));
        }
        if (elastic && Math.abs(byAngleN / byTorqueN - 1) > MOST_DISAGREEMENT) {
            return ClampLoad.none(String.format(
                    Locale.ROOT,
                    "angle and torque contradict each other: %.1f kN by one, %.1f kN by the other",
                    byAngleN / N_PER_KN,
                    byTorqueN / N_PER_KN));
        }
        double shownN = elastic ? byAngleN : byTorqueN;
        double strongestN = strongestN(shownN);
        boolean limited = shownN > strongestN;
        double preloadN = Math.min(shownN, strongestN);
        double share = elastic ? elasticShare(angleDeg) : pastKneeShare();
        var basis = limited
                ? ClampLoad.Basis.BOLT_STRENGTH
                : elastic ? ClampLoad.Basis.ANGLE : ClampLoad.Basis.TORQUE_CARRIED_BACK;
        return of(basis, preloadN, share);
    }

    private ClampLoad of(ClampLoad.Basis basis, double preloadN, double share) {
        double lowN = preloadN * (1 - COVERAGE_FACTOR * share);
        double highN = preloadN * (1 + COVERAGE_FACTOR * share);
        double mu = mu(preloadN);
        if (mu < 0 || mu > 1) {
            return ClampLoad.none(String.format(
                    Locale.ROOT,
                    "%.1f N·m for %.1f kN would be a friction of %.2f: the stated joint is not this one",
                    torqueNm,
                    preloadN / N_PER_KN,
                    mu));
        }
        double muUncertainty = share * torqueNm * NMM_PER_NM / preloadN / (threadLeverMm + headLeverMm);
        return new ClampLoad(
                basis,
                Feature.of(preloadN / N_PER_KN, preloadN * share / N_PER_KN),
                Feature.of(lowN / N_PER_KN, 0),
                Feature.of(highN / N_PER_KN, 0),
                Feature.of(mu, muUncertainty),
                AfterWarmUp.estimate(stated, before(lowN), before(preloadN), before(highN)));
    }

    private AfterWarmUp.Before before(double preloadN) {
        return new AfterWarmUp.Before(preloadN, shankNm(preloadN), torqueNm, mu(preloadN), isPlastic());
    }

    private boolean isPlastic() {
        return signature.onset().endState() == EndState.PLASTIC;
    }

    private double loadN(double angleDeg) {
        double driveDeg = stated.driveNmPerDeg().isPresent()
                ? torqueNm / stated.driveNmPerDeg().getAsDouble()
                : 0;
        double stretchDegPerN = 1 / joint.preloadPerDegN();
        return (angleDeg - threadShare * torqueNm * twistDegPerNm - driveDeg)
                / (stretchDegPerN + pitchLeverMm / NMM_PER_NM * (1 - threadShare) * twistDegPerNm);
    }

    /** The load at which the strongest bolt of the lot would give way under the torsion that goes with it. */
    private double strongestN(double shownN) {
        var bolt = joint.bolt();
        var spread = stated.tolerance().get(Factor.YIELD_STRENGTH);
        double strengthMPa = Math.max(
                bolt.material().ultimateStrengthMPa(),
                bolt.material().yieldStrengthMPa()
                        + (spread == null ? 0 : STRONGEST_DEVIATIONS * spread.standardDeviation()));
        double limitN = shownN;
        for (int round = 0; round < STRENGTH_ROUNDS; round++) {
            double shankNm = shankNm(limitN);
            limitN = bolt.strengthSections().stream()
                    .mapToDouble(section -> FirstYield.standingPreloadN(
                            strengthMPa, section.diameterMm(), shankNm, TorsionRule.FULLY_PLASTIC))
                    .min()
                    .orElseThrow();
        }
        return limitN;
    }

    private double shankNm(double preloadN) {
        return threadShare * torqueNm + pitchLeverMm / NMM_PER_NM * (1 - threadShare) * preloadN;
    }

    private double mu(double preloadN) {
        return (torqueNm * NMM_PER_NM / preloadN - pitchLeverMm) / (threadLeverMm + headLeverMm);
    }

    private double threadShare(Friction friction) {
        double thread = threadLeverMm * friction.threadMu();
        double head = headLeverMm * friction.underHeadMu();
        return thread + head == 0 ? threadLeverMm / (threadLeverMm + headLeverMm) : thread / (thread + head);
    }

    private double elasticShare(double angleDeg) {
        double read = Math.hypot(
                        signature.elastic().originDeg().standardUncertainty(),
                        signature.end().angleDeg().standardUncertainty())
                / angleDeg;
        return rootOfSquares(Math.max(LEAST_ORIGIN_SHARE, read));
    }

    private double pastKneeShare() {
        var rate = signature.elastic().torqueRateNmPerDeg();
        return rootOfSquares(Math.hypot(FRICTION_DRIFT_SHARE, rate.standardUncertainty() / rate.number()));
    }

    private static double rootOfSquares(double ownShare) {
        return Math.sqrt(STIFFNESS_SHARE * STIFFNESS_SHARE
                + TWIST_SHARE * TWIST_SHARE
                + CONE_SHARE * CONE_SHARE
                + ownShare * ownShare);
    }
}
