package org.tautlog.trace;

import java.util.Locale;
import java.util.Optional;

/**
 * Units of torque that exports use, each with its factor to N·m.
 *
 * <p>Source: NIST Special Publication 811 (2008), appendix B.8: 1 lbf·ft = 1.355818 N·m, 1 lbf·in = 0.1129848 N·m,
 * 1 kgf·m = 9.80665 N·m, 1 ozf·in = 0.007061552 N·m; the factors here are the exact products of 1 lbf = 4.4482216152605 N,
 * 1 ozf = 1/16 lbf, 1 ft = 0.3048 m, 1 in = 0.0254 m and 1 kgf = 1 kp = 9.80665 N. Prefixes: the SI brochure (2019), table 7.
 */
public enum TorqueUnit {
    /** Newton metre. */
    NEWTON_METRE(1.0, "N·m", "nm", "n.m", "n·m", "n-m", "n m", "n*m", "newton metre", "newton meter"),
    /** Newton centimetre. */
    NEWTON_CENTIMETRE(0.01, "N·cm", "ncm", "n.cm", "n·cm", "n-cm", "n cm"),
    /** Centinewton metre. */
    CENTINEWTON_METRE(0.01, "cN·m", "cnm", "cn.m", "cn·m", "cn-m", "cn m", "cn*m"),
    /** Decinewton metre. */
    DECINEWTON_METRE(0.1, "dN·m", "dnm", "dn.m", "dn·m", "dn-m", "dn m", "dn*m"),
    /** Decanewton metre. */
    DECANEWTON_METRE(10.0, "daN·m", "danm", "dan.m", "dan·m", "dan-m", "dan m", "dan*m"),
    /** Millinewton metre; with a capital M it would be the mega one, which no tool has. */
    MILLINEWTON_METRE(0.001, "mN·m", "mnm", "mn.m", "mn·m", "mn-m", "mn m", "mn*m"),
    /** Kilonewton metre. */
    KILONEWTON_METRE(1000.0, "kN·m", "knm", "kn.m", "kn·m", "kn-m", "kn m", "kn*m"),
    /** Pound-force foot. */
    POUND_FOOT(
            4.4482216152605 * 0.3048,
            "lbf·ft",
            "lbfft",
            "lbf.ft",
            "lbf·ft",
            "lbf-ft",
            "lbf ft",
            "ft-lb",
            "ft-lbf",
            "ft·lbf",
            "ftlb",
            "ft lb",
            "ft.lb",
            "lb-ft",
            "lb.ft",
            "lb ft",
            "ft-lbs",
            "ft.lbs",
            "ft lbs",
            "ftlbs",
            "lbs-ft"),
    /** Pound-force inch. */
    POUND_INCH(
            4.4482216152605 * 0.0254,
            "lbf·in",
            "lbfin",
            "lbf.in",
            "lbf·in",
            "lbf-in",
            "lbf in",
            "in-lb",
            "in-lbf",
            "in·lbf",
            "inlb",
            "in lb",
            "in.lb",
            "lb-in",
            "lb.in",
            "lb in",
            "in-lbs",
            "in.lbs",
            "in lbs",
            "inlbs",
            "lbs-in"),
    /** Ounce-force inch. */
    OUNCE_INCH(
            4.4482216152605 / 16 * 0.0254,
            "ozf·in",
            "ozfin",
            "ozf.in",
            "ozf·in",
            "ozf-in",
            "ozf in",
            "in-ozf",
            "in·ozf",
            "ozin",
            "oz.in",
            "oz·in",
            "oz-in",
            "oz in",
            "in-oz",
            "in oz"),
    /** Kilogram-force metre, in German the kilopond metre. */
    KILOGRAM_FORCE_METRE(
            9.80665, "kgf·m", "kgfm", "kgf.m", "kgf·m", "kgf-m", "kgf m", "kgm", "kg·m", "kg-m", "kpm", "kp.m", "kp·m",
            "kp-m", "kp m"),
    /** Kilogram-force centimetre. */
    KILOGRAM_FORCE_CENTIMETRE(
            0.0980665, "kgf·cm", "kgfcm", "kgf.cm", "kgf·cm", "kgf-cm", "kgf cm", "kg·cm", "kgcm", "kpcm", "kp·cm",
            "kp.cm");

    private final double factorToNm;
    private final String symbol;
    private final String spellings;

    TorqueUnit(double factorToNm, String symbol, String... spellings) {
        this.factorToNm = factorToNm;
        this.symbol = symbol;
        this.spellings = '|' + String.join("|", spellings) + '|';
    }

    /** {@return how many N·m one of this unit is} */
    public double factorToNm() {
        return factorToNm;
    }

    /** {@return the symbol as a person writes it} */
    public String symbol() {
        return symbol;
    }

    /**
     * Converts to N·m.
     *
     * @param value torque in this unit
     * @return torque, N·m
     */
    public double toNm(double value) {
        return value * factorToNm;
    }

    /**
     * Finds the unit that a text spells, case and outer blanks aside; a capital M before the newton is refused.
     *
     * @param text for example {@code Nm} or {@code lbf·ft}
     * @return the unit, or empty where no torque unit is spelt so
     */
    public static Optional<TorqueUnit> parse(String text) {
        if (text.strip().startsWith("MN")) {
            return Optional.empty();
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
