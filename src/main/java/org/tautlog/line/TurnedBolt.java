package org.tautlog.line;

import org.tautlog.joint.TorqueForm;
import org.tautlog.joint.TorquePreload;

/** One bolt while its head is turned: preload and torque over the head's angle. It remembers what it has lost on the way. */
final class TurnedBolt {
    /** A stripping thread loses half of its load over this angle, and never all of it. */
    private static final double STRIP_HALF_DEG = 150;

    private static final double STRIP_REST = 0.35;
    private static final double STRIP_SAW_DEG = 24;
    private static final double STRIP_SAW_SHARE = 0.05;

    private final Setup setup;
    private final LoadCurve curve;
    private final double leverNmPerN;
    private final double stripDeg;
    private double relaxedDeg;

    TurnedBolt(Setup setup) {
        this.setup = setup;
        curve = new LoadCurve(setup.joint(), setup.seating());
        leverNmPerN =
                TorquePreload.leverMm(setup.joint().bolt(), setup.joint().friction(), TorqueForm.ADDED_TERMS) / 1000;
        stripDeg =
                setup.stripN() == Double.POSITIVE_INFINITY ? Double.POSITIVE_INFINITY : curve.angleDeg(setup.stripN());
    }

    double loadN(double headDeg) {
        double deg = headDeg - setup.contactDeg() - relaxedDeg;
        if (deg <= stripDeg) {
            return curve.loadN(deg);
        }
        double past = deg - stripDeg;
        double left = STRIP_REST + (1 - STRIP_REST) / (1 + past / STRIP_HALF_DEG);
        double saw = STRIP_SAW_SHARE * (past % STRIP_SAW_DEG) / STRIP_SAW_DEG;
        return setup.stripN() * (left - saw);
    }

    double torqueNm(double headDeg) {
        double loadN = loadN(headDeg);
        return loadN * leverNmPerN
                + setup.freeTurning().torqueNm(headDeg, loadN)
                + setup.obstacle().torqueNm(headDeg);
    }

    /** Where on the way up the gradient has fallen to half of the elastic one, as an angle of the head. */
    double onsetHeadDeg() {
        return setup.contactDeg() + relaxedDeg + curve.angleDeg(curve.onsetN());
    }

    /** Rough spots level out under a load that stands still: takes away a share of the preload. */
    void relax(double headDeg, double share) {
        relaxedDeg += loadN(headDeg) * share * curve.elasticDegPerN();
    }
}
