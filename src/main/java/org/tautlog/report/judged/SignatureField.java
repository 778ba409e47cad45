package org.tautlog.report.judged;

import java.math.BigDecimal;
import java.util.Optional;
import org.tautlog.report.words.Rounded;
import org.tautlog.signature.Feature;
import org.tautlog.signature.Signature;

/** The numbers of a signature, each with the one name and the one rounding that JSON and CSV share. */
enum SignatureField {
    PREVAILING_TORQUE("prevailingTorqueNm", Digits.TORQUE),
    SNUG_ANGLE("snugAngleDeg", Digits.ANGLE),
    SNUG_TORQUE("snugTorqueNm", Digits.TORQUE),
    TURN("turnDeg", Digits.ANGLE),
    FINAL_TORQUE("finalTorqueNm", Digits.TORQUE),
    PEAK_TORQUE("peakTorqueNm", Digits.TORQUE),
    TORQUE_RATE("torqueRateNmPerDeg", Digits.RATE),
    ELASTIC_ORIGIN("elasticOriginDeg", Digits.ANGLE),
    YIELD_ONSET_ANGLE("yieldOnsetAngleDeg", Digits.ANGLE),
    YIELD_ONSET_TORQUE("yieldOnsetTorqueNm", Digits.TORQUE),
    MIN_GRADIENT_RATIO("minGradientRatio", Digits.RATIO),
    FINAL_GRADIENT_RATIO("finalGradientRatio", Digits.RATIO),
    PAST_ONSET("pastOnsetDeg", Digits.ANGLE),
    CLAMP_LOAD("clampLoadKN", Digits.LOAD),
    CLAMP_LOAD_LOW("clampLoadLowKN", Digits.LOAD),
    CLAMP_LOAD_HIGH("clampLoadHighKN", Digits.LOAD),
    APPARENT_FRICTION("apparentFriction", Digits.FRICTION),
    CLAMP_LOAD_AFTER_WARM_UP("clampLoadAfterWarmUpKN", Digits.LOAD),
    YIELD_ONSET_BY_OFFSET("yieldOnsetByOffsetDeg", Digits.ANGLE),
    YIELD_ONSET_BY_KNEE("yieldOnsetByKneeDeg", Digits.ANGLE),
    KNEE_GAIN("kneeGain", Digits.ANGLE),
    KNEE_RATIO("kneeRatio", Digits.RATIO),
    RUNDOWN("rundownDeg", Digits.ANGLE),
    SPRING_BACK("springBackDeg", Digits.ANGLE);

    /** Decimals written: finer than any uncertainty, coarse enough to read. */
    private static final class Digits {
        private static final int TORQUE = 3;
        private static final int ANGLE = 2;
        private static final int RATE = 5;
        private static final int RATIO = 3;
        private static final int LOAD = 2;
        private static final int FRICTION = 4;
    }

    private final String key;
    private final int decimals;

    SignatureField(String key, int decimals) {
        this.key = key;
        this.decimals = decimals;
    }

    String key() {
        return key;
    }

    /** The number as it is written, empty where the curve does not give it. */
    Optional<BigDecimal> written(Signature signature) {
        var feature = feature(signature);
        return feature.isFound() ? Optional.of(Rounded.of(feature.number(), decimals)) : Optional.empty();
    }

    /** Why the curve does not give the number, empty where it does. */
    String whyMissing(Signature signature) {
        return feature(signature).whyMissing();
    }

    private Feature feature(Signature signature) {
        return switch (this) {
            case PREVAILING_TORQUE -> signature.prevailingTorqueNm();
            case SNUG_ANGLE -> signature.snug().angleDeg();
            case SNUG_TORQUE -> signature.snug().torqueNm();
            case TURN -> signature.end().turnDeg();
            case FINAL_TORQUE -> signature.end().torqueNm();
            case PEAK_TORQUE -> signature.end().peakTorqueNm();
            case TORQUE_RATE -> signature.elastic().torqueRateNmPerDeg();
            case ELASTIC_ORIGIN -> signature.elastic().originDeg();
            case YIELD_ONSET_ANGLE -> signature.onset().angleDeg();
            case YIELD_ONSET_TORQUE -> signature.onset().torqueNm();
            case MIN_GRADIENT_RATIO -> signature.onset().minGradientRatio();
            case FINAL_GRADIENT_RATIO -> signature.onset().finalGradientRatio();
            case PAST_ONSET -> signature.onset().pastOnsetDeg();
            case CLAMP_LOAD -> signature.clampLoad().loadKN();
            case CLAMP_LOAD_LOW -> signature.clampLoad().lowKN();
            case CLAMP_LOAD_HIGH -> signature.clampLoad().highKN();
            case APPARENT_FRICTION -> signature.clampLoad().apparentFriction();
            case CLAMP_LOAD_AFTER_WARM_UP -> signature.clampLoad().afterWarmUpKN();
            case YIELD_ONSET_BY_OFFSET -> signature.criteria().offsetDeg();
            case YIELD_ONSET_BY_KNEE -> signature.criteria().kneeDeg();
            case KNEE_GAIN -> signature.criteria().kneeGain();
            case KNEE_RATIO -> signature.criteria().kneeRatio();
            case RUNDOWN -> signature.marks().rundownDeg();
            case SPRING_BACK -> signature.marks().springBackDeg();
        };
    }
}
