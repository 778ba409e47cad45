package org.tautlog.review.evidence;

import java.util.List;
import java.util.Objects;

/**
 * A bolt lot met inside a bracket, and how far it reaches beyond it: a cause that lies in the bolts went wherever they went.
 *
 * @param lot the lot
 * @param inside how many tightenings of it are contained
 * @param outside how many others the archive holds, on any spindle
 * @param enginesOutside on how many engines those are that are not contained
 * @param stationsOutside the stations of those, in order
 */
public record LotReach(String lot, int inside, int outside, int enginesOutside, List<String> stationsOutside) {
    public LotReach {
        Objects.requireNonNull(lot, "lot");
        stationsOutside = List.copyOf(stationsOutside);
        if (inside < 1) {
            throw new IllegalArgumentException("inside is " + inside + "; a lot met has at least 1 tightening");
        }
    }
}
