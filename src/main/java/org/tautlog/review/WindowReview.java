package org.tautlog.review;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.study.Envelope;
import org.tautlog.joint.study.Quantity;
import org.tautlog.joint.study.StudyResult;
import org.tautlog.joint.study.ToleranceStudy;
import org.tautlog.joint.window.GivenNumbers;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.joint.window.SideEffects;
import org.tautlog.joint.window.WindowStudy;

/**
 * A window held against what the joint's tolerances let expect and, where there are logs, against what the line does.
 *
 * @param specification the specification studied
 * @param study the study that was run
 * @param result what it found
 * @param envelope the curves it drew
 * @param given whether the stated numbers fit each other
 * @param proposed the same specification with the limits that the study proposes
 * @param observedOrNull how real tightenings lie in both windows; null where no logs were given
 */
public record WindowReview(
        JointSpecification specification,
        ToleranceStudy study,
        StudyResult result,
        Envelope envelope,
        GivenNumbers given,
        JointSpecification proposed,
        @Nullable Observed observedOrNull) {
    private static final int CURVES = 2_000;
    private static final int STEPS = 60;

    /**
     * Real tightenings in the present and in the proposed window.
     *
     * @param tightenings how many there are, those too poor to judge left out
     * @param unjudged how many were left out
     * @param outsidePresent how many fail the present window
     * @param outsideProposed how many would fail the proposed one
     * @param present where the present limits lie in their spread
     * @param proposed where the proposed limits lie
     */
    public record Observed(
            int tightenings,
            long unjudged,
            int outsidePresent,
            int outsideProposed,
            List<LimitFit> present,
            List<LimitFit> proposed) {
        public Observed {
            present = List.copyOf(present);
            proposed = List.copyOf(proposed);
        }
    }

    public WindowReview {
        Objects.requireNonNull(specification, "specification");
        Objects.requireNonNull(study, "study");
        Objects.requireNonNull(result, "result");
        Objects.requireNonNull(envelope, "envelope");
        Objects.requireNonNull(given, "given");
        Objects.requireNonNull(proposed, "proposed");
    }

    /**
     * Runs the study of a specification.
     *
     * @param specification the specification; it states joint, warm-up and tolerance
     * @param study its study
     * @return the review, without logs
     * @throws IllegalArgumentException when a draw is no joint at all
     */
    public static WindowReview of(JointSpecification specification, ToleranceStudy study) {
        var result = study.run();
        return new WindowReview(
                specification,
                study,
                result,
                Envelope.of(study, CURVES, STEPS),
                GivenNumbers.of(specification, study),
                WindowStudy.proposal(specification, study, result),
                null);
    }

    /**
     * The same review held against real tightenings.
     *
     * @param spread their features
     * @return the review with logs
     */
    public WindowReview with(WindowSpread spread) {
        var observed = new Observed(
                spread.tightenings(),
                spread.unjudged(),
                spread.outside(specification.window()),
                spread.outside(proposed.window()),
                LimitFit.of(specification.window(), spread),
                LimitFit.of(proposed.window(), spread));
        return new WindowReview(specification, study, result, envelope, given, proposed, observed);
    }

    /** {@return how real tightenings lie in both windows; empty where no logs were given} */
    public Optional<Observed> observed() {
        return Optional.ofNullable(observedOrNull);
    }

    /** {@return what comes on top of the middle drawn tightening: bending under the head, embedding} */
    public SideEffects sideEffects() {
        return SideEffects.of(
                study.nominal().joint(), result.summary(Quantity.FINAL_PRELOAD).mean(), study.embeddingMm());
    }

    /** {@return how far the drive winds up from snug torque to the end of the turn, deg: the tool's turn less the head's} */
    public double windUpDeg() {
        return specification.method().turnDeg() - study.nominal().turnDeg();
    }
}
