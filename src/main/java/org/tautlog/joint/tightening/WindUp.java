package org.tautlog.joint.tightening;

import org.tautlog.joint.Bolt;
import org.tautlog.joint.Require;

/** Elastic twist between the turned head and what it should turn: angle that stretches nothing. */
public final class WindUp {
    private static final double NMM_PER_NM = 1000;

    private WindUp() {}

    /**
     * How far the bolt's free length twists for each newton-metre in the thread.
     *
     * <pre>
     * phi / M_G = sum(l / (G J)) 180/pi      deg per N mm, given per N·m
     * J = pi d^4 / 32      G = E / (2 (1 + nu))
     * </pre>
     *
     * Source: elementary torsion (such as Shigley, 10th ed., equation 3-35).
     *
     * @param bolt the bolt
     * @return deg per N·m of thread torque
     */
    public static double shankDegPerNm(Bolt bolt) {
        var sum = 0.0;
        for (var segment : bolt.segments()) sum += segment.lengthMm() / Math.pow(segment.diameterMm(), 4);
        return Math.toDegrees(sum * 32 / Math.PI / bolt.material().shearModulusMPa()) * NMM_PER_NM;
    }

    /**
     * How far sockets, extensions and spindle twist between the angle sensor and the bolt head.
     *
     * @param torqueNm the torque, N·m
     * @param driveNmPerDeg stiffness of the drive train, N·m/deg; above 0
     * @return deg that the sensor sees more than the head turns
     */
    public static double driveDeg(double torqueNm, double driveNmPerDeg) {
        Require.above("driveNmPerDeg", driveNmPerDeg, 0, "N·m/deg");
        return torqueNm / driveNmPerDeg;
    }

    /**
     * The torque rate a sensor sees when the drive train's twist is not taken out.
     *
     * <pre>
     * 1/rate_seen = 1/rate + 1/drive      deg/(N·m)
     * </pre>
     *
     * Source: springs in a row.
     *
     * @param rateNmPerDeg torque rate at the head, N·m/deg; above 0
     * @param driveNmPerDeg stiffness of the drive train, N·m/deg; above 0
     * @return N·m/deg
     */
    public static double rateSeenNmPerDeg(double rateNmPerDeg, double driveNmPerDeg) {
        Require.above("rateNmPerDeg", rateNmPerDeg, 0, "N·m/deg");
        Require.above("driveNmPerDeg", driveNmPerDeg, 0, "N·m/deg");
        return 1 / (1 / rateNmPerDeg + 1 / driveNmPerDeg);
    }
}
