package org.tautlog.signature;

/**
 * Whether the drive had let go already when the last sample before a stop was taken: where samples lie far apart, the one
 * at the greatest angle can show the torque half gone. To leave out one sample too many costs nothing; one too few passes
 * for a thread that gives way.
 */
final class LetGo {
    /** Torque over the torque one sample before, from which on nothing fell. */
    private static final double HELD = 0.97;

    private LetGo() {}

    static boolean between(double beforeNm, double afterNm) {
        return afterNm < HELD * beforeNm;
    }
}
