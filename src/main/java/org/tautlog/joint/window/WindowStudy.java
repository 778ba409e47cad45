package org.tautlog.joint.window;

import org.tautlog.joint.TorsionRule;
import org.tautlog.joint.study.Limits;
import org.tautlog.joint.study.Quantity;
import org.tautlog.joint.study.StudyResult;
import org.tautlog.joint.study.ToleranceStudy;
import org.tautlog.joint.tightening.Knee;
import org.tautlog.joint.tightening.Seating;
import org.tautlog.joint.tightening.Tightening;
import org.tautlog.joint.tightening.TighteningCurve;

/**
 * The way from a specification to its tolerance study and back to a window.
 *
 * <p>The study turns the bolt's head; the tool counts the angle before the drive. Between them lies the drive's wind-up,
 *
 * <pre>
 * turn of the tool = turn of the head + (T_final - T_snug) / k      deg
 * 1 / rate shown   = 1 / rate at the head + 1 / k                   deg/(N·m)
 *
 * k stiffness of the drive, N·m/deg
 * </pre>
 *
 * which is taken off on the way in and added on the way out. Source: two springs in series, elementary.
 */
public final class WindowStudy {
    /**
     * How far the angle where the gradient has halved may lie from the bolt's own elastic limit, deg. Source: three published
     * traces to yield with their measured elongation.
     */
    public static final double ONSET_READING_DEG = 35;

    private static final int ROUNDS = 5;
    private static final double TORQUE_STEP_NM = 0.1;
    private static final double ANGLE_STEP_DEG = 1;
    private static final double RATE_STEP_NM_PER_DEG = 0.001;

    private WindowStudy() {}

    /**
     * The study of a specification's tolerances.
     *
     * @param specification a specification that states joint, warm-up and tolerance
     * @param draws how many tightenings to draw; from 1,000 to 10,000,000
     * @param seed the seed to draw with
     * @param coverage the share of draws that each pair of proposed limits lets through; above 0.5, below 1
     * @return the study, not yet run
     * @throws IllegalArgumentException where the specification does not state enough; the message names the section
     */
    public static ToleranceStudy of(JointSpecification specification, int draws, long seed, double coverage) {
        var stated = specification
                .statedJoint()
                .orElseThrow(() -> missing("bolt and layers", "[bolt], [[layer]] and [friction]"));
        var warmUp = stated.warmUp().orElseThrow(() -> missing("warm-up", "[warm-up]"));
        if (stated.tolerance().isEmpty()) {
            throw missing("tolerance", "[tolerance]");
        }
        var method = specification.method();
        var nominal = tightening(stated, method.snugTorqueNm(), method.turnDeg());
        for (int round = 0; round < ROUNDS; round++) {
            nominal = tightening(stated, method.snugTorqueNm(), method.turnDeg() - windUpDeg(stated, nominal));
        }
        return new ToleranceStudy(
                nominal,
                warmUp.temperatures(),
                warmUp.torsionLeftShare(),
                warmUp.embeddingMm(),
                stated.tolerance(),
                draws,
                seed,
                coverage);
    }

    /**
     * The specification with the limits that its study proposes: a draft for a person to judge, never a release.
     *
     * <p>Snug torque, turn, final torque and torque rate get both limits, rounded outwards. The yield onset past the elastic
     * origin gets its earliest angle, {@value #ONSET_READING_DEG} deg earlier than drawn for what reading it from a trace
     * adds; it has no latest one, as an elastic bolt has no onset. All else stays.
     *
     * @param specification the specification that was studied
     * @param study its study
     * @param result what the study found
     * @return the specification with the proposed window; its version says that it is a proposal
     */
    public static JointSpecification proposal(
            JointSpecification specification, ToleranceStudy study, StudyResult result) {
        var stated = specification.statedJoint().orElseThrow(() -> missing("bolt and layers", "[bolt]"));
        var present = specification.window();
        var found = result.window();
        double windUpDeg = windUpDeg(stated, study.nominal());
        double onsetWindUpDeg = stated.driveNmPerDeg().isPresent()
                ? (result.summary(Quantity.ONSET_TORQUE).mean() - stated.prevailingTorqueNm())
                        / stated.driveNmPerDeg().getAsDouble()
                : 0;
        var proposed = new Window(
                outwards(found.snugTorqueNm(), 0, TORQUE_STEP_NM),
                outwards(found.turnDeg(), windUpDeg, ANGLE_STEP_DEG),
                outwards(found.finalTorqueNm(), 0, TORQUE_STEP_NM),
                outwards(
                        new Limits(
                                shown(stated, found.torqueRateNmPerDeg().low()),
                                shown(stated, found.torqueRateNmPerDeg().high())),
                        0,
                        RATE_STEP_NM_PER_DEG),
                present.prevailingTorqueNm(),
                new OnsetLimits(
                        present.onset().pastSnugDeg(),
                        new Band(
                                Math.floor(found.onsetPastOriginDeg().low() + onsetWindUpDeg - ONSET_READING_DEG),
                                Double.POSITIVE_INFINITY),
                        present.onset().leastFinalGradientRatio()));
        return specification.withWindow(specification.version() + " proposal", proposed);
    }

    private static Tightening tightening(StatedJoint stated, double snugTorqueNm, double turnDeg) {
        return new Tightening(
                stated.joint(),
                snugTorqueNm,
                turnDeg,
                stated.prevailingTorqueNm(),
                Seating.none(),
                TorsionRule.FULLY_PLASTIC,
                Knee.ROUND);
    }

    private static double windUpDeg(StatedJoint stated, Tightening tightening) {
        if (stated.driveNmPerDeg().isEmpty()) {
            return 0;
        }
        double endNm = TighteningCurve.of(tightening).atEnd().torqueNm();
        return (endNm - tightening.snugTorqueNm()) / stated.driveNmPerDeg().getAsDouble();
    }

    private static double shown(StatedJoint stated, double rateNmPerDeg) {
        return stated.driveNmPerDeg().isPresent()
                ? 1 / (1 / rateNmPerDeg + 1 / stated.driveNmPerDeg().getAsDouble())
                : rateNmPerDeg;
    }

    /** Whole steps that hold the limits; a decimal step is counted in whole numbers so that it prints short. */
    private static Band outwards(Limits limits, double further, double step) {
        double perUnit = Math.rint(1 / step);
        return new Band(
                Math.floor((limits.low() + further) * perUnit) / perUnit,
                Math.ceil((limits.high() + further) * perUnit) / perUnit);
    }

    private static IllegalArgumentException missing(String what, String section) {
        return new IllegalArgumentException(
                what + " is not stated; a window is studied from a specification that has " + section);
    }
}
