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
    TIME("time"),
    /** Length, read into mm. */
    LENGTH("length"),
    /** Area, read into mm2. */
    AREA("area"),
    /** Stress or modulus, read into MPa. */
    STRESS("stress"),
    /** Thermal expansion, read into 1/K. */
    EXPANSION("thermal expansion"),
    /** Temperature, read into deg C. */
    TEMPERATURE("temperature"),
    /** Difference of temperatures, read into K. */
    TEMPERATURE_DIFFERENCE("temperature difference");

    /** Source: NIST Special Publication 811, appendix B.8, exact. */
    private static final double MM_PER_INCH = 25.4;

    /** Source: NIST Special Publication 811, appendix B.8, as printed. */
    private static final double MPA_PER_KSI = 6.894757;

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
            case TIME -> time(unit.strip().toLowerCase(Locale.ROOT));
            case LENGTH ->
                switch (unit.strip()) {
                    case "mm" -> OptionalDouble.of(1.0);
                    case "um", "µm", "μm" -> OptionalDouble.of(1.0e-3);
                    case "in" -> OptionalDouble.of(MM_PER_INCH);
                    default -> OptionalDouble.empty();
                };
            case AREA ->
                switch (unit.strip()) {
                    case "mm2", "mm²" -> OptionalDouble.of(1.0);
                    case "in2", "in²" -> OptionalDouble.of(MM_PER_INCH * MM_PER_INCH);
                    default -> OptionalDouble.empty();
                };
            case STRESS ->
                switch (unit.strip()) {
                    case "MPa", "N/mm2", "N/mm²" -> OptionalDouble.of(1.0);
                    case "GPa" -> OptionalDouble.of(1.0e3);
                    case "ksi" -> OptionalDouble.of(MPA_PER_KSI);
                    default -> OptionalDouble.empty();
                };
            case EXPANSION ->
                switch (unit.strip()) {
                    case "1/K" -> OptionalDouble.of(1.0);
                    case "µm/(m·K)", "μm/(m·K)", "um/(m K)" -> OptionalDouble.of(1.0e-6);
                    default -> OptionalDouble.empty();
                };
            case TEMPERATURE ->
                switch (unit.strip()) {
                    case "°C", "deg C", "C" -> OptionalDouble.of(1.0);
                    default -> OptionalDouble.empty();
                };
            case TEMPERATURE_DIFFERENCE -> unit.strip().equals("K") ? OptionalDouble.of(1.0) : OptionalDouble.empty();
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
            case LENGTH -> List.of("mm", "µm", "in");
            case AREA -> List.of("mm²", "in²");
            case STRESS -> List.of("MPa", "N/mm²", "GPa", "ksi");
            case EXPANSION -> List.of("1/K", "µm/(m·K)");
            case TEMPERATURE -> List.of("°C");
            case TEMPERATURE_DIFFERENCE -> List.of("K");
        };
    }

    private static OptionalDouble time(String unit) {
        return switch (unit) {
            case "s", "sec", "sek" -> OptionalDouble.of(1.0);
            case "ms", "msec" -> OptionalDouble.of(1.0e-3);
            case "us", "µs", "μs" -> OptionalDouble.of(1.0e-6);
            case "min" -> OptionalDouble.of(60.0);
            default -> OptionalDouble.empty();
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
