package org.tautlog.intake.specification;

import static org.tautlog.intake.specification.WindowSection.line;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.tautlog.intake.toml.Quantity;
import org.tautlog.intake.toml.StrictTable;
import org.tautlog.joint.study.Factor;
import org.tautlog.joint.study.Spread;
import org.tautlog.problem.ProblemCode;

/**
 * The section {@code [tolerance]}: how far each factor strays from its mean, as <code>{ standard-deviation = 15.0, unit =
 * "MPa" }</code> or, where every value between two limits is equally likely, <code>{ plus-minus = 3.0, unit = "deg" }</code>.
 */
final class ToleranceSection {
    private static final double HALF_WIDTH_PER_DEVIATION = Math.sqrt(3);

    private ToleranceSection() {}

    static Optional<Map<Factor, Spread>> read(StrictTable table) {
        var spreads = new EnumMap<Factor, Spread>(Factor.class);
        for (var factor : Factor.values()) {
            table.optionalSection(key(factor))
                    .flatMap(inside -> spread(inside, factor))
                    .ifPresent(spread -> spreads.put(factor, spread));
        }
        return table.build(() -> spreads);
    }

    private static Optional<Spread> spread(StrictTable table, Factor factor) {
        double unit = quantity(factor).map(quantity -> table.unit(quantity)).orElse(1.0);
        var deviation = table.optionalNumber("standard-deviation");
        var halfWidth = table.optionalNumber("plus-minus");
        if (table.has("standard-deviation") == table.has("plus-minus")) {
            table.problem(
                    table.has("plus-minus") ? ProblemCode.BAD_VALUE : ProblemCode.MISSING_KEY,
                    "standard-deviation",
                    table.has("plus-minus")
                            ? "both 'standard-deviation' and 'plus-minus' are stated"
                            : "neither 'standard-deviation' nor 'plus-minus' is stated",
                    "one of the two",
                    "");
        }
        return table.build(() -> deviation.isPresent()
                ? Spread.normal(deviation.getAsDouble() * unit)
                : Spread.even(halfWidth.orElseThrow() * unit));
    }

    static void write(StringBuilder text, Map<Factor, Spread> spreads) {
        if (spreads.isEmpty()) {
            return;
        }
        text.append("\n[tolerance]\n");
        for (var entry : new EnumMap<>(spreads).entrySet()) {
            var spread = entry.getValue();
            var unit = quantity(entry.getKey())
                    .map(quantity -> ", unit = \"" + quantity.symbols().get(0) + '"')
                    .orElse("");
            var number = spread.shape() == Spread.Shape.NORMAL
                    ? "standard-deviation = " + spread.standardDeviation()
                    : "plus-minus = " + halfWidth(spread);
            line(text, key(entry.getKey()), "{ " + number + unit + " }");
        }
    }

    /** The half width that reads back as the same spread: rounding may have moved it by the last digit. */
    private static double halfWidth(Spread spread) {
        double about = spread.standardDeviation() * HALF_WIDTH_PER_DEVIATION;
        return Arrays.stream(new double[] {about, Math.nextUp(about), Math.nextDown(about)})
                .filter(width -> width >= 0 && Spread.even(width).equals(spread))
                .findFirst()
                .orElse(about);
    }

    private static String key(Factor factor) {
        return factor.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Optional<Quantity> quantity(Factor factor) {
        return switch (factor) {
            case YIELD_STRENGTH -> Optional.of(Quantity.STRESS);
            case SNUG_TORQUE -> Optional.of(Quantity.TORQUE);
            case TURN -> Optional.of(Quantity.ANGLE);
            case PITCH, LENGTH, SEATING -> Optional.of(Quantity.LENGTH);
            case BOLT_TEMPERATURE, LAYER_TEMPERATURE -> Optional.of(Quantity.TEMPERATURE_DIFFERENCE);
            case FRICTION, THREAD_FRICTION, UNDER_HEAD_FRICTION, BOLT_STIFFNESS, LAYER_STIFFNESS -> Optional.empty();
        };
    }
}
