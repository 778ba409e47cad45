package org.tautlog.review.evidence;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tautlog.archive.ArchiveQuery;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.problem.Problem;
import org.tautlog.review.Outline;
import org.tautlog.trace.Source;

/** Conforming tightenings of other engines on the same stream and position, the nearest in time from before and after. */
final class NearPeers {
    private static final int ASKED_EACH_SIDE = 12;
    private static final int KEPT_EACH_SIDE = 4;

    private final ArchiveQuery query;
    private final Map<Source, Judgement> conforming = new HashMap<>();

    NearPeers(ArchiveQuery query, List<Judgement> others) {
        this.query = query;
        others.stream()
                .filter(other -> other.verdict() == Verdict.CONFORMING)
                .forEach(other -> conforming.put(other.source(), other));
    }

    List<Outline> of(Judgement judgement, Set<Problem> problems) throws IOException {
        var identity = judgement.identity();
        var time = identity.time();
        if (time == null) {
            return List.of();
        }
        var found = query.peers(
                identity.station(), identity.spindle(), identity.bolt(), time, ASKED_EACH_SIDE, ASKED_EACH_SIDE);
        problems.addAll(found.problems());
        var before = new ArrayList<Outline>();
        var after = new ArrayList<Outline>();
        for (var trace : found.value().orElse(List.of())) {
            var peer = conforming.get(trace.value().source());
            var when = trace.value().identity().time();
            if (peer != null && when != null) {
                (when.isBefore(time) ? before : after)
                        .add(Outline.of(trace.value().curve(), peer.signature()));
            }
        }
        var peers = new ArrayList<>(before.subList(Math.max(0, before.size() - KEPT_EACH_SIDE), before.size()));
        peers.addAll(after.subList(0, Math.min(KEPT_EACH_SIDE, after.size())));
        return peers;
    }
}
