package org.tautlog.review.stream;

import java.time.Instant;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.tautlog.judge.Judgement;
import org.tautlog.trace.TraceIdentity;

/**
 * The cues of one first attempt without a fault of its own.
 *
 * @param tightening which one
 * @param cues those that its curve gives, each in its unit
 */
public record CueReading(TraceIdentity tightening, Map<Cue, Double> cues) {
    public CueReading {
        Objects.requireNonNull(tightening, "tightening");
        cues = Map.copyOf(cues);
    }

    /** Those of a shift, in order of time; tightenings without a time come last. */
    static List<CueReading> of(List<Judgement> judgements) {
        return judgements.stream()
                .filter(judgement -> judgement.identity().attempt() == 1 && !SetAside.bearsFault(judgement))
                .map(CueReading::of)
                .sorted(Comparator.comparing(reading -> when(reading.tightening())))
                .toList();
    }

    private static Instant when(TraceIdentity tightening) {
        var time = tightening.time();
        return time == null ? Instant.MAX : time.toInstant();
    }

    private static CueReading of(Judgement judgement) {
        var cues = new EnumMap<Cue, Double>(Cue.class);
        for (var cue : Cue.values()) {
            var feature = cue.of(judgement.signature());
            if (feature.isFound()) {
                cues.put(cue, feature.number());
            }
        }
        return new CueReading(judgement.identity(), cues);
    }
}
