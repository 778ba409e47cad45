package org.tautlog.joint.study;

/** What the study looks at in each tightening. */
public enum Quantity {
    /** Torque at the snug point. */
    SNUG_TORQUE("snug torque", "N·m"),
    /** Clamp load at the snug point. */
    SNUG_PRELOAD("clamp load at snug", "N"),
    /** Turn past the snug point. */
    TURN("turn", "deg"),
    /** Torque at the end of the turn. */
    FINAL_TORQUE("final torque", "N·m"),
    /** Slope of the elastic line. */
    TORQUE_RATE("torque rate", "N·m/deg"),
    /** Angle of yield onset (gradient halved) past the elastic origin, whether the turn gets there or not. */
    ONSET_ANGLE("onset angle past origin", "deg"),
    /** Torque at yield onset (gradient halved), whether the turn gets there or not. */
    ONSET_TORQUE("onset torque", "N·m"),
    /** Clamp load at the end of the turn. */
    FINAL_PRELOAD("clamp load, tightened", "N"),
    /** Clamp load at the end of the turn over clamp load that reaches the yield strength without torsion. */
    YIELD_SHARE("share of yield in tension alone", ""),
    /** Clamp load hot, on the first warm-up. */
    HOT_PRELOAD("clamp load, hot", "N"),
    /** Clamp load cold again after the first warm-up. */
    COLD_PRELOAD("clamp load, cold after warm-up", "N"),
    /** Largest plastic strain of any section after the first warm-up. */
    PLASTIC_STRAIN("plastic strain", ""),
    /** Plastic strain over uniform elongation. */
    USED_ELONGATION("elongation used", "");

    private final String title;
    private final String unit;

    Quantity(String title, String unit) {
        this.title = title;
        this.unit = unit;
    }

    /**
     * Its name in plain words.
     *
     * @return such as {@code final torque}
     */
    public String title() {
        return title;
    }

    /**
     * Its unit.
     *
     * @return such as {@code N·m}; empty for a share
     */
    public String unit() {
        return unit;
    }
}
