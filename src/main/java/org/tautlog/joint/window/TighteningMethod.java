package org.tautlog.joint.window;

/**
 * The method: to a low snug torque, then on by a fixed turn.
 *
 * @param snugTorqueNm snug torque aimed at, N·m, above 0
 * @param turnDeg turn past the snug point aimed at, deg, above 0
 */
public record TighteningMethod(double snugTorqueNm, double turnDeg) {
    public TighteningMethod {
        Check.above("snugTorqueNm", snugTorqueNm, 0.0, "N·m");
        Check.above("turnDeg", turnDeg, 0.0, "deg");
    }
}
