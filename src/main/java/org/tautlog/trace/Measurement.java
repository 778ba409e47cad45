package org.tautlog.trace;

import java.util.Objects;

/** What holds for everything that was measured over the angle of one tightening. */
final class Measurement {
    private Measurement() {}

    static void check(String serial, String bolt, int attempt, double[] anglesDeg) {
        if (serial.isBlank()) {
            throw new IllegalArgumentException("serial is blank; a measurement must name its engine or part");
        }
        Objects.requireNonNull(bolt, "bolt");
        if (attempt < 1) {
            throw new IllegalArgumentException("attempt is " + attempt + "; attempts count from 1");
        }
        for (int i = 1; i < anglesDeg.length; i++) {
            if (!(anglesDeg[i] > anglesDeg[i - 1])) {
                throw new IllegalArgumentException(
                        "angleDeg " + anglesDeg[i] + " follows " + anglesDeg[i - 1] + "; angles must rise");
            }
        }
    }
}
