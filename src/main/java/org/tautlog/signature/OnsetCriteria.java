package org.tautlog.signature;

import java.util.Objects;

/**
 * The yield onset by two further criteria, to be held beside the gradient's.
 *
 * @param offsetDeg where the torque falls below the elastic line shifted by a stated turn, and stays, deg, on the recording's
 *     own axis
 * @param kneeDeg where a line that bends once has lost the onset ratio's share of its slope, deg; missing where it never does
 * @param kneeGain by how much the line that bends fits better than a straight one, in units of the information criterion:
 *     above 10 there is a knee
 * @param kneeRatio gradient past that bend over the one before it, a ratio
 */
public record OnsetCriteria(Feature offsetDeg, Feature kneeDeg, Feature kneeGain, Feature kneeRatio) {
    /** The gain from which on there is a knee at all. Source: Kass and Raftery (1995): very strong evidence. */
    public static final double LEAST_GAIN = 10;

    private static final OnsetCriteria NOT_READ = none("only the gradient ratio was read");

    public OnsetCriteria {
        Objects.requireNonNull(offsetDeg, "offsetDeg");
        Objects.requireNonNull(kneeDeg, "kneeDeg");
        Objects.requireNonNull(kneeGain, "kneeGain");
        Objects.requireNonNull(kneeRatio, "kneeRatio");
    }

    /**
     * Criteria that say nothing.
     *
     * @param why the reason in words
     * @return criteria whose every feature is missing for that reason
     */
    public static OnsetCriteria none(String why) {
        var missing = Feature.missing(why);
        return new OnsetCriteria(missing, missing, missing, missing);
    }

    /** {@return criteria of a signature that was kept without them} */
    public static OnsetCriteria notRead() {
        return NOT_READ;
    }

    /** {@return whether the curve bends at all} */
    public boolean hasKnee() {
        return kneeGain.isFound() && kneeGain.number() > LEAST_GAIN;
    }
}
