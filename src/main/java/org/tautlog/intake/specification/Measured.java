package org.tautlog.intake.specification;

import java.util.Optional;
import java.util.OptionalDouble;
import org.tautlog.intake.toml.Quantity;
import org.tautlog.intake.toml.StrictTable;
import org.tautlog.joint.window.Band;
import org.tautlog.problem.ProblemCode;

/** Values and limits with their unit: <code>{ target = 20.0, unit = "N·m" }</code>, <code>{ low = 18.0, high = 22.0, unit = "N·m" }</code>. */
final class Measured {
    /** What a window says that sets no limit on purpose. */
    static final String OPEN = "open";

    private Measured() {}

    static double value(StrictTable table, String key, String valueKey, Quantity quantity) {
        return table.section(key)
                .map(inside -> valueIn(inside, valueKey, quantity))
                .orElse(Double.NaN);
    }

    static double valueOr(StrictTable table, String key, Quantity quantity, double usual) {
        return table.has(key) ? value(table, key, "value", quantity) : usual;
    }

    private static double valueIn(StrictTable inside, String valueKey, Quantity quantity) {
        double number = inside.number(valueKey);
        double factor = inside.unit(quantity);
        return inside.build(() -> number * factor).orElse(Double.NaN);
    }

    static Band band(StrictTable table, String key, Quantity quantity) {
        if (table.isText(key)) {
            var word = table.text(key);
            if (!word.equals(OPEN)) {
                table.problem(
                        ProblemCode.BAD_VALUE,
                        key,
                        key + " is '" + word + "'",
                        "limits: { low = ..., high = ..., unit = ... }, or \"" + OPEN
                                + "\" where there are none on purpose",
                        "");
            }
            return Band.open();
        }
        return table.section(key)
                .flatMap(inside -> limits(inside, key, quantity))
                .orElse(Band.open());
    }

    private static Optional<Band> limits(StrictTable inside, String key, Quantity quantity) {
        double factor = inside.unit(quantity);
        var low = inside.optionalNumber("low");
        var high = inside.optionalNumber("high");
        if (!inside.has("low") && !inside.has("high")) {
            inside.problem(
                    ProblemCode.MISSING_KEY,
                    "low",
                    key + " has neither 'low' nor 'high'",
                    "",
                    "add one, or write " + key + " = \"" + OPEN + "\"");
        }
        if (low.isPresent() && high.isPresent() && low.getAsDouble() > high.getAsDouble()) {
            inside.problem(
                    ProblemCode.LIMITS_UPSIDE_DOWN,
                    "low",
                    "limits of " + key + " are upside down: low is " + low.getAsDouble() + ", high is "
                            + high.getAsDouble(),
                    "low not above high",
                    "exchange them");
        }
        return inside.build(() ->
                new Band(limit(low, factor, Double.NEGATIVE_INFINITY), limit(high, factor, Double.POSITIVE_INFINITY)));
    }

    private static double limit(OptionalDouble stated, double factor, double none) {
        return stated.isPresent() ? stated.getAsDouble() * factor : none;
    }

    static String write(String valueKey, double value, String unit) {
        return "{ " + valueKey + " = " + value + ", unit = \"" + unit + "\" }";
    }

    static String write(Band band, String unit) {
        if (!band.hasLow() && !band.hasHigh()) {
            return '"' + OPEN + '"';
        }
        return "{ " + (band.hasLow() ? "low = " + band.low() + ", " : "")
                + (band.hasHigh() ? "high = " + band.high() + ", " : "") + "unit = \"" + unit + "\" }";
    }
}
