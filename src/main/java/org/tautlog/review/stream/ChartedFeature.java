package org.tautlog.review;

import org.tautlog.joint.window.Band;
import org.tautlog.joint.window.Window;
import org.tautlog.signature.Feature;
import org.tautlog.signature.Signature;

/** What is charted for every stream. */
public enum ChartedFeature {
    /** Torque where the tool stopped. */
    FINAL_TORQUE("final torque", "N·m"),
    /** Slope of the elastic line. */
    TORQUE_RATE("torque rate", "N·m/deg"),
    /** Turn past the snug point. */
    TURN("turn past snug", "deg");

    private final String title;
    private final String unit;

    ChartedFeature(String title, String unit) {
        this.title = title;
        this.unit = unit;
    }

    /** {@return the feature in words} */
    public String title() {
        return title;
    }

    /** {@return its unit} */
    public String unit() {
        return unit;
    }

    /**
     * Reads the feature.
     *
     * @param signature what a curve says
     * @return the feature, found or missing
     */
    public Feature of(Signature signature) {
        return switch (this) {
            case FINAL_TORQUE -> signature.end().torqueNm();
            case TORQUE_RATE -> signature.elastic().torqueRateNmPerDeg();
            case TURN -> signature.end().turnDeg();
        };
    }

    /**
     * The window's limits of the feature.
     *
     * @param window the limits of a specification
     * @return those of this feature
     */
    public Band limits(Window window) {
        return switch (this) {
            case FINAL_TORQUE -> window.finalTorqueNm();
            case TORQUE_RATE -> window.torqueRateNmPerDeg();
            case TURN -> window.turnDeg();
        };
    }
}
