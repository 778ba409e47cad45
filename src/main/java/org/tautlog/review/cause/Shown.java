package org.tautlog.review.cause;

import java.util.EnumMap;
import java.util.Map;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.Friction;
import org.tautlog.joint.Layer;
import org.tautlog.joint.LayerMaterial;
import org.tautlog.joint.TorsionRule;
import org.tautlog.joint.tightening.Knee;
import org.tautlog.joint.tightening.Seating;
import org.tautlog.joint.tightening.Tightening;
import org.tautlog.joint.tightening.TighteningCurve;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.joint.window.StatedJoint;
import org.tautlog.review.stream.Cue;

/**
 * One tightening of the stated joint as a tool shows it: what the model says of head and bolt, seen through the tool's torque
 * scale g, angle scale a and drive of compliance c.
 *
 * <pre>
 * torque shown = g T      angle shown = a (theta + c T)      N·m, deg
 * snug stage ends at g T = snug torque + what it is off by; the tool counts its turn from there, the reader from where the
 * curve crosses the snug torque itself
 * rate shown = g / (a (1/rate + c))                          N·m/deg
 *
 * T, theta true torque and angle of the head
 * </pre>
 *
 * Source: two springs in series, elementary; the curve {@link TighteningCurve}.
 */
record Shown(
        BoltedJoint joint,
        double prevailingNm,
        double torqueScale,
        double angleScale,
        double driveDegPerNm,
        double readSnugNm,
        double snugOffNm,
        double turnDeg,
        double freeTurnDeg) {
    private static final int HALVINGS = 60;
    private static final double HALF_SPAN_DEG = 1;

    /** The specification's own tightening; the rundown of its curves is the usual one of the export. */
    static Shown usual(JointSpecification specification, StatedJoint stated, double rundownDeg) {
        double k = stated.driveNmPerDeg().orElse(Double.POSITIVE_INFINITY);
        var method = specification.method();
        var seated = new Shown(
                stated.joint(),
                stated.prevailingTorqueNm(),
                1,
                1,
                1 / k,
                method.snugTorqueNm(),
                0,
                method.turnDeg(),
                0);
        return seated.withFreeTurn(Math.max(0, rundownDeg - seated.cue(Cue.RUNDOWN)));
    }

    /** The same tightening with one cause there in some size. */
    Shown with(Cause cause, double size) {
        return switch (cause) {
            case FRICTION ->
                withJoint(joint.withFriction(new Friction(
                        joint.friction().threadMu() * (1 + size),
                        joint.friction().underHeadMu() * (1 + size))));
            case BOLT_STRENGTH -> withJoint(stronger(1 + size));
            case JOINT_STIFFNESS -> withJoint(stiffer(size));
            case TORQUE_SCALE -> tool(torqueScale * (1 + size), angleScale, driveDegPerNm, snugOffNm, turnDeg);
            case ANGLE_SCALE -> tool(torqueScale, angleScale * (1 + size), driveDegPerNm, snugOffNm, turnDeg);
            case WIND_UP -> tool(torqueScale, angleScale, driveDegPerNm * (1 + size), snugOffNm, turnDeg);
            case SNUG_TORQUE -> tool(torqueScale, angleScale, driveDegPerNm, snugOffNm + size, turnDeg);
            case TURN -> tool(torqueScale, angleScale, driveDegPerNm, snugOffNm, turnDeg + size);
        };
    }

    double cue(Cue cue) {
        Double there = cues().get(cue);
        return there == null ? Double.NaN : there;
    }

    Map<Cue, Double> cues() {
        double trueSnugNm = (readSnugNm + snugOffNm) / torqueScale;
        var curve = TighteningCurve.of(new Tightening(
                joint, trueSnugNm, 0, prevailingNm, Seating.none(), TorsionRule.FULLY_PLASTIC, Knee.ROUND));
        double stopDeg = stopDeg(curve, trueSnugNm);
        double stopNm = curve.torqueNm(stopDeg);
        double readNm = readSnugNm / torqueScale;
        double readDeg = curve.headAngleDeg(curve.preloadNAtTorque(readNm));
        double elastic = 1 / curve.torqueRateNmPerDeg() + driveDegPerNm;
        double atStop =
                2 * HALF_SPAN_DEG / (curve.torqueNm(stopDeg + HALF_SPAN_DEG) - curve.torqueNm(stopDeg - HALF_SPAN_DEG))
                        + driveDegPerNm;
        double onsetNm = curve.onsetTorqueNm();
        var cues = new EnumMap<Cue, Double>(Cue.class);
        cues.put(Cue.PREVAILING_TORQUE, torqueScale * prevailingNm);
        cues.put(Cue.RUNDOWN, angleScale * (freeTurnDeg + readDeg + readNm * driveDegPerNm));
        cues.put(Cue.SNUG_TORQUE, readSnugNm + snugOffNm);
        cues.put(Cue.TORQUE_RATE, torqueScale / angleScale / elastic);
        cues.put(Cue.TURN, angleScale * (stopDeg - readDeg + (stopNm - readNm) * driveDegPerNm));
        cues.put(Cue.FINAL_TORQUE, torqueScale * stopNm);
        cues.put(Cue.END_GRADIENT, elastic / atStop);
        cues.put(Cue.SPRING_BACK, angleScale * stopNm * driveDegPerNm);
        cues.put(Cue.ONSET_TORQUE, torqueScale * onsetNm);
        cues.put(
                Cue.ONSET_ANGLE,
                angleScale
                        * (curve.onsetAngleDeg()
                                - curve.elasticOriginDeg()
                                + (onsetNm - prevailingNm) * driveDegPerNm));
        return cues;
    }

    /** The head's angle at which the tool has counted the turn. */
    private double stopDeg(TighteningCurve curve, double trueSnugNm) {
        double low = curve.snugAngleDeg();
        double high = low + turnDeg / angleScale;
        double goalDeg = high + trueSnugNm * driveDegPerNm;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (middle + curve.torqueNm(middle) * driveDegPerNm < goalDeg) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private Shown withFreeTurn(double deg) {
        return new Shown(
                joint, prevailingNm, torqueScale, angleScale, driveDegPerNm, readSnugNm, snugOffNm, turnDeg, deg);
    }

    private Shown withJoint(BoltedJoint other) {
        return new Shown(
                other,
                prevailingNm,
                torqueScale,
                angleScale,
                driveDegPerNm,
                readSnugNm,
                snugOffNm,
                turnDeg,
                freeTurnDeg);
    }

    private Shown tool(double gain, double angle, double drive, double snugOff, double turn) {
        return new Shown(joint, prevailingNm, gain, angle, drive, readSnugNm, snugOff, turn, freeTurnDeg);
    }

    private BoltedJoint stronger(double times) {
        var own = joint.bolt().material();
        var other = own.withYieldStrengthMPa(own.yieldStrengthMPa() * times);
        return new BoltedJoint(joint.bolt().withMaterial(other), joint.layers(), joint.friction());
    }

    /** Bolt and layers together give less by a share: taken off the layers, as a part of the stack would do it. */
    private BoltedJoint stiffer(double share) {
        double layers = joint.clampedResilienceMmPerN();
        double times = layers / (layers - share * joint.resilienceMmPerN());
        var others = joint.layers().stream()
                .map(layer -> new Layer(
                        layer.name(),
                        layer.thicknessMm(),
                        new LayerMaterial(
                                layer.material().name(),
                                layer.material().youngsModulusMPa() * times,
                                layer.material().expansionPerK()),
                        layer.shape()))
                .toList();
        return new BoltedJoint(joint.bolt(), others, joint.friction());
    }
}
