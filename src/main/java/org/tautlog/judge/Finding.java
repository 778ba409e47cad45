package org.tautlog.judge;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.window.Consequence;
import org.tautlog.joint.window.FindingCode;

/**
 * One thing wrong or odd about one tightening.
 *
 * @param code what kind of thing
 * @param severity what it means for the verdict under the specification that judged
 * @param measured the value measured; null where the finding is not about a number
 * @param limit the limit it was held against; null where there is none
 * @param unit unit of both; empty where there is none
 * @param message the finding as a sentence, numbers and units in it
 */
public record Finding(
        FindingCode code,
        Consequence severity,
        @Nullable Double measured,
        @Nullable Double limit,
        String unit,
        String message) {
    public Finding {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(unit, "unit");
        if (message.isBlank()) {
            throw new IllegalArgumentException("a finding must say what it found");
        }
    }
}
