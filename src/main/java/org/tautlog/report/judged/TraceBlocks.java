package org.tautlog.report.judged;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.tautlog.trace.Curve;

/** A curve drawn with block characters for a terminal: torque upwards over angle, in eighths of a line. */
public final class TraceBlocks {
    /** Fewest columns that a drawing takes. */
    public static final int NARROWEST = 30;

    private static final String EIGHTHS = " ▁▂▃▄▅▆▇█";
    private static final int LABEL = 11;
    private static final int STEPS = 8;

    private TraceBlocks() {}

    /**
     * Draws a curve.
     *
     * @param curve the curve
     * @param width columns of the terminal, at least {@link #NARROWEST}
     * @param height lines of the drawing without its axis, at least 2
     * @return lines without their ends, none wider than the width
     */
    public static List<String> lines(Curve curve, int width, int height) {
        if (width < NARROWEST || height < 2) {
            throw new IllegalArgumentException(
                    "width is " + width + ", height is " + height + "; at least " + NARROWEST + " by 2 are needed");
        }
        int columns = width - LABEL - 1;
        var torque = torqueOver(curve, columns);
        double low = Math.min(0, Arrays.stream(torque).min().orElse(0));
        double high = Arrays.stream(torque).max().orElse(0);
        double perStep = high > low ? (high - low) / (height * STEPS) : 1;
        var lines = new ArrayList<String>();
        for (int row = height - 1; row >= 0; row--) {
            var line = new StringBuilder(
                    row == height - 1 ? label(high, " N·m") : row == 0 ? label(low, " N·m") : " ".repeat(LABEL));
            line.append('│');
            for (double value : torque) {
                long steps = Math.round((value - low) / perStep) - (long) row * STEPS;
                line.append(EIGHTHS.charAt((int) Math.max(0, Math.min(STEPS, steps))));
            }
            lines.add(line.toString().stripTrailing());
        }
        var left = String.format(Locale.ROOT, "%.0f", least(curve));
        var right = String.format(Locale.ROOT, "%.0f deg", most(curve));
        lines.add(" ".repeat(LABEL) + '└' + "─".repeat(columns));
        lines.add(" ".repeat(LABEL + 1)
                + left
                + " ".repeat(Math.max(1, columns - left.length() - right.length()))
                + right);
        return List.copyOf(lines);
    }

    /** The highest torque in each column's piece of angle; where no sample falls into it, what was before. */
    private static double[] torqueOver(Curve curve, int columns) {
        double from = least(curve);
        double span = Math.max(most(curve) - from, Double.MIN_NORMAL);
        var highest = new double[columns];
        Arrays.fill(highest, Double.NaN);
        for (int i = 0; i < curve.size(); i++) {
            int column = (int) Math.min(columns - 1, Math.floor((curve.angleDeg(i) - from) / span * columns));
            double before = highest[column];
            highest[column] = Double.isNaN(before) ? curve.torqueNm(i) : Math.max(before, curve.torqueNm(i));
        }
        for (int i = 1; i < columns; i++) {
            highest[i] = Double.isNaN(highest[i]) ? highest[i - 1] : highest[i];
        }
        return highest;
    }

    private static double least(Curve curve) {
        double least = curve.angleDeg(0);
        for (int i = 1; i < curve.size(); i++) {
            least = Math.min(least, curve.angleDeg(i));
        }
        return least;
    }

    private static double most(Curve curve) {
        double most = curve.angleDeg(0);
        for (int i = 1; i < curve.size(); i++) {
            most = Math.max(most, curve.angleDeg(i));
        }
        return most;
    }

    private static String label(double value, String unit) {
        var number = String.format(Locale.ROOT, Math.abs(value) < 10_000 ? "%.1f" : "%.0e", value) + unit;
        return String.format(Locale.ROOT, "%" + LABEL + "s", number);
    }
}
