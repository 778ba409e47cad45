package org.tautlog.joint.tightening;

import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.Require;
import org.tautlog.joint.TorsionRule;

/**
 * One tightening to work out: the joint, and how it is tightened.
 *
 * @param joint bolt, layers and friction
 * @param snugTorqueNm the snug torque, prevailing torque included, N·m; above the prevailing torque
 * @param turnDeg the turn past the snug point, deg; at least 0
 * @param prevailingTorqueNm the torque of free turning, N·m; at least 0
 * @param seating how the parts draw together
 * @param torsionRule when a twisted and stretched section counts as yielding
 * @param knee how stress goes on past the elastic line
 */
public record Tightening(
        BoltedJoint joint,
        double snugTorqueNm,
        double turnDeg,
        double prevailingTorqueNm,
        Seating seating,
        TorsionRule torsionRule,
        Knee knee) {
    /** Checks each value. */
    public Tightening {
        Require.present("joint", joint);
        Require.atLeast("prevailingTorqueNm", prevailingTorqueNm, 0, "N·m");
        Require.above("snugTorqueNm", snugTorqueNm, prevailingTorqueNm, "N·m (prevailingTorqueNm)");
        Require.atLeast("turnDeg", turnDeg, 0, "deg");
        Require.present("seating", seating);
        Require.present("torsionRule", torsionRule);
        Require.present("knee", knee);
    }

    /**
     * A tightening of parts that are seated at once, without prevailing torque, with a round knee by the
     * fully plastic rule.
     *
     * @param joint bolt, layers and friction
     * @param snugTorqueNm N·m; above 0
     * @param turnDeg deg; at least 0
     * @return the tightening
     */
    public static Tightening of(BoltedJoint joint, double snugTorqueNm, double turnDeg) {
        return new Tightening(joint, snugTorqueNm, turnDeg, 0, Seating.none(), TorsionRule.FULLY_PLASTIC, Knee.ROUND);
    }
}
