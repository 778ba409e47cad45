package org.tautlog.review.shape;

import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.signature.Signature;
import org.tautlog.signature.TorqueOverTurn;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;
import org.tautlog.trace.Curve;

/**
 * The shape of one curve: its torque over the angle past its own elastic origin, in units of its own elastic line, at even
 * steps. Friction, which tilts that line, and the place where the recording starts to count drop out; what is left is where
 * the torque leaves the line, and by how much.
 *
 * <pre>
 * e(x) = (T(x) - T prevailing) / torque rate     deg;   on the elastic line e(x) = x
 * </pre>
 *
 * Steps run from a third of the turn aimed at before the origin up to the stop. Source: common practice; the steps are ours.
 */
public final class Shape {
    /** How many steps the turn aimed at has. */
    public static final int STEPS_A_TURN = 72;

    private static final int STEPS_BEFORE = STEPS_A_TURN / 3;
    /** A curve is followed for three times the turn aimed at. */
    private static final int MOST_STEPS = STEPS_BEFORE + 3 * STEPS_A_TURN;

    private static final String NO_ORIGIN = "no elastic origin";

    private final double stepDeg;
    private final double prevailingNm;
    private final double rateNmPerDeg;
    /** NaN where it was not found, which no angle passes; so is the onset. */
    private final double snugDeg;

    private final double onsetDeg;
    private final float[] equivalentDeg;

    private Shape(double stepDeg, double prevailingNm, Landmarks landmarks, float[] equivalentDeg) {
        this.stepDeg = stepDeg;
        this.prevailingNm = prevailingNm;
        this.rateNmPerDeg = landmarks.rateNmPerDeg();
        this.snugDeg = landmarks.snugDeg() - landmarks.originDeg();
        this.onsetDeg = landmarks.onsetDeg() - landmarks.originDeg();
        this.equivalentDeg = equivalentDeg;
    }

    /**
     * Reads the shape of a curve.
     *
     * @param curve the samples
     * @param signature what the curve says
     * @param method turn and snug torque aimed at
     * @return the shape; missing where there is no elastic line, or the recording ends before its origin
     */
    public static Answer<Shape> of(Curve curve, Signature signature, TighteningMethod method) {
        var origin = signature.elastic().originDeg();
        return origin.isFound()
                ? of(curve, Landmarks.of(signature), method)
                : Answer.missing(Reason.NOT_ASKED, NO_ORIGIN + ": " + origin.whyMissing());
    }

    /**
     * Reads the shape of a curve.
     *
     * @param curve the samples
     * @param landmarks what it is laid over others by
     * @param method turn and snug torque aimed at
     * @return the shape; missing where there is no elastic line, or the recording ends before its origin
     */
    public static Answer<Shape> of(Curve curve, Landmarks landmarks, TighteningMethod method) {
        if (Double.isNaN(landmarks.originDeg()) || !(landmarks.rateNmPerDeg() > 0)) {
            return Answer.missing(Reason.NOT_ASKED, NO_ORIGIN);
        }
        double stepDeg = method.turnDeg() / STEPS_A_TURN;
        var torqueNm =
                TorqueOverTurn.at(curve, method, landmarks.originDeg() - STEPS_BEFORE * stepDeg, stepDeg, MOST_STEPS);
        if (torqueNm.length <= STEPS_BEFORE) {
            return Answer.missing(Reason.TOO_FEW, "the recording ends before its elastic origin");
        }
        double levelNm = Double.isNaN(landmarks.prevailingNm()) ? 0 : landmarks.prevailingNm();
        var equivalentDeg = new float[torqueNm.length];
        for (int i = 0; i < equivalentDeg.length; i++) {
            equivalentDeg[i] = (float) ((torqueNm[i] - levelNm) / landmarks.rateNmPerDeg());
        }
        return Answer.of(new Shape(stepDeg, levelNm, landmarks, equivalentDeg));
    }

    /** {@return how many steps it has, up to the stop} */
    public int size() {
        return equivalentDeg.length;
    }

    /** {@return distance of two steps, deg} */
    public double stepDeg() {
        return stepDeg;
    }

    /**
     * {@return the angle of a step past the elastic origin, deg}
     *
     * @param step the step, from 0
     */
    public double angleDeg(int step) {
        return (step - STEPS_BEFORE) * stepDeg;
    }

    /**
     * {@return the torque at a step as the turn along the own elastic line that makes it, deg; NaN where the recording has
     * not begun}
     *
     * @param step the step, from 0
     */
    public double equivalentDeg(int step) {
        return equivalentDeg[step];
    }

    /**
     * {@return the torque that a turn along the own elastic line makes, N·m}
     *
     * @param turnDeg the turn past the elastic origin, deg
     */
    public double torqueNm(double turnDeg) {
        return prevailingNm + rateNmPerDeg * turnDeg;
    }

    /**
     * {@return the part of the curve that a step lies in}
     *
     * @param step the step, from 0
     */
    public Zone zone(int step) {
        double deg = angleDeg(step);
        if (step >= size() - 2) {
            return Zone.END;
        }
        if (deg >= onsetDeg) {
            return Zone.PAST_ONSET;
        }
        if (deg < 0) {
            return Zone.RUN_DOWN;
        }
        return deg < snugDeg ? Zone.SNUG : Zone.ELASTIC;
    }
}
