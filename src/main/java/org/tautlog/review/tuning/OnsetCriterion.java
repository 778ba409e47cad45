package org.tautlog.review.tuning;

import org.tautlog.joint.window.ReadingRule;
import org.tautlog.signature.Feature;
import org.tautlog.signature.Signature;

/** By what a curve's yield onset is read. */
public enum OnsetCriterion {
    /** The local gradient falls below a share of the torque rate; the window's own criterion. */
    GRADIENT("gradient ratio", "onset-ratio", "", 0.01),
    /** A line that bends once has lost that share of its slope; it takes its share from the same key. */
    KNEE("knee of a bent line", "onset-ratio", "", 0.01),
    /** The torque falls behind the elastic line by a turn. */
    OFFSET("offset of the elastic line", "onset-offset", "deg", 1);

    private final String title;
    private final String key;
    private final String unit;
    private final double step;

    OnsetCriterion(String title, String key, String unit, double step) {
        this.title = title;
        this.key = key;
        this.unit = unit;
        this.step = step;
    }

    /** {@return its name in plain words} */
    public String title() {
        return title;
    }

    /** {@return the key of its threshold under {@code [reading]}} */
    public String key() {
        return key;
    }

    /** {@return the threshold's unit; empty for a ratio} */
    public String unit() {
        return unit;
    }

    /** {@return the distance of two thresholds that are tried, in their unit} */
    public double step() {
        return step;
    }

    double threshold(ReadingRule rule) {
        return this == OFFSET ? rule.onsetOffsetDeg() : rule.onsetRatio();
    }

    Feature onsetDeg(Signature signature) {
        return switch (this) {
            case GRADIENT -> signature.onset().angleDeg();
            case KNEE -> signature.criteria().kneeDeg();
            case OFFSET -> signature.criteria().offsetDeg();
        };
    }
}
