package org.tautlog.review.shape;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.tautlog.signature.Feature;
import org.tautlog.signature.Signature;

/**
 * What a curve is laid over others by. Each is NaN where the curve does not show it.
 *
 * @param prevailingNm prevailing torque, N·m
 * @param rateNmPerDeg slope of the elastic line, N·m/deg
 * @param originDeg the elastic origin, deg, on the recording's own angles
 * @param snugDeg the snug point, deg, on the same angles
 * @param onsetDeg the yield onset, deg, on the same angles
 */
public record Landmarks(double prevailingNm, double rateNmPerDeg, double originDeg, double snugDeg, double onsetDeg) {
    private static final String PREVAILING = "prevailing_torque_nm";
    private static final String RATE = "torque_rate_nm_per_deg";
    private static final String ORIGIN = "elastic_origin_deg";
    private static final String SNUG = "snug_angle_deg";
    private static final String ONSET = "onset_angle_deg";

    /**
     * Reads them off a signature.
     *
     * @param signature what the curve says
     * @return its landmarks
     */
    public static Landmarks of(Signature signature) {
        return new Landmarks(
                number(signature.prevailingTorqueNm()),
                number(signature.elastic().torqueRateNmPerDeg()),
                number(signature.elastic().originDeg()),
                number(signature.snug().angleDeg()),
                number(signature.onset().angleDeg()));
    }

    /**
     * Reads them off the columns of an archive.
     *
     * @param numbers the numbers of a row by {@link #columns()}; NaN where one is missing
     * @return the landmarks of its curve
     */
    public static Landmarks of(ToDoubleFunction<String> numbers) {
        return new Landmarks(
                numbers.applyAsDouble(PREVAILING),
                numbers.applyAsDouble(RATE),
                numbers.applyAsDouble(ORIGIN),
                numbers.applyAsDouble(SNUG),
                numbers.applyAsDouble(ONSET));
    }

    /** {@return the columns of an archive that hold them} */
    public static List<String> columns() {
        return List.of(PREVAILING, RATE, ORIGIN, SNUG, ONSET);
    }

    private static double number(Feature feature) {
        return feature.isFound() ? feature.number() : Double.NaN;
    }
}
