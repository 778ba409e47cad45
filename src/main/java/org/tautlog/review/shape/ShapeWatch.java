package org.tautlog.review.shape;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

    private static final Comparator<Kept> BY_TIME = Comparator.comparing((Kept kept) -> !kept.past)
            .thenComparing(kept -> {
                var time = kept.tightening.time();
                return time == null ? Instant.MAX : time.toInstant();
            });

    private record Kept(TraceIdentity tightening, Verdict verdict, Shape shape, boolean past) {}

    private record Place(Stream stream, String bolt) {
        static Place of(TraceIdentity identity) {
            return new Place(Stream.of(identity), identity.bolt());
        }
    }

    private final TighteningMethod method;
    private final List<Kept> kept = new ArrayList<>();
    private final Map<TraceIdentity, String> without = new HashMap<>();
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
        var identity = judgement.identity();
        if (identity.attempt() > 1) {
            without.put(identity, "a later attempt is no peer of first ones");
            return;
        }
        var shape = Shape.of(curve, judgement.signature(), method);
        shape.found().ifPresent(own -> kept.add(new Kept(identity, judgement.verdict(), own, false)));
        shape.whyMissing().ifPresent(why -> {
            without.put(identity, why);
            withoutShape++;
        });
    }

    /**
     * Takes a conforming tightening from before the shift: it is learned from and not compared.
     *
     * @param judgement the verdict on it; only conforming first attempts are learned from
     * @param curve its samples, not kept
     */
    public void learn(Judgement judgement, Curve curve) {
        if (judgement.verdict() == Verdict.CONFORMING && judgement.identity().attempt() == 1) {
            Shape.of(curve, judgement.signature(), method)
                    .found()
                    .ifPresent(own -> kept.add(new Kept(judgement.identity(), judgement.verdict(), own, true)));
        }
    }

    /** {@return what the curves taken so far say beside each other} */
    public ShapeReview review() {
        var inTime = new ArrayList<>(kept);
        inTime.sort(BY_TIME);
        var learners = new HashMap<Place, Learner>();
        var compared = new ArrayList<ComparedShape>();
        var notCompared = new HashMap<>(without);
        for (var one : inTime) {
            var learner = learners.computeIfAbsent(Place.of(one.tightening), place -> new Learner());
            if (one.past) {
                learner.past++;
                learner.learn(one.shape);
                continue;
            }
            var comparison = learner.compare(one);
            comparison.found().ifPresent(found -> compared.add(ComparedShape.of(one.tightening, one.verdict, found)));
            comparison.whyMissing().ifPresent(why -> notCompared.put(one.tightening, why));
        }
        var streams = new ArrayList<ShapeStream>();
        learners.forEach((place, learner) -> streams.add(new ShapeStream(
                place.stream, place.bolt, learner.seen, learner.past, learner.compared, learner.leaving)));
        streams.sort(ShapeStream.ORDER);
        return new ShapeReview(adjusted(compared), streams, notCompared, withoutShape);
    }

    /** Curves that a verdict speaks against already are no tests of chance. */
    private static List<ComparedShape> adjusted(List<ComparedShape> compared) {
        var tested = compared.stream().filter(ComparedShape::unsuspected).toList();
        var adjusted = Adjustment.BENJAMINI_HOCHBERG.adjust(
                tested.stream().mapToDouble(one -> one.departure().p()).toArray());
        var all = new ArrayList<ComparedShape>();
        int next = 0;
        for (var one : compared) {
            all.add(one.unsuspected() ? one.adjusted(adjusted[next++]) : one);
        }
        return all;
    }

    /** What is known of one stream and bolt position so far. */
    private static final class Learner {
        private final List<Shape> peers = new ArrayList<>();
        private Answer<Envelope> envelope = Envelope.of(peers);
        private int seen;
        private int past;
        private int compared;
        private int leaving;

        Answer<ShapeComparison> compare(Kept one) {
            var comparison = ShapeComparison.of(Answer.of(one.shape), envelope);
            compared += comparison.found().isPresent() ? 1 : 0;
            leaving += comparison
                            .found()
                            .filter(found -> found.departure().leaves())
                            .isPresent()
                    ? 1
                    : 0;
            if (one.verdict == Verdict.CONFORMING) {
                learn(one.shape);
            }
            return comparison;
        }

        private void learn(Shape shape) {
            seen++;
            peers.add(shape);
            if (peers.size() > Envelope.MOST_PEERS) {
                peers.remove(0);
            }
            if (seen < Envelope.LEAST_PEERS || seen % LEARNED_EACH == 0) {
                envelope = Envelope.of(peers);
            }
        }
    }
}
