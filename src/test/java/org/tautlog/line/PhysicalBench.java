package org.tautlog.line;

import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.Friction;
import org.tautlog.joint.TorqueForm;
import org.tautlog.joint.TorquePreload;
import org.tautlog.joint.tightening.Seating;
import org.tautlog.trace.Curve;

/**
 * One simulated tightening under conditions of the caller's choice, with the truth worked out from its physics: the line's
 * own bolt and tool, never a fit to the recorded samples.
 */
public final class PhysicalBench {
    private static final double CONTACT_DEG = 720;
    private static final double HIGHEST_YIELD_MPA = 4_000;
    private static final int HALVINGS = 40;
    private static final int STEPS = 4_000;
    private static final double TIGHTENING_DEG_PER_S = 180;
    private static final double LONGEST_STEP_S = 0.001;

    /** Everything that can be set; the values are those of an ordinary tightening. */
    public double prevailingNm = 1.6;

    public double threadMu = 0.11;
    public double headMu = 0.11;
    public double columnShare = 1;
    public double seatingMm = 0.04;
    public double seatingLoadN = 2_000;
    public double driveNmPerDeg = 25;
    public double turnDeg = 360;
    /** Wanted angle of the yield onset past the snug point; the bolt gets the yield strength that brings it about. */
    public double onsetPastSnugDeg = 330;

    /** Noise over the final torque. */
    public double noiseShare = 0.005;

    public double torqueStepNm = 0.01;
    /** Samples each 1/kiloHertz milliseconds, or by angle where 0. */
    public double kiloHertz = 0;

    public double angleStepDeg = 0.5;
    public double stickShare = 0;
    public boolean pause = true;
    /** Swing of the speed of tightening about its mean, a share. */
    public double speedSwing = 0;

    public RunOut runOut = RunOut.USUAL;
    public long seed = 1;

    /** How the torque of the free turning swings. */
    public enum RunOut {
        /** As on the line: two swings, the same under any load. */
        USUAL {
            @Override
            FreeTurning of(double meanNm, double phaseDeg) {
                return FreeTurning.swinging(meanNm, phaseDeg);
            }
        },
        /** Gone as the faces are pressed together, by a factor e each 8 kN. */
        FADES_UNDER_LOAD {
            @Override
            FreeTurning of(double meanNm, double phaseDeg) {
                var usual = FreeTurning.swinging(meanNm, phaseDeg);
                return (deg, loadN) -> meanNm + (usual.torqueNm(deg, loadN) - meanNm) * Math.exp(-loadN / 8_000);
            }
        },
        /** A third swing of 4 %, at 1.7 a turn. */
        THIRD_SWING {
            @Override
            FreeTurning of(double meanNm, double phaseDeg) {
                var usual = FreeTurning.swinging(meanNm, phaseDeg);
                return (deg, loadN) ->
                        usual.torqueNm(deg, loadN) + 0.04 * meanNm * Math.cos(1.7 * Math.toRadians(deg - 2 * phaseDeg));
            }
        },
        /** The swings come up to 57 deg early or late, changing over some seven turns. */
        PHASE_WANDERS {
            @Override
            FreeTurning of(double meanNm, double phaseDeg) {
                var usual = FreeTurning.swinging(meanNm, phaseDeg);
                return (deg, loadN) -> usual.torqueNm(deg + 57 * Math.sin(deg / 400), loadN);
            }
        };

        abstract FreeTurning of(double meanNm, double phaseDeg);
    }

    /**
     * What was recorded, and what is true of it on the recording's own axis.
     *
     * @param curve the samples
     * @param snugDeg angle counted by the tool where the true torque reached the snug torque, deg
     * @param rateNmPerDeg slope of the elastic zone, parts seated, drive's twist included, N·m/deg
     * @param originDeg where that zone's line holds no clamp load, deg
     * @param onsetDeg where the gradient is half of that slope, deg, whether the tool got there or not
     * @param onsetNm torque there, N·m
     * @param stopDeg angle where the tool stopped, deg
     * @param loadKN clamp load there, kN
     */
    public record Known(
            Curve curve,
            double snugDeg,
            double rateNmPerDeg,
            double originDeg,
            double onsetDeg,
            double onsetNm,
            double stopDeg,
            double loadKN) {}

    /** Tightens and tells. */
    public Known run() {
        var joint = jointOf(yieldForOnset());
        var quiet = tighten(joint, 0);
        double finalNm = quiet.bolt.torqueNm(quiet.done.stopHeadDeg());
        return known(joint, tighten(joint, noiseShare * finalNm));
    }

    private BoltedJoint jointOf(double yieldMPa) {
        var drawn = FenwaterEngine.joint(FenwaterEngine.WASHER_MM, columnShare);
        var bolt = drawn.bolt().withMaterial(drawn.bolt().material().withYieldStrengthMPa(yieldMPa));
        return new BoltedJoint(bolt, drawn.layers(), new Friction(threadMu, headMu));
    }

    private Seating seating() {
        return new Seating(seatingMm, seatingLoadN);
    }

    private double yieldForOnset() {
        double low = 0;
        double high = HIGHEST_YIELD_MPA;
        for (int i = 0; i < HALVINGS && high - low > 0.5; i++) {
            double middle = (low + high) / 2;
            double past = onset(jointOf(middle))[0] - snugHeadDeg(jointOf(HIGHEST_YIELD_MPA));
            if (past < onsetPastSnugDeg) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** Angle of the head past first contact at the snug torque, drive's twist left out. */
    private double snugHeadDeg(BoltedJoint joint) {
        double loadN = Math.max(0, (FenwaterEngine.METHOD.snugTorqueNm() - prevailingNm) / leverNmPerN(joint));
        return new LoadCurve(joint, seating()).angleDeg(loadN);
    }

    private double leverNmPerN(BoltedJoint joint) {
        return TorquePreload.leverMm(joint.bolt(), joint.friction(), TorqueForm.ADDED_TERMS) / 1000;
    }

    /** Angle of the head past first contact, and preload, where the gradient that the tool shows has halved. */
    private double[] onset(BoltedJoint joint) {
        var curve = new LoadCurve(joint, seating());
        double lever = leverNmPerN(joint);
        double elastic = curve.elasticDegPerN() / lever + 1 / driveNmPerDeg;
        double top = curve.onsetN() * 1.05;
        double step = top / STEPS;
        double loadN = Math.min(Math.max(0.6 * top, 5 * seatingLoadN), top - step);
        while (loadN < top) {
            double slowness = (curve.angleDeg(loadN + step) - curve.angleDeg(loadN - step)) / (2 * step) / lever
                    + 1 / driveNmPerDeg;
            if (slowness >= 2 * elastic) {
                break;
            }
            loadN += step;
        }
        return new double[] {curve.angleDeg(loadN), loadN};
    }

    private record Run(Setup setup, TurnedBolt bolt, Tool.Done done, double relaxedDeg) {}

    private Run tighten(BoltedJoint joint, double noiseNm) {
        var random = Seeds.stream(seed, Seeds.Use.TIGHTENING);
        var setup = new Setup(
                joint,
                seating(),
                CONTACT_DEG,
                runOut.of(prevailingNm, 360 * random.nextDouble()),
                Obstacle.none(),
                Double.POSITIVE_INFINITY);
        var bolt = new TurnedBolt(setup);
        double before = bolt.onsetHeadDeg();
        var spindle = new Spindle("S40", "1", 1, 0, noiseNm, driveNmPerDeg, sampling());
        var programme = programme();
        var done = Tool.tighten(bolt, programme, spindle, random);
        return new Run(setup, bolt, done, bolt.onsetHeadDeg() - before);
    }

    private Programme programme() {
        var programme =
                Programme.released().withTurnDeg(turnDeg).withStick(stickShare).withSpeedSwing(speedSwing);
        return pause ? programme : programme.withoutPause();
    }

    /** Exact angle of the tool at which the torque, run-out and all, is the snug torque: the tool itself stops a step later. */
    private double snugToolDeg(Setup setup) {
        var fresh = new TurnedBolt(setup);
        double low = CONTACT_DEG - 30;
        double high = CONTACT_DEG + 400;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (fresh.torqueNm(middle) < FenwaterEngine.METHOD.snugTorqueNm()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double toolDeg = high + FenwaterEngine.METHOD.snugTorqueNm() / driveNmPerDeg;
        return toolDeg + lagDeg(toolDeg);
    }

    /** The simulated torque follows the angle by one step of the simulation. */
    private double lagDeg(double toolDeg) {
        return TIGHTENING_DEG_PER_S
                * programme().speedShare(toolDeg)
                * sampling().noLongerThan(LONGEST_STEP_S);
    }

    private Sampling sampling() {
        return kiloHertz > 0
                ? new Sampling(Sampling.By.TIME, 0.001 / kiloHertz, torqueStepNm)
                : new Sampling(Sampling.By.ANGLE, angleStepDeg, torqueStepNm);
    }

    private Known known(BoltedJoint joint, Run run) {
        var curve = new LoadCurve(joint, seating());
        double lever = leverNmPerN(joint);
        double rate = 1 / (curve.elasticDegPerN() / lever + 1 / driveNmPerDeg);
        double shiftDeg = CONTACT_DEG + run.relaxedDeg;
        double closedDeg = 360 / joint.bolt().thread().pitchMm() * seating().closedMm(1e9);
        var onset = onset(joint);
        double onsetNm = onset[1] * lever + prevailingNm;
        double stopHeadDeg = run.done.stopHeadDeg();
        double originDeg = shiftDeg + closedDeg + prevailingNm / driveNmPerDeg;
        double onsetDeg = shiftDeg + onset[0] + onsetNm / driveNmPerDeg;
        return new Known(
                run.done.curve(),
                snugToolDeg(run.setup),
                rate,
                originDeg + lagDeg(originDeg),
                onsetDeg + lagDeg(onsetDeg),
                onsetNm,
                stopHeadDeg + run.bolt.torqueNm(stopHeadDeg) / driveNmPerDeg,
                run.bolt.loadN(stopHeadDeg) / 1000);
    }
}
