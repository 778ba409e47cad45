package org.tautlog.review.shape;

import java.util.List;
import java.util.Objects;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.Finding;

/**
 * Where a curve lies furthest from the middle of its peers.
 *
 * @param peers how many conforming curves the envelope was learned from
 * @param distance the greatest distance from their middle, in standard deviations of one more curve at that angle
 * @param limit the distance that one good curve in {@value Envelope#ONE_IN} exceeds anywhere along its length
 * @param p share of good curves that lie as far out anywhere, 0 to 1
 * @param atDeg the angle of the greatest distance, deg past the elastic origin
 * @param fromDeg where the stretch around it begins that lies beyond the limit; the step of that angle where none does
 * @param toDeg where that stretch ends
 * @param excessNm torque there less what the peers let expect at the curve's own torque rate, N·m
 * @param zone the part of the curve
 */
public record Departure(
        int peers,
        double distance,
        double limit,
        double p,
        double atDeg,
        double fromDeg,
        double toDeg,
        double excessNm,
        Zone zone) {
    public Departure {
        Objects.requireNonNull(zone, "zone");
        if (!(distance >= 0) || !(p >= 0 && p <= 1)) {
            throw new IllegalArgumentException("distance is " + distance + ", p is " + p
                    + "; a distance is not negative, a share lies from 0 to 1");
        }
    }

    /** {@return whether the curve leaves the envelope: a reason to look, never to reject} */
    public boolean leaves() {
        return distance > limit;
    }

    /**
     * Whether the place of a departure means anything. Where recorded degrees turned no bolt, the elastic line that the whole
     * curve is measured by is tilted itself: the curve leaves its peers, and where it does is chance.
     *
     * @param findings what was found wrong with the tightening
     * @return false where an angle slip or an angle jump is among them
     */
    public static boolean hasPlace(List<Finding> findings) {
        return findings.stream()
                .map(Finding::code)
                .noneMatch(code -> code == FindingCode.ANGLE_SLIP || code == FindingCode.ANGLE_JUMP);
    }
}
