package org.tautlog.review;

import java.util.Objects;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.tautlog.review.shape.Landmarks;
import org.tautlog.signature.Signature;
import org.tautlog.trace.Curve;

/**
 * A curve thinned for drawing: first and last sample and the least and greatest torque of each stretch are kept, so that
 * no spike is lost.
 *
 * @param curve the thinned curve, at most {@value #MOST_POINTS} samples, on the recording's own angles
 * @param originDeg the elastic origin, deg, on the same angles; null where none was found
 * @param snugDeg the snug point, deg, on the same angles; null where none was found
 */
public record Outline(
        Curve curve, @Nullable Double originDeg, @Nullable Double snugDeg) {
    /** The most samples that an outline keeps. */
    public static final int MOST_POINTS = 300;

    /** What an outline counts its angle from. */
    public enum Zero {
        /** The elastic origin: no clamp load. */
        ELASTIC_ORIGIN,
        /** The snug point. */
        SNUG_POINT,
        /** The first sample, as nothing better is known. */
        FIRST_SAMPLE
    }

    public Outline {
        Objects.requireNonNull(curve, "curve");
        if (curve.size() > MOST_POINTS) {
            throw new IllegalArgumentException(
                    "an outline has " + curve.size() + " samples; it keeps at most " + MOST_POINTS);
        }
    }

    /**
     * Thins one curve.
     *
     * @param curve as recorded
     * @param signature what the curve says
     * @return its outline
     */
    public static Outline of(Curve curve, Signature signature) {
        return of(curve, Landmarks.of(signature));
    }

    /**
     * Thins one curve.
     *
     * @param curve as recorded
     * @param landmarks what it is laid over others by
     * @return its outline
     */
    public static Outline of(Curve curve, Landmarks landmarks) {
        return new Outline(thinned(curve), orNull(landmarks.originDeg()), orNull(landmarks.snugDeg()));
    }

    /** {@return the best angle to count from: the elastic origin, else the snug point, else the first sample} */
    public Zero best() {
        if (originDeg != null) {
            return Zero.ELASTIC_ORIGIN;
        }
        return snugDeg != null ? Zero.SNUG_POINT : Zero.FIRST_SAMPLE;
    }

    /**
     * The angle of a zero.
     *
     * @param zero which one
     * @return its angle, deg, on the recording's own angles; empty where it was not found
     */
    public OptionalDouble zeroDeg(Zero zero) {
        var angle = switch (zero) {
            case ELASTIC_ORIGIN -> originDeg;
            case SNUG_POINT -> snugDeg;
            case FIRST_SAMPLE -> Double.valueOf(curve.angleDeg(0));
        };
        return angle == null ? OptionalDouble.empty() : OptionalDouble.of(angle);
    }

    private static @Nullable Double orNull(double angleDeg) {
        return Double.isNaN(angleDeg) ? null : (Double) angleDeg;
    }

    private static Curve thinned(Curve curve) {
        int n = curve.size();
        if (n <= MOST_POINTS) {
            return curve;
        }
        int stretches = (MOST_POINTS - 2) / 2;
        var kept = new int[2 * stretches + 2];
        int count = 1;
        for (int s = 0; s < stretches; s++) {
            int from = 1 + (int) ((long) (n - 2) * s / stretches);
            int to = 1 + (int) ((long) (n - 2) * (s + 1) / stretches);
            int least = from;
            int greatest = from;
            for (int i = from; i < to; i++) {
                least = curve.torqueNm(i) < curve.torqueNm(least) ? i : least;
                greatest = curve.torqueNm(i) > curve.torqueNm(greatest) ? i : greatest;
            }
            kept[count++] = Math.min(least, greatest);
            if (least != greatest) {
                kept[count++] = Math.max(least, greatest);
            }
        }
        kept[count++] = n - 1;
        var angles = new double[count];
        var torques = new double[count];
        for (int i = 0; i < count; i++) {
            angles[i] = curve.angleDeg(kept[i]);
            torques[i] = curve.torqueNm(kept[i]);
        }
        return Curve.of(angles, torques);
    }
}
