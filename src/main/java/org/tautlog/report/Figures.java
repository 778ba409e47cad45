package org.tautlog.report;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.window.Band;
import org.tautlog.review.stream.ChartedFeature;
import org.tautlog.signature.Feature;

/** Numbers as readers see them: few digits, decimal points, a true minus sign, a dash where there is none. */
final class Figures {
    private static final String NONE = "–";

    private Figures() {}

    static String of(double value, int decimals) {
        var text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.replaceFirst("^-(?=0(\\.0*)?$)", "").replace('-', '−');
    }

    /** A difference with its sign, plus included. */
    static String signed(double value, int decimals) {
        var text = of(value, decimals);
        return value > 0 ? '+' + text : text;
    }

    static String of(@Nullable Double value, int decimals, String otherwise) {
        return value == null ? otherwise : of(value.doubleValue(), decimals);
    }

    static String of(@Nullable Double value, ChartedFeature feature) {
        return of(value, decimals(feature), NONE);
    }

    static String of(Feature feature, int decimals) {
        return feature.isFound() ? of(feature.number(), decimals) : NONE;
    }

    /** A feature beside its limits: where it misses one, with as many decimals as tell it from that. */
    static String of(Feature feature, Band limits, int decimals) {
        return feature.isFound() ? of(feature.number(), limits.decimals(feature.number(), decimals)) : NONE;
    }

    /** The limits of a band in words: {@code 345 to 375}, {@code at least 345}, empty where there are none. */
    static String of(Band band, int decimals) {
        if (band.hasLow() && band.hasHigh()) {
            return of(band.low(), decimals) + " to " + of(band.high(), decimals);
        }
        if (band.hasLow()) {
            return "at least " + of(band.low(), decimals);
        }
        return band.hasHigh() ? "at most " + of(band.high(), decimals) : "";
    }

    /** A share in percent; near 0 and near 1 with one more decimal, so that neither is shown where it is not. */
    static String percent(double share) {
        double toEnd = Math.min(share, 1 - share);
        return of(100 * share, toEnd > 0 && toEnd < 0.001 ? 2 : 1) + " %";
    }

    static int decimals(ChartedFeature feature) {
        return switch (feature) {
            case FINAL_TORQUE -> 1;
            case TORQUE_RATE -> 4;
            case TURN, ONSET_TORQUE, ONSET_ANGLE, CLAMP_LOAD, SPRING_BACK -> 1;
        };
    }

    static String count(long n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }
}
