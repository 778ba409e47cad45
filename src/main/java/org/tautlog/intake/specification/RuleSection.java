package org.tautlog.intake.specification;

import static org.tautlog.intake.specification.WindowSection.line;

import java.util.Optional;
import org.tautlog.intake.toml.Quantity;
import org.tautlog.intake.toml.StrictTable;
import org.tautlog.joint.window.FaultRule;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.problem.ProblemCode;

/** The sections {@code [reading]} and {@code [faults]}: every key may be left out and has its usual value then. */
final class RuleSection {
    private RuleSection() {}

    static Optional<ReadingRule> readReading(StrictTable table) {
        var usual = ReadingRule.withDefaults();
        double span = Measured.valueOr(table, "gradient-span", Quantity.ANGLE, usual.gradientSpanDeg());
        double onset = table.optionalNumber("onset-ratio").orElse(usual.onsetRatio());
        double elastic = table.optionalNumber("elastic-ratio").orElse(usual.elasticRatio());
        double plastic = table.optionalNumber("plastic-ratio").orElse(usual.plasticRatio());
        double hold = Measured.valueOr(table, "snug-hold", Quantity.ANGLE, usual.snugHoldDeg());
        double offset = Measured.valueOr(table, "onset-offset", Quantity.ANGLE, usual.onsetOffsetDeg());
        return table.build(() -> new ReadingRule(span, onset, elastic, plastic, hold, offset));
    }

    static Optional<FaultRule> readFaults(StrictTable table) {
        var usual = FaultRule.withDefaults();
        var rundown = table.has("rundown") ? Measured.band(table, "rundown", Quantity.ANGLE) : usual.rundownDeg();
        double alreadyTight = Measured.valueOr(table, "already-tight", Quantity.ANGLE, usual.alreadyTightDeg());
        double rundownTorque = table.optionalNumber("rundown-torque-share").orElse(usual.rundownTorqueShare());
        double seating = Measured.valueOr(table, "seating", Quantity.ANGLE, usual.seatingDeg());
        double stickSlip = table.optionalNumber("stick-slip-share").orElse(usual.stickSlipShare());
        double drop = table.optionalNumber("torque-drop-share").orElse(usual.torqueDropShare());
        double slip = Measured.valueOr(table, "angle-slip", Quantity.ANGLE, usual.angleSlipDeg());
        double jump = Measured.valueOr(table, "angle-jump", Quantity.ANGLE, usual.angleJumpDeg());
        double springBack = Measured.valueOr(table, "spring-back", Quantity.ANGLE, usual.springBackDeg());
        double fall = table.optionalNumber("fall-share").orElse(usual.fallShare());
        double stripped = table.optionalNumber("stripped-torque-share").orElse(usual.strippedTorqueShare());
        double cause = table.optionalNumber("cause-share").orElse(usual.causeShare());
        int saturated = count(table, "saturated-samples", usual.saturatedSamples());
        int least = count(table, "least-turn-samples", usual.leastTurnSamples());
        return table.build(() -> new FaultRule(
                rundown,
                alreadyTight,
                rundownTorque,
                seating,
                stickSlip,
                drop,
                slip,
                jump,
                springBack,
                fall,
                stripped,
                cause,
                saturated,
                least));
    }

    private static int count(StrictTable table, String key, int usual) {
        double number = table.optionalNumber(key).orElse(usual);
        if (number != Math.rint(number) || Math.abs(number) > Integer.MAX_VALUE) {
            table.problem(ProblemCode.BAD_VALUE, key, key + " is " + number, "a whole number of samples", "");
            return usual;
        }
        return (int) number;
    }

    static void write(StringBuilder text, ReadingRule reading) {
        text.append("\n[reading]\n");
        line(text, "gradient-span", degrees(reading.gradientSpanDeg()));
        line(text, "onset-ratio", String.valueOf(reading.onsetRatio()));
        line(text, "elastic-ratio", String.valueOf(reading.elasticRatio()));
        line(text, "plastic-ratio", String.valueOf(reading.plasticRatio()));
        line(text, "snug-hold", degrees(reading.snugHoldDeg()));
        line(text, "onset-offset", degrees(reading.onsetOffsetDeg()));
    }

    static void write(StringBuilder text, FaultRule faults) {
        text.append("\n[faults]\n");
        line(text, "rundown", Measured.write(faults.rundownDeg(), "deg"));
        line(text, "already-tight", degrees(faults.alreadyTightDeg()));
        line(text, "rundown-torque-share", String.valueOf(faults.rundownTorqueShare()));
        line(text, "seating", degrees(faults.seatingDeg()));
        line(text, "stick-slip-share", String.valueOf(faults.stickSlipShare()));
        line(text, "torque-drop-share", String.valueOf(faults.torqueDropShare()));
        line(text, "angle-slip", degrees(faults.angleSlipDeg()));
        line(text, "angle-jump", degrees(faults.angleJumpDeg()));
        line(text, "spring-back", degrees(faults.springBackDeg()));
        line(text, "fall-share", String.valueOf(faults.fallShare()));
        line(text, "stripped-torque-share", String.valueOf(faults.strippedTorqueShare()));
        line(text, "cause-share", String.valueOf(faults.causeShare()));
        line(text, "saturated-samples", String.valueOf(faults.saturatedSamples()));
        line(text, "least-turn-samples", String.valueOf(faults.leastTurnSamples()));
    }

    private static String degrees(double value) {
        return Measured.write("value", value, "deg");
    }
}
