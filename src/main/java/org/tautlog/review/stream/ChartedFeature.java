package org.tautlog.review.stream;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.tautlog.joint.window.Band;
import org.tautlog.joint.window.Window;
import org.tautlog.signature.CurveFeature;
import org.tautlog.signature.Feature;
import org.tautlog.signature.Signature;

/** What is charted for every stream. */
public enum ChartedFeature {
    /** Torque where the tool stopped. */
    FINAL_TORQUE(CurveFeature.FINAL_TORQUE, "finalTorqueNm", "final_torque_nm"),
    /** Slope of the elastic line. */
    TORQUE_RATE(CurveFeature.TORQUE_RATE, "torqueRateNmPerDeg", "torque_rate_nm_per_deg"),
    /** Turn past the snug point. */
    TURN(CurveFeature.TURN, "turnDeg", "turn_deg"),
    /** Torque where the bolt begins to yield. */
    ONSET_TORQUE(CurveFeature.ONSET_TORQUE, "onsetTorqueNm", "onset_torque_nm"),
    /** Angle from the elastic origin to where the bolt begins to yield. */
    ONSET_ANGLE(CurveFeature.ONSET_PAST_ORIGIN, "onsetFromOriginDeg", "onset_angle_deg", "elastic_origin_deg"),
    /** Estimated clamp load where the tool stopped. */
    CLAMP_LOAD(CurveFeature.CLAMP_LOAD, "clampLoadKN", "clamp_load_kn"),
    /** How far the angle runs back after the stop: the drive's twist, which alone tells a worn drive from a soft joint. */
    SPRING_BACK(CurveFeature.SPRING_BACK, "springBackDeg", "spring_back_deg");

    private final CurveFeature feature;
    private final String key;
    private final String column;
    private final String lessColumn;

    ChartedFeature(CurveFeature feature, String key, String column) {
        this(feature, key, column, "");
    }

    ChartedFeature(CurveFeature feature, String key, String column, String lessColumn) {
        this.feature = feature;
        this.key = key;
        this.column = column;
        this.lessColumn = lessColumn;
    }

    /** {@return the feature in words} */
    public String title() {
        return feature.title();
    }

    /** {@return its unit} */
    public String unit() {
        return feature.unit();
    }

    /** {@return its name in files, with its unit} */
    public String key() {
        return key;
    }

    /**
     * Reads the feature.
     *
     * @param signature what a curve says
     * @return the feature, found or missing
     */
    public Feature of(Signature signature) {
        return feature.of(signature);
    }

    /** {@return the columns of an archive that hold it} */
    List<String> columns() {
        return lessColumn.isEmpty() ? List.of(column) : List.of(column, lessColumn);
    }

    /** Reads it off columns; NaN where it is missing. */
    double of(ToDoubleFunction<String> numbers) {
        double number = numbers.applyAsDouble(column);
        return lessColumn.isEmpty() ? number : number - numbers.applyAsDouble(lessColumn);
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
            case ONSET_ANGLE -> window.onset().pastOriginDeg();
            case ONSET_TORQUE, CLAMP_LOAD, SPRING_BACK -> Band.open();
        };
    }
}
