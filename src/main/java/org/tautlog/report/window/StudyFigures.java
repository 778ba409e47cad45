package org.tautlog.report.window;

import org.tautlog.joint.study.Quantity;
import org.tautlog.report.words.Figures;

/** The quantities of a study as readers see them: loads in kN, shares in percent, as many digits as say something. */
final class StudyFigures {
    private static final double N_PER_KN = 1000;
    private static final double PERCENT = 100;

    private StudyFigures() {}

    static String unit(Quantity quantity) {
        return switch (quantity.unit()) {
            case "N" -> "kN";
            case "" -> "%";
            default -> quantity.unit();
        };
    }

    static String of(Quantity quantity, double value) {
        return Figures.of(value * factor(quantity), decimals(quantity));
    }

    private static double factor(Quantity quantity) {
        return switch (quantity.unit()) {
            case "N" -> 1 / N_PER_KN;
            case "" -> PERCENT;
            default -> 1;
        };
    }

    private static int decimals(Quantity quantity) {
        return switch (quantity) {
            case TORQUE_RATE -> 4;
            case PLASTIC_STRAIN -> 3;
            case SNUG_PRELOAD -> 2;
            default -> 1;
        };
    }
}
