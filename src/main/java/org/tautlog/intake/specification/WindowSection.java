package org.tautlog.intake.specification;

import java.util.Optional;
import org.tautlog.intake.toml.Quantity;
import org.tautlog.intake.toml.StrictTable;
import org.tautlog.joint.window.OnsetLimits;
import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.joint.window.Window;

/** The sections {@code [method]}, {@code [window]} and {@code [window.onset]}. */
final class WindowSection {
    private WindowSection() {}

    static Optional<TighteningMethod> readMethod(StrictTable table) {
        double snugTorqueNm = Measured.value(table, "snug-torque", "target", Quantity.TORQUE);
        double turnDeg = Measured.value(table, "turn", "target", Quantity.ANGLE);
        return table.build(() -> new TighteningMethod(snugTorqueNm, turnDeg));
    }

    static Optional<Window> read(StrictTable table) {
        var snugTorque = Measured.band(table, "snug-torque", Quantity.TORQUE);
        var turn = Measured.band(table, "turn", Quantity.ANGLE);
        var finalTorque = Measured.band(table, "final-torque", Quantity.TORQUE);
        var torqueRate = Measured.band(table, "torque-rate", Quantity.TORQUE_RATE);
        var prevailing = Measured.band(table, "prevailing-torque", Quantity.TORQUE);
        var onset = table.section("onset").flatMap(WindowSection::readOnset);
        return table.build(
                () -> new Window(snugTorque, turn, finalTorque, torqueRate, prevailing, onset.orElseThrow()));
    }

    private static Optional<OnsetLimits> readOnset(StrictTable table) {
        var pastSnug = Measured.band(table, "past-snug", Quantity.ANGLE);
        var pastOrigin = Measured.band(table, "past-origin", Quantity.ANGLE);
        double leastRatio = table.number("least-final-gradient-ratio");
        return table.build(() -> new OnsetLimits(pastSnug, pastOrigin, leastRatio));
    }

    static void write(StringBuilder text, TighteningMethod method, Window window) {
        text.append("\n[method]\n");
        line(text, "snug-torque", Measured.write("target", method.snugTorqueNm(), "N·m"));
        line(text, "turn", Measured.write("target", method.turnDeg(), "deg"));
        text.append("\n[window]\n");
        line(text, "snug-torque", Measured.write(window.snugTorqueNm(), "N·m"));
        line(text, "turn", Measured.write(window.turnDeg(), "deg"));
        line(text, "final-torque", Measured.write(window.finalTorqueNm(), "N·m"));
        line(text, "torque-rate", Measured.write(window.torqueRateNmPerDeg(), "N·m/deg"));
        line(text, "prevailing-torque", Measured.write(window.prevailingTorqueNm(), "N·m"));
        text.append("\n[window.onset]\n");
        line(text, "past-snug", Measured.write(window.onset().pastSnugDeg(), "deg"));
        line(text, "past-origin", Measured.write(window.onset().pastOriginDeg(), "deg"));
        line(text, "least-final-gradient-ratio", String.valueOf(window.onset().leastFinalGradientRatio()));
    }

    static void line(StringBuilder text, String key, String value) {
        text.append(key).append(" = ").append(value).append('\n');
    }
}
