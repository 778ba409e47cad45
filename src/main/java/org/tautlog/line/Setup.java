package org.tautlog.line;

import org.tautlog.joint.BoltedJoint;
import org.tautlog.joint.tightening.Seating;

/**
 * One bolt as it stands before the tool starts, with all that is its own.
 *
 * @param joint the joint with this bolt's strength and friction
 * @param seating how its parts draw together
 * @param contactDeg how far the head turns before the parts touch, deg; below 0 where the bolt is tight already
 * @param freeTurning torque that clamps nothing
 * @param obstacle what the nut meets in its thread
 * @param stripN preload at which the nut thread gives way, N; infinite for a sound one
 */
record Setup(
        BoltedJoint joint,
        Seating seating,
        double contactDeg,
        FreeTurning freeTurning,
        Obstacle obstacle,
        double stripN) {
    Setup withJoint(BoltedJoint other) {
        return new Setup(other, seating, contactDeg, freeTurning, obstacle, stripN);
    }

    Setup withSeating(Seating other) {
        return new Setup(joint, other, contactDeg, freeTurning, obstacle, stripN);
    }

    Setup withContactDeg(double other) {
        return new Setup(joint, seating, other, freeTurning, obstacle, stripN);
    }

    Setup withObstacle(Obstacle other) {
        return new Setup(joint, seating, contactDeg, freeTurning, other, stripN);
    }

    Setup withStripN(double other) {
        return new Setup(joint, seating, contactDeg, freeTurning, obstacle, other);
    }
}
