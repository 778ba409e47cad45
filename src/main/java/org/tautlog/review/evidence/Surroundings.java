package org.tautlog.review.evidence;

/**
 * What was looked at beside an engine.
 *
 * @param hours how many hours before its first and after its last tightening; 0 where times are not exported, so that all
 *     of the archive was looked at
 * @param engines how many other engines
 * @param tightenings how many tightenings of them
 */
public record Surroundings(int hours, int engines, int tightenings) {
    public Surroundings {
        if (hours < 0 || engines < 0 || tightenings < engines) {
            throw new IllegalArgumentException("hours " + hours + ", engines " + engines + ", tightenings "
                    + tightenings + "; none is negative and each engine has a tightening");
        }
    }
}
