package org.tautlog.review.tuning;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tautlog.joint.window.ReadingRule;

/**
 * The rules that are tried: one list serves ratios and offsets, as no criterion reads both. The specification's own rule comes
 * first.
 */
final class RuleGrid {
    private static final int RATIOS = 81;
    private static final int OFFSETS = 90;

    private RuleGrid() {}

    static List<ReadingRule> around(ReadingRule present) {
        return Stream.concat(
                        Stream.of(present),
                        IntStream.range(0, OFFSETS)
                                .mapToObj(i -> with(present, (10 + Math.min(i, RATIOS - 1)) / 100.0, 1 + i)))
                .toList();
    }

    /** How many of the rules after the first differ by a criterion. */
    static int tried(OnsetCriterion criterion) {
        return criterion == OnsetCriterion.OFFSET ? OFFSETS : RATIOS;
    }

    /** Another onset; the ratios of the end state give way where they must lie beyond it. */
    static ReadingRule with(ReadingRule rule, double onsetRatio, double onsetOffsetDeg) {
        return new ReadingRule(
                rule.gradientSpanDeg(),
                onsetRatio,
                Math.max(rule.elasticRatio(), onsetRatio),
                Math.min(rule.plasticRatio(), onsetRatio),
                rule.snugHoldDeg(),
                onsetOffsetDeg);
    }
}
