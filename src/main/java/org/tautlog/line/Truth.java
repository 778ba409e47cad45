package org.tautlog.line;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What nobody on a real line knows: how one simulated tightening really ended.
 *
 * @param fault what was wrong with it
 * @param good whether the bolt is well tightened, whatever its recording looks like
 * @param clampLoadKN the bolt's preload where the tool stopped, kN
 * @param turnDeg how far the bolt's head really turned past the snug point, deg; below the turn counted by the tool where
 *     drive and socket gave way
 * @param yieldStrengthMPa the bolt's own yield strength Rp0.2, MPa
 * @param threadMu friction coefficient in its thread
 * @param underHeadMu friction coefficient under its head
 * @param onsetPastSnugDeg angle past the snug point, as the tool counts it, where the gradient without any noise falls to
 *     half of the elastic one, deg; null where the bolt was not taken so far
 */
public record Truth(
        Fault fault,
        boolean good,
        double clampLoadKN,
        double turnDeg,
        double yieldStrengthMPa,
        double threadMu,
        double underHeadMu,
        @Nullable Double onsetPastSnugDeg) {
    public Truth {
        Objects.requireNonNull(fault, "fault");
    }
}
