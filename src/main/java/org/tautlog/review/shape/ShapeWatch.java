package org.tautlog.review.shape;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.review.stream.Stream;
import org.tautlog.spc.Answer;
import org.tautlog.spc.compare.Adjustment;
import org.tautlog.trace.Curve;
import org.tautlog.trace.TraceIdentity;

/**
 * Takes tightenings in any order and holds each first attempt against the conforming ones of its stream and bolt position
 * from before it. It keeps some hundred numbers of each curve and no samples.
 */
public final class ShapeWatch {
    /** The envelope is learned anew each time so many more conforming curves have come. */
    private static final int LEARNED_EACH = 4;

    private static final Comparator<Kept> BY_TIME = Comparator.comparing(kept -> {
        var time = kept.tightening.time();
        return time == null ? Instant.MAX : time.toInstant();
    });

    private record Kept(TraceIdentity tightening, Verdict verdict, Shape shape) {}

    private record Place(Stream stream, String bolt) {
        static Place of(TraceIdentity identity) {
            return new Place(Stream.of(identity), identity.bolt());
        }
    }

    private final TighteningMethod method;
    private final List<Kept> kept = new ArrayList<>();
    private int withoutShape;

    /**
     * Starts empty.
     *
     * @param method turn and snug torque aimed at
     */
    public ShapeWatch(TighteningMethod method) {
        this.method = method;
    }

    /**
     * Takes one tightening; later attempts are left out, as the bolt was not as new.
     *
     * @param judgement the verdict on it
     * @param curve its samples, not kept
     */
    public void accept(Judgement judgement, Curve curve) {
        if (judgement.identity().attempt() > 1) {
            return;
        }
        var shape = Shape.of(curve, judgement.signature(), method).found();
        if (shape.isPresent()) {
            kept.add(new Kept(judgement.identity(), judgement.verdict(), shape.get()));
        } else {
            withoutShape++;
        }
    }

    /** {@return what the curves taken so far say beside each other} */
    public ShapeReview review() {
        var inTime = new ArrayList<>(kept);
        inTime.sort(BY_TIME);
        var learners = new HashMap<Place, Learner>();
        var compared = new ArrayList<ComparedShape>();
        for (var one : inTime) {
            var learner = learners.computeIfAbsent(Place.of(one.tightening), place -> new Learner());
            learner.compare(one).ifPresent(compared::add);
        }
        var streams = new ArrayList<ShapeStream>();
        learners.forEach((place, learner) -> streams.add(
                new ShapeStream(place.stream, place.bolt, learner.seen, learner.compared, learner.leaving)));
        streams.sort(ShapeStream.ORDER);
        return new ShapeReview(adjusted(compared), streams, withoutShape);
    }

    /** Curves that a verdict speaks against already are no tests of chance. */
    private static List<ComparedShape> adjusted(List<ComparedShape> compared) {
        var tested = compared.stream().filter(ComparedShape::unsuspected).toList();
        var adjusted = Adjustment.BENJAMINI_HOCHBERG.adjust(tested.stream()
                .mapToDouble(one -> one.comparison().departure().p())
                .toArray());
        var all = new ArrayList<ComparedShape>();
        int next = 0;
        for (var one : compared) {
            all.add(
                    one.unsuspected()
                            ? new ComparedShape(one.tightening(), one.verdict(), one.comparison(), adjusted[next++])
                            : one);
        }
        return all;
    }

    /** What is known of one stream and bolt position so far. */
    private static final class Learner {
        private final List<Shape> peers = new ArrayList<>();
        private Answer<Envelope> envelope = Envelope.of(peers);
        private int seen;
        private int compared;
        private int leaving;

        Optional<ComparedShape> compare(Kept one) {
            var comparison = ShapeComparison.of(Answer.of(one.shape), envelope).found();
            if (one.verdict == Verdict.CONFORMING) {
                learn(one.shape);
            }
            if (comparison.isEmpty()) {
                return Optional.empty();
            }
            compared++;
            leaving += comparison.get().departure().leaves() ? 1 : 0;
            return comparison.map(found -> new ComparedShape(one.tightening, one.verdict, found, 1));
        }

        private void learn(Shape shape) {
            seen++;
            peers.add(shape);
            if (peers.size() > Envelope.MOST_PEERS) {
                peers.remove(0);
            }
            if (seen >= Envelope.LEAST_PEERS && seen % LEARNED_EACH == 0) {
                envelope = Envelope.of(peers);
            }
        }
    }
}
