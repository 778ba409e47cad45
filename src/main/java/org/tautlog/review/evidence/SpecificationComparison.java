package org.tautlog.review.evidence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.judge.Judge;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.trace.Trace;

/** Judges traces by two specifications and keeps what changes; the archive's own verdicts are not touched. */
public final class SpecificationComparison {
    private static final Comparator<VerdictChange> ORDER = Comparator.<VerdictChange, Verdict>comparing(
                    change -> change.second().verdict())
            .thenComparing(change -> change.first().verdict(), Comparator.reverseOrder())
            .reversed()
            .thenComparing(change -> change.first().identity().words());

    private final JointSpecification first;
    private final JointSpecification second;
    private final Map<Verdict, Map<Verdict, Integer>> counts = new EnumMap<>(Verdict.class);
    private final List<VerdictChange> changes = new ArrayList<>();

    /**
     * A comparison without a trace yet.
     *
     * @param first the specification that stands
     * @param second the one that might
     */
    public SpecificationComparison(JointSpecification first, JointSpecification second) {
        this.first = first;
        this.second = second;
    }

    /**
     * Judges one trace by both.
     *
     * @param trace the trace
     */
    public void accept(Trace trace) {
        accept(Judge.judge(trace, first), Judge.judge(trace, second));
    }

    private void accept(Judgement byFirst, Judgement bySecond) {
        counts.computeIfAbsent(byFirst.verdict(), verdict -> new EnumMap<>(Verdict.class))
                .merge(bySecond.verdict(), 1, Integer::sum);
        if (byFirst.verdict() != bySecond.verdict()) {
            changes.add(new VerdictChange(byFirst, bySecond));
        }
    }

    /**
     * How many traces got two verdicts.
     *
     * @param byFirst the first specification's verdict
     * @param bySecond the second's
     * @return how many
     */
    public int count(Verdict byFirst, Verdict bySecond) {
        return counts.getOrDefault(byFirst, Map.of()).getOrDefault(bySecond, 0);
    }

    /** {@return how many traces were judged} */
    public int total() {
        return counts.values().stream()
                .flatMap(row -> row.values().stream())
                .mapToInt(Integer::intValue)
                .sum();
    }

    /** {@return the recordings whose verdict changes: those that get worse verdicts first} */
    public List<VerdictChange> changes() {
        return changes.stream().sorted(ORDER).toList();
    }

    /** {@return the engines with a changed verdict, in order} */
    public List<String> engines() {
        return changes.stream()
                .map(change -> change.first().identity().serial())
                .distinct()
                .sorted()
                .toList();
    }
}
