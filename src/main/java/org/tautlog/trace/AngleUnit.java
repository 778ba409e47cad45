package org.tautlog.trace;

import java.util.Locale;
import java.util.Optional;

/** Units of angle that exports use, each with its factor to degrees (ISO 80000-3: a turn is 360 deg or 2 pi rad). */
public enum AngleUnit {
    /** Degree. */
    DEGREE(1.0, "deg", "deg", "°", "degree", "degrees", "degs"),
    /** Radian. */
    RADIAN(180.0 / Math.PI, "rad", "rad", "radian", "radians"),
    /** Gon, a hundredth of a right angle (NIST Special Publication 811, appendix B.8: 0.9 deg). */
    GON(0.9, "gon", "gon", "gons"),
    /** Whole turn. */
    TURN(
            360.0,
            "turn",
            "turn",
            "turns",
            "rev",
            "revs",
            "revolution",
            "revolutions",
            "umdr",
            "umdrehung",
            "umdrehungen");

    private final double factorToDeg;
    private final String symbol;
    private final String spellings;

    AngleUnit(double factorToDeg, String symbol, String... spellings) {
        this.factorToDeg = factorToDeg;
        this.symbol = symbol;
        this.spellings = '|' + String.join("|", spellings) + '|';
    }

    /** {@return how many degrees one of this unit is} */
    public double factorToDeg() {
        return factorToDeg;
    }

    /** {@return the symbol as a person writes it} */
    public String symbol() {
        return symbol;
    }

    /**
     * Converts to degrees.
     *
     * @param value angle in this unit
     * @return angle, deg
     */
    public double toDeg(double value) {
        return value * factorToDeg;
    }

    /**
     * Finds the unit that a text spells, case and outer blanks aside. {@code Grad}, with a capital as German writes it,
     * is the degree; in small letters it would be the gon in English, and is refused.
     *
     * @param text for example {@code deg} or {@code turns}
     * @return the unit, or empty where no angle unit is spelt so
     */
    public static Optional<AngleUnit> parse(String text) {
        if (text.strip().equals("Grad")) {
            return Optional.of(DEGREE);
        }
        var wanted = text.strip().toLowerCase(Locale.ROOT);
        for (var unit : values()) {
            if (wanted.indexOf('|') < 0 && unit.spellings.contains('|' + wanted + '|')) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }
}
