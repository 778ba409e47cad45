package org.tautlog.line;

import java.util.Arrays;
import org.tautlog.joint.Bolt;
import org.tautlog.joint.BoltSegment;
import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.TorqueForm;
import org.tautlog.joint.TorquePreload;
import org.tautlog.joint.tightening.Seating;
import org.tautlog.joint.tightening.WindUp;

/**
 * Preload over the angle that the head has turned since the parts first touched, with a knee as round as a real bolt's.
 *
 * <pre>
 * theta(F) = 360/P (F (delta_S + delta_P) + s(F) + u_p(F)) + F phi + phi_p(F)      deg
 *
 * eps_p = 0.002 (sigma_v / Re)^40                plastic strain at the equivalent stress sigma_v
 * sigma_v = sqrt(sigma^2 + 3 tau^2) = c sigma    tension and torsion grow together while the bolt is turned
 * u_p   = sum of l eps_p / c                     plastic stretch, mm
 * phi_p = sum of l (3/d) (3 tau/sigma) eps_p / c plastic twist, rad
 *
 * s seating closure, mm; phi elastic twist of the shank, deg/N; l, d length and strength diameter of a section, mm
 * </pre>
 *
 * <p>Source: the round knee by Ramberg and Osgood (NACA Technical Note 902, 1943), anchored at the 0.2 % proof stress; its
 * exponent is our choice for a quenched and tempered bolt steel. Shares of stretch and twist by the flow rule of the
 * distortion-energy criterion, the twist so that torque times twist is the work done in a section that shears plastically.
 */
final class LoadCurve {
    private static final double PROOF_STRAIN = 0.002;
    private static final int NODES = 800;
    /** Equivalent stress over yield strength up to which the curve is worked out; about 3 % plastic strain. */
    private static final double LAST_STRESS_RATIO = 1.07;
    /** Past the toe the seating hardly counts, and well short of the knee nothing is plastic. */
    private static final double ELASTIC_STRESS_RATIO = 0.6;

    private final double stepN;
    private final double[] angleDeg = new double[NODES];
    private final double elasticDegPerN;
    private final int onsetNode;

    LoadCurve(BoltedJoint joint, Seating seating) {
        var bolt = joint.bolt();
        double leverMm =
                TorquePreload.threadLeverMm(bolt.thread(), joint.friction().threadMu(), TorqueForm.ADDED_TERMS);
        double degPerMm = 360 / bolt.thread().pitchMm();
        elasticDegPerN = degPerMm * joint.resilienceMmPerN() + WindUp.shankDegPerNm(bolt) * leverMm / 1000;
        var sections = bolt.segments().stream()
                .map(segment -> Section.of(segment, bolt, leverMm, degPerMm))
                .toList();
        double yieldN = sections.stream().mapToDouble(Section::yieldN).min().orElseThrow();
        stepN = LAST_STRESS_RATIO * yieldN / (NODES - 1);
        for (int i = 0; i < NODES; i++) {
            double loadN = i * stepN;
            double deg = loadN * elasticDegPerN + degPerMm * seating.closedMm(loadN);
            for (var section : sections) {
                deg += section.plasticDeg(loadN);
            }
            angleDeg[i] = deg;
        }
        onsetNode = firstNodeOfHalfGradient(yieldN);
    }

    private int firstNodeOfHalfGradient(double yieldN) {
        int node = (int) (ELASTIC_STRESS_RATIO * yieldN / stepN);
        while (node < NODES - 2 && gradientRatio(node) > 0.5) {
            node++;
        }
        return node;
    }

    private double gradientRatio(int node) {
        return elasticDegPerN * stepN / (angleDeg[node + 1] - angleDeg[node]);
    }

    /** Preload at an angle past first contact; 0 before it. */
    double loadN(double deg) {
        if (deg <= 0) {
            return 0;
        }
        if (deg >= angleDeg[NODES - 1]) {
            return stepN * (NODES - 1);
        }
        int low = Arrays.binarySearch(angleDeg, deg);
        low = low < 0 ? -low - 2 : Math.min(low, NODES - 2);
        return stepN * (low + (deg - angleDeg[low]) / (angleDeg[low + 1] - angleDeg[low]));
    }

    /** Angle past first contact at a preload within the curve. */
    double angleDeg(double loadN) {
        double place = Math.min(Math.max(loadN / stepN, 0), NODES - 1.000001);
        int node = (int) place;
        return angleDeg[node] + (place - node) * (angleDeg[node + 1] - angleDeg[node]);
    }

    /** Angle that each newton takes where all is seated and elastic. */
    double elasticDegPerN() {
        return elasticDegPerN;
    }

    /** Preload from which on the gradient is at most half of the elastic one. */
    double onsetN() {
        return onsetNode * stepN;
    }

    /** One length of the bolt that yields as one. */
    private record Section(double yieldN, double plasticDegAtYield) {
        static Section of(BoltSegment segment, Bolt bolt, double leverMm, double degPerMm) {
            double diameterMm =
                    segment.form() == BoltSegment.Form.THREAD ? bolt.thread().stressDiameterMm() : segment.diameterMm();
            double shearShare = leverMm * 3 / diameterMm;
            double combined = Math.sqrt(1 + 3 * shearShare * shearShare);
            double areaMm2 = Math.PI / 4 * diameterMm * diameterMm;
            double stretchMm = PROOF_STRAIN * segment.lengthMm() / combined;
            double twistDeg = Math.toDegrees(stretchMm * 3 / diameterMm * 3 * shearShare);
            return new Section(
                    bolt.material().yieldStrengthMPa() * areaMm2 / combined, stretchMm * degPerMm + twistDeg);
        }

        double plasticDeg(double loadN) {
            double ratio = loadN / yieldN;
            double to2 = ratio * ratio;
            double to8 = to2 * to2 * to2 * to2;
            double to16 = to8 * to8;
            return plasticDegAtYield * to16 * to16 * to8;
        }
    }
}
