package org.tautlog.intake.toml;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.tautlog.trace.AngleUnit;
import org.tautlog.trace.TorqueUnit;

/** A physical quantity whose unit a file states; values are converted once, on reading. */
public enum Quantity {
    /** Torque, read into N·m. */
    TORQUE("torque"),
    /** Angle, read into deg. */
    ANGLE("angle"),
    /** Torque over angle, read into N·m/deg. */
    TORQUE_RATE("torque rate"),
    /** Time, read into s. */
    TIME("time");

    private final String words;

    Quantity(String words) {
        this.words = words;
    }

    /** {@return the quantity in words} */
    public String words() {
        return words;
    }

    /**
     * The factor of a unit.
     *
     * @param unit the unit as a person writes it
     * @return how many N·m, deg, N·m/deg or s one of it is; empty where it is no unit of this quantity
     */
    public OptionalDouble factor(String unit) {
        return switch (this) {
            case TORQUE -> {
                var found = TorqueUnit.parse(unit);
                yield found.isPresent() ? OptionalDouble.of(found.get().factorToNm()) : OptionalDouble.empty();
            }
            case ANGLE -> {
                var found = AngleUnit.parse(unit);
                yield found.isPresent() ? OptionalDouble.of(found.get().factorToDeg()) : OptionalDouble.empty();
            }
            case TORQUE_RATE -> rate(unit);
            case TIME ->
                switch (unit.strip().toLowerCase(Locale.ROOT)) {
                    case "s", "sec", "sek" -> OptionalDouble.of(1.0);
                    case "ms", "msec" -> OptionalDouble.of(1.0e-3);
                    case "us", "µs", "μs" -> OptionalDouble.of(1.0e-6);
                    case "min" -> OptionalDouble.of(60.0);
                    default -> OptionalDouble.empty();
                };
        };
    }

    /** {@return the symbols that a file may use, as offered in messages} */
    public List<String> symbols() {
        return switch (this) {
            case TORQUE ->
                Arrays.stream(TorqueUnit.values()).map(TorqueUnit::symbol).toList();
            case ANGLE ->
                Arrays.stream(AngleUnit.values()).map(AngleUnit::symbol).toList();
            case TORQUE_RATE -> List.of("N·m/deg", "lbf·ft/deg", "N·m/turn", "and other torques over angles");
            case TIME -> List.of("s", "ms", "µs", "min");
        };
    }

    private static OptionalDouble rate(String unit) {
        int slash = unit.indexOf('/');
        if (slash < 0) {
            return OptionalDouble.empty();
        }
        var torque = TORQUE.factor(unit.substring(0, slash));
        var angle = ANGLE.factor(unit.substring(slash + 1));
        return torque.isPresent() && angle.isPresent()
                ? OptionalDouble.of(torque.getAsDouble() / angle.getAsDouble())
                : OptionalDouble.empty();
    }
}
