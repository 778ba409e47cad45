package org.tautlog.joint.window;

/**
 * How a curve is read: spans and ratios that belong to the joint and are tuned on qualification bolts.
 *
 * @param gradientSpanDeg span of angle over which a local gradient is fitted, deg, 2 to 90; common practice 5 to 15 % of
 *     the elastic span
 * @param onsetRatio gradient ratio whose undercutting is the yield onset, 0.1 to 0.9; common practice 0.5
 * @param elasticRatio least gradient ratio at and above which the end state is elastic; at least the onset ratio
 * @param plasticRatio least gradient ratio at and below which the end state is plastic; at most the onset ratio
 * @param snugHoldDeg how far the torque must stay at or above the snug torque for the snug point to count, deg, 0 to 30
 * @param onsetOffsetDeg parallel offset of the elastic line for the second onset criterion, deg, 1 to 90
 */
public record ReadingRule(
        double gradientSpanDeg,
        double onsetRatio,
        double elasticRatio,
        double plasticRatio,
        double snugHoldDeg,
        double onsetOffsetDeg) {
    public ReadingRule {
        Check.within("gradientSpanDeg", gradientSpanDeg, 2.0, 90.0, "deg");
        Check.within("onsetRatio", onsetRatio, 0.1, 0.9, "a ratio");
        Check.within("elasticRatio", elasticRatio, onsetRatio, 1.0, "a ratio not below onsetRatio");
        Check.within("plasticRatio", plasticRatio, 0.0, onsetRatio, "a ratio not above onsetRatio");
        Check.within("snugHoldDeg", snugHoldDeg, 0.0, 30.0, "deg");
        Check.within("onsetOffsetDeg", onsetOffsetDeg, 1.0, 90.0, "deg");
    }

    /** {@return the rule used where a specification says nothing: 15 deg, 0.5, 0.67, 0.33, 2 deg, 10 deg} */
    public static ReadingRule withDefaults() {
        return new ReadingRule(15.0, 0.5, 0.67, 0.33, 2.0, 10.0);
    }
}
