package org.tautlog.line;

/**
 * What one tool does with one bolt: the released method, and what comes between.
 *
 * @param snugNm torque shown at which the snug stage ends, N·m
 * @param turnDeg turn past the snug point at which the tool stops, deg
 * @param slipAtTurnDeg turn past the snug point at which the socket slips; infinite where it does not
 * @param slipDeg how far it slips, deg
 * @param lastTurnDeg turn past the snug point at which the recording breaks off; infinite where it does not
 * @param stickShare how far the torque of a chattering bolt lies above its smooth torque where it breaks loose, and below
 *     where it sticks again, a share; 0 for a bolt that turns smoothly
 * @param pauses whether the tool rests at the snug torque, or turns on at once
 * @param speedSwing how far the speed of tightening swings about its mean, a share
 */
record Programme(
        double snugNm,
        double turnDeg,
        double slipAtTurnDeg,
        double slipDeg,
        double lastTurnDeg,
        double stickShare,
        boolean pauses,
        double speedSwing) {
    private static final double NEVER = Double.POSITIVE_INFINITY;

    static Programme released() {
        return new Programme(
                FenwaterEngine.METHOD.snugTorqueNm(), FenwaterEngine.METHOD.turnDeg(), NEVER, 0, NEVER, 0, true, 0);
    }

    Programme withTurnDeg(double other) {
        return new Programme(snugNm, other, slipAtTurnDeg, slipDeg, lastTurnDeg, stickShare, pauses, speedSwing);
    }

    Programme withSlip(double atTurnDeg, double byDeg) {
        return new Programme(snugNm, turnDeg, atTurnDeg, byDeg, lastTurnDeg, stickShare, pauses, speedSwing);
    }

    Programme recordedTo(double lastDeg) {
        return new Programme(snugNm, turnDeg, slipAtTurnDeg, slipDeg, lastDeg, stickShare, pauses, speedSwing);
    }

    Programme withStick(double share) {
        return new Programme(snugNm, turnDeg, slipAtTurnDeg, slipDeg, lastTurnDeg, share, pauses, speedSwing);
    }

    Programme withoutPause() {
        return new Programme(snugNm, turnDeg, slipAtTurnDeg, slipDeg, lastTurnDeg, stickShare, false, speedSwing);
    }

    Programme withSpeedSwing(double share) {
        return new Programme(snugNm, turnDeg, slipAtTurnDeg, slipDeg, lastTurnDeg, stickShare, pauses, share);
    }

    /** Speed of tightening over its mean, at an angle of the tool. */
    double speedShare(double toolDeg) {
        return 1 + speedSwing * Math.sin(toolDeg / 17);
    }
}
