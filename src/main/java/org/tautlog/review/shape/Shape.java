package org.tautlog.review.shape;

import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.signature.Feature;
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

    private final double stepDeg;
    private final double prevailingNm;
    private final double rateNmPerDeg;
    private final double snugDeg;
    private final double onsetDeg;
    private final float[] equivalentDeg;

    private Shape(double stepDeg, Signature signature, float[] equivalentDeg) {
        double originDeg = signature.elastic().originDeg().number();
        this.stepDeg = stepDeg;
        this.prevailingNm = signature.prevailingTorqueNm().number();
        this.rateNmPerDeg = signature.elastic().torqueRateNmPerDeg().number();
        this.snugDeg = past(originDeg, signature.snug().angleDeg());
        this.onsetDeg = past(originDeg, signature.onset().angleDeg());
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
        double rateNmPerDeg = signature.elastic().torqueRateNmPerDeg().number();
        if (!origin.isFound() || !(rateNmPerDeg > 0)) {
            return Answer.missing(
                    Reason.NOT_ASKED, "no elastic origin" + (origin.isFound() ? "" : ": " + origin.whyMissing()));
        }
        double stepDeg = method.turnDeg() / STEPS_A_TURN;
        var torqueNm = TorqueOverTurn.at(curve, method, origin.number() - STEPS_BEFORE * stepDeg, stepDeg, MOST_STEPS);
        if (torqueNm.length <= STEPS_BEFORE) {
            return Answer.missing(Reason.TOO_FEW, "the recording ends before its elastic origin");
        }
        double levelNm = signature.prevailingTorqueNm().number();
        var equivalentDeg = new float[torqueNm.length];
        for (int i = 0; i < equivalentDeg.length; i++) {
            equivalentDeg[i] = (float) ((torqueNm[i] - levelNm) / rateNmPerDeg);
        }
        return Answer.of(new Shape(stepDeg, signature, equivalentDeg));
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

    /** An angle that was not found is never passed. */
    private static double past(double originDeg, Feature angle) {
        return angle.isFound() ? angle.number() - originDeg : Double.NaN;
    }
}
