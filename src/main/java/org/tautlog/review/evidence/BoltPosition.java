package org.tautlog.review.evidence;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.archive.KeptDecision;

/**
 * One bolt position of an engine.
 *
 * @param station the station that tightens it; empty where the export does not say
 * @param bolt the position; empty where the export does not say
 * @param attempts every recording of it, first attempt first; empty where other engines have it and this one does not
 * @param repeats what each further attempt asks for
 * @param standing how the position stands
 * @param outrunOrNull an acceptance or release that does not cover the last attempt, which came, or was judged worse,
 *     after it; null where none
 * @param decidedByOrNull the decision that covers what the last attempt's verdict leaves open; null unless it stands as decided
 */
public record BoltPosition(
        String station,
        String bolt,
        List<EngineTightening> attempts,
        List<Repeat> repeats,
        PositionStanding standing,
        @Nullable KeptDecision outrunOrNull,
        @Nullable KeptDecision decidedByOrNull) {
    public BoltPosition {
        Objects.requireNonNull(station, "station");
        Objects.requireNonNull(bolt, "bolt");
        Objects.requireNonNull(standing, "standing");
        attempts = List.copyOf(attempts);
        repeats = List.copyOf(repeats);
        if (attempts.isEmpty() != (standing == PositionStanding.MISSING)) {
            throw new IllegalArgumentException("bolt " + bolt + " has " + attempts.size() + " attempts and stands as "
                    + standing + "; it is missing exactly where there is none");
        }
        if ((decidedByOrNull != null) != (standing == PositionStanding.DECIDED)) {
            throw new IllegalArgumentException("bolt " + bolt + " stands as " + standing + " with decidedBy "
                    + decidedByOrNull + "; it is decided exactly where a decision covers it");
        }
    }

    /** {@return the last attempt, the one that counts; empty where there is none} */
    public Optional<EngineTightening> last() {
        return attempts.isEmpty() ? Optional.empty() : Optional.of(attempts.get(attempts.size() - 1));
    }

    /** {@return an acceptance or release that does not cover the last attempt as it is judged now; empty where there is none} */
    public Optional<KeptDecision> outrun() {
        return Optional.ofNullable(outrunOrNull);
    }

    /** {@return the decision that covers what the last attempt's verdict leaves open; empty unless it stands as decided} */
    public Optional<KeptDecision> decidedBy() {
        return Optional.ofNullable(decidedByOrNull);
    }
}
