package org.tautlog.review;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.judge.Verdict;
import org.tautlog.review.cause.Diagnoses;
import org.tautlog.review.cause.Diagnosis;
import org.tautlog.review.shape.ShapeReview;
import org.tautlog.review.stream.Change;
import org.tautlog.review.stream.PastShift;
import org.tautlog.review.stream.ShiftComparison;
import org.tautlog.review.stream.StreamChart;
import org.tautlog.review.stream.StreamReview;

/**
 * One shift seen as a whole. Every number that a report shows is a field here.
 *
 * @param specification the specification that judged
 * @param imported what happened while the logs were read
 * @param first time of the earliest tightening; null where the export gives no times
 * @param last time of the latest tightening; null where the export gives no times
 * @param engines how many engines were seen
 * @param enginesHeld serials of those with a nonconforming tightening, mended by a later attempt or not, in order
 * @param enginesOpen how many of the others have an unjudged tightening or one for review
 * @param counts verdicts of all tightenings
 * @param firstPass first attempts and how many conform
 * @param streams every stream, in order of station and spindle
 * @param tallies findings, gravest kind first, then most frequent first; notes are left out
 * @param actions what to do, in order
 * @param listed tightenings that a person must look at, worst first, as many as the reviewer keeps
 * @param peers what the streams say when they are watched side by side
 * @param shapes what each curve does along its length against those of its stream before it
 * @param diagnoses why spindles, lots and tightenings that differ do so
 * @param clampLoads estimated clamp loads engine by engine, weakest bolt first
 * @param sincePrevious what changed since an earlier shift; null where none was given
 */
public record ShiftReview(
        JointSpecification specification,
        ImportRecord imported,
        @Nullable OffsetDateTime first,
        @Nullable OffsetDateTime last,
        int engines,
        List<String> enginesHeld,
        int enginesOpen,
        VerdictCounts counts,
        FirstPass firstPass,
        List<StreamSummary> streams,
        List<FindingTally> tallies,
        List<FirstAction> actions,
        List<Listed> listed,
        StreamReview peers,
        ShapeReview shapes,
        List<Diagnosis> diagnoses,
        List<EngineClampLoad> clampLoads,
        @Nullable ShiftComparison sincePrevious) {
    public ShiftReview {
        Objects.requireNonNull(specification, "specification");
        Objects.requireNonNull(imported, "imported");
        Objects.requireNonNull(counts, "counts");
        Objects.requireNonNull(firstPass, "firstPass");
        enginesHeld = List.copyOf(enginesHeld);
        streams = List.copyOf(streams);
        tallies = List.copyOf(tallies);
        actions = List.copyOf(actions);
        listed = List.copyOf(listed);
        Objects.requireNonNull(peers, "peers");
        Objects.requireNonNull(shapes, "shapes");
        diagnoses = List.copyOf(diagnoses);
        clampLoads = List.copyOf(clampLoads);
        if (enginesHeld.size() + enginesOpen > engines) {
            throw new IllegalArgumentException("engines is " + engines + ", held " + enginesHeld.size() + ", open "
                    + enginesOpen + "; each engine counts once");
        }
    }

    /**
     * {@return this review, compared with an earlier shift}
     *
     * @param previous the earlier shift
     */
    public ShiftReview since(PastShift previous) {
        var all = new ArrayList<>(diagnoses);
        all.addAll(Diagnoses.since(previous, asPast(), specification));
        return new ShiftReview(
                specification,
                imported,
                first,
                last,
                engines,
                enginesHeld,
                enginesOpen,
                counts,
                firstPass,
                streams,
                tallies,
                actions,
                listed,
                peers,
                shapes,
                all,
                clampLoads,
                ShiftComparison.of(previous, asPast()));
    }

    /** {@return this shift as far as a later one is compared with it} */
    public PastShift asPast() {
        return PastShift.of(
                peers,
                streams.stream()
                        .map(summary -> new PastShift.Share(
                                summary.stream(),
                                summary.firstPass().conforming(),
                                summary.firstPass().attempts()))
                        .toList());
    }

    /** {@return findings that lead a tightening's list at least once, gravest and then most frequent first} */
    public List<FindingTally> leadingTallies() {
        return Tally.leading(tallies);
    }

    /** {@return control charts, stream by stream} */
    public List<StreamChart> charts() {
        return peers.charts();
    }

    /** {@return levels that moved, surest first} */
    public List<Change> changes() {
        return peers.changes();
    }

    /** {@return how many series were searched for changes; the level of proof is shared among them} */
    public int seriesSearched() {
        return peers.seriesSearched();
    }

    /** {@return tightenings that need a person and are not listed, as the list is bounded} */
    public int unlisted() {
        return counts.needingAPerson() - listed.size();
    }

    /** {@return whether every tightening conforms} */
    public boolean allConform() {
        return counts.of(Verdict.CONFORMING) == counts.total();
    }
}
