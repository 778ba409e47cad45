package org.tautlog.line;

import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.tightening.Seating;

/**
 * One bolt as it stands before the tool starts, with all that is its own.
 *
 * @param joint the joint with this bolt's strength and friction
 * @param seating how its parts draw together
 * @param contactDeg how far the head turns before the parts touch, deg; below 0 where the bolt is tight already
 * @param prevailingNm torque of the free turning, N·m
 * @param ripplePhaseDeg where in a turn that torque is highest, deg
 * @param obstacle what the nut meets in its thread
 * @param stripN preload at which the nut thread gives way, N; infinite for a sound one
 */
record Setup(
        BoltedJoint joint,
        Seating seating,
        double contactDeg,
        double prevailingNm,
        double ripplePhaseDeg,
        Obstacle obstacle,
        double stripN) {
    Setup withJoint(BoltedJoint other) {
        return new Setup(other, seating, contactDeg, prevailingNm, ripplePhaseDeg, obstacle, stripN);
    }

    Setup withSeating(Seating other) {
        return new Setup(joint, other, contactDeg, prevailingNm, ripplePhaseDeg, obstacle, stripN);
    }

    Setup withContactDeg(double other) {
        return new Setup(joint, seating, other, prevailingNm, ripplePhaseDeg, obstacle, stripN);
    }

    Setup withObstacle(Obstacle other) {
        return new Setup(joint, seating, contactDeg, prevailingNm, ripplePhaseDeg, other, stripN);
    }

    Setup withStripN(double other) {
        return new Setup(joint, seating, contactDeg, prevailingNm, ripplePhaseDeg, obstacle, other);
    }
}
