package org.tautlog.review;

import org.tautlog.joint.window.Band;
import org.tautlog.joint.window.Window;
import org.tautlog.signature.Feature;
import org.tautlog.signature.Signature;

/** The features that a window limits, each with its place in a signature. */
public enum WindowFeature {
    /** Torque at the end of the snug stage. */
    SNUG_TORQUE("snug torque", "N·m", 2),
    /** Turn past the snug point. */
    TURN("turn", "deg", 1),
    /** Torque where the tool stopped. */
    FINAL_TORQUE("final torque", "N·m", 2),
    /** Slope of the elastic line. */
    TORQUE_RATE("torque rate", "N·m/deg", 4),
    /** Torque of the free turning. */
    PREVAILING_TORQUE("prevailing torque", "N·m", 2),
    /** Yield onset past the snug point; only of bolts that have one. */
    ONSET_PAST_SNUG("onset past snug", "deg", 1),
    /** Yield onset past the elastic origin; only of bolts that have one. */
    ONSET_PAST_ORIGIN("onset past origin", "deg", 1);

    private final String title;
    private final String unit;
    private final int decimals;

    WindowFeature(String title, String unit, int decimals) {
        this.title = title;
        this.unit = unit;
        this.decimals = decimals;
    }

    /** {@return its name in plain words} */
    public String title() {
        return title;
    }

    /** {@return its unit} */
    public String unit() {
        return unit;
    }

    /** {@return how many decimals say something} */
    public int decimals() {
        return decimals;
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
        return switch (this) {
            case SNUG_TORQUE -> signature.snug().torqueNm();
            case TURN -> signature.end().turnDeg();
            case FINAL_TORQUE -> signature.end().torqueNm();
            case TORQUE_RATE -> signature.elastic().torqueRateNmPerDeg();
            case PREVAILING_TORQUE -> signature.prevailingTorqueNm();
            case ONSET_PAST_SNUG ->
                past(signature.onset().angleDeg(), signature.snug().angleDeg());
            case ONSET_PAST_ORIGIN ->
                past(signature.onset().angleDeg(), signature.elastic().originDeg());
        };
    }

    private static Feature past(Feature angle, Feature zero) {
        if (!angle.isFound() || !zero.isFound()) {
            return angle.isFound() ? zero : angle;
        }
        return Feature.of(
                angle.number() - zero.number(), Math.hypot(angle.standardUncertainty(), zero.standardUncertainty()));
    }
}
