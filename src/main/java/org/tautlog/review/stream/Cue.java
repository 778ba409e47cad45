package org.tautlog.review.stream;

import org.tautlog.signature.Feature;
import org.tautlog.signature.Signature;

/** What of a curve tells causes apart. The estimated clamp load is none: it is worked out from others of these. */
public enum Cue {
    /** Torque of the free turning: only the transducer moves it among the causes. */
    PREVAILING_TORQUE("prevailing torque", "N·m", 2),
    /** Turn from the first sample to the snug point: a scale of the angle shows in it more than anywhere. */
    RUNDOWN("rundown to snug", "deg", 0),
    /** Highest torque of the snug stage. */
    SNUG_TORQUE("snug torque", "N·m", 2),
    /** Slope of the elastic line. */
    TORQUE_RATE("torque rate", "N·m/deg", 4),
    /** Turn past the snug point. */
    TURN("turn past snug", "deg", 1),
    /** Torque where the tool stopped. */
    FINAL_TORQUE("final torque", "N·m", 2),
    /** Slope at the stop over that of the elastic line: how near the bolt came to yield. */
    END_GRADIENT("gradient ratio at the stop", "", 2),
    /** How far the angle runs back after the stop: true torque over the drive's stiffness. */
    SPRING_BACK("spring-back", "deg", 2),
    /** Torque where the bolt begins to yield. */
    ONSET_TORQUE("onset torque", "N·m", 1),
    /** Angle from the elastic origin to where the bolt begins to yield. */
    ONSET_ANGLE("onset angle from origin", "deg", 0);

    private final String title;
    private final String unit;
    private final int decimals;

    Cue(String title, String unit, int decimals) {
        this.title = title;
        this.unit = unit;
        this.decimals = decimals;
    }

    /** {@return the cue in words} */
    public String title() {
        return title;
    }

    /** {@return its unit; empty for a ratio} */
    public String unit() {
        return unit;
    }

    /** {@return with how many decimals it is told} */
    public int decimals() {
        return decimals;
    }

    Feature of(Signature signature) {
        return switch (this) {
            case PREVAILING_TORQUE -> signature.prevailingTorqueNm();
            case RUNDOWN -> signature.marks().rundownDeg();
            case SNUG_TORQUE -> signature.snug().torqueNm();
            case TORQUE_RATE -> ChartedFeature.TORQUE_RATE.of(signature);
            case TURN -> ChartedFeature.TURN.of(signature);
            case FINAL_TORQUE -> ChartedFeature.FINAL_TORQUE.of(signature);
            case END_GRADIENT -> signature.onset().finalGradientRatio();
            case SPRING_BACK -> ChartedFeature.SPRING_BACK.of(signature);
            case ONSET_TORQUE -> ChartedFeature.ONSET_TORQUE.of(signature);
            case ONSET_ANGLE -> ChartedFeature.ONSET_ANGLE.of(signature);
        };
    }
}
