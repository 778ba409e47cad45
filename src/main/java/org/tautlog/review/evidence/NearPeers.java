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
record NearPeers(List<Judgement> before, List<Judgement> after) {
    static final int DRAWN_EACH_SIDE = 4;
    static final int LEARNED_EACH_SIDE = Envelope.MOST_PEERS / 2;

    private static final Comparator<Judgement> BY_TIME = Comparator.comparing(
            one -> Objects.requireNonNull(one.identity().time()).toInstant());

    NearPeers {
        before = List.copyOf(before);
        after = List.copyOf(after);
    }

    /**
     * The peers of a tightening.
     *
     * @param judgement the tightening; without a time it has no peers
     * @param others judgements of other engines around it; those of one moment in the order in which they are to count
     */
    static NearPeers of(Judgement judgement, List<Judgement> others) {
        var before = new ArrayList<Judgement>();
        var after = new ArrayList<Judgement>();
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
    List<Judgement> learned() {
        return joined(before, after);
    }

    /** The nearest few, in order of time. */
    List<Judgement> drawn() {
        return joined(last(before, DRAWN_EACH_SIDE), first(after, DRAWN_EACH_SIDE));
    }

    /** The tightening with its trace, its peers, and where it departs from them; empty where its trace is lost. */
    Optional<Listed> listed(int rank, Judgement judgement, Map<Source, Curve> curves, TighteningMethod method) {
        return outline(judgement, curves)
                .map(outline -> new Listed(
                        rank,
                        judgement,
                        outline,
                        drawn().stream()
                                .flatMap(peer -> outline(peer, curves).stream())
                                .toList(),
                        comparison(judgement, curves, method)));
    }

    private Answer<ShapeComparison> comparison(
            Judgement judgement, Map<Source, Curve> curves, TighteningMethod method) {
        if (judgement.identity().time() == null) {
            return Answer.missing(Reason.NOT_ASKED, "the export gives no time, so no peers are near");
        }
        var shapes = learned().stream()
                .filter(peer -> curves.containsKey(peer.source()))
                .flatMap(peer -> shape(peer, curves, method).found().stream())
                .toList();
        return ShapeComparison.of(shape(judgement, curves, method), Envelope.of(shapes));
    }

    private static Answer<Shape> shape(Judgement judgement, Map<Source, Curve> curves, TighteningMethod method) {
        return Shape.of(Objects.requireNonNull(curves.get(judgement.source())), judgement.signature(), method);
    }

    private static Optional<Outline> outline(Judgement judgement, Map<Source, Curve> curves) {
        return Optional.ofNullable(curves.get(judgement.source()))
                .map(curve -> Outline.of(curve, judgement.signature()));
    }

    private static boolean isPeer(Judgement one, Judgement other) {
        return other.verdict() == Verdict.CONFORMING
                && other.identity().attempt() == 1
                && Stream.of(one.identity()).equals(Stream.of(other.identity()))
                && one.identity().bolt().equals(other.identity().bolt());
    }

    private static List<Judgement> joined(List<Judgement> before, List<Judgement> after) {
        return java.util.stream.Stream.concat(before.stream(), after.stream()).toList();
    }

    private static List<Judgement> last(List<Judgement> peers, int most) {
        return peers.subList(Math.max(0, peers.size() - most), peers.size());
    }

    private static List<Judgement> first(List<Judgement> peers, int most) {
        return peers.subList(0, Math.min(most, peers.size()));
    }
}
