package org.tautlog.review.evidence;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tautlog.archive.ArchiveQuery;
import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.problem.Problem;
import org.tautlog.review.Listed;
import org.tautlog.review.Outline;
import org.tautlog.review.shape.Envelope;
import org.tautlog.review.shape.Shape;
import org.tautlog.review.shape.ShapeComparison;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Source;
import org.tautlog.trace.TraceIdentity;

/**
 * Conforming first attempts of other engines on the same stream and position, the nearest in time from before and after: a
 * few to draw, more to tell where good curves run.
 */
final class NearPeers {
    private static final int DRAWN_EACH_SIDE = 4;
    private static final int LEARNED_EACH_SIDE = Envelope.MOST_PEERS / 2;
    private static final int ASKED_EACH_SIDE = LEARNED_EACH_SIDE + 8;

    private record Peer(Curve curve, Judgement judgement) {}

    private final ArchiveQuery query;
    private final TighteningMethod method;
    private final Map<Source, Judgement> conforming = new HashMap<>();

    NearPeers(ArchiveQuery query, List<Judgement> others, TighteningMethod method) {
        this.query = query;
        this.method = method;
        others.stream()
                .filter(other -> other.verdict() == Verdict.CONFORMING
                        && other.identity().attempt() == 1)
                .forEach(other -> conforming.put(other.source(), other));
    }

    /** One tightening of the engine with its trace, its peers, and where it departs from them. */
    Listed listed(int rank, Judgement judgement, Curve curve, Set<Problem> problems) throws IOException {
        var before = new ArrayList<Peer>();
        var after = new ArrayList<Peer>();
        find(judgement.identity(), before, after, problems);
        var drawn = new ArrayList<Outline>();
        last(before, DRAWN_EACH_SIDE).forEach(peer -> drawn.add(outline(peer)));
        first(after, DRAWN_EACH_SIDE).forEach(peer -> drawn.add(outline(peer)));
        var learned = new ArrayList<Shape>();
        last(before, LEARNED_EACH_SIDE).forEach(peer -> shape(peer).found().ifPresent(learned::add));
        first(after, LEARNED_EACH_SIDE).forEach(peer -> shape(peer).found().ifPresent(learned::add));
        Answer<ShapeComparison> comparison = judgement.identity().time() == null
                ? Answer.missing(Reason.NOT_ASKED, "the export gives no time, so no peers are near")
                : ShapeComparison.of(Shape.of(curve, judgement.signature(), method), Envelope.of(learned));
        return new Listed(rank, judgement, Outline.of(curve, judgement.signature()), drawn, comparison);
    }

    private void find(TraceIdentity identity, List<Peer> before, List<Peer> after, Set<Problem> problems)
            throws IOException {
        var time = identity.time();
        if (time == null) {
            return;
        }
        var found = query.peers(
                identity.station(), identity.spindle(), identity.bolt(), time, ASKED_EACH_SIDE, ASKED_EACH_SIDE);
        problems.addAll(found.problems());
        for (var trace : found.value().orElse(List.of())) {
            var peer = conforming.get(trace.value().source());
            var when = trace.value().identity().time();
            if (peer != null && when != null) {
                (when.isBefore(time) ? before : after)
                        .add(new Peer(trace.value().curve(), peer));
            }
        }
    }

    private Answer<Shape> shape(Peer peer) {
        return Shape.of(peer.curve, peer.judgement.signature(), method);
    }

    private static Outline outline(Peer peer) {
        return Outline.of(peer.curve, peer.judgement.signature());
    }

    private static List<Peer> last(List<Peer> peers, int most) {
        return peers.subList(Math.max(0, peers.size() - most), peers.size());
    }

    private static List<Peer> first(List<Peer> peers, int most) {
        return peers.subList(0, Math.min(most, peers.size()));
    }
}
