package org.tautlog.report.words;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.window.Band;
import org.tautlog.review.stream.ChartedFeature;
import org.tautlog.signature.Feature;

/** Numbers as readers see them: few digits, decimal points, a true minus sign, a dash where there is none. */
public final class Figures {
    private static final String NONE = "–";

    private Figures() {}

    /**
     * {@return a number with its decimals, {@code −0.12}; never a minus before nothing but zeros}
     *
     * @param value the number
     * @param decimals digits after the point; at least 0
     */
    public static String of(double value, int decimals) {
        var text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.replaceFirst("^-(?=0(\\.0*)?$)", "").replace('-', '−');
    }

    /**
     * {@return a difference with its sign, plus included}
     *
     * @param value the difference
     * @param decimals digits after the point; at least 0
     */
    public static String signed(double value, int decimals) {
        var text = of(value, decimals);
        return value > 0 ? '+' + text : text;
    }

    /**
     * {@return a number with its decimals, or other words where there is none}
     *
     * @param value the number; null where there is none
     * @param decimals digits after the point; at least 0
     * @param otherwise what stands for no number
     */
    public static String of(@Nullable Double value, int decimals, String otherwise) {
        return value == null ? otherwise : of(value.doubleValue(), decimals);
    }

    /**
     * {@return a number with the decimals of its feature, a dash where there is none}
     *
     * @param value the number in the unit of the feature; null where there is none
     * @param feature what it measures
     */
    public static String of(@Nullable Double value, ChartedFeature feature) {
        return of(value, decimals(feature), NONE);
    }

    /**
     * {@return the number of a feature, a dash where the curve does not give it}
     *
     * @param feature the feature
     * @param decimals digits after the point; at least 0
     */
    public static String of(Feature feature, int decimals) {
        return feature.isFound() ? of(feature.number(), decimals) : NONE;
    }

    /**
     * {@return a feature beside its limits: where it misses one, with as many decimals as tell it from that; a dash where the
     * curve does not give it}
     *
     * @param feature the feature
     * @param limits its limits
     * @param decimals digits after the point where it keeps the limits; at least 0
     */
    public static String of(Feature feature, Band limits, int decimals) {
        return feature.isFound() ? of(feature.number(), limits.decimals(feature.number(), decimals)) : NONE;
    }

    /**
     * {@return the limits of a band in words: {@code 345 to 375}, {@code at least 345}, empty where there are none}
     *
     * @param band the limits
     * @param decimals digits after the point; at least 0
     */
    public static String of(Band band, int decimals) {
        if (band.hasLow() && band.hasHigh()) {
            return of(band.low(), decimals) + " to " + of(band.high(), decimals);
        }
        if (band.hasLow()) {
            return "at least " + of(band.low(), decimals);
        }
        return band.hasHigh() ? "at most " + of(band.high(), decimals) : "";
    }

    /**
     * {@return a share in percent; near 0 and near 1 with one more decimal, so that neither is shown where it is not}
     *
     * @param share the share; 0 to 1
     */
    public static String percent(double share) {
        double toEnd = Math.min(share, 1 - share);
        return of(100 * share, toEnd > 0 && toEnd < 0.001 ? 2 : 1) + " %";
    }

    /**
     * {@return how many digits after the point of a feature say something}
     *
     * @param feature the feature
     */
    public static int decimals(ChartedFeature feature) {
        return switch (feature) {
            case FINAL_TORQUE -> 1;
            case TORQUE_RATE -> 4;
            case TURN, ONSET_TORQUE, ONSET_ANGLE, CLAMP_LOAD, SPRING_BACK -> 1;
        };
    }

    /**
     * {@return how many, with their noun: {@code 1 bolt}, {@code 8 bolts}}
     *
     * @param n how many
     * @param one the noun of one
     * @param many the noun of any other number
     */
    public static String count(long n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }
}
