package org.tautlog.review;

import org.tautlog.joint.window.Band;
import org.tautlog.joint.window.Window;
import org.tautlog.signature.CurveFeature;
import org.tautlog.signature.Feature;
import org.tautlog.signature.Signature;

/** The features that a window limits, each with its place in a signature. */
public enum WindowFeature {
    /** Torque at the end of the snug stage. */
    SNUG_TORQUE(CurveFeature.SNUG_TORQUE),
    /** Turn past the snug point. */
    TURN(CurveFeature.TURN),
    /** Torque where the tool stopped. */
    FINAL_TORQUE(CurveFeature.FINAL_TORQUE),
    /** Slope of the elastic line. */
    TORQUE_RATE(CurveFeature.TORQUE_RATE),
    /** Torque of the free turning. */
    PREVAILING_TORQUE(CurveFeature.PREVAILING_TORQUE),
    /** Yield onset past the snug point; only of bolts that have one. */
    ONSET_PAST_SNUG(CurveFeature.ONSET_PAST_SNUG),
    /** Yield onset past the elastic origin; only of bolts that have one. */
    ONSET_PAST_ORIGIN(CurveFeature.ONSET_PAST_ORIGIN);

    private final CurveFeature feature;

    WindowFeature(CurveFeature feature) {
        this.feature = feature;
    }

    /** {@return its name in plain words} */
    public String title() {
        return feature.title();
    }

    /** {@return its unit} */
    public String unit() {
        return feature.unit();
    }

    /** {@return how many decimals say something} */
    public int decimals() {
        return feature.decimals();
    }

    /**
     * Its limits in a window.
     *
     * @param window the window
     * @return the limits, open where there are none
     */
    public Band limits(Window window) {
        return switch (this) {
            case SNUG_TORQUE -> window.snugTorqueNm();
            case TURN -> window.turnDeg();
            case FINAL_TORQUE -> window.finalTorqueNm();
            case TORQUE_RATE -> window.torqueRateNmPerDeg();
            case PREVAILING_TORQUE -> window.prevailingTorqueNm();
            case ONSET_PAST_SNUG -> window.onset().pastSnugDeg();
            case ONSET_PAST_ORIGIN -> window.onset().pastOriginDeg();
        };
    }

    Feature of(Signature signature) {
        return feature.of(signature);
    }
}
