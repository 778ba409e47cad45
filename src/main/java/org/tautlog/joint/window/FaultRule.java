package org.tautlog.joint.window;

import java.util.Objects;

/**
 * From where on the shape of a curve counts as a fault. The defaults are places to start from: common practice where
 * nothing else is said, to be tuned on the plant's own good tightenings.
 *
 * @param rundownDeg turn from the first sample to the snug point, deg; open unless every recording starts at the same
 *     place. A missing layer of thickness t lengthens it by 360 t / pitch
 * @param alreadyTightDeg turn from the first sample to the snug point below which the bolt may have been tight before,
 *     deg, 0 to 360; common practice 5 to 30
 * @param rundownTorqueShare torque of the free turning over the snug torque from which on a thread may be crossed, 0 to 1
 * @param seatingDeg longest seating zone that is not soft, deg, 0 to 1000
 * @param stickSlipShare peak-to-peak saw of the torque over the torque itself, 0 to 1; common practice 0.10
 * @param torqueDropShare sudden fall of the torque over the torque before it, 0 to 1
 * @param angleSlipDeg turn without the torque that belongs to it, deg, 0 to 360
 * @param angleJumpDeg jump of the recorded angle between two samples beyond the usual step, deg, 0 to 360
 * @param springBackDeg greatest spring-back of the drive at the stop, deg, 0 to 90
 * @param fallShare fall of the torque from its peak to the stop over the peak, from which on a thread may be stripping,
 *     0 to 1; common practice 0.10 to 0.15 for a breaking bolt
 * @param strippedTorqueShare torque over the usual onset torque below which a standing torque is a thread that gives way,
 *     0 to 1; common practice 0.60
 * @param causeShare how far a torque must miss its usual value to be a cue of a cause, 0 to 1
 * @param saturatedSamples samples in a row at the highest torque, to a digit, that show a sensor at its limit where no level
 *     below holds a third as many, at least 3
 * @param leastTurnSamples least samples between the snug point and the stop, at least 5
 */
public record FaultRule(
        Band rundownDeg,
        double alreadyTightDeg,
        double rundownTorqueShare,
        double seatingDeg,
        double stickSlipShare,
        double torqueDropShare,
        double angleSlipDeg,
        double angleJumpDeg,
        double springBackDeg,
        double fallShare,
        double strippedTorqueShare,
        double causeShare,
        int saturatedSamples,
        int leastTurnSamples) {
    public FaultRule {
        Objects.requireNonNull(rundownDeg, "rundownDeg");
        Check.within("alreadyTightDeg", alreadyTightDeg, 0, 360, "deg");
        Check.within("rundownTorqueShare", rundownTorqueShare, 0, 1, "a share of the snug torque");
        Check.within("seatingDeg", seatingDeg, 0, 1000, "deg");
        Check.within("stickSlipShare", stickSlipShare, 0, 1, "a share of the torque");
        Check.within("torqueDropShare", torqueDropShare, 0, 1, "a share of the torque");
        Check.within("angleSlipDeg", angleSlipDeg, 0, 360, "deg");
        Check.within("angleJumpDeg", angleJumpDeg, 0, 360, "deg");
        Check.within("springBackDeg", springBackDeg, 0, 90, "deg");
        Check.within("fallShare", fallShare, 0, 1, "a share of the peak torque");
        Check.within("strippedTorqueShare", strippedTorqueShare, 0, 1, "a share of the usual onset torque");
        Check.within("causeShare", causeShare, 0, 1, "a share");
        Check.within("saturatedSamples", saturatedSamples, 3, 100_000, "samples");
        Check.within("leastTurnSamples", leastTurnSamples, 5, 100_000, "samples");
    }

    /** {@return the rules used where a specification says nothing} */
    public static FaultRule withDefaults() {
        return new FaultRule(Band.open(), 30, 0.35, 120, 0.10, 0.10, 5, 5, 15, 0.07, 0.60, 0.06, 8, 20);
    }

    /**
     * The same rules with limits for the turn from the first sample to the snug point.
     *
     * @param limits the limits, deg
     * @return the changed rules
     */
    public FaultRule withRundownDeg(Band limits) {
        return new FaultRule(
                limits,
                alreadyTightDeg,
                rundownTorqueShare,
                seatingDeg,
                stickSlipShare,
                torqueDropShare,
                angleSlipDeg,
                angleJumpDeg,
                springBackDeg,
                fallShare,
                strippedTorqueShare,
                causeShare,
                saturatedSamples,
                leastTurnSamples);
    }
}
