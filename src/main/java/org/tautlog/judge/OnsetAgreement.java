package org.tautlog.judge;

import java.util.Locale;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.signature.EndState;
import org.tautlog.signature.Feature;

/**
 * The three criteria of the yield onset held beside each other. On one knee they lie apart by no more than they need to see it:
 *
 * <pre>
 * limit = onset offset + 2 gradient span + 3 u      deg
 * </pre>
 *
 * u is the standard uncertainty of the two angles together. Further apart, or one of them silent although the tool turned on
 * by more than the limit past another, the curve does not bend as a bolt does that begins to yield.
 * An end in the onset zone is no contradiction: there the offset is reached before the gradient has halved.
 *
 * <p>Source: none; on three published traces to yield the criteria lay 1 to 49 deg apart.
 */
final class OnsetAgreement {
    private static final double DEVIATIONS = 3;

    private OnsetAgreement() {}

    static void check(Sheet sheet) {
        var signature = sheet.signature();
        if (sheet.has(FindingCode.TRUNCATED)
                || sheet.has(FindingCode.STICK_SLIP)
                || sheet.has(FindingCode.TORQUE_DROP)
                || sheet.has(FindingCode.ANGLE_JUMP)
                || !signature.criteria().kneeGain().isFound()
                || !signature.end().angleDeg().isFound()) {
            return;
        }
        var byGradient = signature.onset().angleDeg();
        var byOffset = signature.criteria().offsetDeg();
        var byKnee = signature.criteria().kneeDeg();
        compare(sheet, "the gradient ratio", byGradient, "the angle offset", byOffset);
        compare(sheet, "the gradient ratio", byGradient, "the segmented fit", byKnee);
        compare(sheet, "the angle offset", byOffset, "the segmented fit", byKnee);
    }

    private static void compare(Sheet sheet, String oneName, Feature one, String otherName, Feature other) {
        if (sheet.has(FindingCode.ONSET_DISAGREES) || (!one.isFound() && !other.isFound())) {
            return;
        }
        boolean oneSilent = !one.isFound() || !other.isFound();
        if (oneSilent && sheet.signature().onset().endState() == EndState.ONSET_ZONE) {
            return;
        }
        double stopDeg = sheet.signature().end().angleDeg().number();
        double snugDeg = sheet.signature().snug().angleDeg().number();
        double oneDeg = one.isFound() ? one.number() : stopDeg;
        double otherDeg = other.isFound() ? other.number() : stopDeg;
        double reading = Math.hypot(one.standardUncertainty(), other.standardUncertainty());
        var rule = sheet.specification().reading();
        double limit = rule.onsetOffsetDeg() + 2 * rule.gradientSpanDeg() + DEVIATIONS * reading;
        double apart = Math.abs(oneDeg - otherDeg);
        if (apart > limit) {
            sheet.add(
                    FindingCode.ONSET_DISAGREES,
                    apart,
                    limit,
                    "deg",
                    "%s puts the yield onset %s, %s %s; on one knee they lie at most %.0f deg apart",
                    oneName,
                    words(one, snugDeg),
                    otherName,
                    words(other, snugDeg),
                    limit);
        }
    }

    private static String words(Feature feature, double snugDeg) {
        return feature.isFound()
                ? String.format(Locale.ROOT, "%.1f deg past the snug point", feature.number() - snugDeg)
                : "nowhere before the stop";
    }
}
