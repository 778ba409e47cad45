package org.tautlog.archive.table;

import static org.tautlog.archive.table.Column.flag;
import static org.tautlog.archive.table.Column.number;
import static org.tautlog.archive.table.Column.text;
import static org.tautlog.archive.table.Column.whole;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.tautlog.signature.ClampLoad;
import org.tautlog.signature.ClampLoad.Basis;
import org.tautlog.signature.CurveMarks;
import org.tautlog.signature.ElasticLine;
import org.tautlog.signature.Feature;
import org.tautlog.signature.FinalPoint;
import org.tautlog.signature.OnsetCriteria;
import org.tautlog.signature.Signature;
import org.tautlog.signature.SnugPoint;
import org.tautlog.signature.YieldOnset;

/**
 * What a curve says, as columns. A feature takes three: its value, empty where it is missing; {@code _sd}, its standard
 * uncertainty in the same unit; {@code _missing}, why it is missing.
 */
final class SignatureColumns {
    private SignatureColumns() {}

    static <T> List<Column<T>> of(Function<T, Signature> signature) {
        var columns = new Columns<>(signature);
        columns.add(whole("samples", s -> s.samples()));
        columns.add(text("end_state", s -> s.onset().endState().word()));
        columns.feature("prevailing_torque_nm", s -> s.prevailingTorqueNm());
        columns.feature("snug_angle_deg", s -> s.snug().angleDeg());
        columns.feature("snug_torque_nm", s -> s.snug().torqueNm());
        columns.feature("torque_rate_nm_per_deg", s -> s.elastic().torqueRateNmPerDeg());
        columns.feature("elastic_origin_deg", s -> s.elastic().originDeg());
        columns.feature("elastic_residual_nm", s -> s.elastic().residualNm());
        columns.feature("onset_angle_deg", s -> s.onset().angleDeg());
        columns.feature("onset_torque_nm", s -> s.onset().torqueNm());
        columns.feature("min_gradient_ratio", s -> s.onset().minGradientRatio());
        columns.feature("final_gradient_ratio", s -> s.onset().finalGradientRatio());
        columns.feature("past_onset_deg", s -> s.onset().pastOnsetDeg());
        columns.feature("onset_by_offset_deg", s -> s.criteria().offsetDeg());
        columns.feature("onset_by_knee_deg", s -> s.criteria().kneeDeg());
        columns.feature("knee_gain", s -> s.criteria().kneeGain());
        columns.feature("knee_ratio", s -> s.criteria().kneeRatio());
        columns.feature("final_angle_deg", s -> s.end().angleDeg());
        columns.feature("final_torque_nm", s -> s.end().torqueNm());
        columns.feature("peak_torque_nm", s -> s.end().peakTorqueNm());
        columns.feature("turn_deg", s -> s.end().turnDeg());
        columns.feature("noise_nm", s -> s.marks().noiseNm());
        columns.feature("rundown_deg", s -> s.marks().rundownDeg());
        columns.feature("rundown_peak_nm", s -> s.marks().rundownPeakNm());
        columns.feature("rundown_spread_nm", s -> s.marks().rundownSpreadNm());
        columns.feature("seating_deg", s -> s.marks().seatingDeg());
        columns.feature("snug_lost_deg", s -> s.marks().snugLostDeg());
        columns.feature("snug_gradient_ratio", s -> s.marks().snugGradientRatio());
        columns.feature("rise_to_snug_nm_per_deg", s -> s.marks().riseToSnugNmPerDeg());
        columns.feature("stick_slip_nm", s -> s.marks().stickSlipNm());
        columns.feature("torque_drop_nm", s -> s.marks().torqueDropNm());
        columns.feature("torque_drop_at_deg", s -> s.marks().torqueDropAtDeg());
        columns.feature("angle_slip_deg", s -> s.marks().angleSlipDeg());
        columns.feature("angle_slip_at_deg", s -> s.marks().angleSlipAtDeg());
        columns.feature("angle_jump_deg", s -> s.marks().angleJumpDeg());
        columns.feature("spring_back_deg", s -> s.marks().springBackDeg());
        columns.feature("first_torque_nm", s -> s.marks().firstTorqueNm());
        columns.add(whole("turn_samples", s -> s.marks().turnSamples()));
        columns.add(whole("pauses", s -> s.marks().pauses()));
        columns.add(whole("back_steps", s -> s.marks().backSteps()));
        columns.add(whole("saturated_samples", s -> s.marks().saturatedSamples()));
        columns.add(flag("ends_running", s -> s.marks().endsRunning()));
        columns.add(flag("duplicated", s -> s.marks().duplicated()));
        columns.add(text("clamp_load_basis", s -> word(s.clampLoad().basis())));
        columns.feature("clamp_load_kn", s -> s.clampLoad().loadKN());
        columns.feature("clamp_load_low_kn", s -> s.clampLoad().lowKN());
        columns.feature("clamp_load_high_kn", s -> s.clampLoad().highKN());
        columns.feature("apparent_friction", s -> s.clampLoad().apparentFriction());
        columns.feature("clamp_load_after_warm_up_kn", s -> s.clampLoad().afterWarmUpKN());
        return columns.list;
    }

    static Signature signature(Row row) {
        return new Signature(
                row.whole("samples"),
                row.feature("prevailing_torque_nm"),
                new SnugPoint(row.feature("snug_angle_deg"), row.feature("snug_torque_nm")),
                new ElasticLine(
                        row.feature("torque_rate_nm_per_deg"),
                        row.feature("elastic_origin_deg"),
                        row.feature("elastic_residual_nm")),
                new YieldOnset(
                        row.feature("onset_angle_deg"),
                        row.feature("onset_torque_nm"),
                        row.feature("min_gradient_ratio"),
                        row.feature("final_gradient_ratio"),
                        row.feature("past_onset_deg"),
                        Words.END_STATE.read(row.text("end_state"))),
                new FinalPoint(
                        row.feature("final_angle_deg"),
                        row.feature("final_torque_nm"),
                        row.feature("peak_torque_nm"),
                        row.feature("turn_deg")),
                marks(row),
                new OnsetCriteria(
                        row.feature("onset_by_offset_deg"),
                        row.feature("onset_by_knee_deg"),
                        row.feature("knee_gain"),
                        row.feature("knee_ratio")),
                clampLoad(row));
    }

    private static CurveMarks marks(Row row) {
        return new CurveMarks(
                row.feature("noise_nm"),
                row.feature("rundown_deg"),
                row.feature("rundown_peak_nm"),
                row.feature("rundown_spread_nm"),
                row.feature("seating_deg"),
                row.feature("snug_lost_deg"),
                row.feature("snug_gradient_ratio"),
                row.feature("rise_to_snug_nm_per_deg"),
                row.feature("stick_slip_nm"),
                row.feature("torque_drop_nm"),
                row.feature("torque_drop_at_deg"),
                row.feature("angle_slip_deg"),
                row.feature("angle_slip_at_deg"),
                row.feature("angle_jump_deg"),
                row.feature("spring_back_deg"),
                row.feature("first_torque_nm"),
                row.whole("turn_samples"),
                row.whole("pauses"),
                row.whole("back_steps"),
                row.whole("saturated_samples"),
                row.flag("ends_running"),
                row.flag("duplicated"));
    }

    private static ClampLoad clampLoad(Row row) {
        return new ClampLoad(
                Words.BASIS.read(row.text("clamp_load_basis")),
                row.feature("clamp_load_kn"),
                row.feature("clamp_load_low_kn"),
                row.feature("clamp_load_high_kn"),
                row.feature("apparent_friction"),
                row.feature("clamp_load_after_warm_up_kn"));
    }

    static String word(Basis basis) {
        return basis.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Columns of a signature, as columns of the row that holds it. */
    private static final class Columns<T> {
        private final List<Column<T>> list = new ArrayList<>();
        private final Function<T, Signature> signature;

        Columns(Function<T, Signature> signature) {
            this.signature = signature;
        }

        void add(Column<Signature> column) {
            list.add(new Column<>(
                    column.name(), column.type(), row -> column.value().apply(signature.apply(row))));
        }

        void feature(String name, Function<Signature, Feature> feature) {
            add(number(name, s -> feature.apply(s).isFound() ? feature.apply(s).number() : null));
            add(number(name + "_sd", s -> feature.apply(s).standardUncertainty()));
            add(text(
                    name + "_missing",
                    s -> feature.apply(s).isFound() ? null : feature.apply(s).whyMissing()));
        }
    }
}
