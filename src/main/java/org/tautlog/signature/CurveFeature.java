package org.tautlog.signature;

/** What a curve is compared by: its words, its unit, how many decimals say something, and its place in a signature. */
public enum CurveFeature {
    /** Torque of the free turning. */
    PREVAILING_TORQUE("prevailing torque", "N·m", 2),
    /** Turn from the first sample to the snug point. */
    RUNDOWN("rundown to snug", "deg", 0),
    /** Torque at the end of the snug stage. */
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
    /** Angle from the snug point to where the bolt begins to yield; only of bolts that do. */
    ONSET_PAST_SNUG("onset angle past snug", "deg", 1),
    /** Angle from the elastic origin to where the bolt begins to yield; only of bolts that do. */
    ONSET_PAST_ORIGIN("onset angle past origin", "deg", 1),
    /** Estimated clamp load where the tool stopped. */
    CLAMP_LOAD("estimated clamp load", "kN", 1);

    private final String title;
    private final String unit;
    private final int decimals;

    CurveFeature(String title, String unit, int decimals) {
        this.title = title;
        this.unit = unit;
        this.decimals = decimals;
    }

    /** {@return its name in plain words} */
    public String title() {
        return title;
    }

    /** {@return its unit; empty for a ratio} */
    public String unit() {
        return unit;
    }

    /** {@return how many decimals say something} */
    public int decimals() {
        return decimals;
    }

    /**
     * Reads it.
     *
     * @param signature what a curve says
     * @return the feature, found or missing
     */
    public Feature of(Signature signature) {
        return switch (this) {
            case PREVAILING_TORQUE -> signature.prevailingTorqueNm();
            case RUNDOWN -> signature.marks().rundownDeg();
            case SNUG_TORQUE -> signature.snug().torqueNm();
            case TORQUE_RATE -> signature.elastic().torqueRateNmPerDeg();
            case TURN -> signature.end().turnDeg();
            case FINAL_TORQUE -> signature.end().torqueNm();
            case END_GRADIENT -> signature.onset().finalGradientRatio();
            case SPRING_BACK -> signature.marks().springBackDeg();
            case ONSET_TORQUE -> signature.onset().torqueNm();
            case ONSET_PAST_SNUG ->
                past(signature.onset().angleDeg(), signature.snug().angleDeg());
            case ONSET_PAST_ORIGIN ->
                past(signature.onset().angleDeg(), signature.elastic().originDeg());
            case CLAMP_LOAD -> signature.clampLoad().loadKN();
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
