package org.tautlog.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.review.cause.Diagnoses;
import org.tautlog.review.shape.ShapeReview;
import org.tautlog.review.shape.ShapeWatch;
import org.tautlog.review.stream.StreamReview;
import org.tautlog.trace.Curve;

/**
 * Takes a shift's judgements one by one and reviews them. It keeps every judgement, but curves only of the worst tightenings
 * and of a few conforming peers, thinned for drawing, and some hundred numbers of each curve's shape.
 */
public final class ShiftReviewer {
    /** How many tightenings a review lists unless told otherwise. */
    public static final int USUALLY_LISTED = 40;

    private record Suspect(Judgement judgement, Outline outline) {}

    private static final Comparator<Suspect> MILDEST_FIRST =
            Comparator.comparing(Suspect::judgement, Gravity.WORST_FIRST).reversed();

    private final JointSpecification specification;
    private final int mostListed;
    private final List<Judgement> judgements = new ArrayList<>();
    private final PriorityQueue<Suspect> suspects = new PriorityQueue<>(MILDEST_FIRST);
    private final Peers peers = new Peers();
    private final ShapeWatch shapes;

    /**
     * A reviewer without a tightening yet.
     *
     * @param specification the specification that judges
     * @param mostListed how many tightenings to list with their traces, at least 1
     */
    public ShiftReviewer(JointSpecification specification, int mostListed) {
        if (mostListed < 1) {
            throw new IllegalArgumentException("mostListed is " + mostListed + "; at least 1 must be listed");
        }
        this.specification = specification;
        this.mostListed = mostListed;
        shapes = new ShapeWatch(specification.method());
    }

    /**
     * Takes one tightening.
     *
     * @param judgement the verdict on it
     * @param curve its samples; not kept whole
     */
    public void accept(Judgement judgement, Curve curve) {
        judgements.add(judgement);
        shapes.accept(judgement, curve);
        if (judgement.verdict() == Verdict.CONFORMING) {
            peers.offer(judgement, curve);
            return;
        }
        suspects.add(new Suspect(judgement, Outline.of(curve, judgement.signature())));
        if (suspects.size() > mostListed) {
            suspects.remove();
        }
    }

    /**
     * Takes a tightening from before the shift, for the shapes of curves alone.
     *
     * @param judgement the verdict on it
     * @param curve its samples; not kept whole
     */
    public void learn(Judgement judgement, Curve curve) {
        shapes.learn(judgement, curve);
    }

    /**
     * Reviews what was taken.
     *
     * @param imported what happened while the logs were read
     * @return the review
     */
    public ShiftReview review(ImportRecord imported) {
        var tally = Tally.of(judgements);
        var shapesSeen = shapes.review();
        var streams = StreamReview.of(judgements, specification.window());
        return new ShiftReview(
                specification,
                imported,
                tally.first(),
                tally.last(),
                tally.engines(),
                tally.enginesHeld(),
                tally.enginesOpen(),
                tally.counts(),
                tally.firstPass(),
                ShiftFrame.of(judgements).summaries(),
                tally.findings(),
                tally.actions(),
                listed(shapesSeen),
                streams,
                shapesSeen,
                Diagnoses.of(specification, streams),
                EngineClampLoad.of(judgements).stream()
                        .sorted(Comparator.comparingDouble(EngineClampLoad::lowestKN))
                        .toList(),
                null);
    }

    private List<Listed> listed(ShapeReview shapesSeen) {
        var worstFirst = new ArrayList<>(suspects);
        worstFirst.sort(MILDEST_FIRST.reversed());
        var listed = new ArrayList<Listed>();
        for (var suspect : worstFirst) {
            listed.add(new Listed(
                    listed.size() + 1,
                    suspect.judgement(),
                    suspect.outline(),
                    peers.of(suspect.judgement()),
                    shapesSeen.of(suspect.judgement().identity())));
        }
        return listed;
    }
}
