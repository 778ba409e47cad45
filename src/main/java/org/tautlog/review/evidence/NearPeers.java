package org.tautlog.review.evidence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.review.Listed;
import org.tautlog.review.Outline;
import org.tautlog.review.shape.Envelope;
import org.tautlog.review.shape.Shape;
import org.tautlog.review.shape.ShapeComparison;
import org.tautlog.review.stream.Stream;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Source;

/**
 * Conforming first attempts of other engines on the same stream and position, the nearest in time from before and after: a
 * few to draw, more to tell where good curves run.
 *
 * @param before those from before the tightening, in order of time
 * @param after those from its moment on, in order of time
 */
record NearPeers(List<Neighbour> before, List<Neighbour> after) {
    static final int DRAWN_EACH_SIDE = 4;
    static final int LEARNED_EACH_SIDE = Envelope.MOST_PEERS / 2;

    private static final Comparator<Neighbour> BY_TIME = Comparator.comparing(
            one -> Objects.requireNonNull(one.identity().time()).toInstant());

    NearPeers {
        before = List.copyOf(before);
        after = List.copyOf(after);
    }

    /**
     * The peers of a tightening.
     *
     * @param judgement the tightening; without a time it has no peers
     * @param others tightenings of other engines around it; those of one moment in the order in which they are to count
     */
    static NearPeers of(Judgement judgement, List<Neighbour> others) {
        var before = new ArrayList<Neighbour>();
        var after = new ArrayList<Neighbour>();
        var time = judgement.identity().time();
        for (var other : others) {
            var when = other.identity().time();
            if (time != null && when != null && isPeer(judgement, other)) {
                (when.isBefore(time) ? before : after).add(other);
            }
        }
        before.sort(BY_TIME);
        after.sort(BY_TIME);
        return new NearPeers(last(before, LEARNED_EACH_SIDE), first(after, LEARNED_EACH_SIDE));
    }

    /** All of them, in order of time. */
    List<Neighbour> learned() {
        return joined(before, after);
    }

    /** The nearest few, in order of time. */
    List<Neighbour> drawn() {
        return joined(last(before, DRAWN_EACH_SIDE), first(after, DRAWN_EACH_SIDE));
    }

    /** The tightening with its trace, its peers, and where it departs from them; empty where its trace is lost. */
    Optional<Listed> listed(int rank, Judgement judgement, Map<Source, Curve> curves, TighteningMethod method) {
        return Optional.ofNullable(curves.get(judgement.source()))
                .map(curve -> new Listed(
                        rank,
                        judgement,
                        Outline.of(curve, judgement.signature()),
                        traced(drawn(), curves)
                                .map(peer -> Outline.of(curveOf(peer, curves), peer.landmarks()))
                                .toList(),
                        comparison(judgement, curve, curves, method)));
    }

    private Answer<ShapeComparison> comparison(
            Judgement judgement, Curve curve, Map<Source, Curve> curves, TighteningMethod method) {
        if (judgement.identity().time() == null) {
            return Answer.missing(Reason.NOT_ASKED, "the export gives no time, so no peers are near");
        }
        var shapes = traced(learned(), curves)
                .flatMap(peer -> Shape.of(curveOf(peer, curves), peer.landmarks(), method).found().stream())
                .toList();
        return ShapeComparison.of(Shape.of(curve, judgement.signature(), method), Envelope.of(shapes));
    }

    /** Those whose traces were not lost. */
    private static java.util.stream.Stream<Neighbour> traced(List<Neighbour> peers, Map<Source, Curve> curves) {
        return peers.stream().filter(peer -> curves.containsKey(peer.judgement().source()));
    }

    private static Curve curveOf(Neighbour peer, Map<Source, Curve> curves) {
        return Objects.requireNonNull(curves.get(peer.judgement().source()));
    }

    private static boolean isPeer(Judgement one, Neighbour other) {
        return other.judgement().verdict() == Verdict.CONFORMING
                && other.identity().attempt() == 1
                && Stream.of(one.identity()).equals(Stream.of(other.identity()))
                && one.identity().bolt().equals(other.identity().bolt());
    }

    private static List<Neighbour> joined(List<Neighbour> before, List<Neighbour> after) {
        return java.util.stream.Stream.concat(before.stream(), after.stream()).toList();
    }

    private static List<Neighbour> last(List<Neighbour> peers, int most) {
        return peers.subList(Math.max(0, peers.size() - most), peers.size());
    }

    private static List<Neighbour> first(List<Neighbour> peers, int most) {
        return peers.subList(0, Math.min(most, peers.size()));
    }
}
