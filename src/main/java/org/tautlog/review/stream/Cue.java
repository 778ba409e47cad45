package org.tautlog.review.stream;

import org.tautlog.signature.CurveFeature;
import org.tautlog.signature.Feature;
import org.tautlog.signature.Signature;

/** What of a curve tells causes apart. The estimated clamp load is none: it is worked out from others of these. */
public enum Cue {
    /** Torque of the free turning: only the transducer moves it among the causes. */
    PREVAILING_TORQUE(CurveFeature.PREVAILING_TORQUE),
    /** Turn from the first sample to the snug point: a scale of the angle shows in it more than anywhere. */
    RUNDOWN(CurveFeature.RUNDOWN),
    /** Highest torque of the snug stage. */
    SNUG_TORQUE(CurveFeature.SNUG_TORQUE),
    /** Slope of the elastic line. */
    TORQUE_RATE(CurveFeature.TORQUE_RATE),
    /** Turn past the snug point. */
    TURN(CurveFeature.TURN),
    /** Torque where the tool stopped. */
    FINAL_TORQUE(CurveFeature.FINAL_TORQUE),
    /** Slope at the stop over that of the elastic line: how near the bolt came to yield. */
    END_GRADIENT(CurveFeature.END_GRADIENT),
    /** How far the angle runs back after the stop: true torque over the drive's stiffness. */
    SPRING_BACK(CurveFeature.SPRING_BACK),
    /** Torque where the bolt begins to yield. */
    ONSET_TORQUE(CurveFeature.ONSET_TORQUE),
    /** Angle from the elastic origin to where the bolt begins to yield. */
    ONSET_ANGLE(CurveFeature.ONSET_PAST_ORIGIN);

    private final CurveFeature feature;

    Cue(CurveFeature feature) {
        this.feature = feature;
    }

    /** {@return the cue in words} */
    public String title() {
        return feature.title();
    }

    /** {@return its unit; empty for a ratio} */
    public String unit() {
        return feature.unit();
    }

    /** {@return with how many decimals it is told} */
    public int decimals() {
        return feature.decimals();
    }

    Feature of(Signature signature) {
        return feature.of(signature);
    }
}
