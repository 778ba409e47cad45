package org.tautlog.review.evidence;

import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.archive.KeptDecision;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.problem.Problem;
import org.tautlog.review.EngineClampLoad;
import org.tautlog.review.stream.StreamChart;

/**
 * Everything that an archive knows of one engine.
 *
 * @param serial the engine
 * @param specification the specification whose judgements stand
 * @param soundness whether the engine may be called sound
 * @param positions every bolt position that it has or that most others have, by station and number
 * @param clampLoadOrNull estimated clamp loads taken together; null where none is estimated
 * @param decisions what people decided about it, in order, superseded ones too
 * @param others who else may be touched by the same cause
 * @param surroundings what was looked at beside it
 * @param charts control charts of its streams around that time
 * @param problems what kept something out of this answer
 */
public record EngineDossier(
        String serial,
        JointSpecification specification,
        Soundness soundness,
        List<BoltPosition> positions,
        @Nullable EngineClampLoad clampLoadOrNull,
        List<KeptDecision> decisions,
        List<SameCause> others,
        Surroundings surroundings,
        List<StreamChart> charts,
        List<Problem> problems) {
    public EngineDossier {
        Objects.requireNonNull(serial, "serial");
        Objects.requireNonNull(specification, "specification");
        Objects.requireNonNull(soundness, "soundness");
        Objects.requireNonNull(surroundings, "surroundings");
        positions = List.copyOf(positions);
        decisions = List.copyOf(decisions);
        others = List.copyOf(others);
        charts = List.copyOf(charts);
        problems = List.copyOf(problems);
    }

    /** {@return estimated clamp loads taken together; empty where none is estimated} */
    public Optional<EngineClampLoad> clampLoad() {
        return Optional.ofNullable(clampLoadOrNull);
    }

    /** {@return every recording, position by position} */
    public List<EngineTightening> tightenings() {
        return positions.stream()
                .flatMap(position -> position.attempts().stream())
                .toList();
    }

    /**
     * The positions that stand in one way.
     *
     * @param standing which way
     * @return the positions
     */
    public List<BoltPosition> standing(PositionStanding standing) {
        return positions.stream()
                .filter(position -> position.standing() == standing)
                .toList();
    }

    /** {@return time of the first tightening; empty where the export gives no times} */
    public Optional<OffsetDateTime> first() {
        return times().min(Comparator.naturalOrder());
    }

    /** {@return time of the last tightening; empty where the export gives no times} */
    public Optional<OffsetDateTime> last() {
        return times().max(Comparator.naturalOrder());
    }

    private java.util.stream.Stream<OffsetDateTime> times() {
        return tightenings().stream()
                .flatMap(one -> Optional.ofNullable(one.judgement().identity().time()).stream());
    }
}
