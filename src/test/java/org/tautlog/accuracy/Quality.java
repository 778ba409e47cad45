package org.tautlog.accuracy;

import java.util.Locale;
import org.tautlog.signature.Feature;
import org.tautlog.signature.Signature;

/** What is read from a curve and compared with the truth. */
enum Quality {
    SNUG_ANGLE("snug angle", "deg", 1),
    TORQUE_RATE("torque rate", "%", 1),
    ELASTIC_ORIGIN("elastic origin", "deg", 5),
    ONSET_ANGLE("onset angle", "deg", 4),
    ONSET_TORQUE("onset torque", "%", 2),
    ONSET_BY_OFFSET("onset by offset", "deg", 40),
    ONSET_BY_KNEE("onset by knee", "deg", 10),
    STOP_ANGLE("angle at the stop", "deg", 1),
    CLAMP_LOAD("clamp load", "%", 12);

    final String title;
    final String unit;
    final double aim;

    Quality(String title, String unit, double aim) {
        this.title = title;
        this.unit = unit;
        this.aim = aim;
    }

    boolean ofOnset() {
        return switch (this) {
            case ONSET_ANGLE, ONSET_TORQUE, ONSET_BY_OFFSET, ONSET_BY_KNEE -> true;
            default -> false;
        };
    }

    Feature of(Signature signature) {
        return switch (this) {
            case SNUG_ANGLE -> signature.snug().angleDeg();
            case TORQUE_RATE -> signature.elastic().torqueRateNmPerDeg();
            case ELASTIC_ORIGIN -> signature.elastic().originDeg();
            case ONSET_ANGLE -> signature.onset().angleDeg();
            case ONSET_TORQUE -> signature.onset().torqueNm();
            case ONSET_BY_OFFSET -> signature.criteria().offsetDeg();
            case ONSET_BY_KNEE -> signature.criteria().kneeDeg();
            case STOP_ANGLE -> signature.end().angleDeg();
            case CLAMP_LOAD -> signature.clampLoad().loadKN();
        };
    }

    double truth(Known known) {
        return switch (this) {
            case SNUG_ANGLE -> known.snugDeg();
            case TORQUE_RATE -> known.rateNmPerDeg();
            case ELASTIC_ORIGIN -> known.originDeg();
            case ONSET_ANGLE, ONSET_BY_OFFSET, ONSET_BY_KNEE -> known.onsetDeg();
            case ONSET_TORQUE -> known.onsetNm();
            case STOP_ANGLE -> known.stopDeg();
            case CLAMP_LOAD -> known.loadKN();
        };
    }

    /** Read less true, in the quality's unit; NaN where there is no truth. */
    double error(Known known, Signature signature) {
        double right = truth(known);
        double off = of(signature).number() - right;
        return unit.equals("%") ? 100 * off / right : off;
    }

    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
