package org.tautlog.review;

/**
 * First attempts and how many of them conform; a second attempt never mends this count.
 *
 * @param conforming first attempts that conform
 * @param attempts first attempts
 */
public record FirstPass(int conforming, int attempts) {
    public FirstPass {
        if (conforming < 0 || conforming > attempts) {
            throw new IllegalArgumentException(
                    "conforming is " + conforming + " of " + attempts + " first attempts; it must lie from 0 to that");
        }
    }

    FirstPass plus(int attempt, boolean conforms) {
        return attempt > 1 ? this : new FirstPass(conforming + (conforms ? 1 : 0), attempts + 1);
    }

    /** {@return conforming first attempts over first attempts, a ratio from 0 to 1; 0 where there is no attempt} */
    public double share() {
        return attempts == 0 ? 0 : (double) conforming / attempts;
    }
}
