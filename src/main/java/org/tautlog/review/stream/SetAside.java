package org.tautlog.review.stream;

import java.util.Collection;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.Finding;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.trace.TraceIdentity;

/**
 * A tightening that is shown on a chart and left out of its limits and searches: it bears a fault of its own, and a few such
 * would widen limits so far that a step hides behind them.
 *
 * <p>Set aside are nonconforming and unjudged tightenings, but for those with nothing against them other than a level that
 * lies beyond a limit: that may be the very shift that is looked for.
 *
 * @param before how many charted tightenings came before it
 * @param tightening which it is
 * @param value the feature, in its unit
 */
public record SetAside(int before, TraceIdentity tightening, double value) {
    /** No more of a stream than this is set aside: what befalls so many is the stream's own state. */
    static final double LARGEST_SHARE = 0.25;

    private static final Set<FindingCode> LEVELS = EnumSet.of(
            FindingCode.SNUG_TORQUE_OUTSIDE,
            FindingCode.FINAL_TORQUE_LOW,
            FindingCode.FINAL_TORQUE_HIGH,
            FindingCode.TORQUE_RATE_LOW,
            FindingCode.TORQUE_RATE_HIGH,
            FindingCode.EARLY_ONSET,
            FindingCode.LATE_ONSET,
            FindingCode.OVER_YIELDED,
            FindingCode.LOW_FRICTION,
            FindingCode.FEATURE_MISSING);

    public SetAside {
        Objects.requireNonNull(tightening, "tightening");
        if (before < 0) {
            throw new IllegalArgumentException("before is " + before + "; a count is not negative");
        }
    }

    static boolean bearsFault(Judgement judgement) {
        return bearsFault(
                judgement.verdict(),
                judgement.findings().stream().map(Finding::code).toList());
    }

    /**
     * {@return whether a tightening bears a fault of its own}
     *
     * @param verdict the verdict on it
     * @param findings what was found
     */
    public static boolean bearsFault(Verdict verdict, Collection<FindingCode> findings) {
        return (verdict == Verdict.NONCONFORMING || verdict == Verdict.UNJUDGED) && !LEVELS.containsAll(findings);
    }
}
