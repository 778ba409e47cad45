package org.tautlog.spc.chart;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/**
 * Rules that find a pattern in points of a chart, each switched on by being in an {@link EnumSet}. z is a point's distance
 * from the centre line in standard deviations of what is plotted. A rule is broken at the last point of its pattern;
 * "beyond" is strict.
 *
 * <p>Source: Nelson, Journal of Quality Technology 16 (1984) 237-239; Western Electric, Statistical Quality Control
 * Handbook (1956); from memory.
 */
public enum RunRule {
    /** One point beyond the limits. */
    BEYOND_LIMITS("1 point beyond the limits"),
    /** Nine points running on one side of the centre line. */
    NINE_ONE_SIDE("9 points running on one side of the centre"),
    /** Eight points running on one side of the centre line. */
    EIGHT_ONE_SIDE("8 points running on one side of the centre"),
    /** Six points running, each above the one before, or each below it. */
    SIX_STEADY("6 points running, steadily rising or falling"),
    /** Fourteen points running, up and down in turn. */
    FOURTEEN_ALTERNATING("14 points running, up and down in turn"),
    /** Two of three points beyond two sigma on one side, the last of them one of the two. */
    TWO_OF_THREE("2 of 3 points beyond 2 sigma on one side"),
    /** Four of five points beyond one sigma on one side, the last of them one of the four. */
    FOUR_OF_FIVE("4 of 5 points beyond 1 sigma on one side"),
    /** Fifteen points running within one sigma on either side. */
    FIFTEEN_WITHIN("15 points running within 1 sigma"),
    /** Eight points running beyond one sigma on either side. */
    EIGHT_BEYOND("8 points running beyond 1 sigma, either side");

    private final String words;

    RunRule(String words) {
        this.words = words;
    }

    /** {@return the one word it is asked for by} */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** {@return the rule in a reader's words} */
    public String words() {
        return words;
    }

    /** {@return only points beyond the limits, in a new set} */
    public static EnumSet<RunRule> limitsOnly() {
        return EnumSet.of(BEYOND_LIMITS);
    }

    /**
     * {@return what is left of rules on a chart of ranges or deviations, whose law is skew: the limits, where they are watched}
     *
     * @param rules the rules switched on
     */
    public static EnumSet<RunRule> ofSpread(Set<RunRule> rules) {
        return rules.contains(BEYOND_LIMITS) ? limitsOnly() : EnumSet.noneOf(RunRule.class);
    }

    /** {@return the eight rules of Nelson (1984), in a new set} */
    public static EnumSet<RunRule> nelson() {
        return EnumSet.complementOf(EnumSet.of(EIGHT_ONE_SIDE));
    }

    /** {@return the four rules of Western Electric (1956), in a new set} */
    public static EnumSet<RunRule> westernElectric() {
        return EnumSet.of(BEYOND_LIMITS, TWO_OF_THREE, FOUR_OF_FIVE, EIGHT_ONE_SIDE);
    }
}
